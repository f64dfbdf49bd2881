using System.Globalization;
using ShopFit.Fitting.Feet;

namespace ShopFit.Sheets.TakeHome;

/// <summary>An ordinary sheet of the invented shop; tests change what they are about.</summary>
internal static class Sample
{
    public static TakeHomeSheet Sheet(PaperSize paper = PaperSize.A4) => new()
    {
        Paper = paper,
        Date = new DateOnly(2026, 11, 25),
        Fitter = "Wren Hallowick",
        Dancer = new SheetDancer { FirstName = "Tilly", FullName = "Tilly Fernsby-Quoin", Teacher = "Orla Penhale", Studio = "Larch" },
        Shop = new SheetShop { Name = "Osselby Lane", Address = "4 Osselby Lane, Marrowby", Contact = "01632 960 118" },
        Pair = new SheetPair
        {
            Maker = "Dunnock & Vale Makers",
            Model = "Quillmere",
            Size = "37 two-bar",
            Shank = "firm shank",
            Construction = BoxConstruction.Paste,
            Inside = new SheetShoe { Length = 239.5, BoxBreadth = 78, BallGirth = 209, HeelBreadth = 61, ToeSlope = 18 },
        },
        Left = new SheetFoot { Length = 238.5, BallBreadth = 84.7, ToeBreadth = 76, HeelBreadth = 62, HeelToBall = 176, SecondToeLead = -2, ToeSlope = 22 },
        Right = new SheetFoot { Length = 237, BallBreadth = 85.7, ToeBreadth = 78, HeelBreadth = 62, HeelToBall = 175, SecondToeLead = 5, ToeSlope = 19 },
        Pads = [Pad(1, Side.Left, "joint-cushion"), Pad(2, Side.Right, "first-toe-lift")],
        Criteria =
        [
            Row("length", "Length", (0.5, 0.49, "about right, very sure"), (1.9, 0.59, "about 2 mm long, very sure")),
            Row("box", "Toes", (-0.4, 0.53, "about right, fairly sure"), (-1.6, 0.42, "about right, fairly sure")),
            Row("ball", "Joints", (-2.1, 0.56, "about right, fairly sure"), (-5.4, 0.38, "about right, fairly sure")),
            Row("taper", "Outer toes", (-3.9, 0.6, "about right, fairly sure"), (1, 0.47, "about right, fairly sure")),
            Row("heel", "Heel", (-1.4, 0.55, "about right, fairly sure"), (1.8, 0.73, "about 2 mm loose, fairly sure")),
        ],
        Because = "We chose them because the box follows her longer right second toe.",
        PairsTried = 3,
        ReturnUntil = new DateOnly(2026, 12, 9),
        LookOn = new DateOnly(2026, 12, 16),
        MeasureAgainOn = new DateOnly(2027, 2, 25),
    };

    public static TakeHomeSheet First(TakeHomeSheet sheet) => sheet with { Dancer = sheet.Dancer with { FirstPair = true }, TeacherLookBy = new DateOnly(2026, 12, 5) };

    public static TakeHomeSheet Soft(PaperSize paper = PaperSize.A4)
    {
        var sheet = Sheet(paper);
        return sheet with
        {
            Pair = sheet.Pair with { Kind = "soft", Construction = BoxConstruction.None, Inside = null, Shank = null },
            Sewing = SheetSewing.Nothing,
            Criteria = [.. sheet.Criteria.Where(row => row.Id is "length" or "ball" or "heel")],
            Because = "We chose them because they follow the foot.",
        };
    }

    /// <summary>Every kind of sheet that a shop hands over, by name.</summary>
    public static Dictionary<string, TakeHomeSheet> Variants()
    {
        var variants = new Dictionary<string, TakeHomeSheet>(StringComparer.Ordinal);
        foreach (var paper in new[] { PaperSize.A4, PaperSize.Letter })
        {
            foreach (var (count, pads) in PadSets())
            {
                var sheet = Sheet(paper) with { Pads = pads };
                var moulded = sheet with { Pair = sheet.Pair with { Construction = BoxConstruction.Moulded } };
                variants.Add($"{paper}, paste, {count}", sheet);
                variants.Add($"{paper}, paste, {count}, first pair", First(sheet));
                variants.Add($"{paper}, moulded, {count}, grown", moulded with { MeasureAgainOn = null });
                variants.Add($"{paper}, moulded, {count}, first pair, inches", First(moulded) with { Units = ShownUnit.Inches });
                variants.Add($"{paper}, paste, {count}, six rows, sewn by us", sheet with { Criteria = [.. sheet.Criteria.Take(5), Row("crown", "Height of the box", (0, 0.5, "about right, fairly sure"), (1, 0.6, "about right, fairly sure"))], Sewing = SheetSewing.ByShop });
            }

            var plain = Sheet(paper);
            variants.Add($"{paper}, demi-pointe", plain with { Pair = plain.Pair with { Kind = "demi-pointe", Shank = null } });
            variants.Add($"{paper}, soft", Soft(paper));
            variants.Add($"{paper}, overruled", plain with { FitterDecided = "She feels safer in the firmer one.", SmallerSize = new("36 two-bar", "37 two-bar") });
            variants.Add($"{paper}, nobody to ask", plain with { Dancer = plain.Dancer with { Teacher = null, Studio = null }, ReturnUntil = null, LookOn = null, MeasureAgainOn = null });
        }

        return variants;
    }

