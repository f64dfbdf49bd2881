using CsCheck;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Measures;
using ShopFit.Fitting.Shoes;
using ShopFit.Fitting.TryOns;

namespace ShopFit.Fitting.Scoring;

public class FetchListTests
{
    private static readonly FitDefaults Defaults = FitDefaults.Standard;

    private static readonly FeetBelief Feet = FeetBelief.Prior(Sex.Female, 14, Defaults).After(
        [
            Reading.Of(Side.Left, Trait.Length, 238), Reading.Of(Side.Right, Trait.Length, 236),
            Reading.Of(Side.Left, Trait.BallBreadth, 90), Reading.Of(Side.Right, Trait.BallBreadth, 89),
        ],
        Defaults).Belief;

    private static readonly ShoeOnFile[] Shoes = [.. Catalogue()];

    private static ShortlistQuestion Question => new() { Feet = Feet, Shoes = Shoes, Kind = "pointe", Limit = 5 };

    // Checked against a million draws by simple code of its own, in which the three share their maker's and their model's numbers.
    [Fact]
    public void The_chance_that_one_of_them_fits_is_within_a_hundredth_of_the_truth()
    {
        var fetch = Fetch(Question);
        ShoeOnFile[] alike = [.. Shoes.Where(shoe => shoe.Model == "cedar" && shoe.OnShelf).OrderByDescending(shoe => Shortlist.Judge(Question, shoe).ChanceOfFit).Take(3)];

        Assert.Equal(MonteCarlo.ChanceOneFits(Feet, [.. fetch.Pairs.Select(pair => pair.Fit.Shoe)], Defaults, 1_000_000), fetch.ChanceOneFits, .01);
        Assert.Equal(MonteCarlo.ChanceOneFits(Feet, alike, Defaults, 1_000_000), Fetch(Question with { Allows = alike.Contains }).ChanceOneFits, .01);
    }

    [Fact]
    public void No_other_three_of_the_finalists_are_better()
    {
        // Few enough on the shelf that all of them are finalists, and every three can be asked for by itself.
        var few = Shoes.Where(shoe => shoe.OnShelf).OrderByDescending(shoe => Shortlist.Judge(Question, shoe).ChanceOfFit).Take(9).ToArray();
        var fetch = Fetch(Question with { Allows = few.Contains });

        double best = 0;
        for (int i = 0; i < few.Length; i++)
        {
            for (int j = i + 1; j < few.Length; j++)
            {
                for (int k = j + 1; k < few.Length; k++)
                {
                    ShoeOnFile[] three = [few[i], few[j], few[k]];
                    best = Math.Max(best, Fetch(Question with { Allows = three.Contains }).ChanceOneFits);
                }
            }
        }

        Assert.Equal(best, fetch.ChanceOneFits);
    }

    [Fact]
    public void They_are_never_worse_than_the_three_likeliest() =>
        Gen.Select(Gen.Double[222, 252], Gen.Double[-3, 3], Gen.Double[80, 98], Gen.Bool).Sample(
            (length, other, breadth, catalogue) =>
            {
                var feet = FeetBelief.Prior(Sex.Female, 14, Defaults).After(
                    [Reading.Of(Side.Left, Trait.Length, length), Reading.Of(Side.Right, Trait.Length, length + other), Reading.Of(Side.Left, Trait.BallBreadth, breadth)],
                    Defaults).Belief;
                var question = Question with { Feet = feet, Limit = 3, From = catalogue ? ShortlistFrom.Catalogue : ShortlistFrom.Shelf };
                var fetch = Fetch(question);
                ShoeOnFile[] likeliest = [.. fetch.List.Pairs.Select(fit => fit.Shoe)];

                Assert.True(fetch.ChanceOneFits >= Fetch(question with { Allows = likeliest.Contains }).ChanceOneFits);
                Assert.True(fetch.ChanceOneFits >= fetch.Pairs.Max(pair => pair.Fit.ChanceOfFit));
                Assert.True(fetch.ChanceOneFits <= fetch.Pairs.Sum(pair => pair.Fit.ChanceOfFit) + 1e-12);
                Assert.All(fetch.Pairs, pair => Assert.InRange(pair.Adds, 0, pair.Fit.ChanceOfFit));
            },
            iter: 15);

