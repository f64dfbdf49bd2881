namespace ShopFit.Web.Features.Fittings;

/// <summary>A remark that goes with a shortlist.</summary>
/// <param name="Code">Stable code, such as <c>for-later</c>.</param>
/// <param name="Text">The same for people, in the current UI culture.</param>
public sealed record ShortlistNotice(string Code, string Text);
