namespace ShopFit.Web.Features.Fittings;

/// <summary>The words of what was asked for, suggested and taken instead.</summary>
public sealed class OverruleWords;
