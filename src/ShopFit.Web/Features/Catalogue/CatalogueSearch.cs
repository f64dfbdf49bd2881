namespace ShopFit.Web.Features.Catalogue;

/// <summary>What is looked for in the catalogue.</summary>
/// <param name="Text">Words that must all be found in maker, model, size, code, barcode number or kind; empty finds all.</param>
/// <param name="Kind">One kind of footwear only; null: every kind.</param>
/// <param name="MakerId">One maker only; null: every maker.</param>
/// <param name="Source">How the inside is known where it is known best: "measured", "maker" or "label"; null: however.</param>
/// <param name="Missing">What must be missing; null: nothing need be.</param>
public sealed record CatalogueSearch(string Text = "", string? Kind = null, Guid? MakerId = null, string? Source = null, CatalogueGap? Missing = null);

/// <summary>What can be missing of a size.</summary>
public enum CatalogueGap
{
    /// <summary>It has no price, and cannot be sold.</summary>
    Price,

    /// <summary>Its inside is known from its label alone.</summary>
    Form,

    /// <summary>It has no barcode number.</summary>
    Gtin,
}
