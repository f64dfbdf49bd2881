using Bunit;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.TryOns;

namespace ShopFit.Web.Features.Fittings;

public sealed class CheckKeysTests : BunitContext
{
    private static readonly IReadOnlyList<Check> Pointe = FittingChecks.For("pointe", FitDefaults.Standard);
    private readonly List<(IReadOnlyList<CheckAnswer> Answers, IReadOnlyList<CheckOfFoot> TakenBack)> _said = [];

    public CheckKeysTests() => Services.AddLocalization();

    [Fact]
    public void The_positions_stand_in_the_order_in_which_a_dancer_is_seen_and_the_first_is_open()
    {
        var keys = Keys([]);

        Assert.Equal(["Flat", "Demi-plié, heels down", "Demi-pointe", "En pointe"], keys.FindAll(".positions button").Select(key => key.TextContent.Trim()));
        Assert.Equal("true", keys.Find(".positions button").GetAttribute("aria-pressed"));
        Assert.Equal(["Toe hold", "Sides of the joints", "Top of the box"], keys.FindAll(".check b").Select(name => name.TextContent));
    }

    [Fact]
    public async Task One_tap_answers_for_both_feet_and_a_second_for_one()
    {
        var keys = Keys([]);
        await keys.InvokeAsync(() => keys.Find("[aria-label='Toe hold, left'] button").Click());
        Assert.Equal([new(Side.Left, "toe-hold", 0), new(Side.Right, "toe-hold", 0)], _said[^1].Answers);

        keys = Keys(_said[^1].Answers);
        await keys.InvokeAsync(() => keys.Find("[aria-label='Toe hold, right'] button:nth-child(2)").Click());

        Assert.Equal([new(Side.Right, "toe-hold", 1)], _said[^1].Answers);
    }

    [Fact]
    public async Task What_the_dancer_says_is_kept_as_hers()
    {
        var keys = Keys([]);
        await keys.InvokeAsync(() => keys.FindAll(".who button")[1].Click());

        await keys.InvokeAsync(() => keys.Find("[aria-label='Toe hold, left'] button").Click());

        Assert.All(_said[^1].Answers, given => Assert.True(given.ByDancer));
    }

    [Fact]
    public async Task One_more_tap_sets_the_rest_of_the_position_to_as_it_should_be()
    {
        var keys = Keys([new(Side.Left, "toe-hold", 2), new(Side.Right, "toe-hold", 2)]);

        await keys.InvokeAsync(() => keys.Find(".rest button").Click());

        Assert.Equal(4, _said[^1].Answers.Count);
        Assert.All(_said[^1].Answers, given => Assert.Equal(1, given.Answer));
        Assert.DoesNotContain(_said[^1].Answers, given => given.Check == "toe-hold");
    }

    [Fact]
    public async Task A_first_pair_has_the_shorter_list_and_the_rest_is_one_tap_away()
    {
        var keys = Keys([], shorter: true);
        Assert.Equal(["Toe hold", "Sides of the joints"], keys.FindAll(".check b").Select(name => name.TextContent));

        await keys.InvokeAsync(() => keys.FindAll(".rest button").Single(key => key.TextContent == "More checks").Click());

        Assert.Equal(3, keys.FindAll(".check").Count);
    }

    [Fact]
    public void A_position_of_which_all_is_answered_says_so_and_the_next_is_open()
    {
        var keys = Keys([.. CheckAnswers.RestAsItShouldBe([], Pointe.Where(check => check.Position == TryOnPosition.Flat), byDancer: false)]);

        Assert.Contains("all answered:", keys.Find(".positions button").TextContent, StringComparison.Ordinal);
        Assert.Equal("Toes, flat", keys.Find(".check b").TextContent);
    }

    [Fact]
    public void A_sore_foot_is_told_to_teach_nothing() =>
        Assert.Contains("The left foot is sore", Keys([], soreLeft: true).Markup, StringComparison.Ordinal);

    private IRenderedComponent<CheckKeys> Keys(IReadOnlyList<CheckAnswer> answers, bool shorter = false, bool soreLeft = false) => Render<CheckKeys>(parameters => parameters
        .Add(each => each.Checks, Pointe)
        .Add(each => each.Answers, answers)
        .Add(each => each.Shorter, shorter)
        .Add(each => each.SoreLeft, soreLeft)
        .Add(each => each.KnownAs, "Tilly")
        .Add(each => each.OnSaid, said => _said.Add(said)));
}
