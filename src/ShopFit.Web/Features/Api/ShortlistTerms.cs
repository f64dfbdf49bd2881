namespace ShopFit.Web.Features.Api;

/// <summary>The ids that the shop's numbers know: kinds of footwear, checks at a try-on, pads.</summary>
internal sealed record ShortlistTerms(IReadOnlyList<string> Kinds, IReadOnlyList<string> Checks, IReadOnlyList<string> Pads);
