using System.Text;
using System.Text.Unicode;
using CsvHelper;
using ShopFit.Fitting.Measures;
using ShopFit.Fitting.Shoes;
using static ShopFit.Web.Features.Catalogue.CatalogueWords;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>Reads a catalogue file to its end and says everything that is wrong with it, by line and column.</summary>
/// <remarks>
/// CSV as RFC 4180 has it, UTF-8 with or without its byte order mark, columns in any order, decimal point only. Blanks
/// round a cell do not count. It knows nothing of what is on file; <see cref="ImportCatalogue"/> compares.
/// </remarks>
public sealed class CatalogueFileReader
{
    /// <summary>The largest file read: some 150,000 rows.</summary>
    public const int MostBytes = 32 * 1024 * 1024;

    internal const int LongestText = 100;
    private const int LongestCode = 64;
    private const int LongestName = 80;
    private const int LongestWord = 40;
    private const long DearestMinor = 100_000_000;
    private const int LongestLeadTimeDays = 730;
    private const int MostOnHand = 9_999;

    private readonly List<CatalogueProblem> _problems = [];
    private readonly List<CatalogueRow> _rows = [];
    private readonly Dictionary<string, int> _columns = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (string Sku, int Line)> _lineOfSku = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, int> _lineOfGtin = new(StringComparer.Ordinal);
    private readonly Dictionary<(string Maker, string Model), (string Kind, int Line)> _kindOfModel = [];
    private readonly CatalogueRules _rules;
    private int _width;
    private int _problemCount;
    private int _badRows;

    private CatalogueFileReader(CatalogueRules rules) => _rules = rules;

    /// <summary>Reads a file held in a stream, which is left open.</summary>
    public static async Task<CatalogueFile> ReadAsync(Stream stream, CatalogueRules rules, CancellationToken cancellationToken)
    {
        using var held = new MemoryStream();
        var piece = new byte[81_920];
        int read;
        while ((read = await stream.ReadAsync(piece, cancellationToken)) > 0)
        {
            if (held.Length + read > MostBytes)
            {
                var tooLarge = new CatalogueFileReader(rules);
                tooLarge.Report(new CatalogueProblem(1, null, Say(CatalogueWord.FileTooLarge, MostBytes / (1024 * 1024))));
                return tooLarge.Finished(isTable: false);
            }

            held.Write(piece.AsSpan(0, read));
        }

        return Read(held.ToArray(), rules);
    }

    /// <summary>Reads a file held in memory.</summary>
    public static CatalogueFile Read(byte[] bytes, CatalogueRules rules)
    {
        var reader = new CatalogueFileReader(rules);
        return reader.Finished(TextProblem(bytes) is { } problem ? reader.Unreadable(problem) : reader.ReadTable(bytes));
    }

