using ShopFit.Fitting.Feet;
using ShopFit.Sheets.Pdf;

namespace ShopFit.Sheets.TakeHome;

/// <summary>Which block stands where on which page, in reading order. The first page holds everything if it can; what is too long runs on.</summary>
internal sealed class SheetPlan
{
    // Points.
    private const double HeadingGap = 2.5;
    private const double ColumnGap = 15;
    private const double LeastSolesColumn = 152;
    private const double FitGap = 16;
    private const double TitleSize = 25;
    private const double LeastTitleSize = 14;
    private const double PairSize = 15;
    private const double HeadingSize = 13;

    /// <summary>From roomy to tight; the first that holds everything on one page is taken.</summary>
    private static readonly Spacing[] Spacings = [.. new[] { 244.0, 226, 208, 190, 176 }.Select(high => new Spacing(high, 8, 11, 3, 172)), .. new[] { 176.0, 162, 148 }.Select(high => new Spacing(high, 5, 7, 1.5, 130))];

    private readonly TakeHomeSheet _sheet;
    private readonly SheetText _text;
    private readonly Typesetter _type;
    private readonly PaperShape _paper;
    private readonly List<List<PlacedBlock>> _pages = [];

    private SheetPlan(TakeHomeSheet sheet, SheetText text, Typesetter type, PaperShape paper)
    {
        _sheet = sheet;
        _text = text;
        _type = type;
        _paper = paper;
    }

    public static IReadOnlyList<IReadOnlyList<PlacedBlock>> Of(TakeHomeSheet sheet, SheetText text, Typesetter type, PaperShape paper)
    {
        var plan = new SheetPlan(sheet, text, type, paper);
        if (!plan.PlaceOnOnePage() && !plan.PlaceOnTwo())
        {
            plan.PlaceOnSeveral();
        }

        plan.NumberPages();
        return plan._pages;
    }

    private Stack Header()
    {
        var size = Largest(_text.Title, TitleSize, LeastTitleSize, _paper.InnerWidth * 0.56, lines: 1);
        if (_type.Break([_text.WhoseAndWhen], Paragraph.ReadingSize, _paper.InnerWidth * 0.56).Count > 1 || size <= LeastTitleSize)
        {
            // Long names take the whole width.
            return Stack.Of(4,
                Paragraph.Heading(_text.Title, 1, Largest(_text.Title, TitleSize, LeastTitleSize, _paper.InnerWidth, lines: 1)),
                new Paragraph(_text.WhoseAndWhen),
                new Paragraph([new TextRun(_text.Pair, Bold: true), _text.Maker]),
                new Paragraph(_text.FittedBy),
                new Rule(1.5));
        }

        // A j in the largest type reaches far down, and a capital with two accents far up.
        var left = Stack.Of(3, Paragraph.Heading(_text.Title, 1, size), new Paragraph(_text.WhoseAndWhen));
        var right = Stack.Of(1,
            new Paragraph(_text.Pair, bold: true, Largest(_text.Pair, PairSize, Paragraph.ReadingSize, _paper.InnerWidth * 0.4, lines: 1), TextAlign.Right),
            new Paragraph(_text.Maker, align: TextAlign.Right),
            new Paragraph(_text.FittedBy, align: TextAlign.Right));
        return Stack.Of(6, new Columns([(left, 0.58), (right, 0.42)], ColumnGap), new Rule(1.5));
    }

    private FramedBlock? FirstPair() => _text.FirstPair is { } first
        ? new FramedBlock(new Paragraph([new TextRun(_text.Words["FirstPairHeading"], Bold: true), first]), 1.2)
        : null;

    private Stack Strips(Spacing spacing)
    {
        var blocks = new List<(Block, double)> { (Paragraph.Heading(_text.Words["FitHeading"], 2, HeadingSize), 0) };
        // Strips that share the words at their ends stand together over those words.
        foreach (var group in _sheet.Criteria.GroupBy(row => _text.Ends(row.Id)))
        {
            blocks.AddRange(group.Select(row => ((Block)new StripRow(_text, row), spacing.Rows)));
            blocks.Add((new StripEnds(group.Key, _text.EndsInWords(group.Key)), 1));
        }

        return new Stack(blocks);
    }

    private IEnumerable<Block> Words() => [new Paragraph(_text.Because), .. _text.Notes().Select(note => new Paragraph(note))];

    private Block Pads(Side? foot = null)
    {
        var items = _sheet.Pads.Where(pad => foot is null || pad.Foot == foot).Select(PadItem).ToList();
        return items.Count == 0 ? new Paragraph(_text.Words["NoPads"]) : new LabelledList(items, 3);
    }

