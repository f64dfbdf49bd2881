using System.Globalization;
using System.Text;
using static ShopFit.Web.Features.Catalogue.CatalogueWords;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>The cells of one row: reads each as what its column holds and notes what is wrong with it.</summary>
internal sealed class CatalogueCells(
    int line,
    IReadOnlyDictionary<string, int> columns,
    IReadOnlyList<string> cells,
    Action<CatalogueProblem> report)
{
    /// <summary>No number of a catalogue needs more digits; beyond them a double would not keep what was written.</summary>
    private const int MostDigits = 15;

    public bool HasProblem { get; private set; }

    public int Line => line;

    public void Refuse(string? column, CatalogueWord word, params ReadOnlySpan<object?> values)
    {
        HasProblem = true;
        report(new CatalogueProblem(line, column, Say(word, values)));
    }

    /// <summary>The text of a cell without the blanks round it, in Unicode's composed form; empty where there is none.</summary>
    public string Text(string column, int atMost)
    {
        var text = columns.TryGetValue(column, out var index) ? cells[index].Trim() : "";
        if (text.Any(char.IsControl))
        {
            Refuse(column, CatalogueWord.ControlCharacter, Shown(text));
            return "";
        }

        // Unpaired surrogates cannot come out of UTF-8, so composing cannot fail.
        text = text.Normalize(NormalizationForm.FormC);
        if (text.Length > atMost)
        {
            Refuse(column, CatalogueWord.TooLong, Shown(text), text.Length, atMost);
            return "";
        }

        return text;
    }

    public string RequiredText(string column, int atMost)
    {
        var problemsBefore = HasProblem;
        HasProblem = false;
        var text = Text(column, atMost);
        if (text.Length == 0 && !HasProblem)
        {
            Refuse(column, CatalogueWord.Empty, column);
        }

        HasProblem |= problemsBefore;
        return text;
    }

    public double? Number(NumberColumn column)
    {
        if (Number(column.Name) is not { } number)
        {
            return null;
        }

        if (number >= column.Lowest && number <= column.Highest)
        {
            return number;
        }

        Refuse(column.Name, CatalogueWord.OutOfRange, number, column.Lowest, column.Highest);
        return null;
    }

    /// <summary>A number of any size, or null where the cell is empty or holds none.</summary>
    public double? Number(string column)
    {
        const string Example = "238.5";
        var text = Text(column, CatalogueFileReader.LongestText);
        if (text.Length == 0)
        {
            return null;
        }

        if (IsPlainNumber(text) && text.Count(char.IsAsciiDigit) <= MostDigits)
        {
            return double.Parse(text, CultureInfo.InvariantCulture);
        }

        Refuse(column, text.Contains(',', StringComparison.Ordinal) ? CatalogueWord.CommaForPoint : CatalogueWord.NotANumber, Shown(text), Example);
        return null;
    }

    public long? WholeNumber(string column, long lowest, long highest)
    {
        var text = Text(column, CatalogueFileReader.LongestText);
        if (text.Length == 0)
        {
            return null;
        }

        if (!IsWhole(text) || text.Count(char.IsAsciiDigit) > MostDigits)
        {
            Refuse(column, CatalogueWord.NotWhole, Shown(text), Math.Min(12, highest));
            return null;
        }

        var number = long.Parse(text, CultureInfo.InvariantCulture);
        if (number >= lowest && number <= highest)
        {
            return number;
        }

        Refuse(column, CatalogueWord.OutOfRange, number, lowest, highest);
        return null;
    }

    /// <summary>A value long enough to recognise it by, and no longer.</summary>
    internal static string Shown(string text)
    {
        const int Enough = 40;
        var plain = string.Concat(text.Select(c => char.IsControl(c) ? ' ' : c));
        return plain.Length <= Enough ? plain : string.Concat(plain.AsSpan(0, Enough), "…");
    }

    /// <summary>Digits, a minus before them perhaps, one decimal point among them perhaps; nothing else that a parser might let through.</summary>
    private static bool IsPlainNumber(ReadOnlySpan<char> text)
    {
        var point = text.IndexOf('.');
        return point < 0
            ? IsWhole(text)
            : IsWhole(text[..point]) && point + 1 < text.Length && !text[(point + 1)..].ContainsAnyExceptInRange('0', '9');
    }

    private static bool IsWhole(ReadOnlySpan<char> text)
    {
        var digits = text.StartsWith("-", StringComparison.Ordinal) ? text[1..] : text;
        return digits.Length > 0 && !digits.ContainsAnyExceptInRange('0', '9');
    }
}
