using ShopFit.Fitting.Shoes;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>The columns of a catalogue file, and what a number in each may be.</summary>
/// <remarks>
/// The ranges catch a slip of the pen, not an unusual shoe: a breadth in the girth's column, a centimetre for a
/// millimetre, a price in whole coins *(cp)*.
/// </remarks>
public static class CatalogueColumns
{
    public const string Sku = "sku";
    public const string Maker = "maker";
    public const string Model = "model";
    public const string Kind = "kind";
    public const string SizeSystem = "sizeSystem";
    public const string Size = "size";
    public const string Width = "width";
    public const string Option = "option";
    public const string ShankName = "shankName";
    public const string FormSource = "formSource";
    public const string PriceMinor = "priceMinor";
    public const string Currency = "currency";
    public const string Gtin = "gtin";
    public const string LeadTimeDays = "leadTimeDays";
    public const string OnHand = "onHand";

    public static readonly NumberColumn WidthStep = new("widthStep", -6, 6);
    public static readonly NumberColumn BoxStep = new("boxStep", -3, 3);
    public static readonly NumberColumn VampStep = new("vampStep", -3, 3);

    /// <summary>The parts of a form, in the order of <see cref="FormPart"/>.</summary>
    public static readonly IReadOnlyList<NumberColumn> FormParts =
    [
        new("lengthMm", 100, 350),
        new("boxBreadthMm", 25, 140),
        new("ballGirthMm", 100, 350),
        new("heelBreadthMm", 25, 140),
        new("crownDepthMm", 15, 100),
        new("toeSlopeMm", -10, 60),
        new("vampMm", 15, 150),
        new("shankPoints", 0, 10),
    ];

    /// <summary>All columns, in the order in which they are named to people.</summary>
    public static readonly IReadOnlyList<string> All =
    [
        Sku, Maker, Model, Kind, SizeSystem, Size, Width, Option, ShankName,
        .. FormParts.Select(part => part.Name),
        FormSource, WidthStep.Name, BoxStep.Name, VampStep.Name,
        PriceMinor, Currency, Gtin, LeadTimeDays, OnHand,
    ];

    /// <summary>The columns that a file must have and every row must fill.</summary>
    public static readonly IReadOnlyList<string> Required = [Sku, Maker, Model, Kind, SizeSystem, Size];
}

/// <summary>A column of numbers and the range in which they make sense.</summary>
public sealed record NumberColumn(string Name, double Lowest, double Highest);
