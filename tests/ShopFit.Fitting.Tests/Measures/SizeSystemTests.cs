using CsCheck;

namespace ShopFit.Fitting.Measures;

public class SizeSystemTests
{
    private static readonly Gen<(SizeSystem System, double Size)> GenSize =
        Gen.OneOf(SizeSystem.All.ToArray())
            .SelectMany(system => Gen.Double[system.Smallest, system.Largest].Select(size => (system, size)));

    /// <summary>
    /// Unrounded sizes of a foot, computed from the published foot formulas: EU 1.5 F + 2 (F in cm); UK 3 F − 23 and
    /// 3 F − 10; US 3 F − 22, 3 F − 20.5, 3 F − 21 and 3 F − 9 2/3 (F in inches); JIS S 5037 F in cm.
    /// </summary>
    public static TheoryData<double, double, double, double, double, double, double, double, double> SizesOfFeet { get; } = new()
    {
        // foot mm, eu, uk-adult, uk-child, us-men, us-women, us-women-fia, us-child, jp
        { 150, 24.5000, -5.2835, 7.7165, -4.2835, -2.7835, -3.2835, 8.0499, 15 },
        { 155, 25.2500, -4.6929, 8.3071, -3.6929, -2.1929, -2.6929, 8.6404, 15.5 },
        { 160, 26.0000, -4.1024, 8.8976, -3.1024, -1.6024, -2.1024, 9.2310, 16 },
        { 165, 26.7500, -3.5118, 9.4882, -2.5118, -1.0118, -1.5118, 9.8215, 16.5 },
        { 170, 27.5000, -2.9213, 10.0787, -1.9213, -0.4213, -0.9213, 10.4121, 17 },
        { 175, 28.2500, -2.3307, 10.6693, -1.3307, 0.1693, -0.3307, 11.0026, 17.5 },
        { 180, 29.0000, -1.7402, 11.2598, -0.7402, 0.7598, 0.2598, 11.5932, 18 },
        { 185, 29.7500, -1.1496, 11.8504, -0.1496, 1.3504, 0.8504, 12.1837, 18.5 },
        { 190, 30.5000, -0.5591, 12.4409, 0.4409, 1.9409, 1.4409, 12.7743, 19 },
        { 195, 31.2500, 0.0315, 13.0315, 1.0315, 2.5315, 2.0315, 13.3648, 19.5 },
        { 200, 32.0000, 0.6220, 13.6220, 1.6220, 3.1220, 2.6220, 13.9554, 20 },
        { 205, 32.7500, 1.2126, 14.2126, 2.2126, 3.7126, 3.2126, 14.5459, 20.5 },
        { 210, 33.5000, 1.8031, 14.8031, 2.8031, 4.3031, 3.8031, 15.1365, 21 },
        { 215, 34.2500, 2.3937, 15.3937, 3.3937, 4.8937, 4.3937, 15.7270, 21.5 },
        { 220, 35.0000, 2.9843, 15.9843, 3.9843, 5.4843, 4.9843, 16.3176, 22 },
        { 225, 35.7500, 3.5748, 16.5748, 4.5748, 6.0748, 5.5748, 16.9081, 22.5 },
        { 230, 36.5000, 4.1654, 17.1654, 5.1654, 6.6654, 6.1654, 17.4987, 23 },
        { 235, 37.2500, 4.7559, 17.7559, 5.7559, 7.2559, 6.7559, 18.0892, 23.5 },
        { 240, 38.0000, 5.3465, 18.3465, 6.3465, 7.8465, 7.3465, 18.6798, 24 },
        { 245, 38.7500, 5.9370, 18.9370, 6.9370, 8.4370, 7.9370, 19.2703, 24.5 },
        { 250, 39.5000, 6.5276, 19.5276, 7.5276, 9.0276, 8.5276, 19.8609, 25 },
        { 255, 40.2500, 7.1181, 20.1181, 8.1181, 9.6181, 9.1181, 20.4514, 25.5 },
        { 260, 41.0000, 7.7087, 20.7087, 8.7087, 10.2087, 9.7087, 21.0420, 26 },
        { 265, 41.7500, 8.2992, 21.2992, 9.2992, 10.7992, 10.2992, 21.6325, 26.5 },
        { 270, 42.5000, 8.8898, 21.8898, 9.8898, 11.3898, 10.8898, 22.2231, 27 },
        { 275, 43.2500, 9.4803, 22.4803, 10.4803, 11.9803, 11.4803, 22.8136, 27.5 },
        { 280, 44.0000, 10.0709, 23.0709, 11.0709, 12.5709, 12.0709, 23.4042, 28 },
        { 285, 44.7500, 10.6614, 23.6614, 11.6614, 13.1614, 12.6614, 23.9948, 28.5 },
        { 290, 45.5000, 11.2520, 24.2520, 12.2520, 13.7520, 13.2520, 24.5853, 29 },
        { 295, 46.2500, 11.8425, 24.8425, 12.8425, 14.3425, 13.8425, 25.1759, 29.5 },
        { 300, 47.0000, 12.4331, 25.4331, 13.4331, 14.9331, 14.4331, 25.7664, 30 },
    };