    [Fact]
    public void The_three_likeliest_would_fail_together_more_often()
    {
        // Every size stands on the shelf, so that the likeliest pair has neighbours that are nearly as likely.
        var full = Question with { Feet = FeetBelief.Prior(Sex.Female, 14, Defaults).After([Reading.Of(Side.Left, Trait.Length, 238)], Defaults).Belief, Shoes = [.. Shoes.Select(shoe => shoe with { OnShelf = true })], Limit = 3 };
        var fetch = Fetch(full);
        string[] likeliest = [.. fetch.List.Pairs.Select(fit => fit.Shoe.Sku)];

        Assert.InRange(Fetch(full with { Allows = shoe => likeliest.Contains(shoe.Sku) }).ChanceOneFits, 0, fetch.ChanceOneFits - .01);
    }

    [Fact]
    public void What_each_adds_is_what_the_walk_would_lose_without_it()
    {
        var fetch = Fetch(Question);

        Assert.Equal(3, fetch.Pairs.Count);
        Assert.All(fetch.Pairs, pair =>
        {
            ShoeOnFile[] others = [.. fetch.Pairs.Where(other => other != pair).Select(other => other.Fit.Shoe)];
            Assert.Equal(fetch.ChanceOneFits - Fetch(Question with { Allows = others.Contains }).ChanceOneFits, pair.Adds, 1e-12);
        });
    }

    [Fact]
    public void The_list_beside_it_is_the_shortlist_and_each_pair_is_judged_alike()
    {
        var fetch = Fetch(Question);
        var list = Shortlist.Of(Question, TestContext.Current.CancellationToken);

        Assert.Equal(list.Pairs.Select(fit => (fit.Shoe.Sku, fit.ChanceOfFit, fit.Score)), fetch.List.Pairs.Select(fit => (fit.Shoe.Sku, fit.ChanceOfFit, fit.Score)));
        Assert.Equal(list.ChanceOnShelf, fetch.List.ChanceOnShelf);
        Assert.All(fetch.Pairs, pair => Assert.Equal(Shortlist.Judge(Question, pair.Fit.Shoe).ChanceOfFit, pair.Fit.ChanceOfFit));
    }

    [Fact]
    public void One_on_the_shelf_fits_at_least_as_often_as_one_of_the_three()
    {
        var fetch = Fetch(Question);

        Assert.All(fetch.Pairs, pair => Assert.True(pair.Fit.Shoe.OnShelf));
        Assert.InRange(fetch.List.ChanceOnShelf, fetch.ChanceOneFits, 1);
    }

    [Fact]
    public void They_are_fetched_in_the_order_of_the_shelf_and_what_is_at_hand_is_not_fetched_again()
    {
        var first = Fetch(Question);
        var places = first.Pairs.Select(pair => pair.Place!).ToArray();
        var second = Fetch(Question, [.. first.Pairs.Select(pair => pair.Fit.Shoe.Sku)]);

        Assert.Equal(places.OrderBy(place => int.Parse(place[1..], System.Globalization.CultureInfo.InvariantCulture)), places);
        Assert.Empty(second.Pairs.Select(pair => pair.Fit.Shoe.Sku).Intersect(first.Pairs.Select(pair => pair.Fit.Shoe.Sku)));
        Assert.Equal(3, second.Pairs.Count);
    }

    [Fact]
    public void The_same_question_gets_the_same_answer_to_the_bit_whatever_the_order_of_the_shoes()
    {
        var first = Fetch(Question);
        var second = Fetch(Question with { Shoes = [.. Shoes.Reverse()] });

        Assert.Equal(first.ChanceOneFits, second.ChanceOneFits);
        Assert.Equal(first.Pairs.Select(pair => (pair.Fit.Shoe.Sku, pair.Place, pair.Adds)), second.Pairs.Select(pair => (pair.Fit.Shoe.Sku, pair.Place, pair.Adds)));
        Assert.Equal(first.ToOrder?.Shoe.Sku, second.ToOrder?.Shoe.Sku);
    }

