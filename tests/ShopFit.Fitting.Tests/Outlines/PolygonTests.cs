namespace ShopFit.Fitting.Outlines;

public class PolygonTests
{
    private static readonly OutlinePoint[] Square = [new(0, 0), new(2, 0), new(2, 2), new(0, 2)];
    private static readonly OutlinePoint[] Bow = [new(0, 0), new(2, 2), new(2, 0), new(0, 2)];

    [Fact]
    public void A_bow_crosses_itself_and_a_square_does_not()
    {
        Assert.True(Polygon.CrossesItself(Bow));
        Assert.False(Polygon.CrossesItself(Square));
    }

    [Fact]
    public void A_square_of_two_has_an_area_of_four_and_an_inside()
    {
        Assert.Equal(4, Polygon.SignedArea(Square));
        Assert.Equal(-4, Polygon.SignedArea([.. Square.Reverse()]));
        Assert.Equal(0, Polygon.DistanceOutside(new(1, 1), Square));
        Assert.Equal(1, Polygon.DistanceOutside(new(3, 1), Square));
        Assert.Equal(Math.Sqrt(2), Polygon.DistanceOutside(new(3, 3), Square), precision: 12);
    }
}
