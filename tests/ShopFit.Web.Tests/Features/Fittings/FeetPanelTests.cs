using AngleSharp.Dom;
using Bunit;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Feet;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Features.Sales;
using ShopFit.Web.Features.Settings;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Fittings;

public sealed class FeetPanelTests : PageTest
{
    private Dancer _dancer = null!;

    public override async ValueTask InitializeAsync()
    {
        await base.InitializeAsync();
        Services.AddLocalization();
        Services.AddCatalogue().AddSales().AddSettings().AddDancers().AddFittings();
        var dancer = Dancer.Of(Guid.CreateVersion7(), Shop.ShopId, "Tilly Fernsby-Quoin");
        dancer.Describe("Tilly Fernsby-Quoin", "Tilly", new DateOnly(2012, 3, 1), Sex.Female, "");
        _dancer = await Shop.HasAsync(dancer);
    }

    [Fact]
    public async Task What_the_last_fitting_read_stands_beside_each_field_with_what_it_changed_by()
    {
        await EarlierAsync();
        var panel = await OpenAsync();

        Assert.Equal("Sep 2025: 231", Earlier(panel, "Length, left foot"));
        await panel.InvokeAsync(() => Field(panel, "Length, left foot").Change("233,5"));

        panel.WaitForAssertion(() => Assert.Equal("Sep 2025: 231 (+2.5)", Earlier(panel, "Length, left foot")));
        Assert.Equal("left, Sep 2025", Word(panel, "tapered"));
        Assert.Equal("right, Sep 2025", Word(panel, "medium"));
    }

    [Fact]
    public async Task The_list_of_a_field_opens_under_its_row_with_today_and_every_earlier_day()
    {
        await EarlierAsync();
        var panel = await OpenAsync();
        await panel.InvokeAsync(() => Field(panel, "Length, left foot").Change("233.5"));
        panel.WaitForAssertion(() => Assert.Equal("233.5", Field(panel, "Length, left foot").GetAttribute("value")));

        await panel.InvokeAsync(() => panel.Find("button[aria-label='Length, left foot: show what was read earlier']").Click());

        var lines = panel.WaitForElements(".readings li");
        Assert.Contains("233.5 mm", lines[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("14 September 2025", lines[1].TextContent, StringComparison.Ordinal);
        Assert.Contains("since then +2.5", lines[1].TextContent, StringComparison.Ordinal);
        Assert.Contains("Length", panel.Find(".readings").PreviousElementSibling!.TextContent, StringComparison.Ordinal);

        await panel.InvokeAsync(() => panel.FindAll(".readings button").First(key => key.TextContent == "Take it back").Click());
        panel.WaitForAssertion(() => Assert.Single(panel.FindAll(".readings li")));
    }

    [Fact]
    public async Task Every_trait_can_be_read_as_a_number_one_tap_away()
    {
        var panel = await OpenAsync();

        await panel.InvokeAsync(() => panel.FindAll("button").Single(key => key.TextContent.Trim() == "Tape and calliper").Click());

        // Each of the twelve traits of either foot has a field of its own.
        Assert.Equal(2 * Traits.Count, panel.FindAll("input[data-next-on-enter]").Select(field => field.GetAttribute("aria-label")).Distinct().Count());
    }

    [Theory]
    [InlineData("in", "9 3/8", 9.375, ReadingUnit.Inches, null)]
    [InlineData("in", "9-3/8", 9.375, ReadingUnit.Inches, null)]
    [InlineData("in", "9⅜", 9.375, ReadingUnit.Inches, null)]
    [InlineData("us-women", "7½", 7.5, ReadingUnit.Size, "us-women")]
    [InlineData("jp", "23,5", 23.5, ReadingUnit.Size, "jp")]
    public async Task A_length_is_kept_as_it_was_given(string unit, string typed, double value, ReadingUnit kept, string? system)
    {
        var panel = await OpenAsync();
        await panel.InvokeAsync(() => panel.Find(".units select").Change(unit));
        await panel.InvokeAsync(() => Field(panel, "Length, left foot").Change(typed));

        panel.WaitForAssertion(() => Assert.NotEmpty(panel.FindAll(".number.read")));
        await using var db = Shop.CreateDbContext();
        var row = await db.FittingReadings.SingleAsync(TestContext.Current.CancellationToken);
        Assert.Equal((value, kept, system), (row.Value, row.Unit, row.SizeSystem));
    }

    [Fact]
    public async Task What_lengths_are_read_in_is_remembered_for_the_next_dancer()
    {
        var panel = await OpenAsync();
        await panel.InvokeAsync(() => panel.Find(".units select").Change("eu"));

        var next = await OpenAsync();

        Assert.Equal("eu", next.Find(".units select").GetAttribute("value"));
    }

    [Fact]
    public async Task Facing_the_dancer_swaps_fields_and_drawing_alike_and_is_remembered()
    {
        var panel = await OpenAsync();
        Assert.Equal("Length, left foot", panel.Find("input[data-next-on-enter]").GetAttribute("aria-label"));

        await panel.InvokeAsync(() => panel.FindAll(".switch button").Single(key => key.TextContent == "As I face them").Click());

        panel.WaitForAssertion(() => Assert.Equal("Length, right foot", panel.Find("input[data-next-on-enter]").GetAttribute("aria-label")));
        Assert.StartsWith("Right", panel.Find(".heads .foot").TextContent, StringComparison.Ordinal);
        var again = await OpenAsync();
        Assert.Equal("Length, right foot", again.Find("input[data-next-on-enter]").GetAttribute("aria-label"));
        Assert.Equal("true", again.FindAll(".switch button")[1].GetAttribute("aria-pressed"));
    }

    private async Task EarlierAsync()
    {
        var at = Shop.Clock.GetUtcNow().AddMonths(-6);
        var fitting = FittingRecord.Of(Guid.CreateVersion7(), Shop.Fitter, _dancer.Id, "pointe", at, 13.5, Sex.Female);
        fitting.Close(at.AddHours(1));
        await Shop.HasAsync(fitting);
        await Shop.HasAsync(FittingReading.Of(Guid.CreateVersion7(), Shop.Fitter, fitting.Id, at, Side.Left, "length", 231, ReadingUnit.Millimetres));
        await Shop.HasAsync(FittingReading.Of(Guid.CreateVersion7(), Shop.Fitter, fitting.Id, at, Side.Left, "toe-slope", 2, ReadingUnit.Word));
        await Shop.HasAsync(FittingReading.Of(Guid.CreateVersion7(), Shop.Fitter, fitting.Id, at, Side.Right, "toe-slope", 1, ReadingUnit.Word));
    }

    private async Task<IRenderedComponent<FittingPage>> OpenAsync()
    {
        var fitting = await Shop.HasAsync(FittingRecord.Of(Guid.CreateVersion7(), Shop.Fitter, _dancer.Id, "pointe", Shop.Clock.GetUtcNow(), 14, Sex.Female));
        var page = Render<FittingPage>(parameters => parameters.Add(it => it.Id, fitting.Id).Add(it => it.Station, "feet"));
        page.WaitForElement(".entries");
        return page;
    }

    private static IElement Field(IRenderedComponent<FittingPage> page, string label) => page.Find($"input[aria-label='{label}']");

    private static string Earlier(IRenderedComponent<FittingPage> page, string label) => Field(page, label).Closest(".number")!.QuerySelector(".earlier")!.TextContent;

    private static string? Word(IRenderedComponent<FittingPage> page, string word) =>
        page.Find($"[aria-label='Toes, longest to fourth'] button[aria-label='{word}']").GetAttribute("aria-description");
}
