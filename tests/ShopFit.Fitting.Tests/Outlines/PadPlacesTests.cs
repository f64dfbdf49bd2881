using CsCheck;
using ShopFit.Fitting.Defaults;

namespace ShopFit.Fitting.Outlines;

public class PadPlacesTests
{
    private static readonly ShoeShape Plain = new(242, BallGirth: 212, BoxBreadth: 78, HeelBreadth: 62, ToeSlope: 16);

    public static TheoryData<string> Pads { get; } =
        ["second-toe-hollow", "first-toe-lift", "toe-cap", "heel-cushion", "joint-cushion", "toe-cushion", "loose-wool", "toe-spacer"];

    [Fact]
    public void Every_pad_of_the_fit_model_has_its_place() =>
        Assert.All(FitDefaults.Standard.Pads, pad => Assert.NotEmpty(PadPlaces.Of(pad.Id, Plain)));

    [Theory]
    [MemberData(nameof(Pads))]
    public void A_pad_lies_inside_its_shoe_and_never_crosses_itself(string pad) =>
        DrawnFeet.GenShod.Sample(drawn =>
        {
            var shoe = ShoeOutline.Of(drawn.Shoe).Flatten(40);
            var shapes = PadPlaces.Of(pad, drawn.Shoe);

            Assert.NotEmpty(shapes);
            Assert.All(shapes, shape =>
            {
                var polygon = shape.Flatten(12);

                FootOutlineTests.AssertClosed(shape);
                Assert.False(Polygon.CrossesItself(polygon));
                Assert.True(Polygon.SignedArea(polygon) > 20);

                // Half a millimetre: less than the line of the shoe is broad.
                Assert.All(polygon, point => Assert.InRange(Polygon.DistanceOutside(point, shoe), 0, 0.5));
            });
        }, iter: 100);

    [Fact]
    public void A_pad_of_the_shops_own_has_no_known_place() => Assert.Empty(PadPlaces.Of("sheepskin", Plain));

    [Fact]
    public void Joint_and_toe_cushions_lie_on_both_sides() =>
        Assert.All(["joint-cushion", "toe-cushion"], pad =>
        {
            var shapes = PadPlaces.Of(pad, Plain);

            Assert.Equal(2, shapes.Count);
            Assert.All(shapes[0].Flatten(12), point => Assert.True(point.Across > 0));
            Assert.All(shapes[1].Flatten(12), point => Assert.True(point.Across < 0));
        });

    [Fact]
    public void Joint_cushions_lie_at_the_joints_and_heel_cushions_at_the_heel()
    {
        var at = ShoePlaces.Of(Plain);
        var joints = PadPlaces.Of("joint-cushion", Plain);

        Assert.InRange(at.OuterJoint.Forward, joints[0].Flatten(12).Min(point => point.Forward), joints[0].Flatten(12).Max(point => point.Forward));
        Assert.InRange(at.InnerJoint.Forward, joints[1].Flatten(12).Min(point => point.Forward), joints[1].Flatten(12).Max(point => point.Forward));
        Assert.All(PadPlaces.Of("heel-cushion", Plain)[0].Flatten(12), point => Assert.InRange(point.Forward, 0, 0.15 * 242));
    }

    [Fact]
    public void The_hollow_lies_under_the_second_toe()
    {
        var hollow = PadPlaces.Of("second-toe-hollow", Plain)[0].Curves;
        var wool = PadPlaces.Of("loose-wool", Plain)[0].Curves;
        var secondToe = FootPlaces.Of(new FootShape(242) { BallBreadth = 212 / 2.46, ToeBreadth = 78 }).Tips[1];

        Assert.Contains(hollow, curve => Math.Abs(curve.To.Across - secondToe.Across) < 1);
        Assert.Equal(hollow.Count - 1, wool.Count);
    }
}