    [Fact]
    public void The_pair_to_order_is_the_likeliest_that_is_not_here()
    {
        var toOrder = Fetch(Question).ToOrder!;
        var best = Shoes.Where(shoe => !shoe.OnShelf).Select(shoe => Shortlist.Judge(Question, shoe)).OrderByDescending(fit => fit.ChanceOfFit).First();

        Assert.Equal((best.Shoe.Sku, best.ChanceOfFit), (toOrder.Shoe.Sku, toOrder.ChanceOfFit));
    }

    [Fact]
    public void What_is_left_out_takes_nobodys_place_and_still_counts_as_in_reach()
    {
        var all = Fetch(Question);
        var birches = Fetch(Question with { Allows = shoe => shoe.Model == "birch", Limit = 20 });

        Assert.Equal(20, birches.List.Pairs.Count);
        Assert.All(birches.List.Pairs, fit => Assert.Equal("birch", fit.Shoe.Model));
        Assert.All(birches.Pairs, pair => Assert.Equal("birch", pair.Fit.Shoe.Model));
        Assert.Equal("birch", birches.ToOrder?.Shoe.Model);
        Assert.Equal(all.InReach, birches.InReach);
        Assert.Contains(birches.InReach, shoe => shoe.Model == "cedar");
        Assert.True(all.InReach.Count < Shoes.Length);
    }

    [Fact]
    public void A_pair_tried_on_still_tells_of_the_feet_when_it_is_left_out()
    {
        var tried = Shoes.First(shoe => shoe.Model == "alder" && shoe.OnShelf);
        var question = Question with { TryOns = [new TryOn(tried.Sku, null, [new CheckAnswer(Side.Left, "toes-flat", 0)], [])] };

        Assert.DoesNotContain(Fetch(question with { Allows = shoe => shoe != tried }).List.Pairs, fit => fit.Shoe == tried);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void A_shelf_with_fewer_than_three_is_fetched_whole(int count)
    {
        ShoeOnFile[] shelf = [.. Shoes.Where(shoe => shoe.OnShelf).Take(count)];
        var fetch = Fetch(Question with { Allows = shelf.Contains });

        Assert.Equal(count, fetch.Pairs.Count);
        Assert.Null(fetch.ToOrder);
        Assert.InRange(fetch.ChanceOneFits, 0, count == 0 ? 0 : 1);
    }

    private static FetchList Fetch(ShortlistQuestion question, IReadOnlySet<string>? atHand = null) =>
        FetchList.Of(question, Place, atHand, TestContext.Current.CancellationToken);

    private static FetchList Fetch(ShortlistQuestion question, string[] atHand) => Fetch(question, atHand.ToHashSet(StringComparer.Ordinal));

    private static IReadOnlyList<string> Place(ShoeOnFile shoe) => shoe.OnShelf ? [$"B{shoe.Sku[^2..]}"] : [];

    // Of three makers, one model each: one measured, one from the maker's data, one known from its labels alone.
    private static IEnumerable<ShoeOnFile> Catalogue()
    {
        var system = SizeSystem.Find("mondopoint")!;
        foreach (string model in new[] { "alder", "birch", "cedar" })
        {
            for (int i = 0; i < 45; i++)
            {
                var label = new SizeLabel(system, 220 + (i / 3 * 2.5), (i % 3) - 1, model.Length - 5, 0, 5);
                var fromLabel = ShoeForm.FromLabel(label, Defaults);
                double?[] known = [.. Enumerable.Range(0, ShoeForm.Parts).Select(part => model == "cedar" ? null : (double?)fromLabel[(FormPart)part])];
                yield return new ShoeOnFile($"{model}-{i:00}", $"maker of {model}", model, ShoeForm.Of(known, model == "alder" ? FormSource.Measured : FormSource.Maker, label, Defaults), i % 2 == 0);
            }
        }
    }
}
