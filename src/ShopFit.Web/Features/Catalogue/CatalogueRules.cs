namespace ShopFit.Web.Features.Catalogue;

/// <summary>What a shop's own settings say about a catalogue file.</summary>
/// <param name="Currency">The shop's currency, ISO 4217; prices come in no other.</param>
/// <param name="Kinds">The kinds of footwear that can be fitted.</param>
public sealed record CatalogueRules(string Currency, IReadOnlyCollection<string> Kinds);
