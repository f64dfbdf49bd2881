using ShopFit.Fitting.Feet;

namespace ShopFit.Fitting.Measures;

public class JisGirthTests
{
    /// <summary>Girths from A to G, computed from the rule that gives back every row read of JIS S 5037.</summary>
    public static TheoryData<Sex, double, double[]> Grid { get; } = new()
    {
        { Sex.Female, 195, [183, 189, 195, 201, 207, 213, 219, 225, 231, 237] },
        { Sex.Female, 200, [186, 192, 198, 204, 210, 216, 222, 228, 234, 240] },
        { Sex.Female, 205, [189, 195, 201, 207, 213, 219, 225, 231, 237, 243] },
        { Sex.Female, 210, [192, 198, 204, 210, 216, 222, 228, 234, 240, 246] },
        { Sex.Female, 215, [195, 201, 207, 213, 219, 225, 231, 237, 243, 249] },
        { Sex.Female, 220, [198, 204, 210, 216, 222, 228, 234, 240, 246, 252] },
        { Sex.Female, 225, [201, 207, 213, 219, 225, 231, 237, 243, 249, 255] },
        { Sex.Female, 230, [204, 210, 216, 222, 228, 234, 240, 246, 252, 258] },
        { Sex.Female, 235, [207, 213, 219, 225, 231, 237, 243, 249, 255, 261] },
        { Sex.Female, 240, [210, 216, 222, 228, 234, 240, 246, 252, 258, 264] },
        { Sex.Female, 245, [213, 219, 225, 231, 237, 243, 249, 255, 261, 267] },
        { Sex.Female, 250, [216, 222, 228, 234, 240, 246, 252, 258, 264, 270] },
        { Sex.Female, 255, [219, 225, 231, 237, 243, 249, 255, 261, 267, 273] },
        { Sex.Female, 260, [222, 228, 234, 240, 246, 252, 258, 264, 270, 276] },
        { Sex.Female, 265, [225, 231, 237, 243, 249, 255, 261, 267, 273, 279] },
        { Sex.Female, 270, [228, 234, 240, 246, 252, 258, 264, 270, 276, 282] },
        { Sex.Male, 200, [189, 195, 201, 207, 213, 219, 225, 231, 237, 243] },
        { Sex.Male, 205, [192, 198, 204, 210, 216, 222, 228, 234, 240, 246] },
        { Sex.Male, 210, [195, 201, 207, 213, 219, 225, 231, 237, 243, 249] },
        { Sex.Male, 215, [198, 204, 210, 216, 222, 228, 234, 240, 246, 252] },
        { Sex.Male, 220, [201, 207, 213, 219, 225, 231, 237, 243, 249, 255] },
        { Sex.Male, 225, [204, 210, 216, 222, 228, 234, 240, 246, 252, 258] },
        { Sex.Male, 230, [207, 213, 219, 225, 231, 237, 243, 249, 255, 261] },
        { Sex.Male, 235, [210, 216, 222, 228, 234, 240, 246, 252, 258, 264] },
        { Sex.Male, 240, [213, 219, 225, 231, 237, 243, 249, 255, 261, 267] },
        { Sex.Male, 245, [216, 222, 228, 234, 240, 246, 252, 258, 264, 270] },
        { Sex.Male, 250, [219, 225, 231, 237, 243, 249, 255, 261, 267, 273] },
        { Sex.Male, 255, [222, 228, 234, 240, 246, 252, 258, 264, 270, 276] },
        { Sex.Male, 260, [225, 231, 237, 243, 249, 255, 261, 267, 273, 279] },
        { Sex.Male, 265, [228, 234, 240, 246, 252, 258, 264, 270, 276, 282] },
        { Sex.Male, 270, [231, 237, 243, 249, 255, 261, 267, 273, 279, 285] },
        { Sex.Male, 275, [234, 240, 246, 252, 258, 264, 270, 276, 282, 288] },
        { Sex.Male, 280, [237, 243, 249, 255, 261, 267, 273, 279, 285, 291] },
        { Sex.Male, 285, [240, 246, 252, 258, 264, 270, 276, 282, 288, 294] },
        { Sex.Male, 290, [243, 249, 255, 261, 267, 273, 279, 285, 291, 297] },
        { Sex.Male, 295, [246, 252, 258, 264, 270, 276, 282, 288, 294, 300] },
        { Sex.Male, 300, [249, 255, 261, 267, 273, 279, 285, 291, 297, 303] },
    };

