using System.Text.Json.Serialization;

namespace ShopFit.Sheets.TakeHome;

/// <summary>The paper a sheet is drawn for.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<PaperSize>))]
public enum PaperSize
{
    /// <summary>210 × 297 mm (ISO 216).</summary>
    A4 = 0,

    /// <summary>8.5 × 11 inches (ANSI/ASME Y14.1, size A).</summary>
    Letter = 1,
}

/// <summary>The unit in which a sheet shows lengths.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<ShownUnit>))]
public enum ShownUnit
{
    /// <summary>Millimetres.</summary>
    Millimetres = 0,

    /// <summary>Inches.</summary>
    Inches = 1,
}

/// <summary>Who sews ribbon and elastic on.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<SheetSewing>))]
public enum SheetSewing
{
    /// <summary>The family: the sheet says how.</summary>
    AtHome = 0,

    /// <summary>The shop has sewn them or will: the sheet says how to tie them.</summary>
    ByShop = 1,

    /// <summary>Nothing is sewn to this shoe: the sheet says nothing.</summary>
    Nothing = 2,
}
