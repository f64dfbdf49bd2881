using System.Text.Json;
using ShopFit.Fitting.Feet;
using ShopFit.Sheets.Support;

namespace ShopFit.Sheets.TakeHome;

/// <summary>What is on the paper.</summary>
/// <remarks>
/// To look at every kind of sheet:
/// <c>SHEETS_OUT=/tmp/sheets dotnet run --project tests/ShopFit.Sheets.Tests -- -method "*Every_fact*"</c> writes the PDFs that it judges.
/// </remarks>
public class TakeHomeSheetPdfTests
{
    public static TheoryData<string> Everything => [.. Sample.Variants().Keys];

    [Theory]
    [MemberData(nameof(Everything))]
    public void Every_fact_is_on_one_page_inside_its_margins_and_can_be_read(string variant)
    {
        var sheet = Sample.Variants()[variant];

        var drawn = DrawnSheet.Of(sheet);
        if (Environment.GetEnvironmentVariable("SHEETS_OUT") is { Length: > 0 } folder)
        {
            File.WriteAllBytes(Path.Combine(Directory.CreateDirectory(folder).FullName, $"{variant}.pdf"), drawn.Bytes);
        }

        Assert.Single(drawn.Pages);
        Laws.Hold(drawn);
        Assert.All(Sample.Facts(sheet), drawn.Says);
    }

    [Fact]
    public void Paper_has_the_size_that_was_asked_for()
    {
        // ISO 216: A4 is 210 × 297 mm. ANSI/ASME Y14.1: size A is 8.5 × 11 in.
        var a4 = DrawnSheet.Of(Sample.Sheet()).Pages[0];
        var letter = DrawnSheet.Of(Sample.Sheet(PaperSize.Letter)).Pages[0];

        Assert.Equal((210, 297), (Math.Round(a4.Width * 25.4 / 72), Math.Round(a4.Height * 25.4 / 72)));
        Assert.Equal((8.5, 11), (letter.Width / 72, letter.Height / 72));
    }

    [Fact]
    public void A_pointe_sheet_says_when_to_stop_in_exactly_these_words()
    {
        var drawn = DrawnSheet.Of(Sample.Sheet());

        drawn.Says("Stop if toes go numb, white or blue, or if it hurts behind the ankle or in the middle of the foot. Take the shoes off. See a doctor or physiotherapist before dancing en pointe again.");
        drawn.Says("This cannot choose a pointe shoe.");
    }

    [Fact]
    public void A_first_pair_waits_for_the_teacher()
    {
        var first = Sample.First(Sample.Sheet());

        var drawn = DrawnSheet.Of(first);

        drawn.Says("do not wear or sew them until your teacher has seen them. Show them by 5 December, on a clean cloth. Do not rise in them yet.");
        drawn.Says("Rise only in class.");
        DrawnSheet.Of(Sample.Sheet()).DoesNotSay("Your first pointe shoes");
    }

    [Fact]
    public void A_moulded_box_needs_no_breaking_in()
    {
        var sheet = Sample.Sheet();

        var drawn = DrawnSheet.Of(sheet with { Pair = sheet.Pair with { Construction = BoxConstruction.Moulded } });

        drawn.Says("The box is moulded. It needs no breaking in.");
        drawn.DoesNotSay("paste and cloth");
        drawn.Says("No water, heat, hammer or door. Only your fitter or teacher bends or cuts the shank.");
    }

    [Fact]
    public void A_soft_shoe_is_not_told_of_boxes_ribbons_or_pointe_work()
    {
        var drawn = DrawnSheet.Of(Sample.Soft());

        drawn.Says("before dancing again.");
        Assert.All(["en pointe", "Sewing", "ribbon", "Breaking in", "shank", "platform", "hammer"], drawn.DoesNotSay);
    }

    [Fact]
    public void Elastic_and_knot_are_spoken_of_only_where_they_are_wanted()
    {
        var drawn = DrawnSheet.Of(Sample.Sheet() with { WithElastic = false });
        var sewn = DrawnSheet.Of(Sample.Sheet() with { Sewing = SheetSewing.ByShop });

        drawn.DoesNotSay("Elastic");
        drawn.Says("Never sew through the drawstring.");
        sewn.Says("We sew them for you.");
        sewn.Says("never on the tendon");
        sewn.DoesNotSay("drawstring");
    }

