using ShopFit.Fitting.Feet;

namespace ShopFit.Fitting.Outlines;

/// <summary>A point on a page or screen in mm: x to the right, y down.</summary>
/// <param name="X">mm to the right.</param>
/// <param name="Y">mm down.</param>
public readonly record struct PagePoint(double X, double Y);

/// <summary>Where a foot lies on a page: its side, where the back of its heel goes, and which way round.</summary>
/// <param name="Foot">The dancer's left or right. With the toes up a right foot keeps its across, a left foot mirrors it.</param>
/// <param name="OriginX">The back of the heel, mm from the left.</param>
/// <param name="OriginY">The back of the heel, mm from the top.</param>
/// <param name="Facing">
/// As the fitter sees it who sits opposite: half a turn about the back of the heel, never a mirror image. The toes
/// point down and the dancer's right foot belongs on the left.
/// </param>
public readonly record struct PagePlacement(Side Foot, double OriginX = 0, double OriginY = 0, bool Facing = false)
{
    /// <summary>Where a point of the drawing lies on the page.</summary>
    public PagePoint Place(OutlinePoint point)
    {
        var turn = Facing ? -1 : 1;
        var mirror = Foot == Side.Left ? -1 : 1;
        return new(OriginX + (turn * mirror * point.Across), OriginY - (turn * point.Forward));
    }
}
