using System.Globalization;
using CsCheck;
using ShopFit.Fitting.Feet;
using ShopFit.Sheets.Support;

namespace ShopFit.Sheets.TakeHome;

public class SheetLawsTests
{
    private const int Sheets = 40;

    private static readonly string[] PadIds = ["joint-cushion", "first-toe-lift", "second-toe-hollow", "toe-cap", "heel-cushion", "toe-cushion", "loose-wool", "toe-spacer", "felt-wedge"];
    private static readonly string[] CriterionIds = ["length", "box", "ball", "heel", "crown", "taper", "vamp", "shank", "toe-line"];

    // Any letter of the world, without the marks that combine: strung together by chance they hang into the lines above and
    // below, as they would in any book. What becomes of names that need them is told in TakeHomeSheetPdfTests.
    private static readonly Gen<string> Word = Gen.String[
        Gen.OneOf(Gen.Char['a', 'z'], Gen.Char[(char)0x20, (char)0x52F], Gen.Char).Where(letter => CharUnicodeInfo.GetUnicodeCategory(letter) is not (UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark)),
        1,
        14];

    [Fact]
    public void Nothing_leaves_the_page_nor_lies_over_another_whatever_a_sheet_says() =>
        Any().Sample(
            sheet => Laws.Hold(DrawnSheet.Of(sheet)),
            iter: Sheets, threads: 2, print: sheet => System.Text.Json.JsonSerializer.Serialize(sheet));

    private static Gen<string> Words(int most) => Word.Array[1, most].Select(words => string.Join(' ', words));

    private static Gen<SheetFoot> Foot() =>
        Gen.Select(Gen.Double[120, 320], Gen.Double[0.2, 0.6], Gen.Double[-30, 30], Gen.Double[-10, 60]).Select((length, broad, lead, slope) => new SheetFoot
        {
            Length = length,
            BallBreadth = broad * length,
            SecondToeLead = lead,
            ToeSlope = slope,
        });

    private static Gen<SheetEase?> Ease() =>
        Gen.Select(Gen.Double[-0.5, 1.5], Gen.Double[0, 0.8], Words(12)).Select((at, wide, words) => new SheetEase
        {
            Ease = at,
            Low = at - wide,
            High = at + wide,
            OnStrip = at,
            LowOnStrip = at - wide,
            HighOnStrip = at + wide,
            Sentence = words,
        }).Null();

    private static Gen<IReadOnlyList<SheetCriterion>> Criteria() =>
        Gen.Select(Ease(), Ease(), Gen.OneOf(CriterionIds), Words(3)).Select((left, right, id, name) => new SheetCriterion { Id = id, Name = name, Left = left, Right = right, OpenAbove = id == "toe-line" })
            .Array[0, 9].Select(rows => (IReadOnlyList<SheetCriterion>)rows);

    private static Gen<IReadOnlyList<SheetPad>> Pads() =>
        Gen.Select(Gen.OneOf(PadIds), Gen.OneOf(Side.Left, Side.Right), Words(8)).Array[0, 4].Select(pads => (IReadOnlyList<SheetPad>)[.. pads.Select((pad, i) => Sample.Pad(i + 1, pad.Item2, pad.Item1) with { Where = pad.Item3 })]);

    private static Gen<TakeHomeSheet> Any() =>
        Gen.Select(Gen.Select(Foot(), Foot(), Criteria(), Pads()), Gen.Select(Words(30), Words(20), Words(10), Words(200)), Gen.Select(Gen.Bool, Gen.Bool, Gen.Bool, Gen.Int[0, 2]), Gen.Select(Gen.Double[0.9, 1.1], Gen.Double[120, 320]))
            .Select((shapes, words, choices, shoe) =>
            {
                var (left, right, criteria, pads) = shapes;
                var (name, model, shop, because) = words;
                var (letter, first, inches, construction) = choices;
                var sheet = Sample.Sheet(letter ? PaperSize.Letter : PaperSize.A4);
                sheet = sheet with
                {
                    Left = left,
                    Right = right,
                    Criteria = criteria,
                    Pads = pads,
                    Because = because,
                    Units = inches ? ShownUnit.Inches : ShownUnit.Millimetres,
                    Dancer = sheet.Dancer with { FirstName = name, FullName = name, Teacher = shop },
                    Shop = new SheetShop { Name = shop, Address = model, Contact = name },
                    Pair = sheet.Pair with
                    {
                        Model = model,
                        Maker = shop,
                        Size = name,
                        Construction = (BoxConstruction)construction,
                        Inside = new SheetShoe { Length = shoe.Item1 * left.Length, BoxBreadth = 0.33 * shoe.Item2, BallGirth = 0.85 * shoe.Item2, HeelBreadth = 0.25 * shoe.Item2, ToeSlope = 0.08 * shoe.Item2 },
                    },
                };
                return first ? Sample.First(sheet) : sheet;
            });
}
