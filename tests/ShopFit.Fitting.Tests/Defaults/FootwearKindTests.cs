using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Measures;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.Shoes;

namespace ShopFit.Fitting.Defaults;

public class FootwearKindTests
{
    private static readonly FitDefaults Defaults = FitDefaults.Standard;

    [Fact]
    public void A_pointe_shoe_asks_about_every_trait() => Assert.Equal(Enum.GetValues<Trait>(), Defaults.TraitsOf("pointe").Order());

    [Fact]
    public void A_demi_pointe_shoe_has_no_shank_so_nothing_is_asked_about_strength() =>
        Assert.Equal([Trait.PointRange, Trait.Strength], Defaults.TraitsOf("pointe").Except(Defaults.TraitsOf("demi-pointe")).Order());

    [Theory]
    [InlineData("soft")]
    [InlineData("jazz")]
    [InlineData("tap")]
    [InlineData("character")]
    public void Shoes_without_a_box_ask_about_length_joints_and_heel(string kind)
    {
        Assert.Equal(
            new[] { Trait.Length, Trait.BallBreadth, Trait.BallGirth, Trait.HeelBreadth, Trait.Squeeze }.Order(),
            Defaults.TraitsOf(kind).Order());
        Assert.Equal(["heel-cushion", "joint-cushion"], Defaults.PadsOf(kind).Select(pad => pad.Id));
    }

    // Pads for the toes belong into a box (common practice, no source).
    [Fact]
    public void No_toe_cap_is_proposed_for_a_long_jazz_shoe_however_well_its_length_would_suit()
    {
        var feet = FeetBelief.Prior(Sex.Female, null, Defaults).After(
            [.. Enum.GetValues<Side>().SelectMany(foot => new[] { Reading.Of(foot, Trait.Length, 238), Reading.Of(foot, Trait.BallGirth, 214) })], Defaults).Belief;
        var label = new SizeLabel(SizeSystem.Find("mondopoint")!, 240);
        var form = ShoeForm.FromLabel(label, Defaults);
        double?[] known = [.. Enumerable.Range(0, ShoeForm.Parts).Select(part => (double?)form[(FormPart)part])];
        known[0] = 242;
        var shoe = new ShoeOnFile("long", "maker", "model", ShoeForm.Of(known, FormSource.Measured, label, Defaults), OnShelf: true);
        var question = new ShortlistQuestion { Feet = feet, Shoes = [shoe], Kind = "jazz" };

        Assert.Contains(Shortlist.Judge(question, shoe).Pads, pad => pad.Pad == "toe-cap");
        Assert.DoesNotContain(Shortlist.Judge(question with { Defaults = Defaults.ForKind("jazz") }, shoe).Pads, pad => pad.Pad is "toe-cap" or "toe-cushion" or "second-toe-hollow");
    }

    [Fact]
    public void A_pad_that_does_not_go_into_a_kind_is_still_known_there() =>
        Assert.Equal(Defaults.Pads.Select(pad => pad.Id), Defaults.ForKind("tap").Pads.Select(pad => pad.Id));

    [Theory]
    [InlineData("pointe")]
    [InlineData("demi-pointe")]
    public void Every_pad_goes_into_a_box(string kind) => Assert.Same(Defaults, Defaults.ForKind(kind));

    [Fact]
    public void An_unknown_kind_is_refused()
    {
        Assert.Throws<ArgumentException>(() => Defaults.TraitsOf("wellington"));
        Assert.Throws<ArgumentException>(() => Defaults.PadsOf("wellington"));
    }
}
