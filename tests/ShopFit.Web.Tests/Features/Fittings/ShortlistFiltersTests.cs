using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace ShopFit.Web.Features.Fittings;

public sealed class ShortlistFiltersTests : BunitContext
{
    private static readonly ShortlistWish Thistlefen = new() { Maker = "Thistlefen Lastworks" };

    private readonly List<ShortlistWish> _wishes = [];

    public ShortlistFiltersTests() => Services.AddLocalization();

    [Fact]
    public void What_cannot_be_chosen_by_is_not_shown() => Assert.Empty(Open().FindAll("fieldset"));

    [Fact]
    public void A_choice_says_how_many_pairs_it_leaves_and_a_tap_asks_for_them()
    {
        var filters = Open(Maker(left: 1));

        Assert.Equal("Maker", filters.Find("legend").TextContent);
        Assert.Equal("Thistlefen Lastworks 1 pair", filters.Find("button").TextContent);
        filters.Find("button").Click();
        Assert.Equal([Thistlefen], _wishes);
    }

    [Fact]
    public void A_choice_that_leaves_none_cannot_be_tapped_but_one_that_was_made_can_be_taken_back()
    {
        Assert.True(Open(Maker(left: 0)).Find("button").IsDisabled());

        var chosen = Open(Maker(left: 0, chosen: true)).Find("button");

        Assert.False(chosen.IsDisabled());
        Assert.Equal("true", chosen.GetAttribute("aria-pressed"));
    }

    private static ShortlistChoice Maker(int left, bool chosen = false) => new(Thistlefen, Thistlefen, chosen, left, "Thistlefen Lastworks", null);

    private IRenderedComponent<ShortlistFilters> Open(params ShortlistChoice[] makers) => Render<ShortlistFilters>(parameters => parameters
        .Add(it => it.Choices, new ShortlistChoices(0, makers, [], [], [], [], []))
        .Add(it => it.Currency, "EUR")
        .Add(it => it.OnWish, EventCallback.Factory.Create<ShortlistWish>(this, _wishes.Add)));
}