    private static (string, IReadOnlyList<SheetPad>)[] PadSets() => [("no pads", []), ("two pads", Sheet().Pads), ("two pads a foot", TwoAFoot())];

    /// <summary>What a sheet must say, from its record alone.</summary>
    public static IEnumerable<string> Facts(TakeHomeSheet sheet)
    {
        string?[] facts =
        [
            sheet.Dancer.FirstName, sheet.Dancer.FullName, sheet.Dancer.Teacher, sheet.Dancer.Studio, sheet.Fitter,
            sheet.Shop.Name, sheet.Shop.Address, sheet.Shop.Contact,
            sheet.Pair.Maker, sheet.Pair.Model, sheet.Pair.Size, sheet.Pair.Shank,
            sheet.Because, sheet.FitterDecided, sheet.SmallerSize?.Asked, sheet.SmallerSize?.Advised,
            sheet.PairsTried.ToString(CultureInfo.InvariantCulture),
            Day(sheet.Date) + sheet.Date.Year.ToString(CultureInfo.InvariantCulture), Day(sheet.ReturnUntil), Day(sheet.LookOn), Day(sheet.MeasureAgainOn), sheet.Dancer.FirstPair ? Day(sheet.TeacherLookBy) : null,
            sheet.Units == ShownUnit.Inches ? "9.39 in" : "238.5 mm", "dancer’s left", "dancer’s right", "Take the shoes off.", "This cannot choose a pointe shoe.",
            .. sheet.Pads.SelectMany(pad => new[] { pad.Number.ToString(CultureInfo.InvariantCulture), pad.Name, pad.Where }),
            .. sheet.Criteria.SelectMany(row => new[] { row.Name, row.Left?.Sentence, row.Right?.Sentence }),
        ];
        return facts.OfType<string>();
    }

    private static string? Day(DateOnly? day) => day?.ToString("d MMMM", CultureInfo.InvariantCulture);

    public static IReadOnlyList<SheetPad> TwoAFoot() =>
        [Pad(1, Side.Left, "joint-cushion"), Pad(2, Side.Left, "first-toe-lift"), Pad(3, Side.Right, "second-toe-hollow"), Pad(4, Side.Right, "heel-cushion")];

    public static SheetPad Pad(int number, Side foot, string id) => id switch
    {
        "joint-cushion" => Pad(number, foot, id, "joint cushion", "both sides of the joints"),
        "first-toe-lift" => Pad(number, foot, id, "first-toe lift", "under the tip of the big toe"),
        "second-toe-hollow" => Pad(number, foot, id, "cushion with a hollow", "under the tips of the toes"),
        "toe-cap" => Pad(number, foot, id, "soft cap", "over all toes"),
        "heel-cushion" => Pad(number, foot, id, "heel cushion", "at the back of the heel"),
        "toe-cushion" => Pad(number, foot, id, "toe cushion", "at the sides of the toes"),
        "loose-wool" => Pad(number, foot, id, "loose wool", "thin, over the tips of the toes"),
        "toe-spacer" => Pad(number, foot, id, "toe spacer", "between the first two toes"),
        _ => Pad(number, foot, id, id, "where the fitter showed you"),
    };

    public static SheetCriterion Row(string id, string name, (double Ease, double OnStrip, string Sentence) left, (double Ease, double OnStrip, string Sentence) right) =>
        new() { Id = id, Name = name, Left = Ease(left), Right = Ease(right) };

    private static SheetEase Ease((double Ease, double OnStrip, string Sentence) at) => new()
    {
        Ease = at.Ease,
        Low = at.Ease - 1.6,
        High = at.Ease + 1.6,
        OnStrip = at.OnStrip,
        LowOnStrip = at.OnStrip - 0.1,
        HighOnStrip = at.OnStrip + 0.1,
        Sentence = at.Sentence,
    };

    private static SheetPad Pad(int number, Side foot, string id, string name, string where) =>
        new() { Number = number, Foot = foot, Id = id, Name = name, Where = where };
}