    [Theory]
    [MemberData(nameof(SizesOfFeet))]
    public void SizeOfFoot_follows_the_published_formulas(
        double foot, double eu, double ukAdult, double ukChild, double usMen, double usWomen, double usWomenFia, double usChild, double jp)
    {
        double[] expected = [eu, ukAdult, ukChild, usMen, usWomen, usWomenFia, usChild, foot, jp];

        var sizes = SizeSystem.All.Select(system => system.SizeOfFoot(Millimetres.From(foot)));

        Assert.All(expected.Zip(sizes), pair => Assert.Equal(pair.First, pair.Second, 0.00005));
    }

    // Last lengths in inches (EU: cm). UK child 0, child 1, adult 1 and "adult 2 is 9 inches" are printed in the Chinese
    // Wikipedia article on shoe sizes; EU 16 and EU 48 in a published size table; the others follow from the same formulas.
    [Theory]
    [InlineData("uk-child", 0, 4.0 * 25.4, 101.60)]
    [InlineData("uk-child", 1, 13.0 / 3 * 25.4, 110.07)]
    [InlineData("uk-child", 13, 25.0 / 3 * 25.4, 211.67)]
    [InlineData("uk-adult", 0, 25.0 / 3 * 25.4, 211.67)]
    [InlineData("uk-adult", 1, 26.0 / 3 * 25.4, 220.13)]
    [InlineData("uk-adult", 2, 9.0 * 25.4, 228.60)]
    [InlineData("uk-adult", 3, 28.0 / 3 * 25.4, 237.07)]
    [InlineData("uk-adult", 5, 10.0 * 25.4, 254.00)]
    [InlineData("uk-adult", 8, 11.0 * 25.4, 279.40)]
    [InlineData("eu", 16, 320.0 / 3, 106.67)]
    [InlineData("eu", 30, 200, 200.00)]
    [InlineData("eu", 36, 240, 240.00)]
    [InlineData("eu", 39, 260, 260.00)]
    [InlineData("eu", 48, 320, 320.00)]
    public void LastLengthOf_follows_the_published_formulas(string system, double size, double exact, double printed)
    {
        var last = SizeSystem.Find(system)!.LastLengthOf(size);

        Assert.NotNull(last);
        Assert.Equal(exact, last.Value.Value, precision: 9);
        Assert.Equal(printed, last.Value.Value, 0.005);
    }

    // The American last formulas: 3 L − 24 (from memory), 3 L − 22.5, 3 L − 23, 3 L − 11 2/3 (a size table quoted second-hand).
    [Theory]
    [InlineData("us-men", 3, 9.0)]
    [InlineData("us-women", 4.5, 9.0)]
    [InlineData("us-women-fia", 4, 9.0)]
    [InlineData("us-child", 0, 35.0 / 9)]
    public void American_lasts_are_thirds_of_an_inch_apart(string system, double size, double inches) =>
        Assert.Equal(inches, SizeSystem.Find(system)!.LastLengthOf(size)!.Value.Inches, precision: 9);

    [Theory]
    [InlineData("mondopoint", 235)]
    [InlineData("jp", 23.5)]
    public void Where_a_size_is_the_foot_the_last_is_left_to_the_maker(string system, double size)
    {
        Assert.Null(SizeSystem.Find(system)!.LastLengthOf(size));
        Assert.Equal(Millimetres.From(235), SizeSystem.Find(system)!.FootLengthOf(size));
    }

    // A comment in public code that cites Wikipedia: US men 10 = UK 9 = EU 42.6 = a foot of 271 mm.
    [Theory]
    [InlineData("us-men", 10)]
    [InlineData("uk-adult", 9)]
    [InlineData("eu", 42.6)]
    public void A_foot_of_271_mm_is_named_as_the_check_row_prints_it(string system, double size) =>
        Assert.Equal(size, SizeSystem.Find(system)!.SizeOfFoot(Millimetres.From(271)), 0.051);

