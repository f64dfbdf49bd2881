namespace ShopFit.Web.Features.Settings;

/// <summary>Names the words of the pages of the shop: <c>SettingsWords.resx</c>.</summary>
public sealed class SettingsWords;
