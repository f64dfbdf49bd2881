using ShopFit.Fitting.Shoes;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>A row of a file over what is on file: a column that the file does not have leaves what was there.</summary>
internal sealed record MergedRow(CatalogueRow Row, string ItemName, long? PriceMinor, string? Gtin, string Width, string Option, string ShankName, FormAsGiven Form, int? LeadTimeDays)
{
    /// <summary>A row that is new: nothing was there.</summary>
    public static MergedRow OfNew(CatalogueRow row) => new(
        row,
        SizeLabels.ItemName(row.Maker, row.Model, row.Size, row.Width, row.Option, row.ShankName),
        row.PriceMinor,
        row.Gtin,
        row.Width,
        row.Option,
        row.ShankName,
        FormOf(row),
        row.LeadTimeDays);

    public static MergedRow Of(CatalogueRow row, IReadOnlySet<string> columns, Item item, ShoeSize size)
    {
        var width = columns.Contains(CatalogueColumns.Width) ? row.Width : size.Width;
        var option = columns.Contains(CatalogueColumns.Option) ? row.Option : size.Option;
        var shankName = columns.Contains(CatalogueColumns.ShankName) ? row.ShankName : size.ShankName;
        return new MergedRow(
            row,
            SizeLabels.ItemName(row.Maker, row.Model, row.Size, width, option, shankName),
            columns.Contains(CatalogueColumns.PriceMinor) ? row.PriceMinor : item.PriceInCatalogue,
            columns.Contains(CatalogueColumns.Gtin) ? row.Gtin : item.Gtin,
            width,
            option,
            shankName,
            FormOf(row, columns, size.Form),
            columns.Contains(CatalogueColumns.LeadTimeDays) ? row.LeadTimeDays : size.LeadTimeDays);
    }

    /// <summary>Whether anything would differ from what is on file.</summary>
    /// <param name="item">The item on file.</param>
    /// <param name="size">The size on file.</param>
    /// <param name="modelId">The model of the row; null where it is not on file.</param>
    public bool Changes(Item item, ShoeSize size, Guid? modelId) =>
        size.ModelId != modelId
        || (item.Name, item.PriceInCatalogue, item.Gtin) != (ItemName, PriceMinor, Gtin)
        || (size.SizeSystem, size.Size, size.Width, size.Option, size.ShankName, size.LeadTimeDays) != (Row.SizeSystem, Row.Size, Width, Option, ShankName, LeadTimeDays)
        || size.Form != Form;

    private static FormAsGiven FormOf(CatalogueRow row) => new()
    {
        LengthMm = row.Form[(int)FormPart.Length],
        BoxBreadthMm = row.Form[(int)FormPart.BoxBreadth],
        BallGirthMm = row.Form[(int)FormPart.BallGirth],
        HeelBreadthMm = row.Form[(int)FormPart.HeelBreadth],
        CrownDepthMm = row.Form[(int)FormPart.CrownDepth],
        ToeSlopeMm = row.Form[(int)FormPart.ToeSlope],
        VampMm = row.Form[(int)FormPart.Vamp],
        ShankPoints = row.Form[(int)FormPart.Shank],
        Source = SourceOf(row.FormSource),
        WidthStep = row.WidthStep,
        BoxStep = row.BoxStep,
        VampStep = row.VampStep,
    };

    private static FormAsGiven FormOf(CatalogueRow row, IReadOnlySet<string> columns, FormAsGiven before)
    {
        var given = FormOf(row);
        var formColumns = CatalogueColumns.FormParts.Where(part => columns.Contains(part.Name)).ToList();
        return given with
        {
            LengthMm = Either(FormPart.Length, given.LengthMm, before.LengthMm),
            BoxBreadthMm = Either(FormPart.BoxBreadth, given.BoxBreadthMm, before.BoxBreadthMm),
            BallGirthMm = Either(FormPart.BallGirth, given.BallGirthMm, before.BallGirthMm),
            HeelBreadthMm = Either(FormPart.HeelBreadth, given.HeelBreadthMm, before.HeelBreadthMm),
            CrownDepthMm = Either(FormPart.CrownDepth, given.CrownDepthMm, before.CrownDepthMm),
            ToeSlopeMm = Either(FormPart.ToeSlope, given.ToeSlopeMm, before.ToeSlopeMm),
            VampMm = Either(FormPart.Vamp, given.VampMm, before.VampMm),
            ShankPoints = Either(FormPart.Shank, given.ShankPoints, before.ShankPoints),
            Source = columns.Contains(CatalogueColumns.FormSource) || formColumns.Count > 0 ? given.Source : before.Source,
            WidthStep = columns.Contains(CatalogueColumns.WidthStep.Name) ? given.WidthStep : before.WidthStep,
            BoxStep = columns.Contains(CatalogueColumns.BoxStep.Name) ? given.BoxStep : before.BoxStep,
            VampStep = columns.Contains(CatalogueColumns.VampStep.Name) ? given.VampStep : before.VampStep,
        };

        double? Either(FormPart part, double? now, double? then) => columns.Contains(CatalogueColumns.FormParts[(int)part].Name) ? now : then;
    }

    private static string SourceOf(FormSource source) => source switch
    {
        FormSource.Measured => "measured",
        FormSource.Maker => "maker",
        _ => "label",
    };
}
