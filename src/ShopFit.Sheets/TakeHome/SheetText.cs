using ShopFit.Fitting.Feet;
using ShopFit.Sheets.Pdf;
using ShopFit.Sheets.Words;

namespace ShopFit.Sheets.TakeHome;

/// <summary>All that a sheet says, put into words: which blocks there are follows from the kind of shoe, its construction, the pads and whether it is a first pair.</summary>
internal sealed class SheetText(TakeHomeSheet sheet, SheetWords words)
{
    private const double MillimetresAnInch = 25.4;
    private readonly bool _pointe = sheet.Pair.Kind == "pointe";

    public SheetWords Words => words;

    public string Title => words.Filled("Title", sheet.Dancer.FirstName);

    public string DocumentTitle => words.Filled("DocumentTitle", Title, sheet.Pair.Model, sheet.Pair.Size);

    public string WhoseAndWhen => $"{sheet.Dancer.FullName} · {words.FullDay(sheet.Date)}";

    public string FittedBy => words.Filled("FittedBy", sheet.Fitter);

    public string Pair => $"{sheet.Pair.Model} {sheet.Pair.Size}";

    public string Maker => string.IsNullOrWhiteSpace(sheet.Pair.Shank) ? sheet.Pair.Maker : $"{sheet.Pair.Maker} · {sheet.Pair.Shank}";

    /// <summary>What to do before anything else with a first pair; null for another.</summary>
    public string? FirstPair =>
        !_pointe || !sheet.Dancer.FirstPair ? null
        : sheet.TeacherLookBy is { } day ? words.Filled("FirstPairBy", words.Day(day, sheet.Date))
        : words["FirstPair"];

    public string Because => sheet.PairsTried switch
    {
        < 1 => sheet.Because.Trim(),
        1 => $"{sheet.Because.Trim()} {words["PairsTriedOne"]}",
        _ => $"{sheet.Because.Trim()} {words.Filled("PairsTried", sheet.PairsTried)}",
    };

    public string Stop => words[_pointe ? "StopPointe" : "StopOther"];

    public string Questions => (Blank(sheet.Dancer.Teacher), Blank(sheet.Dancer.Studio)) switch
    {
        (null, null) => words.Filled("Questions", Shop),
        ({ } teacher, null) => words.Filled("QuestionsTeacher", Shop, teacher),
        (null, { } studio) => words.Filled("QuestionsStudio", Shop, studio),
        ({ } teacher, { } studio) => words.Filled("QuestionsTeacherAt", Shop, teacher, studio),
    };

    public string? ReturnUntil => sheet.ReturnUntil is { } day ? words.Filled("ReturnUntil", words.Day(day, sheet.Date)) : null;

    /// <summary>What the fitter or the family decided otherwise than advised.</summary>
    public IEnumerable<string> Notes()
    {
        if (Blank(sheet.FitterDecided) is { } reason)
        {
            yield return words.Filled("FitterDecided", reason);
        }

        if (sheet.SmallerSize is { } smaller)
        {
            yield return words.Filled("SmallerSize", smaller.Asked, smaller.Advised);
        }
    }

    /// <summary>The sections under the drawing, in the order in which they are read.</summary>
    public IEnumerable<SheetSection> Sections()
    {
        if (sheet.Sewing != SheetSewing.Nothing)
        {
            yield return Sewing();
        }

        if (sheet.Pair.Construction != BoxConstruction.None)
        {
            yield return new("BreakingHeading") { Paragraphs = [.. BreakingIn()] };
        }

        yield return new("CareHeading") { Paragraphs = [(sheet.Pads.Count > 0 ? words["CarePads"] + " " : "") + words["CareAir"]] };
        yield return new("EndHeading")
        {
            Items =
            [
                (LabelledList.Bullet, words["EndDeadLead"], words[_pointe ? "EndDeadPointe" : sheet.Pair.Construction == BoxConstruction.None ? "EndDeadSoft" : "EndDeadBox"]),
                (LabelledList.Bullet, words["EndGrownLead"], words[sheet.Pair.Construction == BoxConstruction.None ? "EndGrownSoft" : "EndGrown"]),
            ],
            Paragraphs = [words["EndStop"]],
        };
        var back = ComeBack().ToList();
        if (back.Count > 0)
        {
            yield return new("BackHeading") { Items = back };
        }
    }

    /// <summary>Length of a foot as the family reads lengths: to half a millimetre, which is finer than any gauge is read.</summary>
    public string Length(double millimetres) => sheet.Units == ShownUnit.Inches
        ? words.Filled("LengthInches", (millimetres / MillimetresAnInch).ToString("0.00", words.Culture))
        : words.Filled("LengthMillimetres", (Math.Round(2 * millimetres) / 2).ToString("0.#", words.Culture));

    public string Bar => words[sheet.Units == ShownUnit.Inches ? "BarInches" : "Bar"];

