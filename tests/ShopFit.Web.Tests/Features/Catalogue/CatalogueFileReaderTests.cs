using System.Globalization;
using System.Text;
using ShopFit.Fitting.Shoes;

namespace ShopFit.Web.Features.Catalogue;

public class CatalogueFileReaderTests
{
    private const string Header = "sku,maker,model,kind,sizeSystem,size";
    private const string Good = "A1,Aldergate,Wren,pointe,eu,38";

    private static readonly CatalogueRules Rules = new("EUR", ["pointe", "jazz"]);

    [Fact]
    public void A_row_needs_no_more_than_six_columns()
    {
        var file = Read($"{Header}\n{Good}\n");

        Assert.Empty(file.Problems);
        var row = Assert.Single(file.Rows);
        Assert.Equal(("A1", "Aldergate", "Wren", "pointe", "eu", 38.0), (row.Sku, row.Maker, row.Model, row.Kind, row.SizeSystem, row.Size));
        Assert.Equal(FormSource.Label, row.FormSource);
        Assert.All(row.Form, Assert.Null);
        Assert.Null(row.PriceMinor);
        Assert.Equal(0, row.OnHand);
    }

    [Fact]
    public void Every_column_is_read_whatever_their_order()
    {
        string[] names = [.. CatalogueColumns.All.Reverse()];
        var cells = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["sku"] = "A1", ["maker"] = "Aldergate", ["model"] = "Wren", ["kind"] = "pointe", ["sizeSystem"] = "uk-adult", ["size"] = "4.5",
            ["width"] = "third", ["option"] = "tall box", ["shankName"] = "reed", ["lengthMm"] = "231.5", ["boxBreadthMm"] = "77",
            ["ballGirthMm"] = "210", ["heelBreadthMm"] = "61", ["crownDepthMm"] = "36", ["toeSlopeMm"] = "-2.5", ["vampMm"] = "62",
            ["shankPoints"] = "6", ["formSource"] = "measured", ["widthStep"] = "-1", ["boxStep"] = "1", ["vampStep"] = "0.5",
            ["priceMinor"] = "8950", ["currency"] = "EUR", ["gtin"] = "6291041500213", ["leadTimeDays"] = "28", ["onHand"] = "3",
        };

        var row = Assert.Single(Read($"{string.Join(',', names)}\n{string.Join(',', names.Select(name => cells[name]))}").Rows);

