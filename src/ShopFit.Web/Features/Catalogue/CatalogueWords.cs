using System.Globalization;
using System.Resources;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>The sentences about a catalogue file, from the resource file of the same name.</summary>
public static class CatalogueWords
{
    private static readonly ResourceManager Resources = new(typeof(CatalogueWords));

    /// <summary>The sentence with its values filled in, in the language and number format of the reader.</summary>
    public static string Say(CatalogueWord word, params ReadOnlySpan<object?> values) =>
        string.Format(CultureInfo.CurrentCulture, Pattern(word), values);

    internal static string Pattern(CatalogueWord word) =>
        Resources.GetString(word.ToString(), CultureInfo.CurrentUICulture)
        ?? throw new MissingManifestResourceException($"There is no sentence for {word}.");
}

/// <summary>The keys of the sentences.</summary>
public enum CatalogueWord
{
    FileEmpty,
    FileTooLarge,
    FileNotUtf8,
    FileUtf16,
    OtherSeparator,
    UnknownColumn,
    DuplicateColumn,
    MissingColumn,
    TooFewCells,
    TooManyCells,
    StrayQuote,
    TextAfterQuote,
    QuoteNeverClosed,
    Empty,
    TooLong,
    ControlCharacter,
    NotANumber,
    CommaForPoint,
    NotWhole,
    OutOfRange,
    NotOneOf,
    UnknownSizeSystem,
    SizeOutOfRange,
    GtinLength,
    GtinCheckDigit,
    PriceNeedsCurrency,
    OtherCurrency,
    FormWithoutNumbers,
    DuplicateSku,
    DuplicateSkuByCase,
    DuplicateGtin,
    ModelOfTwoKinds,
    SkuOfOtherGoods,
    SkuOnFileByCase,
    GtinOnFile,
    ModelOnFileOfOtherKind,
}