    // How much ball girth and breadth of surveyed women rise in one step of length: 0.5732 and 0.2134 mm a mm (ANSUR II,
    // Gordon and others 2014), so 2.87 and 1.07 mm in 5 mm, 3.8 and 1.42 in a Paris point, 4.85 and 1.81 in a UK size.
    [Theory]
    [InlineData("mondopoint", 5, 2.87, 1.07)]
    [InlineData("eu", 1, 3.82, 1.42)]
    [InlineData("uk-adult", 1, 4.85, 1.81)]
    public void A_step_of_length_is_as_long_as_its_published_girth_and_breadth_say(string id, double sizes, double girth, double breadth)
    {
        var system = SizeSystem.Find(id)!;
        var step = (system.FootLengthOf(system.Smallest + sizes) - system.FootLengthOf(system.Smallest)).Value;

        Assert.Equal(girth, 0.5732 * step, 0.005);
        Assert.Equal(breadth, 0.2134 * step, 0.005);
    }

    [Fact]
    public void The_nine_systems_are_found_by_their_ids()
    {
        string[] ids = ["eu", "uk-adult", "uk-child", "us-men", "us-women", "us-women-fia", "us-child", "mondopoint", "jp"];

        Assert.Equal(ids, SizeSystem.All.Select(system => system.Id));
        Assert.All(ids, id => Assert.Equal(id, SizeSystem.Find(id)!.ToString()));
        Assert.Null(SizeSystem.Find("EU"));
        Assert.Null(SizeSystem.Find(""));
    }

    [Fact]
    public void A_size_and_the_foot_it_means_lead_back_to_each_other() =>
        GenSize.Where(pair => pair.System.FootLengthOf(pair.Size).Value is >= SizeSystem.ShortestFoot and <= SizeSystem.LongestFoot)
            .Sample((system, size) =>
                Assert.Equal(size, system.SizeOfFoot(system.FootLengthOf(size)), 1e-9));

    [Fact]
    public void The_usual_foot_is_two_sizes_shorter_than_the_last() =>
        GenSize.Where(pair => pair.System.LastLengthOf(pair.Size) is not null && pair.System.Covers(pair.Size + 2))
            .Sample((system, size) =>
                Assert.Equal(system.LastLengthOf(size)!.Value.Value, system.FootLengthOf(size + 2).Value, 1e-9));

    [Fact]
    public void A_larger_size_means_a_longer_foot() =>
        GenSize.Where(pair => pair.System.Covers(pair.Size + 0.01))
            .Sample((system, size) => Assert.True(system.FootLengthOf(size + 0.01) > system.FootLengthOf(size)));

    [Fact]
    public void NearestLabel_is_a_label_at_most_half_a_step_away() =>
        GenSize.Where(pair => pair.Size < pair.System.Largest - pair.System.LabelStep)
            .Sample((system, size) =>
            {
                var label = system.NearestLabel(size);

                Assert.Equal(0, Math.IEEERemainder(label, system.LabelStep), precision: 9);
                Assert.True(Math.Abs(label - size) <= (system.LabelStep / 2) + 1e-9);
            });

    [Theory]
    [InlineData("us-women", 7.24, 7)]
    [InlineData("us-women", 7.25, 7.5)]
    [InlineData("us-women", 7.75, 8)]
    [InlineData("eu", 37.2, 37)]
    [InlineData("mondopoint", 237.4, 235)]
    [InlineData("mondopoint", 237.5, 240)]
    [InlineData("jp", 23.6, 23.5)]
    public void NearestLabel_takes_the_larger_of_two_that_are_as_near(string system, double size, double label) =>
        Assert.Equal(label, SizeSystem.Find(system)!.NearestLabel(size));

    [Theory]
    [InlineData("eu", 15.99)]
    [InlineData("eu", 50.01)]
    [InlineData("uk-adult", -0.5)]
    [InlineData("uk-child", 14)]
    [InlineData("us-women", double.NaN)]
    [InlineData("us-men", double.PositiveInfinity)]
    [InlineData("mondopoint", 99)]
    [InlineData("jp", 235)]
    public void A_size_that_is_not_of_the_system_is_refused_by_name(string id, double size)
    {
        var system = SizeSystem.Find(id)!;

        Assert.False(system.Covers(size));
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => system.FootLengthOf(size));
        Assert.Contains(id, refusal.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => system.LastLengthOf(size));
    }

    [Theory]
    [InlineData("eu", 15.7)]
    [InlineData("eu", 50.25)]
    [InlineData("mondopoint", 97)]
    [InlineData("jp", double.NaN)]
    public void NearestLabel_does_not_pull_a_size_back_into_the_system(string id, double size) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SizeSystem.Find(id)!.NearestLabel(size));

    [Theory]
    [InlineData(99.9)]
    [InlineData(350.1)]
    [InlineData(-240)]
    public void A_length_that_is_not_a_foot_has_no_size(double foot) =>
        Assert.All(SizeSystem.All, system =>
            Assert.Throws<ArgumentOutOfRangeException>(() => system.SizeOfFoot(Millimetres.From(foot))));
}