    private (string, IReadOnlyList<TextRun>) PadItem(SheetPad pad) =>
        (pad.Number.ToString(System.Globalization.CultureInfo.InvariantCulture),
        [
            new TextRun(_text.Words[pad.Foot == Side.Left ? "PadLeft" : "PadRight"], Bold: true),
            _text.Words.Filled("PadWhere", pad.Name, pad.Where),
        ]);

    /// <summary>The drawing and the strips, with the pads and the words wherever they take least height.</summary>
    private Stack Fit(Spacing spacing)
    {
        var soles = new SolesDrawing(_sheet, _text, spacing.SolesHeight);
        return new[] { (true, true), (true, false), (false, true), (false, false) }
            .Select(choice => Fit(soles, Strips(spacing), padsUnderSoles: choice.Item1, wordsUnderStrips: choice.Item2))
            .MinBy(fit => fit.Height(_type, _paper.InnerWidth))!;
    }

    private Stack Fit(SolesDrawing soles, Stack strips, bool padsUnderSoles, bool wordsUnderStrips)
    {
        var solesWidth = Math.Max(LeastSolesColumn, soles.FittingWidth);
        var words = Stack.Of(5, Words());
        var left = Stack.Of(6, soles, padsUnderSoles ? Pads() : null);
        var right = wordsUnderStrips ? new Stack([(strips, 0), (words, 7)]) : strips;
        var below = new List<(Block, double)> { (new Columns([(left, solesWidth), (right, _paper.InnerWidth - FitGap - solesWidth)], FitGap), 0) };
        if (!padsUnderSoles)
        {
            below.Add((PadsAcross(), 7));
        }

        if (!wordsUnderStrips)
        {
            below.Add((words, 7));
        }

        return new Stack(below);
    }

    private Block PadsAcross() =>
        _sheet.Pads.Select(pad => pad.Foot).Distinct().Count() == 2 ? new Columns([(Pads(Side.Left), 1), (Pads(Side.Right), 1)], ColumnGap) : Pads();

    private List<Block> Sections(Spacing spacing) => [.. _text.Sections().Select(section => Section(section, spacing))];

    private Stack Section(SheetSection section, Spacing spacing)
    {
        var blocks = new List<(Block, double)> { (Paragraph.Heading(_text.Words[section.Heading], 2, HeadingSize), 0) };
        if (section.Lead is { } lead)
        {
            blocks.Add((new Paragraph(lead), HeadingGap));
        }

        if (section.Picture is { } letters)
        {
            blocks.Add((new SewingDrawing(letters, section.PictureInWords, spacing.PictureWidth), HeadingGap));
        }

        if (section.Items.Count > 0)
        {
            blocks.Add((new LabelledList([.. section.Items.Select(item => (item.Label, Runs(item.Lead, item.Text)))]), section.Picture is null ? HeadingGap : 5));
        }

        blocks.AddRange(section.Paragraphs.Select((text, i) => ((Block)new Paragraph(text), i == 0 ? HeadingGap : 4)));
        return new Stack(blocks);
    }

    private static IReadOnlyList<TextRun> Runs(string lead, string text) => lead.Length == 0 ? [text] : [new TextRun(lead, Bold: true), text];

    private FramedBlock Stop() => new FramedBlock(new Paragraph(_text.Stop), 2.2, _text.Words["StopHeading"]);

    private Stack Footer() => Stack.Of(1, new Paragraph(_text.Questions), LastLine(_text.ReturnUntil ?? "", _text.Words["CannotChoose"]));

    private bool PlaceOnOnePage()
    {
        foreach (var spacing in Spacings)
        {
            var top = Stack.Of(spacing.Blocks, Header(), FirstPair(), Fit(spacing), new Rule(0.75, 0.55));
            var columns = Balanced(spacing);
            if (High(top) + High(columns) + High(Bottom()) + 2 * spacing.Blocks <= _paper.InnerHeight)
            {
                _pages.Add([At(top, PaperShape.Top), At(columns, PaperShape.Top + High(top) + spacing.Blocks), At(Bottom(), _paper.End - High(Bottom()))]);
                return true;
            }
        }

        return false;
    }

    /// <summary>The fit and the warning on the first page, what to do at home on the second.</summary>
    private bool PlaceOnTwo()
    {
        var roomy = Spacings[0];
        foreach (var spacing in Spacings)
        {
            var top = Stack.Of(roomy.Blocks, Header(), FirstPair(), Fit(spacing));
            var columns = Balanced(roomy);
            var line = High(PageLine(1, 2));
            if (High(top) + High(Stop()) + line + 2 * roomy.Blocks <= _paper.InnerHeight && High(columns) + High(Footer()) + line + 2 * roomy.Blocks <= _paper.InnerHeight)
            {
                _pages.Add([At(top, PaperShape.Top), At(Stop(), _paper.End - line - roomy.Blocks - High(Stop()))]);
                _pages.Add([At(columns, PaperShape.Top), At(Footer(), PaperShape.Top + High(columns) + 2 * roomy.Sections)]);
                return true;
            }
        }

        return false;
    }

