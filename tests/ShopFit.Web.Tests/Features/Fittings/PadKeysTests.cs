using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Scoring;

namespace ShopFit.Web.Features.Fittings;

public sealed class PadKeysTests : BunitContext
{
    private static readonly PadUnderFoot CapLeft = new(Side.Left, "toe-cap");
    private static readonly PadUnderFoot CapRight = new(Side.Right, "toe-cap");
    private static readonly PadUnderFoot HeelLeft = new(Side.Left, "heel-cushion");

    private IReadOnlyList<PadUnderFoot>? _chosen;

    public PadKeysTests() => Services.AddLocalization();

    [Fact]
    public void Where_no_pad_is_needed_none_is_shown_until_others_are_asked_for()
    {
        var keys = Open([], []);
        Assert.Empty(keys.FindAll("li"));
        Assert.Equal("None is needed. Other pads", More(keys).TextContent);
        Assert.Equal("false", More(keys).GetAttribute("aria-expanded"));

        More(keys).Click();

        Assert.Equal(2, keys.FindAll("li").Count);
        Assert.Equal(("Fewer pads", "true"), (More(keys).TextContent, More(keys).GetAttribute("aria-expanded")));
    }

    [Fact]
    public void A_proposed_pad_says_so_stands_first_and_is_not_pressed_before_it_is_chosen()
    {
        var rows = Open([CapLeft], [HeelLeft]).FindAll("li");

        Assert.Equal(2, rows.Count);
        Assert.Contains("proposed", rows[0].TextContent, StringComparison.Ordinal);
        Assert.Empty(rows[0].QuerySelectorAll("[aria-pressed=true]"));
        Assert.DoesNotContain("proposed", rows[1].TextContent, StringComparison.Ordinal);
        Assert.Equal("Left", Assert.Single(rows[1].QuerySelectorAll("[aria-pressed=true]")).TextContent);
    }

    [Fact]
    public void A_tap_adds_the_pad_under_that_foot_to_those_that_lie_there()
    {
        var keys = Open([CapLeft], []);

        keys.FindAll("li .key")[1].Click();

        Assert.Equal([CapLeft, CapRight], _chosen);
    }

    [Fact]
    public void A_second_tap_takes_only_that_one_out()
    {
        var keys = Open([CapLeft, CapRight], []);

        keys.FindAll("li .key")[0].Click();

        Assert.Equal([CapRight], _chosen);
    }

    [Fact]
    public void The_keys_of_a_pad_are_named_by_it()
    {
        var row = Assert.Single(Open([CapLeft], []).FindAll("li"));

        Assert.Equal(row.QuerySelector(".what")!.TextContent, row.QuerySelector("[role=group]")!.GetAttribute("aria-label"));
    }

    private static IElement More(IRenderedComponent<PadKeys> keys) => keys.Find("button.bare");

    private IRenderedComponent<PadKeys> Open(IReadOnlyList<PadUnderFoot> chosen, IReadOnlyList<PadUnderFoot> proposed) => Render<PadKeys>(parameters => parameters
        .Add(it => it.Pads, ["toe-cap", "heel-cushion"])
        .Add(it => it.Chosen, chosen)
        .Add(it => it.Proposed, proposed)
        .Add(it => it.ChosenChanged, EventCallback.Factory.Create<IReadOnlyList<PadUnderFoot>>(this, pads => _chosen = pads)));
}
