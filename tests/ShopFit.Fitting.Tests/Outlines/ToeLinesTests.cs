using CsCheck;

namespace ShopFit.Fitting.Outlines;

public class ToeLinesTests
{
    [Fact]
    public void Clefts_run_back_from_between_the_toes_and_nails_lie_within_them() =>
        DrawnFeet.GenBare.Sample(drawn =>
        {
            var at = FootPlaces.Of(drawn.Foot);
            var lines = ToeLines.Of(drawn.Foot);

            Assert.All(lines.Clefts.Zip(at.Clefts), pair =>
            {
                Assert.Equal(pair.Second.Across, pair.First.Curves[0].From.Across);
                Assert.True(pair.First.Curves[0].To.Forward < pair.Second.Forward);
            });
            Assert.All(lines.Nails.Select((nail, toe) => (nail, toe)), nail =>
            {
                var breadth = nail.nail.Curves[^1].To.Across - nail.nail.Curves[0].From.Across;

                Assert.InRange(breadth, 0, at.ToeWidths[nail.toe]);
                Assert.True(nail.nail.Curves[0].From.Forward < at.Tips[nail.toe].Forward);
            });
        }, iter: 300);
}
