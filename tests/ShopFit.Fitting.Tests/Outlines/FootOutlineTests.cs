using CsCheck;

namespace ShopFit.Fitting.Outlines;

public class FootOutlineTests
{
    private const int ChordsPerCurve = 20;
    private const int Feet = 2_400;

    [Fact]
    public void A_foot_never_crosses_itself_and_always_turns_the_same_way() =>
        DrawnFeet.GenBare.Sample(drawn =>
        {
            var polygon = FootOutline.Of(drawn.Foot).Flatten(ChordsPerCurve);

            Assert.False(Polygon.CrossesItself(polygon));
            Assert.True(Polygon.SignedArea(polygon) > 0);
        }, iter: Feet);

    [Fact]
    public void A_foot_is_closed_and_without_gaps() =>
        DrawnFeet.GenBare.Sample(drawn => AssertClosed(FootOutline.Of(drawn.Foot)), iter: 200);

    [Fact]
    public void Length_and_breadths_are_drawn_exactly() =>
        DrawnFeet.GenBare.Sample(drawn =>
        {
            var at = FootPlaces.Of(drawn.Foot);
            var points = FootOutline.Of(drawn.Foot).Curves.Select(curve => curve.From).ToArray();

            Assert.Equal(at.Length, points.Max(point => point.Forward), 1e-12);
            Assert.Equal(at.Length, at.LongestTip.Forward, 1e-12);
            Assert.Equal(at.BallBreadth, at.OuterJoint.Across - at.InnerJoint.Across, 1e-12);
            Assert.Contains(at.InnerJoint, points);
            Assert.Contains(at.OuterJoint, points);
            Assert.Equal(at.ToeBreadth, at.OuterToeEdge.Across - at.InnerToeEdge.Across, 1e-12);
            Assert.Equal(at.HeelBreadth, at.HeelOuter.Across - at.HeelInner.Across, 1e-12);
            Assert.Equal(at.ToeBreadth, at.ToeWidths.Sum(), 1e-9);
        }, iter: Feet);

    [Fact]
    public void What_can_be_drawn_is_drawn_as_it_was_read() =>
        DrawnFeet.GenBare.Sample(drawn =>
        {
            var (foot, at) = (drawn.Foot, FootPlaces.Of(drawn.Foot));

            Assert.Equal(foot.Length, at.Length);
            Assert.Equal(Math.Clamp(foot.ToeSlope!.Value, 0, 0.18 * foot.Length), at.Length - at.Tips[3].Forward, 1e-9);
            Assert.Equal(Math.Clamp(foot.SecondToeLead!.Value, -0.08 * foot.Length, 0.08 * foot.Length), at.Tips[1].Forward - at.Tips[0].Forward, 1e-9);
        }, iter: Feet);

    [Fact]
    public void Every_point_of_a_foot_lies_between_heel_and_longest_toe() =>
        DrawnFeet.GenBare.Sample(drawn =>
            Assert.All(FootOutline.Of(drawn.Foot).Flatten(ChordsPerCurve), point => Assert.InRange(point.Forward, -1e-9, FootPlaces.Of(drawn.Foot).Length + 1e-9)), iter: 200);

    [Fact]
    public void The_corners_of_what_is_accepted_can_all_be_drawn()
    {
        // The ranges accepted as readings: every combination of their ends, at five lengths.
        double[][] ends = [[25, 140], [25, 140], [25, 140], [60, 260], [-30, 30], [-10, 60]];
        var corners =
            from length in new double[] { 100, 150, 200, 280, 350 }
            from corner in Enumerable.Range(0, 64)
            let end = ends.Select((pair, trait) => pair[(corner >> trait) & 1]).ToArray()
            select new FootShape(length)
            {
                BallBreadth = end[0],
                ToeBreadth = end[1],
                HeelBreadth = end[2],
                HeelToBall = end[3],
                SecondToeLead = end[4],
                ToeSlope = end[5],
            };

        Assert.All(corners, shape =>
        {
            var polygon = FootOutline.Of(shape).Flatten(ChordsPerCurve);

            Assert.False(Polygon.CrossesItself(polygon));
            Assert.True(Polygon.SignedArea(polygon) > 0);
        });
    }

