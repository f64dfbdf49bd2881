using System.Globalization;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Measures;
using ShopFit.Fitting.Sentences;
using ShopFit.Fitting.Shoes;
using ShopFit.Fitting.TryOns;

namespace ShopFit.Fitting.Scoring;

public class NextPairTests
{
    private static readonly FitDefaults Defaults = FitDefaults.Standard;
    private static readonly FeetBelief Feet = FeetBelief.Prior(Sex.Female, null, Defaults).After(
        [Reading.Of(Side.Left, Trait.Length, 238), Reading.Of(Side.Right, Trait.Length, 238), Reading.Of(Side.Left, Trait.BallBreadth, 92), Reading.Of(Side.Right, Trait.BallBreadth, 92)], Defaults).Belief;

    private static readonly ShoeOnFile[] Shoes = [.. Catalogue()];

    private static ShortlistQuestion Question => new() { Feet = Feet, Shoes = Shoes, Kind = "pointe", From = ShortlistFrom.Catalogue, Limit = 5 };

    [Fact]
    public void Before_the_first_try_on_it_is_the_shortlist()
    {
        var next = NextPair.Of(Question, TestContext.Current.CancellationToken);
        var list = Shortlist.Of(Question, TestContext.Current.CancellationToken);

        Assert.Equal(list.Pairs.Select(pair => (pair.Shoe.Sku, pair.ChanceOfFit)), next.List.Pairs.Select(pair => (pair.Shoe.Sku, pair.ChanceOfFit)));
        Assert.All(next.Steps, step => Assert.Empty(step.Differences));
    }

    [Fact]
    public void No_pair_is_tried_twice_whatever_was_said_of_it()
    {
        TryOn[] tried = [new(Shoes[10].Sku, false, [], []), new(Shoes[11].Sku, null, [], []), new(Shoes[12].Sku, true, [], [])];
        var next = NextPair.Of(Question with { TryOns = tried, Limit = 100 }, TestContext.Current.CancellationToken);

        Assert.Empty(next.List.Pairs.Select(pair => pair.Shoe.Sku).Intersect(tried.Select(tryOn => tryOn.Sku)));
        Assert.Equal(Shoes.Length - tried.Length, next.List.Pairs.Count);
    }

    // Common practice, no source: after a pair that is long and loose, a shorter and narrower one.
    [Fact]
    public void After_a_pair_that_was_long_a_shorter_one_is_next_and_the_reason_says_so()
    {
        CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.InvariantCulture;
        var first = NextPair.Of(Question, TestContext.Current.CancellationToken).List.Pairs[0];
        CheckAnswer[] seen =
        [
            new(Side.Left, "toes-flat", 2), new(Side.Right, "toes-flat", 2), new(Side.Left, "heel-fabric", 2), new(Side.Right, "heel-fabric", 2),
            new(Side.Left, "ball-sides", 2), new(Side.Right, "ball-sides", 2),
        ];

        var next = NextPair.Of(Question with { TryOns = [new TryOn(first.Shoe.Sku, false, seen, [])] }, TestContext.Current.CancellationToken);

        Assert.Contains(next.Steps[0].Amiss, place => place.Criterion.Id == "length" && place.Ease > place.Criterion.IdealTo);
        Assert.Contains(next.Steps[0].Differences, difference => difference is { CriterionId: "length", Difference: < 0 });
        string reason = FitSentences.NextReason(next.List.Pairs[0], next.Steps[0]);
        Assert.Contains("the last one was long", reason, StringComparison.Ordinal);
        Assert.Contains("shorter", reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Withdrawing_an_answer_gives_exactly_what_was_said_without_it()
    {
        TryOn with = new(Shoes[20].Sku, false, [new(Side.Left, "toes-flat", 0), new(Side.Right, "drop", 2)], []);
        TryOn without = with with { Answers = [with.Answers[0]] };

        var before = NextPair.Of(Question with { TryOns = [without] }, TestContext.Current.CancellationToken);
        _ = NextPair.Of(Question with { TryOns = [with] }, TestContext.Current.CancellationToken);
        var after = NextPair.Of(Question with { TryOns = [without] }, TestContext.Current.CancellationToken);

        Assert.Equal(before.List.Pairs.Select(pair => (pair.Shoe.Sku, pair.ChanceOfFit)), after.List.Pairs.Select(pair => (pair.Shoe.Sku, pair.ChanceOfFit)));
    }

    [Fact]
    public void What_is_not_allowed_is_not_next()
    {
        var next = NextPair.Of(Question with { Allows = shoe => shoe.Model == "birch" }, TestContext.Current.CancellationToken);

        Assert.All(next.List.Pairs, pair => Assert.Equal("birch", pair.Shoe.Model));
    }

    private static IEnumerable<ShoeOnFile> Catalogue()
    {
        var system = SizeSystem.Find("mondopoint")!;
        foreach (string model in new[] { "alder", "birch" })
        {
            for (int i = 0; i < 30; i++)
            {
                var label = new SizeLabel(system, 225 + (i / 3 * 5), (i % 3) - 1);
                yield return new ShoeOnFile($"{model}-{i:00}", "maker", model, ShoeForm.FromLabel(label, Defaults), OnShelf: true);
            }
        }
    }
}
