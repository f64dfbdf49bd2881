namespace ShopFit.Fitting.Outlines;

public class SpreadBandTests
{
    private static readonly FootShape Mean = new(240) { BallBreadth = 90, ToeSlope = 16 };

    [Fact]
    public void A_band_lies_1_645_deviations_to_either_side()
    {
        var band = SpreadBand.Of(Mean, new FootShape(2) { BallBreadth = 4 });

        Assert.Equal(240 + (1.645 * 2), Longest(band.Larger), 1e-9);
        Assert.Equal(240 - (1.645 * 2), Longest(band.Smaller), 1e-9);
        Assert.Equal(1.645 * 4 * 2, Broadest(band.Larger) - Broadest(band.Smaller), 0.3);
    }

    [Fact]
    public void The_heel_stays_where_it_is()
    {
        var band = SpreadBand.Of(Mean, new FootShape(2) { HeelBreadth = 3 });

        Assert.Equal(new OutlinePoint(0, 0), band.Larger.Curves[0].From);
        Assert.Equal(new OutlinePoint(0, 0), band.Smaller.Curves[0].From);
    }

    [Fact]
    public void What_is_certain_has_no_band()
    {
        var band = SpreadBand.Of(Mean, new FootShape(0));

        Assert.Equal(band.Larger.Curves, band.Smaller.Curves);
        Assert.Equal(FootOutline.Of(Mean).Curves, band.Larger.Curves);
    }

    private static double Longest(Outline outline) => outline.Flatten(20).Max(point => point.Forward);

    private static double Broadest(Outline outline) => outline.Flatten(20).Max(point => point.Across) - outline.Flatten(20).Min(point => point.Across);
}
