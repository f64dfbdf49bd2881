using System.Globalization;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Scoring;

namespace ShopFit.Fitting.Sentences;

public class FitSentencesTests
{
    public FitSentencesTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en-GB");

    [Theory]
    [InlineData("length", 4, 1, "2 mm long, very sure")]
    [InlineData("length", -1.2, 2.5, "about right, fairly sure")]
    [InlineData("length", -2, 9, "a little short, not sure")]
    [InlineData("ball", -6, 9, "a little snug, not sure")]
    [InlineData("ball", -8, 1, "3 mm tight, very sure")]
    [InlineData("heel", 2, 3, "3 mm loose, fairly sure")]
    [InlineData("taper", 10, 30, "6 mm tight, not sure")]
    [InlineData("taper", -6, 2, "2 mm loose, very sure")]
    [InlineData("vamp", 8, 2, "3 mm long, very sure")]
    [InlineData("shank", -3, 1, "1.5 points soft, very sure")]
    [InlineData("shank", 1.9, 2, "a little stiff, fairly sure")]
    [InlineData("toe-line", -4, 1, "2 mm tight, very sure")]
    [InlineData("toe-line", 40, 1, "about right, very sure")]
    public void A_place_is_told_in_words(string criterion, double ease, double half, string sentence) =>
        Assert.Equal(sentence, FitSentences.Ease(Fit(criterion, ease, half)));

    [Theory]
    [InlineData(.02, "unlikely", "less than 1 in 10")]
    [InlineData(.1, "unlikely", "1 in 10")]
    [InlineData(.25, "perhaps", "3 in 10")]
    [InlineData(.45, "even", "5 in 10")]
    [InlineData(.6, "likely", "6 in 10")]
    [InlineData(.9, "likely", "9 in 10")]
    [InlineData(.97, "likely", "more than 9 in 10")]
    public void A_chance_is_told_in_words(double chance, string word, string inTen) =>
        Assert.Equal((word, inTen), (FitSentences.ChanceWord(chance), FitSentences.ChanceInTen(chance)));

    [Fact]
    public void Numbers_follow_the_culture()
    {
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");

        Assert.Equal("1,5 points soft, very sure", FitSentences.Ease(Fit("shank", -3, 1)));
    }

    [Fact]
    public void Everything_the_standard_numbers_name_has_a_name()
    {
        var numbers = FitDefaults.Standard;

        Assert.All(numbers.Eases, row => Assert.NotEqual(row.Criterion, FitSentences.Criterion(row.Criterion)));
        Assert.All(numbers.Eases, row => Assert.NotEmpty(FitSentences.End(row.Criterion, above: true) + FitSentences.End(row.Criterion, above: false)));
        Assert.All(numbers.Pads, pad => Assert.NotEqual(pad.Id, FitSentences.Pad(pad.Id)));
        Assert.All(numbers.Checks, check => Assert.NotEqual(check.Id, FitSentences.Check(check.Id)));
        Assert.All(numbers.Checks, check => Assert.NotEqual($"{check.Id}.2", FitSentences.Answer(check.Id, 2)));
        Assert.All(numbers.Checks, check => Assert.NotEmpty(FitSentences.Position(check.Position)));
        Assert.All(Traits.All, row => Assert.NotEqual(row.Id, FitSentences.TraitName(row.Trait)));
        Assert.All(Traits.All.Where(row => row.TakesWords), row => Assert.NotEmpty(FitSentences.Word(row.Trait, 0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => FitSentences.Word(Trait.Length, 0));
    }

    [Fact]
    public void A_pad_of_the_shops_own_keeps_its_own_name() => Assert.Equal("moss-wedge", FitSentences.Pad("moss-wedge"));

    private static CriterionFit Fit(string criterion, double ease, double half) => new(
        Side.Left, FitDefaults.Standard.CriteriaOf("pointe")!.Single(row => row.Id == criterion), ease, ease - half, ease + half, .5);
}