    /// <summary>How long the bar beside the drawing is, mm on the foot.</summary>
    public double BarLength => sheet.Units == ShownUnit.Inches ? MillimetresAnInch / 2 : 10;

    /// <summary>The drawing of both soles in words.</summary>
    public string Soles() => string.Join(' ',
    [
        words.Filled(
            sheet.Pair.Inside is null || sheet.Pair.Construction == BoxConstruction.None ? "SolesOnly" : "SolesInShoe",
            words["DancersLeft"], Length(sheet.Left.Length), words["DancersRight"], Length(sheet.Right.Length)),
        .. sheet.Pads.Select(pad => words.Filled("SolesPad", pad.Number, words[pad.Foot == Side.Left ? "Left" : "Right"], pad.Name, pad.Where)),
    ]);

    /// <summary>A strip in words.</summary>
    public string Strip(SheetCriterion row) => (row.Left, row.Right) switch
    {
        ({ } left, { } right) when left.Sentence == right.Sentence => words.Filled("StripBoth", row.Name, left.Sentence),
        ({ } left, { } right) => words.Filled("StripEach", row.Name, left.Sentence, right.Sentence),
        ({ } left, null) => words.Filled("StripOne", row.Name, words["LeftFoot"], left.Sentence),
        (null, { } right) => words.Filled("StripOne", row.Name, words["RightFoot"], right.Sentence),
        _ => row.Name,
    };

    /// <summary>The words under the ends and the middle of a strip.</summary>
    public (string Low, string Middle, string High) Ends(string criterion) => criterion switch
    {
        "shank" => (words["EndSoft"], words["EndRight"], words["EndStiff"]),
        "vamp" => (words["EndShort"], words["EndRight"], words["EndLong"]),
        "toe-line" => (words["EndTight"], words["EndRight"], ""),
        _ => (words["EndTight"], words["EndRight"], words["EndLoose"]),
    };

    public string EndsInWords((string Low, string Middle, string High) ends) => ends.High.Length == 0
        ? words.Filled("StripTwoEnds", ends.Low, ends.Middle)
        : words.Filled("StripEnds", ends.Low, ends.Middle, ends.High);

    private static string? Blank(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();

    private string Shop => string.Join(", ", new[] { sheet.Shop.Name, sheet.Shop.Address, sheet.Shop.Contact }.Select(Blank).OfType<string>()) + ".";

    private SheetSection Sewing()
    {
        var atHome = sheet.Sewing == SheetSewing.AtHome;
        string?[] chosen =
        [
            atHome ? "Ribbon" : null,
            atHome && sheet.WithElastic ? "Elastic" : null,
            atHome ? "Drawstring" : null,
            "Knot",
        ];
        var steps = chosen.OfType<string>().Select((step, i) => (Letter: ((char)('A' + i)).ToString(), Step: step)).ToList();
        return new(atHome ? "SewingHeading" : "TyingHeading")
        {
            Lead = atHome ? null : words["SewnByShop"],
            Picture = steps.ToDictionary(step => step.Step, step => step.Letter),
            PictureInWords = words.Filled("SewingPicture", string.Join(' ', steps.Select(step => words.Filled($"Sewing{step.Step}At", step.Letter)))),
            Items = [.. steps.Select(step => (step.Letter, "", words[$"Sew{step.Step}"]))],
        };
    }

    private IEnumerable<string> BreakingIn()
    {
        yield return sheet.Pair.Construction == BoxConstruction.Moulded ? words["BreakingMoulded"]
            : words.Filled(FirstPair is null ? "BreakingPaste" : "BreakingPasteFirst", sheet.HomeMinutesADay);
        yield return words["BreakingNever"] + (_pointe ? " " + words["BreakingShank"] : "");
    }

    private IEnumerable<(string Label, string Lead, string Text)> ComeBack()
    {
        if (sheet.LookOn is { } look)
        {
            yield return (LabelledList.Bullet, words.Day(look, sheet.Date) + ":", words["BackLook"]);
        }

        if (sheet.MeasureAgainOn is { } measure)
        {
            yield return (LabelledList.Bullet, words.Day(measure, sheet.Date) + ":", words["BackMeasure"]);
        }
    }
}

/// <summary>One headed part of the sheet: an optional picture, a lead, a list, paragraphs, in this order.</summary>
/// <param name="Heading">Name of the words of its heading.</param>
internal sealed record SheetSection(string Heading)
{
    public string? Lead { get; init; }

    /// <summary>What the picture of the sewing points at, with the letter of each; null without a picture.</summary>
    public IReadOnlyDictionary<string, string>? Picture { get; init; }

    public string PictureInWords { get; init; } = "";

    public IReadOnlyList<(string Label, string Lead, string Text)> Items { get; init; } = [];

    public IReadOnlyList<string> Paragraphs { get; init; } = [];
}
