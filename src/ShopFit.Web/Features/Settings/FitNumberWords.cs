namespace ShopFit.Web.Features.Settings;

/// <summary>Names the words for the fit numbers: <c>FitNumberWords.resx</c>.</summary>
public sealed class FitNumberWords;
