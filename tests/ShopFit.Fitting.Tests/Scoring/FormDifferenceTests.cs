using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Measures;
using ShopFit.Fitting.Sentences;
using ShopFit.Fitting.Shoes;

namespace ShopFit.Fitting.Scoring;

public class FormDifferenceTests
{
    private static readonly FitDefaults Defaults = FitDefaults.Standard;
    private static readonly SizeLabel Label = new(SizeSystem.Find("mondopoint")!, 240);

    [Fact]
    public void Another_shoe_is_told_by_what_would_be_felt()
    {
        var from = Shoe(0, 0, 0, 0, 0, 0, 0, 0);

        Assert.Equal("2 mm longer, 3 mm narrower at the heel", Said(from, Shoe(2, 0.3, 0, -3, -0.4, 0, 0, 0.1)));
        Assert.Equal("a little wider at the toes, 4 mm closer round the joints, 1.0 points stiffer", Said(from, Shoe(0, 1, -4, 0, 0, 0, 0, 1)));
        Assert.Equal("2 mm shorter, 3 mm wider at the heel", Said(Shoe(2, 0, 0, -3, 0, 0, 0, 0), from));
    }

    [Fact]
    public void Two_of_the_same_form_are_the_same_inside() =>
        Assert.Equal("the same inside, as far as is known", Said(Shoe(0, 0, 0, 0, 0, 0, 0, 0), Shoe(0.2, 0, 0, 0, 0, 0, 0, 0.2)));

    [Fact]
    public void Only_places_that_the_kind_asks_about_are_told()
    {
        var (from, to) = (Shoe(0, 0, 0, 0, 0, 0, 0, 0), Shoe(2, 5, 3, 0, 4, 9, 8, 3));

        Assert.Equal("2 mm longer, 3 mm roomier round the joints", Said(from, to, "jazz"));
        Assert.DoesNotContain("stiffer", Said(from, to, "demi-pointe"), StringComparison.Ordinal);
        Assert.Equal(["length", "ball", "heel"], FormDifference.Between(Fit(from, "soft"), Fit(to, "soft")).Select(difference => difference.CriterionId));
    }

    private static string Said(ShoeOnFile from, ShoeOnFile to, string kind = "pointe") => FitSentences.Differences(FormDifference.Between(Fit(from, kind), Fit(to, kind)));

    private static PairFit Fit(ShoeOnFile shoe, string kind) =>
        Shortlist.Judge(new ShortlistQuestion { Feet = FeetBelief.Prior(Sex.Female, 14, Defaults), Shoes = [shoe], Kind = kind }, shoe);

    private static ShoeOnFile Shoe(params double[] more)
    {
        var form = ShoeForm.FromLabel(Label, Defaults);
        double?[] known = [.. more.Select((value, part) => (double?)(form[(FormPart)part] + value))];
        return new ShoeOnFile("pair", "maker", "model", ShoeForm.Of(known, FormSource.Measured, Label, Defaults), OnShelf: true);
    }
}