        Assert.Equal([231.5, 77, 210, 61, 36, -2.5, 62, 6], row.Form.Select(part => part!.Value));
        Assert.Equal((FormSource.Measured, -1.0, 1.0, 0.5), (row.FormSource, row.WidthStep, row.BoxStep, row.VampStep));
        Assert.Equal((8950L, "6291041500213", 28, 3), (row.PriceMinor, row.Gtin, row.LeadTimeDays, row.OnHand));
        Assert.Equal(("third", "tall box", "reed"), (row.Width, row.Option, row.ShankName));
    }

    // RFC 4180, section 2, rules 5 to 7: quoted cells, commas inside them, doubled quotes; rule 1: CRLF.
    [Fact]
    public void Quoted_cells_hold_commas_and_quotes()
    {
        var row = Assert.Single(Read($"{Header}\r\nA1,\"Alder, Gate\",\"The \"\"Wren\"\"\",pointe,eu,38\r\n").Rows);

        Assert.Equal(("Alder, Gate", "The \"Wren\""), (row.Maker, row.Model));
    }

    [Fact]
    public void A_byte_order_mark_and_blank_lines_and_blanks_round_a_cell_do_not_count()
    {
        var file = Read($"\uFEFF{Header}\n\n A1 ,Aldergate,Wren ,pointe,eu,38\n,,,,,\n\n");

        Assert.Empty(file.Problems);
        Assert.Equal(("A1", "Wren", 3), (file.Rows[0].Sku, file.Rows[0].Model, file.Rows[0].Line));
    }

    [Fact]
    public void Letters_written_in_two_ways_are_the_same_letters()
    {
        var file = Read($"{Header}\nA1,Al\u0065\u0301e,Wren,pointe,eu,38\nA2,Al\u00e9e,Wren,jazz,eu,38\n");

        Assert.Equal((3, "kind"), (Assert.Single(file.Problems).Line, file.Problems[0].Column));
    }

    [Theory]
    [InlineData("sku,maker,model,kind,sizeSystem,size,colour", "colour", "There is no column “colour”.")]
    [InlineData("Sku,maker,model,kind,sizeSystem,size", "Sku", "There is no column “Sku”.")]
    [InlineData("sku,maker,model,kind,sizeSystem,size,sku", "sku", "The column “sku” is there twice.")]
    [InlineData("sku,maker,model,kind,sizeSystem", "size", "The column “size” is missing.")]
    [InlineData("sku,maker,model,kind,sizeSystem,size,", "", "There is no column “”.")]
    [InlineData("sku;maker;model;kind;sizeSystem;size", null, "this file seems to use “;”")]
    [InlineData("sku,\"maker,model", null, "never closed")]
    [InlineData("", null, "The file is empty.")]
    public void A_header_that_is_wrong_is_refused_by_name(string header, string? column, string sentence)
    {
        var file = Read($"{header}\n{(header.Length == 0 ? "" : Good)}");

        Assert.False(file.IsTable);
        Assert.Empty(file.Rows);
        Assert.Contains(file.Problems, problem =>
            problem.Line == 1 && problem.Column == column && problem.Sentence.Contains(sentence, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("lengthMm", "\"240,5\"", "“240,5” has a comma. Write a decimal point")]
    [InlineData("lengthMm", "2e2", "“2e2” is not a number.")]
    [InlineData("lengthMm", "NaN", "“NaN” is not a number.")]
    [InlineData("lengthMm", "24.05", "24.05 is out of range: 100 to 350 is allowed.")]
    [InlineData("lengthMm", "+240", "“+240” is not a number.")]
    [InlineData("lengthMm", "1111111111111111", "is not a number.")]
    [InlineData("shankPoints", "11", "11 is out of range: 0 to 10 is allowed.")]
    [InlineData("formSource", "guess", "“guess” is not known here. Allowed: measured, maker, label.")]
    [InlineData("formSource", "measured", "“measured” says that the inside is known, but no part of it is given.")]
    [InlineData("priceMinor", "89.50", "“89.50” is not a whole number.")]
    [InlineData("priceMinor", "-1", "-1 is out of range")]
    [InlineData("currency", "USD", "“USD” is not the currency of this shop. Allowed: EUR.")]
    [InlineData("gtin", "6291041500214", "its last digit would be 3")]
    [InlineData("gtin", "62910414", "The barcode number 62910414 has a slip in it")]
    [InlineData("gtin", "none", "“none” is not a barcode number: it has 8, 12, 13 or 14 digits.")]
    [InlineData("onHand", "-1", "-1 is out of range: 0 to 9999 is allowed.")]
    [InlineData("leadTimeDays", "soon", "“soon” is not a whole number.")]
    [InlineData("width", "\"a\nb\"", "“a b” holds a line break")]
    public void A_cell_that_is_wrong_is_named_with_what_is_allowed(string column, string cell, string sentence)
    {
        var file = Read($"{Header},{column}\n{Good},\n{Good.Replace("A1", "A2", StringComparison.Ordinal)},{cell}\n");

        var problem = Assert.Single(file.Problems);
        Assert.Equal((3, column), (problem.Line, problem.Column));
        Assert.Contains(sentence, problem.Sentence, StringComparison.Ordinal);
        Assert.Equal((1, 1), (file.Rows.Count, file.BadRows));
    }

    [Theory]
    [InlineData(",Aldergate,Wren,pointe,eu,38", "sku", "The cell is empty.")]
    [InlineData("A2,Aldergate,Wren,pointe,eu,", "size", "The cell is empty.")]
    [InlineData("A2,Aldergate,Robin,clog,eu,38", "kind", "“clog” is not known here. Allowed: pointe, jazz.")]
    [InlineData("A2,Aldergate,Wren,pointe,fr,38", "sizeSystem", "“fr” is not a size system. Allowed: eu, uk-adult,")]
    [InlineData("A2,Aldergate,Wren,pointe,eu,58", "size", "There is no size 58 in eu: it runs from 16 to 50.")]
    [InlineData("A2,Aldergate,Wren,pointe,eu,38½", "size", "“38½” is not a number.")]
    [InlineData("A1,Aldergate,Wren,pointe,eu,39", "sku", "The code “A1” is already on line 2.")]
    [InlineData("a1,Aldergate,Wren,pointe,eu,39", "sku", "The code “a1” is “A1” of line 2 but for its capitals.")]
    [InlineData("A2,Aldergate,Wren,jazz,eu,39", "kind", "Aldergate Wren is “pointe” on line 2 and “jazz” here.")]
    [InlineData("A2,Aldergate,Wren,pointe", null, "The line has 4 cells, the first line has 6.")]
    [InlineData("A2,Alder, gate,Wren,pointe,eu,38", null, "The line has 7 cells, the first line has 6.")]
    [InlineData("A2,\"Alder\"gate,Wren,pointe,eu,38", null, "Text follows a closing double quote.")]
    [InlineData("A2,Alder\"gate,Wren,pointe,eu,38", null, "A double quote stands in the middle of a cell.")]
    public void A_row_that_is_wrong_is_named(string row, string? column, string sentence)
    {
        var problem = Assert.Single(Read($"{Header}\n{Good}\n{row}\n").Problems);

        Assert.Equal((3, column), (problem.Line, problem.Column));
        Assert.Contains(sentence, problem.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_price_needs_its_currency()
    {
        var problem = Assert.Single(Read($"{Header},priceMinor,currency\n{Good},8950,\n").Problems);

        Assert.Equal((2, "currency", "A price needs its currency: write EUR."), (problem.Line, problem.Column, problem.Sentence));
    }

    [Fact]
    public void A_barcode_stands_once_in_a_file()
    {
        var problem = Assert.Single(Read($"{Header},gtin\n{Good},6291041500213\nA2,Aldergate,Wren,pointe,eu,39,6291041500213\n").Problems);

        Assert.Equal((3, "gtin"), (problem.Line, problem.Column));
    }

    [Fact]
    public void Lines_are_counted_as_an_editor_counts_them()
    {
        var file = Read($"{Header},width\r\n{Good},\"one\r\ntwo\"\r\n\r\nA2,Aldergate,Wren,pointe,eu,99,\r\n");

        Assert.Equal([2, 5], file.Problems.Select(problem => problem.Line));
    }

    [Fact]
    public void A_quote_that_never_closes_loses_the_file_and_says_where()
    {
        var file = Read($"{Header}\n{Good}\n\"A2,Aldergate,Wren,pointe,eu,38\nA3,Aldergate,Wren,pointe,eu,38\n");

        Assert.False(file.IsTable);
        Assert.Empty(file.Rows);
        Assert.Equal(3, Assert.Single(file.Problems).Line);
    }

    [Fact]
    public void Bytes_that_are_not_UTF8_are_refused_with_their_line()
    {
        byte[] bytes = [.. Encoding.UTF8.GetBytes($"{Header}\n{Good}\nA2,Alderg"), 0xE4, .. Encoding.UTF8.GetBytes("te,Wren,pointe,eu,38\n")];

        var file = CatalogueFileReader.Read(bytes, Rules);

        Assert.False(file.IsTable);
        Assert.Equal(3, Assert.Single(file.Problems).Line);
    }

    [Theory]
    [InlineData("utf-16", true)]
    [InlineData("utf-16", false)]
    [InlineData("utf-16BE", true)]
    [InlineData("utf-16BE", false)]
    public void UTF16_is_refused_by_its_name(string encoding, bool marked)
    {
        var utf16 = Encoding.GetEncoding(encoding);

        var file = CatalogueFileReader.Read([.. marked ? utf16.Preamble : default, .. utf16.GetBytes($"{Header}\n{Good}")], Rules);

        Assert.Contains("UTF-16", Assert.Single(file.Problems).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_past_the_limit_is_refused_with_the_limit()
    {
        await using var stream = new MemoryStream(new byte[CatalogueFileReader.MostBytes + 1]);

        var file = await CatalogueFileReader.ReadAsync(stream, Rules, TestContext.Current.CancellationToken);

        Assert.Contains("larger than 32 MB", Assert.Single(file.Problems).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_many_problems_the_first_are_kept_and_all_are_counted()
    {
        var rows = string.Concat(Enumerable.Range(0, 1_000).Select(row => string.Create(CultureInfo.InvariantCulture, $"A{row},Aldergate,Wren,pointe,eu,99\n")));

        var file = Read($"{Header}\n{rows}");

        Assert.Equal((CatalogueFile.ProblemsShown, 1_000, 1_000), (file.Problems.Count, file.ProblemCount, file.BadRows));
    }

    [Fact]
    public void Every_sentence_stands_in_the_resources() =>
        Assert.All(Enum.GetValues<CatalogueWord>(), word => Assert.NotEmpty(CatalogueWords.Pattern(word)));

    private static CatalogueFile Read(string text) => CatalogueFileReader.Read(Encoding.UTF8.GetBytes(text), Rules);
}