    private double High(Block block) => block.Height(_type, _paper.InnerWidth);

    private PlacedBlock At(Block block, double y) => new(block, PaperShape.Side, y, _paper.InnerWidth);

    private Stack Bottom() => Stack.Of(6, Stop(), Footer());

    // The warning comes first when there is more than a page to read.
    private void PlaceOnSeveral()
    {
        Block? left = Stack.Of(Spacings[0].Sections,
        [
            Header(), Stop(), FirstPair(), new SolesDrawing(_sheet, _text, Spacings[^1].SolesHeight), Pads(), Strips(Spacings[0]), .. Words(), .. Sections(Spacings[0]), Footer(),
        ]);
        var room = _paper.InnerHeight - PageLine(1, 1).Height(_type, _paper.InnerWidth) - 6;
        while (left is not null)
        {
            var (fits, next) = left.Split(_type, _paper.InnerWidth, room);
            // A block that no page can hold would be lost: none of ours is higher than half a page, texts break between lines.
            var drawn = fits ?? throw new InvalidOperationException("A part of the sheet is higher than a page.");
            _pages.Add([new(drawn, PaperShape.Side, PaperShape.Top, _paper.InnerWidth)]);
            left = next;
        }
    }

    private void NumberPages()
    {
        if (_pages.Count == 1)
        {
            return;
        }

        for (var page = 0; page < _pages.Count; page++)
        {
            var line = PageLine(page + 1, _pages.Count);
            _pages[page].Add(new(line, PaperShape.Side, _paper.End - line.Height(_type, _paper.InnerWidth), _paper.InnerWidth));
        }
    }

    private Columns LastLine(string left, string right)
    {
        var rightWidth = _type.Width(right, Paragraph.ReadingSize, bold: false) + 1;
        return new([(new Paragraph(left), _paper.InnerWidth - ColumnGap - rightWidth), (new Paragraph(right, align: TextAlign.Right), rightWidth)], ColumnGap);
    }

    private Columns PageLine(int page, int of) => LastLine(_text.Words["CannotChoose"], _text.Words.Filled("PageOf", page, of));

    /// <summary>Sections in reading order over three columns, broken where the highest column is lowest.</summary>
    private Columns Balanced(Spacing spacing)
    {
        var sections = Sections(spacing);
        var width = (_paper.InnerWidth - 2 * ColumnGap) / 3;
        var best = Breaks(sections.Count).MinBy(breaks => Parts(sections, breaks, spacing).Max(part => part.Height(_type, width)))!;
        return new Columns([.. Parts(sections, best, spacing).Select(part => ((Block)part, 1.0))], ColumnGap);
    }

    private static IEnumerable<int[]> Breaks(int sections) =>
        from first in Enumerable.Range(0, sections + 1)
        from second in Enumerable.Range(first, sections + 1 - first)
        select new[] { first, second };

    private static IEnumerable<Stack> Parts(List<Block> sections, int[] breaks, Spacing spacing)
    {
        int[] edges = [0, .. breaks, sections.Count];
        return edges.Zip(edges.Skip(1), (from, to) => Stack.Of(spacing.Sections, sections.Skip(from).Take(to - from)));
    }

    /// <summary>The largest size, down to the least, at which a text stays within so many lines.</summary>
    private double Largest(string text, double from, double least, double width, int lines)
    {
        for (var size = from; size > least; size--)
        {
            if (_type.Break([new TextRun(text, Bold: true)], size, width).Count <= lines)
            {
                return size;
            }
        }

        return least;
    }
}

/// <summary>A block and where it is drawn, in points from the top left of its page.</summary>
internal sealed record PlacedBlock(Block Block, double X, double Y, double Width);

/// <summary>How roomy a page is laid out, in points.</summary>
/// <param name="SolesHeight">How high the soles are drawn.</param>
/// <param name="Blocks">Between the parts of the page.</param>
/// <param name="Sections">Between two sections of a column.</param>
/// <param name="Rows">Between two strips.</param>
/// <param name="PictureWidth">The widest that the picture of the sewing is drawn.</param>
internal sealed record Spacing(double SolesHeight, double Blocks, double Sections, double Rows, double PictureWidth);
