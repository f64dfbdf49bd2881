using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Features.Sales;
using ShopFit.Web.Features.Settings;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Fittings;

/// <summary>Every kind of footwear through feet, shortlist and decision, for a child of nine.</summary>
public sealed class OtherKindsTests : PageTest
{
    private static readonly string[] WithBox = ["Toes", "Second toe", "Forefoot"];

    private ShortlistShop _shop = null!;

    public override async ValueTask InitializeAsync()
    {
        await base.InitializeAsync();
        Services.AddLocalization();
        Services.AddCatalogue().AddSales().AddSettings().AddDancers().AddFittings();
        _shop = new ShortlistShop(Shop);
    }

    [Theory]
    [InlineData("demi-pointe", true)]
    [InlineData("soft", false)]
    [InlineData("jazz", false)]
    [InlineData("tap", false)]
    [InlineData("character", false)]
    public async Task Each_kind_goes_through_the_stations_with_its_own_questions(string kind, bool hasBox)
    {
        await _shop.StockAsync(kind);
        var fitting = await _shop.DraftAsync(kind, age: 9);
        await new SetFittingStart(Shop.Writes).RunAsync(
            Shop.Fitter, Guid.CreateVersion7(), new SetFittingStartRequest(fitting, Version: 1, FirstPair: true, SoreLeft: false, SoreRight: false, SkinBroken: false, TeacherAgreedOn: null), TestContext.Current.CancellationToken);

        var feet = Open(fitting, "feet");
        var words = feet.FindAll(".row > .name").Select(name => name.FirstChild!.TextContent).ToList();
        Assert.Equal(hasBox, WithBox.All(words.Contains));
        Assert.DoesNotContain("Strength", words);
        Assert.DoesNotContain("Point", words);
        Says(feet);

        var list = Open(fitting, "shortlist");
        list.WaitForElement(".pair");
        Assert.Equal(hasBox ? 2 : 0, list.FindAll("path.platform").Count);
        Assert.DoesNotContain("Shank", list.Find(".work").TextContent, StringComparison.Ordinal);
        Says(list);

        Services.GetRequiredService<NavigationManager>().NavigateTo($"/fittings/{fitting}/decision?size={_shop.Pairs["Moorlace 37"]}");
        var decision = Open(fitting, "decision");
        decision.WaitForElement(".stop");
        decision.WaitForElement(".pairhead");
        await decision.InvokeAsync(() => decision.Find("button.bare[aria-expanded]").Click());
        Assert.Equal(hasBox, decision.FindAll("[role=group][aria-label='toe cap']").Count > 0);
        Assert.NotEmpty(decision.FindAll("[role=group][aria-label='heel cushion']"));
        Assert.Contains("before dancing again", decision.Find(".stop").TextContent, StringComparison.Ordinal);
        Says(decision);
    }

    [Fact]
    public async Task A_first_pair_of_pointe_shoes_keeps_its_cautions()
    {
        await _shop.StockAsync();
        var fitting = await _shop.DraftAsync();
        await new SetFittingStart(Shop.Writes).RunAsync(
            Shop.Fitter, Guid.CreateVersion7(), new SetFittingStartRequest(fitting, Version: 1, FirstPair: true, SoreLeft: false, SoreRight: false, SkinBroken: false, TeacherAgreedOn: null), TestContext.Current.CancellationToken);
        Services.GetRequiredService<NavigationManager>().NavigateTo($"/fittings/{fitting}/decision?size={_shop.Pairs["Moorlace 37"]}");

        var decision = Open(fitting, "decision");

        decision.WaitForElement(".caution");
        Assert.Contains("dancing en pointe again", decision.Find(".stop").TextContent, StringComparison.Ordinal);
    }

    // Nothing of pointe is said of a shoe that is none.
    private static void Says(IRenderedComponent<FittingPage> page)
    {
        var said = page.Find(".work").TextContent + page.Find(".talk").TextContent;
        Assert.DoesNotContain("en pointe", said, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("pointe shoe", said, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("for pointe", said, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("barre", said, StringComparison.OrdinalIgnoreCase);
    }

    private IRenderedComponent<FittingPage> Open(Guid fitting, string station)
    {
        var page = Render<FittingPage>(parameters => parameters.Add(it => it.Id, fitting).Add(it => it.Station, station));
        page.WaitForElement(".fitting");
        return page;
    }
}