    [Fact]
    public void Without_pads_the_sheet_says_so_and_asks_for_none_to_be_taken_out()
    {
        var drawn = DrawnSheet.Of(Sample.Sheet() with { Pads = [] });

        drawn.Says("No pads: none are needed.");
        drawn.DoesNotSay("Pads out");
    }

    [Fact]
    public void Inches_are_shown_with_a_bar_in_inches()
    {
        var drawn = DrawnSheet.Of(Sample.Sheet() with { Units = ShownUnit.Inches });

        // 238.5 mm / 25.4 = 9.39 in.
        drawn.Says("9.39 in");
        drawn.Says("½ in");
        drawn.DoesNotSay("10 mm");
    }

    [Fact]
    public void A_reason_and_a_smaller_size_are_printed_as_they_were_said()
    {
        var drawn = DrawnSheet.Of(Sample.Sheet() with { FitterDecided = "She feels safer in it.", SmallerSize = new("36 one-bar", "37 two-bar") });

        drawn.Says("Your fitter’s reason: She feels safer in it.");
        drawn.Says("You asked for size 36 one-bar. Our advice was size 37 two-bar.");
    }

    [Fact]
    public void A_date_in_another_year_carries_its_year()
    {
        var drawn = DrawnSheet.Of(Sample.Sheet());

        drawn.Says("25 February 2027");
        drawn.DoesNotSay("16 December 2026");
    }

    [Fact]
    public void Dates_are_written_as_the_culture_writes_them()
    {
        DrawnSheet.Of(Sample.Sheet(PaperSize.Letter), "en-US").Says("November 25, 2026");
        DrawnSheet.Of(Sample.Sheet(), "en-GB").Says("25 November 2026");
    }

    [Theory]
    [InlineData(PaperSize.A4)]
    [InlineData(PaperSize.Letter)]
    public void A_name_of_200_characters_is_printed_whole(PaperSize paper)
    {
        var name = string.Concat(Enumerable.Repeat("Bartholomea-Wilhelmina ", 9))[..200];
        var sheet = Sample.Sheet(paper);
        sheet = sheet with { Dancer = sheet.Dancer with { FirstName = new string('W', 200), FullName = name } };

        var drawn = DrawnSheet.Of(sheet);

        Laws.Hold(drawn);
        Assert.All(Sample.Facts(sheet), drawn.Says);
    }

    [Fact]
    public void Long_names_of_models_and_makers_are_printed_whole()
    {
        var sheet = Sample.Sheet();
        sheet = sheet with
        {
            Pair = sheet.Pair with { Model = "Quillmere of the Long Meadow beyond the Second Mill", Size = "37 and a half, three-bar, square box, long vamp", Maker = "Dunnock, Vale, Vale and Daughters, Makers to the Province of Marrow" },
        };

        var drawn = DrawnSheet.Of(sheet);

        Laws.Hold(drawn);
        Assert.All(Sample.Facts(sheet), drawn.Says);
    }

    [Theory]
    [InlineData("Tilly 🩰", "Tilly □’s new shoes")]
    [InlineData("👩‍👩‍👧 Ana", "□ Ana’s new shoes")]
    [InlineData("Ana\u200F", "Ana□’s new shoes")]
    [InlineData("\u202Eanna", "□anna’s new shoes")]
    [InlineData("Zoe\u0308", "Zoë’s new shoes")]
    [InlineData("\u0301Ana \u0301", "□Ana □’s new shoes")]
    [InlineData("Łucja Đặng", "Łucja Đặng’s new shoes")]
    [InlineData("Ольга", "Ольга’s new shoes")]
    [InlineData("שרה", "□□□’s new shoes")]
    [InlineData("A\tB\nC", "A B C’s new shoes")]
    public void What_the_font_cannot_draw_is_seen_as_a_plain_mark(string name, string title)
    {
        var sheet = Sample.Sheet();

        var drawn = DrawnSheet.Of(sheet with { Dancer = sheet.Dancer with { FirstName = name } });

        drawn.Says(title);
        Laws.Hold(drawn);
    }

