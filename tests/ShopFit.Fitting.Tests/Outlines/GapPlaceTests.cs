namespace ShopFit.Fitting.Outlines;

public class GapPlaceTests
{
    [Theory]
    [InlineData("length")]
    [InlineData("box")]
    [InlineData("taper")]
    [InlineData("ball")]
    [InlineData("heel")]
    public void What_can_be_seen_from_above_has_a_place(string criterion) => Assert.Equal(criterion, GapPlace.Find(criterion)!.Criterion);

    [Theory]
    [InlineData("crown")]
    [InlineData("vamp")]
    [InlineData("shank")]
    [InlineData("toe-line")]
    [InlineData("nonsense")]
    public void What_cannot_be_seen_from_above_has_none(string criterion) => Assert.Null(GapPlace.Find(criterion));

    [Theory]
    [InlineData(240, 235)]
    [InlineData(240, 244)]
    public void Both_toe_ends_and_both_heels_lie_in_their_places(double foot, double shoe)
    {
        var toes = GapPlace.Find("length")!.Box(foot, shoe);
        var heel = GapPlace.Find("heel")!.Box(foot, shoe);

        Assert.True(toes.ForwardFrom < Math.Min(foot, shoe) && Math.Max(foot, shoe) < toes.ForwardTo);
        Assert.True(heel.ForwardFrom < 0 && heel.ForwardTo > ShoePlaces.Of(new ShoeShape(shoe, 212, 78, 62, 16)).HeelOuter.Forward);
    }

    [Fact]
    public void The_joints_of_foot_and_shoe_lie_in_their_place()
    {
        var box = GapPlace.Find("ball")!.Box(240, 242);
        var (foot, shoe) = (FootPlaces.Of(new FootShape(240)), ShoePlaces.Of(new ShoeShape(242, 212, 78, 62, 16)));

        Assert.All(
            [foot.InnerJoint, foot.OuterJoint, shoe.InnerJoint, shoe.OuterJoint],
            joint => Assert.InRange(joint.Forward, box.ForwardFrom, box.ForwardTo));
    }

    [Fact]
    public void Only_the_outer_toes_are_on_one_side()
    {
        var taper = GapPlace.Find("taper")!.Box(240, 242);
        var box = GapPlace.Find("box")!.Box(240, 242);
        var little = FootPlaces.Of(new FootShape(240)).Tips[4];

        Assert.Equal(0, taper.AcrossFrom);
        Assert.True(box.AcrossFrom < -60);
        Assert.InRange(little.Forward, taper.ForwardFrom, taper.ForwardTo);
    }
}
