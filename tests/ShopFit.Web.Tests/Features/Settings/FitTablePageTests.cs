using AngleSharp.Dom;
using Bunit;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Web.Shared;

namespace ShopFit.Web.Features.Settings;

public sealed class FitTablePageTests : ManagerPageTest
{
    private const string LengthWeight = "bands.pointe.length.weight";

    [Fact]
    public void Every_table_has_a_page_with_words_for_all_of_it()
    {
        foreach (var table in FitTable.All)
        {
            var page = Open(table.Group);

            Assert.Equal(table.Numbers.Count(), page.FindAll("tbody input, tbody select").Count);
            Assert.All(page.FindAll("tbody th, thead th"), head => Assert.DoesNotMatch("^[a-z]+(-[a-z]+)+$", head.TextContent.Trim()));
            Assert.DoesNotContain(table.Group, page.Find("h1").TextContent, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_number_is_saved_with_its_reason_and_marked_by_a_word()
    {
        var page = Open("bands.pointe");
        Number(page, "Length, weight").Input("4,5");
        Field(page, "Why").Change("toes matter more here");

        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Contains("Saved.", page.Markup, StringComparison.Ordinal));
        Assert.Equal(4.5, (await SeeAsync()).Own[LengthWeight]);
        Assert.Equal("changed", page.Find("td .word").TextContent.Trim());
        Assert.Contains("4.5 in place of 3.", page.Find(".own").TextContent, StringComparison.Ordinal);
        var row = page.Find("section[aria-labelledby=history] tbody tr").Children.Select(cell => cell.TextContent.Trim()).ToList();
        Assert.Equal(["Ines", "Pointe shoes: Length, weight", "the default, 3", "4.5", "toes matter more here"], row[1..]);
    }

    [Fact]
    public async Task What_makes_no_sense_is_named_stays_typed_and_is_not_saved()
    {
        var page = Open("bands.pointe");
        Number(page, "Length, weight").Input("heavy");
        Field(page, "Why").Change("a try");
        page.Find("form").Submit();
        page.WaitForAssertion(() => Assert.Equal("Length, weight: “heavy” is not a number. Type 0 to 20.", page.Find("ul.problem li").TextContent));

        Number(page, "Length, weight").Input("99");
        Number(page, "Toes, ideal from").Input("9");
        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Contains("Length, weight: 0 to 20 is allowed.", page.Markup, StringComparison.Ordinal));
        Assert.Equal("99", Number(page, "Length, weight").GetAttribute("value"));
        Assert.Equal("true", Number(page, "Length, weight").GetAttribute("aria-invalid"));
        Assert.Empty((await SeeAsync()).Own);
    }

    [Fact]
    public async Task Without_a_reason_nothing_is_saved()
    {
        var page = Open("bands.pointe");
        Number(page, "Length, weight").Input("4");

        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.StartsWith("Why: write down a reason", page.Find("p.problem").TextContent, StringComparison.Ordinal));
        Assert.Empty((await SeeAsync()).Own);
    }