    [Theory]
    [MemberData(nameof(Grid))]
    public void Of_gives_the_grid_of_the_standard(Sex sex, double foot, double[] girths)
    {
        var letters = Enum.GetValues<JisGirthLetter>();

        Assert.Equal(girths, letters.Select(letter => JisGirth.Of(sex, Millimetres.From(foot), letter).Value));
        Assert.Equal(letters.Cast<JisGirthLetter?>(), girths.Select(girth => JisGirth.LetterOf(sex, Millimetres.From(foot), Millimetres.From(girth))));
    }

    // Rows of JIS S 5037 as printed on public pages: women and men 23.5 in full (A to EEEE), women 23.0 E, men 25.0 E,
    // men 26.0 EEE (tbs.co.jp/rikuou_tbs/shoes/s3.html).
    [Theory]
    [InlineData(Sex.Female, 235, JisGirthLetter.A, 207)]
    [InlineData(Sex.Female, 235, JisGirthLetter.B, 213)]
    [InlineData(Sex.Female, 235, JisGirthLetter.C, 219)]
    [InlineData(Sex.Female, 235, JisGirthLetter.D, 225)]
    [InlineData(Sex.Female, 235, JisGirthLetter.E, 231)]
    [InlineData(Sex.Female, 235, JisGirthLetter.EE, 237)]
    [InlineData(Sex.Female, 235, JisGirthLetter.EEE, 243)]
    [InlineData(Sex.Female, 235, JisGirthLetter.EEEE, 249)]
    [InlineData(Sex.Male, 235, JisGirthLetter.A, 210)]
    [InlineData(Sex.Male, 235, JisGirthLetter.B, 216)]
    [InlineData(Sex.Male, 235, JisGirthLetter.C, 222)]
    [InlineData(Sex.Male, 235, JisGirthLetter.D, 228)]
    [InlineData(Sex.Male, 235, JisGirthLetter.E, 234)]
    [InlineData(Sex.Male, 235, JisGirthLetter.EE, 240)]
    [InlineData(Sex.Male, 235, JisGirthLetter.EEE, 246)]
    [InlineData(Sex.Male, 235, JisGirthLetter.EEEE, 252)]
    [InlineData(Sex.Female, 230, JisGirthLetter.E, 228)]
    [InlineData(Sex.Male, 250, JisGirthLetter.E, 243)]
    [InlineData(Sex.Male, 260, JisGirthLetter.EEE, 261)]
    public void Of_gives_the_rows_that_are_printed(Sex sex, double foot, JisGirthLetter letter, double girth) =>
        Assert.Equal(Millimetres.From(girth), JisGirth.Of(sex, Millimetres.From(foot), letter));

    // Worked examples: a woman of 233 and 233 mm is 23.5 E; a man of 260 and 261 mm is 26 EEE (tbs.co.jp, the same page).
    [Theory]
    [InlineData(Sex.Female, 233, 233, JisGirthLetter.E)]
    [InlineData(Sex.Male, 260, 261, JisGirthLetter.EEE)]
    public void LetterOf_gives_the_worked_examples(Sex sex, double foot, double girth, JisGirthLetter letter) =>
        Assert.Equal(letter, JisGirth.LetterOf(sex, Millimetres.From(foot), Millimetres.From(girth)));

    // Class limits (the same page): a length takes 2 mm below and above, a girth 3 mm below to 2 mm above.
    [Theory]
    [InlineData(233, 228)]
    [InlineData(237, 233)]
    public void A_class_reaches_to_its_limits(double foot, double girth) =>
        Assert.Equal(JisGirthLetter.E, JisGirth.LetterOf(Sex.Female, Millimetres.From(foot), Millimetres.From(girth)));

    [Theory]
    [InlineData(227, JisGirthLetter.D)]
    [InlineData(234, JisGirthLetter.EE)]
    [InlineData(203, null)]
    [InlineData(264, null)]
    public void Beyond_its_limits_another_class_begins_or_none(double girth, JisGirthLetter? letter) =>
        Assert.Equal(letter, JisGirth.LetterOf(Sex.Female, Millimetres.From(235), Millimetres.From(girth)));

    [Theory]
    [InlineData(Sex.Female, 190)]
    [InlineData(Sex.Female, 275)]
    [InlineData(Sex.Male, 195)]
    [InlineData(Sex.Male, 305)]
    public void A_foot_outside_the_table_is_refused(Sex sex, double foot) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => JisGirth.Of(sex, Millimetres.From(foot), JisGirthLetter.E));
}
