using CsCheck;

namespace ShopFit.Fitting.Outlines;

public class ShoeOutlineTests
{
    private const int ChordsPerCurve = 20;
    private const int Shoes = 2_400;

    [Fact]
    public void A_shoe_never_crosses_itself_and_always_turns_the_same_way() =>
        DrawnFeet.GenShod.Sample(drawn =>
        {
            var outline = ShoeOutline.Of(drawn.Shoe);
            var polygon = outline.Flatten(ChordsPerCurve);

            FootOutlineTests.AssertClosed(outline);
            Assert.False(Polygon.CrossesItself(polygon));
            Assert.True(Polygon.SignedArea(polygon) > 0);
        }, iter: Shoes);

    [Fact]
    public void Length_breadths_and_slope_are_drawn_exactly() =>
        DrawnFeet.GenShod.Sample(drawn =>
        {
            var at = ShoePlaces.Of(drawn.Shoe);
            var points = ShoeOutline.Of(drawn.Shoe).Flatten(ChordsPerCurve);

            Assert.Equal(at.Length, points.Max(point => point.Forward), 1e-9);
            Assert.Equal(at.BallBreadth, at.OuterJoint.Across - at.InnerJoint.Across, 1e-9);
            Assert.Equal(at.BoxBreadth, at.BoxOuter.Across - at.BoxInner.Across, 1e-9);
            Assert.Equal(at.HeelBreadth, at.HeelOuter.Across - at.HeelInner.Across, 1e-9);
            Assert.Equal(at.ToeSlope, at.Length - at.Shoulder.Forward, 1e-9);
        }, iter: Shoes);

    [Fact]
    public void The_shoulder_is_never_hollow() =>
        DrawnFeet.GenShod.Sample(drawn =>
        {
            // From the outer side of the box to the platform: the fourth and fifth piece.
            var curves = ShoeOutline.Of(drawn.Shoe).Curves.Skip(3).Take(2);
            var points = curves.SelectMany(curve => Enumerable.Range(0, ChordsPerCurve).Select(chord => curve.At((double)chord / ChordsPerCurve))).ToArray();

            for (var i = 2; i < points.Length; i++)
            {
                Assert.True(Turn(points[i - 2], points[i - 1], points[i]) > -1e-9);
            }
        }, iter: Shoes);

    [Fact]
    public void The_corners_of_what_is_accepted_can_all_be_drawn()
    {
        double[][] ends = [[100, 350], [25, 140], [25, 140], [-10, 60]];
        var corners =
            from length in new double[] { 100, 150, 200, 280, 350 }
            from corner in Enumerable.Range(0, 16)
            let end = ends.Select((pair, part) => pair[(corner >> part) & 1]).ToArray()
            select new ShoeShape(length, end[0], end[1], end[2], end[3]);

        Assert.All(corners, shape =>
        {
            var polygon = ShoeOutline.Of(shape).Flatten(ChordsPerCurve);

            Assert.False(Polygon.CrossesItself(polygon));
            Assert.True(Polygon.SignedArea(polygon) > 0);
        });
    }

    [Fact]
    public void A_squarer_box_has_a_wider_platform()
    {
        var square = ShoePlaces.Of(new ShoeShape(242, 212, 78, 62, ToeSlope: 8));
        var tapered = ShoePlaces.Of(new ShoeShape(242, 212, 78, 62, ToeSlope: 24));

        Assert.True(square.PlatformOuter.Across > tapered.PlatformOuter.Across);
        Assert.Equal(square.PlatformInner, tapered.PlatformInner);
    }

    [Fact]
    public void A_small_shoe_has_the_look_of_a_large_one()
    {
        var large = ShoePlaces.Of(new ShoeShape(240, 210, 78, 62, 16));
        var small = ShoePlaces.Of(new ShoeShape(180, 157.5, 58.5, 46.5, 12));

        Assert.Equal(large.PlatformOuter.Across * 0.75, small.PlatformOuter.Across, 1e-9);
        Assert.Equal(large.Shoulder.Forward * 0.75, small.Shoulder.Forward, 1e-9);
    }

    [Fact]
    public void The_platform_lies_on_the_front_of_the_box()
    {
        var shape = new ShoeShape(242, 212, 78, 62, 16);

        var platform = Assert.Single(ShoeOutline.Platform(shape).Curves);

        Assert.Equal(242, platform.From.Forward);
        Assert.Equal(242, platform.To.Forward);
        Assert.Contains(ShoeOutline.Of(shape).Curves, curve => curve.From == platform.To && curve.To == platform.From);
    }

    private static double Turn(OutlinePoint a, OutlinePoint b, OutlinePoint c) =>
        ((b.Across - a.Across) * (c.Forward - b.Forward)) - ((b.Forward - a.Forward) * (c.Across - b.Across));
}
