namespace ShopFit.Fitting.Outlines;

/// <summary>A point of a drawing in mm: across (positive towards the little toe) and forward from the back of the heel.</summary>
/// <param name="Across">mm, positive towards the little toe.</param>
/// <param name="Forward">mm from the back of the heel.</param>
public readonly record struct OutlinePoint(double Across, double Forward)
{
    /// <summary>The point so many times a heading away.</summary>
    internal OutlinePoint Along(Heading heading, double reach) =>
        new(Across + (heading.Across * reach), Forward + (heading.Forward * reach));

    /// <summary>The point a share of the way to another.</summary>
    internal OutlinePoint Towards(OutlinePoint other, double share) =>
        new(Across + ((other.Across - Across) * share), Forward + ((other.Forward - Forward) * share));
}