    [Theory]
    [InlineData(10, 100)]
    [InlineData(2385, 350)]
    public void Only_the_drawing_is_held_within_limits(double length, double drawn)
    {
        var shape = new FootShape(length);

        Assert.Equal(drawn, FootPlaces.Of(shape).Length);
        Assert.Equal(length, shape.Length);
    }

    [Fact]
    public void What_is_missing_follows_the_length()
    {
        var at = FootPlaces.Of(new FootShape(240));

        // ANSUR II, women: breadth 40.16 + 0.2134 L = 91.376; ball length 0.739 L; toe breadth and slope *(cp)*.
        Assert.Equal(91.376, at.BallBreadth, 1e-9);
        Assert.Equal(0.86 * 91.376, at.ToeBreadth, 1e-9);
        Assert.Equal(63.318, at.HeelBreadth, 1e-9);
        Assert.Equal(177.36, at.InnerJoint.Forward, 1e-9);
        Assert.Equal(153.36, at.OuterJoint.Forward, 1e-9);
        Assert.Equal(224, at.Tips[3].Forward, 1e-9);
        Assert.Equal(238, at.Tips[1].Forward, 1e-9);
    }

    [Fact]
    public void A_tapered_foot_falls_away_to_its_little_toe()
    {
        var tips = FootPlaces.Of(new FootShape(240) { ToeSlope = 30, SecondToeLead = -5 }).Tips;

        Assert.All(tips.Zip(tips.Skip(1)), pair => Assert.True(pair.First.Forward > pair.Second.Forward));
        Assert.True(tips[0].Forward - tips[4].Forward > 45);
    }

    [Fact]
    public void A_square_foot_has_four_toes_almost_level()
    {
        var tips = FootPlaces.Of(new FootShape(240) { ToeSlope = 4, SecondToeLead = -1 }).Tips;

        Assert.True(tips.Take(4).Max(tip => tip.Forward) - tips.Take(4).Min(tip => tip.Forward) <= 4);
        Assert.True(tips[3].Forward - tips[4].Forward > 8);
    }

    [Fact]
    public void A_long_second_toe_stands_out_by_its_lead()
    {
        var at = FootPlaces.Of(new FootShape(240) { ToeSlope = 18, SecondToeLead = 8 });

        Assert.Equal(at.Tips[1], at.LongestTip);
        Assert.Equal(240, at.Tips[1].Forward);
        Assert.Equal(232, at.Tips[0].Forward);
        Assert.True(at.Tips[2].Forward < at.Tips[1].Forward);
    }

    [Fact]
    public void The_big_toe_is_the_broadest_and_lies_on_the_inner_side()
    {
        var at = FootPlaces.Of(new FootShape(240));

        Assert.Equal(at.ToeWidths.Max(), at.ToeWidths[0]);
        Assert.All(at.Tips.Zip(at.Tips.Skip(1)), pair => Assert.True(pair.First.Across < pair.Second.Across));
        Assert.All(at.Clefts.Select((cleft, toe) => (cleft, toe)), place =>
            Assert.InRange(place.cleft.Across, at.Tips[place.toe].Across, at.Tips[place.toe + 1].Across));
    }

    [Fact]
    public void A_gathered_foot_leaves_the_ease_of_the_ball_as_its_gap()
    {
        var shoe = ShoePlaces.Of(new ShoeShape(242, BallGirth: 212, BoxBreadth: 78, HeelBreadth: 62, ToeSlope: 16));
        var foot = FootPlaces.Of(new FootShape(240).Gathered(ballGirth: 225, squeeze: 8));

        Assert.Equal((212 - (225 - 8)) / 2.46, shoe.BallBreadth - foot.BallBreadth, 1e-9);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void What_is_not_a_number_is_not_drawn(double value)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => FootOutline.Of(new FootShape(value)));
        Assert.Throws<ArgumentOutOfRangeException>(() => FootOutline.Of(new FootShape(240) { ToeSlope = value }));
    }

    internal static void AssertClosed(Outline outline) =>
        Assert.All(
            outline.Curves.Zip(outline.Curves.Skip(1).Append(outline.Curves[0])),
            pair =>
            {
                Assert.Equal(pair.First.To.Across, pair.Second.From.Across, 1e-9);
                Assert.Equal(pair.First.To.Forward, pair.Second.From.Forward, 1e-9);
            });
}
