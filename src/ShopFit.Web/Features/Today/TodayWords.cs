namespace ShopFit.Web.Features.Today;

/// <summary>Names the words of the page of today: <c>TodayWords.resx</c>.</summary>
public sealed class TodayWords;