    private static CatalogueProblem? TextProblem(byte[] bytes)
    {
        // Every other byte of plain UTF-16 is zero; with or without its mark, the first two characters give it away.
        if (bytes.AsSpan().StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE])
            || bytes.AsSpan().StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF])
            || bytes.AsSpan(0, Math.Min(bytes.Length, 4)).Contains((byte)0))
        {
            return new CatalogueProblem(1, null, Say(CatalogueWord.FileUtf16));
        }

        if (Utf8.IsValid(bytes))
        {
            return null;
        }

        // The decoder that throws says where; the fast check above does not.
        try
        {
            new UTF8Encoding(false, throwOnInvalidBytes: true).GetCharCount(bytes);
            return null;
        }
        catch (DecoderFallbackException found)
        {
            var line = 1 + bytes.AsSpan(0, Math.Clamp(found.Index, 0, bytes.Length)).Count((byte)'\n');
            return new CatalogueProblem(line, null, Say(CatalogueWord.FileNotUtf8));
        }
    }

    private bool Unreadable(CatalogueProblem problem)
    {
        Report(problem);
        return false;
    }

    private bool ReadTable(byte[] bytes)
    {
        CsvMalformedReason? malformed = null;
        using var csv = CsvReader.Create(bytes, CsvReaderOptions.Default with
        {
            HasHeader = false,
            Separator = ',',
            TrackLineNumbers = true,
            DetectSeparatorHint = false,
            MalformedData = CsvMalformedDataHandling.Recover,
            OnMalformedRecord = record => malformed = record.Reason,
        });

        if (!csv.Read())
        {
            return Unreadable(new CatalogueProblem(1, null, Say(CatalogueWord.FileEmpty)));
        }

        if (!ReadHeader(csv, malformed))
        {
            return false;
        }

        malformed = null;
        while (csv.Read())
        {
            // Everything behind an open quote is one cell: nobody could tell how many rows were lost by skipping it.
            if (malformed == CsvMalformedReason.UnterminatedQuote)
            {
                _rows.Clear();
                return Unreadable(new CatalogueProblem((int)csv.LineNumber, null, Say(CatalogueWord.QuoteNeverClosed)));
            }

            ReadRow(csv, malformed);
            malformed = null;
        }

        return true;
    }

    private bool ReadHeader(CsvReader csv, CsvMalformedReason? malformed)
    {
        var line = (int)csv.LineNumber;
        var names = csv.Current.ToArray().Select(name => name.Trim()).ToArray();
        if (malformed is { } reason)
        {
            return Unreadable(new CatalogueProblem(line, null, Say(WordFor(reason))));
        }

        if (names.Length == 1 && names[0].IndexOfAny([';', '\t', '|']) is var at and >= 0)
        {
            return Unreadable(new CatalogueProblem(line, null, Say(CatalogueWord.OtherSeparator, names[0][at] == '\t' ? "tab" : names[0][at])));
        }

        for (var index = 0; index < names.Length; index++)
        {
            var name = names[index];
            if (!CatalogueColumns.All.Contains(name, StringComparer.Ordinal))
            {
                Report(new CatalogueProblem(line, CatalogueCells.Shown(name), Say(CatalogueWord.UnknownColumn, CatalogueCells.Shown(name), string.Join(", ", CatalogueColumns.All))));
            }
            else if (!_columns.TryAdd(name, index))
            {
                Report(new CatalogueProblem(line, name, Say(CatalogueWord.DuplicateColumn, name)));
            }
        }

        foreach (var name in CatalogueColumns.Required.Where(name => !_columns.ContainsKey(name)))
        {
            Report(new CatalogueProblem(line, name, Say(CatalogueWord.MissingColumn, name, string.Join(", ", CatalogueColumns.Required))));
        }

        _width = names.Length;
        return _problemCount == 0;
    }

    private void ReadRow(CsvReader csv, CsvMalformedReason? malformed)
    {
        var values = csv.Current.ToArray();
        var cells = new CatalogueCells((int)csv.LineNumber, _columns, values, Report);
        if (malformed is { } reason)
        {
            cells.Refuse(null, WordFor(reason));
        }
        else if (values.Length != _width)
        {
            // A spreadsheet leaves lines of bare commas or blanks behind; they say nothing, so they are passed over.
            if (values.All(string.IsNullOrWhiteSpace))
            {
                return;
            }

            cells.Refuse(null, values.Length < _width ? CatalogueWord.TooFewCells : CatalogueWord.TooManyCells, values.Length, _width);
        }
        else if (values.All(string.IsNullOrWhiteSpace))
        {
            return;
        }
        else
        {
            var row = RowOf(cells);
            if (!cells.HasProblem)
            {
                _rows.Add(row);
                return;
            }
        }

        _badRows++;
    }

    private CatalogueRow RowOf(CatalogueCells cells)
    {
        var sku = cells.RequiredText(CatalogueColumns.Sku, LongestCode);
        var maker = cells.RequiredText(CatalogueColumns.Maker, LongestName);
        var model = cells.RequiredText(CatalogueColumns.Model, LongestName);
        var kind = OneOf(cells, CatalogueColumns.Kind, cells.RequiredText(CatalogueColumns.Kind, LongestText), _rules.Kinds);
        var (system, size) = SizeOf(cells);
        var form = CatalogueColumns.FormParts.Select(cells.Number).ToArray();
        var gtin = GtinOf(cells);

        if (sku.Length > 0 && !_lineOfSku.TryAdd(sku, (sku, cells.Line)))
        {
            var first = _lineOfSku[sku];
            cells.Refuse(CatalogueColumns.Sku, first.Sku == sku ? CatalogueWord.DuplicateSku : CatalogueWord.DuplicateSkuByCase, sku, first.Line, first.Sku);
        }

        if (gtin is not null && !_lineOfGtin.TryAdd(gtin, cells.Line))
        {
            cells.Refuse(CatalogueColumns.Gtin, CatalogueWord.DuplicateGtin, gtin, _lineOfGtin[gtin]);
        }

        if (maker.Length > 0 && model.Length > 0 && kind.Length > 0
            && !_kindOfModel.TryAdd((maker, model), (kind, cells.Line))
            && _kindOfModel[(maker, model)] is var seen
            && seen.Kind != kind)
        {
            cells.Refuse(CatalogueColumns.Kind, CatalogueWord.ModelOfTwoKinds, maker, model, seen.Kind, seen.Line, kind);
        }

        return new CatalogueRow
        {
            Line = cells.Line,
            Sku = sku,
            Maker = maker,
            Model = model,
            Kind = kind,
            SizeSystem = system,
            Size = size,
            Width = cells.Text(CatalogueColumns.Width, LongestWord),
            Option = cells.Text(CatalogueColumns.Option, LongestWord),
            ShankName = cells.Text(CatalogueColumns.ShankName, LongestWord),
            Form = form,
            FormSource = FormSourceOf(cells, form),
            WidthStep = cells.Number(CatalogueColumns.WidthStep) ?? 0,
            BoxStep = cells.Number(CatalogueColumns.BoxStep) ?? 0,
            VampStep = cells.Number(CatalogueColumns.VampStep) ?? 0,
            PriceMinor = PriceOf(cells),
            Gtin = gtin,
            LeadTimeDays = (int?)cells.WholeNumber(CatalogueColumns.LeadTimeDays, 0, LongestLeadTimeDays),
            OnHand = (int?)cells.WholeNumber(CatalogueColumns.OnHand, 0, MostOnHand) ?? 0,
        };
    }

    private static string OneOf(CatalogueCells cells, string column, string text, IReadOnlyCollection<string> allowed)
    {
        if (text.Length == 0 || allowed.Contains(text, StringComparer.Ordinal))
        {
            return text;
        }

        cells.Refuse(column, CatalogueWord.NotOneOf, CatalogueCells.Shown(text), string.Join(", ", allowed));
        return "";
    }

    private static (string System, double Size) SizeOf(CatalogueCells cells)
    {
        var id = cells.RequiredText(CatalogueColumns.SizeSystem, LongestText);
        var system = id.Length == 0 ? null : SizeSystem.Find(id);
        if (id.Length > 0 && system is null)
        {
            cells.Refuse(CatalogueColumns.SizeSystem, CatalogueWord.UnknownSizeSystem, CatalogueCells.Shown(id), string.Join(", ", SizeSystem.All.Select(known => known.Id)));
        }

        if (cells.RequiredText(CatalogueColumns.Size, LongestText).Length == 0 || cells.Number(CatalogueColumns.Size) is not { } size)
        {
            return (id, 0);
        }

        if (system is not null && !system.Covers(size))
        {
            cells.Refuse(CatalogueColumns.Size, CatalogueWord.SizeOutOfRange, size, system.Id, system.Smallest, system.Largest);
        }

        return (id, size);
    }

    private static FormSource FormSourceOf(CatalogueCells cells, double?[] form)
    {
        var hasNumbers = form.Any(part => part is not null);
        var text = cells.Text(CatalogueColumns.FormSource, LongestText);
        switch (text)
        {
            case "":
                // Whoever gives millimetres without saying whence most likely copied them from the maker.
                return hasNumbers ? FormSource.Maker : FormSource.Label;
            case "label":
                return FormSource.Label;
            case "measured" or "maker":
                if (!hasNumbers && !CatalogueColumns.FormParts.Any(part => cells.Text(part.Name, int.MaxValue).Length > 0))
                {
                    cells.Refuse(CatalogueColumns.FormSource, CatalogueWord.FormWithoutNumbers, text);
                }

                return text == "measured" ? FormSource.Measured : FormSource.Maker;
            default:
                OneOf(cells, CatalogueColumns.FormSource, text, ["measured", "maker", "label"]);
                return FormSource.Label;
        }
    }

    private static string? GtinOf(CatalogueCells cells)
    {
        var text = cells.Text(CatalogueColumns.Gtin, LongestText);
        if (text.Length == 0)
        {
            return null;
        }

        if (Gtin.TryRead(text, out var gtin))
        {
            return gtin.Digits;
        }

        if (Gtin.HasALength(text))
        {
            cells.Refuse(CatalogueColumns.Gtin, CatalogueWord.GtinCheckDigit, text, Gtin.CheckDigitOf(text.AsSpan(0, text.Length - 1)));
        }
        else
        {
            cells.Refuse(CatalogueColumns.Gtin, CatalogueWord.GtinLength, CatalogueCells.Shown(text));
        }

        return null;
    }

    private long? PriceOf(CatalogueCells cells)
    {
        var price = cells.WholeNumber(CatalogueColumns.PriceMinor, 0, DearestMinor);
        var currency = cells.Text(CatalogueColumns.Currency, LongestText);
        if (currency.Length > 0 && currency != _rules.Currency)
        {
            cells.Refuse(CatalogueColumns.Currency, CatalogueWord.OtherCurrency, CatalogueCells.Shown(currency), _rules.Currency);
        }
        else if (currency.Length == 0 && price is not null)
        {
            cells.Refuse(CatalogueColumns.Currency, CatalogueWord.PriceNeedsCurrency, _rules.Currency);
        }

        return price;
    }

    private static CatalogueWord WordFor(CsvMalformedReason reason) => reason switch
    {
        CsvMalformedReason.TextAfterClosingQuote => CatalogueWord.TextAfterQuote,
        CsvMalformedReason.UnterminatedQuote => CatalogueWord.QuoteNeverClosed,
        _ => CatalogueWord.StrayQuote,
    };

    private void Report(CatalogueProblem problem)
    {
        _problemCount++;
        if (_problems.Count < CatalogueFile.ProblemsShown)
        {
            _problems.Add(problem);
        }
    }

    private CatalogueFile Finished(bool isTable) => new()
    {
        IsTable = isTable,
        Columns = _columns.Keys.ToHashSet(StringComparer.Ordinal),
        Rows = _rows,
        BadRows = _badRows,
        Problems = _problems,
        ProblemCount = _problemCount,
    };
}