    [Fact]
    public async Task A_band_can_be_given_an_end_and_lose_it_again()
    {
        var page = Open("bands.pointe");
        Assert.Equal("no end", Number(page, "Toe line, ideal to").GetAttribute("value"));
        Number(page, "Toe line, ideal to").Input("6");
        Number(page, "Toe line, no fit above").Input("12");
        Field(page, "Why").Change("gaps before the tips");
        page.Find("form").Submit();
        page.WaitForAssertion(() => Assert.Contains("Saved.", page.Markup, StringComparison.Ordinal));

        Number(page, "Toe line, ideal to").Input("No end");
        Number(page, "Toe line, no fit above").Input("∞");
        Field(page, "Why").Change("no harm seen");
        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".own")));
        Assert.Empty((await SeeAsync()).Own);
    }

    [Fact]
    public async Task One_tap_goes_back_to_the_default_and_one_more_undoes_that()
    {
        await ChangeAsync(LengthWeight, null, 5, "toes matter more here");
        var page = Open("bands.pointe");

        Key(page, "Back to the default").Click();
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".own")));
        Assert.Empty((await SeeAsync()).Own);

        await page.InvokeAsync(() => Services.GetRequiredService<UndoOffer>().TakeAsync());
        page.WaitForAssertion(() => Assert.Single(page.FindAll(".own")));
        Assert.Equal(5, (await SeeAsync()).Own[LengthWeight]);
        Assert.Equal("toes matter more here", (await SeeAsync()).LastChanges[LengthWeight].Reason);
    }

    [Fact]
    public async Task Whoever_comes_second_is_told_by_name_and_keeps_what_she_typed()
    {
        var page = Open("bands.pointe");
        Number(page, "Length, weight").Input("4");
        Field(page, "Why").Change("mine");
        await ChangeAsync(LengthWeight, null, 5, "theirs");

        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Equal("Length, weight: Bram set it to 5 meanwhile.", page.Find("ul.problem li").TextContent));
        Assert.Equal("4", Number(page, "Length, weight").GetAttribute("value"));
        page.Find("form").Submit();
        page.WaitForAssertion(() => Assert.Contains("Saved.", page.Markup, StringComparison.Ordinal));
        Assert.Equal(4, (await SeeAsync()).Own[LengthWeight]);
    }

    [Fact]
    public async Task A_number_that_is_kept_badly_is_told_and_taken_away()
    {
        await using (var db = Shop.CreateDbContext())
        {
            (await db.Shops.SingleAsync(Stop)).OverrideFit("""{"bands.pointe.length.weight":-7,"boots":1}""");
            await db.SaveChangesAsync(Stop);
        }

        var all = Render<FitPage>();
        all.WaitForAssertion(() => Assert.Equal(2, all.FindAll(".caution li").Count));
        Key(all, "Take away what is not known").Click();
        all.WaitForAssertion(() => Assert.Single(all.FindAll(".caution li")));

        var page = Open("bands.pointe");
        Assert.Contains("Not in use:", page.Find(".own").TextContent, StringComparison.Ordinal);
        Key(page, "Back to the default").Click();
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".own")));
        Assert.Empty((await SeeAsync()).Problems);
    }

    [Fact]
    public async Task Asking_what_it_would_change_saves_nothing_and_keeps_what_was_typed()
    {
        var page = Open("bands.pointe");
        Number(page, "Length, weight").Input("4");

        Key(page, "What would it change?").Click();

        page.WaitForAssertion(() => Assert.Equal("That cannot be shown before it is saved.", page.Find(".keys [role=status]").TextContent));
        Assert.Equal("4", Number(page, "Length, weight").GetAttribute("value"));
        Assert.Empty((await SeeAsync()).Own);
    }

    [Fact]
    public void An_address_without_a_table_says_so() =>
        Assert.Contains("There is no table under this address.", Render<FitTablePage>(parameters => parameters.Add(page => page.Group, "boots")).Markup, StringComparison.Ordinal);

    private Task<SeenFitNumbers> SeeAsync() => Services.GetRequiredService<SettingsQueries>().FitAsync(Stop);

    private Task<ChangeFitNumbersOutcome> ChangeAsync(string path, double? seen, double? value, string reason) =>
        new ChangeFitNumbers(Shop.Writes, Shop.Clock).RunAsync(Other, Guid.CreateVersion7(), [new FitNumberChange(path, seen, value)], reason, Stop);

    private IRenderedComponent<FitTablePage> Open(string group)
    {
        var page = Render<FitTablePage>(parameters => parameters.Add(each => each.Group, group));
        page.WaitForElement("form");
        return page;
    }

    private static IElement Number(IRenderedComponent<FitTablePage> page, string name) => page.Find($"[aria-label='{name}']");
}
