using System.Globalization;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Measures;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.Sentences;
using ShopFit.Fitting.Shoes;
using ShopFit.Fitting.TryOns;

namespace ShopFit.Fitting;

/// <summary>The worked example of the library's README, number by number.</summary>
public class WorkedExampleTests
{
    private static readonly FitDefaults Defaults = FitDefaults.Standard;

    [Fact]
    public void The_numbers_of_the_readme_are_what_the_library_says()
    {
        CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.InvariantCulture;

        var feet = FeetBelief.Prior(Sex.Female, 14, Defaults);
        Assert.Equal((235.9, 12.3), Told(feet, Trait.Length));
        Assert.Equal((222.2, 11.7), Told(feet, Trait.BallGirth));

        feet = feet.After([Reading.Of(Side.Left, Trait.Length, 238), Reading.Of(Side.Left, Trait.BallBreadth, 91)], Defaults).Belief;
        Assert.Equal((238.0, 1.0), Told(feet, Trait.Length));
        Assert.Equal((223.5, 6.0), Told(feet, Trait.BallGirth));
        Assert.Equal((237.9, 3.1), (Math.Round(feet.Mean(Side.Right, Trait.Length), 1), Math.Round(feet.Sd(Side.Right, Trait.Length), 1)));

        var label = new SizeLabel(SizeSystem.Find("mondopoint")!, 245);
        var known = ShoeForm.FromLabel(label, Defaults);
        var form = ShoeForm.Of([.. Enum.GetValues<FormPart>().Select(part => (double?)known[part])], FormSource.Measured, label, Defaults);
        Assert.Equal(240, form[FormPart.Length], 1e-9);

        var shoe = new ShoeOnFile("example", "maker", "model", form, OnShelf: true);
        var question = new ShortlistQuestion { Feet = feet, Shoes = [shoe], Kind = "pointe" };
        var fit = Shortlist.Judge(question, shoe);
        Assert.Equal(.21, fit.ChanceOfFit, .01);
        Assert.Equal([new PadUnderFoot(Side.Left, "second-toe-hollow")], fit.Pads);
        Assert.Equal((1.5, -1.1, 4.1), Rounded(fit.Criteria[0]));
        Assert.Equal((-1.5, -14.0, 11.1), Rounded(fit.Criteria[2]));
        Assert.Equal("Unlikely, 2 in 10. Look first at: length, right: about right, not sure.", FitSentences.Reason(fit));

        var answer = new CheckAnswer(Side.Left, "toes-flat", 2);
        var after = Shortlist.Judge(question with { TryOns = [new TryOn("example", null, [answer], [])] }, shoe);
        Assert.Equal((2.8, .7, 4.8), Rounded(after.Criteria[0]));
        Assert.Equal("a little long, fairly sure", FitSentences.Ease(after.Criteria[0]));
    }

    private static (double Ease, double Low, double High) Rounded(CriterionFit fit) =>
        (Math.Round(fit.Ease, 1), Math.Round(fit.Low, 1), Math.Round(fit.High, 1));

    private static (double Mean, double Sd) Told(FeetBelief feet, Trait trait) =>
        (Math.Round(feet.Mean(Side.Left, trait), 1), Math.Round(feet.Sd(Side.Left, trait), 1));
}