    [Fact]
    public void Half_a_surrogate_pair_is_a_plain_mark_too()
    {
        var sheet = Sample.Sheet();

        DrawnSheet.Of(sheet with { Dancer = sheet.Dancer with { FirstName = "An\uD83Da" } }).Says("An□a’s new shoes");
    }

    [Fact]
    public void A_text_too_long_for_a_page_runs_on_and_loses_no_word()
    {
        var words = Enumerable.Range(1, 900).Select(i => $"word{i}").ToList();
        var sheet = Sample.Sheet() with { Because = string.Join(' ', words) };

        var drawn = DrawnSheet.Of(sheet);

        Assert.True(drawn.Pages.Count > 1);
        Laws.Hold(drawn);
        Assert.All(words, drawn.Says);
        Assert.All(Sample.Facts(sheet with { Because = "" }), drawn.Says);
        drawn.Says("Sheet 2 of ");
    }

    [Fact]
    public void No_page_ends_with_a_heading()
    {
        // Lengths that move the end of the first page over every heading.
        for (var words = 400; words < 900; words += 20)
        {
            var drawn = DrawnSheet.Of(Sample.Sheet() with { Because = string.Join(' ', Enumerable.Repeat("because", words)) });

            // The line with the number of the page is the last two blocks of each.
            Assert.All(drawn.Pages, page => Assert.NotEqual("H2", page.Blocks[^3].Tag));
        }
    }

    [Fact]
    public void A_sheet_that_needs_two_pages_warns_on_the_first()
    {
        var drawn = DrawnSheet.Of(Sample.Sheet(PaperSize.Letter) with { FitterDecided = string.Join(' ', Enumerable.Repeat("because she asked", 60)) });

        Assert.Equal(2, drawn.Pages.Count);
        Assert.Contains("Takethe", drawn.Pages[0].Text, StringComparison.Ordinal);
        Laws.Hold(drawn);
    }

    [Fact]
    public void A_sheet_stored_as_json_is_drawn_alike()
    {
        var sheet = Sample.Variants().Values.First();

        var again = JsonSerializer.Deserialize<TakeHomeSheet>(JsonSerializer.Serialize(sheet))!;

        Assert.Equal(DrawnSheet.Of(sheet).Text, DrawnSheet.Of(again).Text);
    }

    [Fact]
    public void A_later_format_is_refused()
    {
        var refused = Assert.Throws<NotSupportedException>(() => DrawnSheet.Of(Sample.Sheet() with { FormatVersion = 2 }));

        Assert.Contains("format 2", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_criterion_may_be_known_of_one_foot_or_of_none()
    {
        var row = Sample.Sheet().Criteria[0];
        var sheet = Sample.Sheet() with { Criteria = [row with { Left = null }, row with { Id = "box", Name = "Toes", Right = null }, row with { Id = "heel", Name = "Heel", Left = null, Right = null }] };

        var drawn = DrawnSheet.Of(sheet);

        Laws.Hold(drawn);
        Assert.All(Sample.Facts(sheet), drawn.Says);
    }

    [Fact]
    public void A_pad_that_the_shop_added_is_told_in_words()
    {
        var sheet = Sample.Sheet() with { Pads = [Sample.Pad(1, Side.Left, "felt-wedge")] };

        var drawn = DrawnSheet.Of(sheet);

        drawn.Says("Left shoe: felt-wedge, where the fitter showed you");
    }

    [Fact]
    public void Many_sheets_are_drawn_at_once()
    {
        var variants = Sample.Variants().Values.ToList();
        var alone = variants.ConvertAll(sheet => DrawnSheet.Of(sheet).Text);

        var together = new string[variants.Count * 4];
        Parallel.For(0, together.Length, new ParallelOptions { MaxDegreeOfParallelism = 4, CancellationToken = TestContext.Current.CancellationToken }, i =>
            together[i] = DrawnSheet.Of(variants[i % variants.Count]).Text);

        Assert.Equal(Enumerable.Range(0, together.Length).Select(i => alone[i % variants.Count]), together);
    }
}
