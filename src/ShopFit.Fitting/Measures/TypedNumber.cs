namespace ShopFit.Fitting.Measures;

/// <summary>Reads a number as people type it: comma or point, no grouping, fractions where inches are meant.</summary>
/// <remarks>The one parser of the whole app for what is typed by hand. Files use the decimal point only and are not read by this.</remarks>
public static class TypedNumber
{
    /// <summary>Reads "238.5", "238,5", "½", "5½", "9 7/16" or "7/16"; false for anything else, never a guess.</summary>
    public static bool TryRead(string? text, out double value) => throw new NotSupportedException("Not written yet.");
}
