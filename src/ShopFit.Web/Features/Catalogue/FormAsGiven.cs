namespace ShopFit.Web.Features.Catalogue;

/// <summary>The inside of a size as the catalogue gives it: what is null is worked out from the label.</summary>
public sealed record FormAsGiven
{
    public double? LengthMm { get; init; }

    public double? BoxBreadthMm { get; init; }

    public double? BallGirthMm { get; init; }

    public double? HeelBreadthMm { get; init; }

    public double? CrownDepthMm { get; init; }

    public double? ToeSlopeMm { get; init; }

    public double? VampMm { get; init; }

    /// <summary>0 soft to 10 stiff.</summary>
    public double? ShankPoints { get; init; }

    /// <summary>"measured", "maker" or "label".</summary>
    public string Source { get; init; } = "label";

    /// <summary>−1 slim, 0 standard, +1 broad.</summary>
    public double WidthStep { get; init; }

    /// <summary>−1 tapered, 0 plain, +1 square.</summary>
    public double BoxStep { get; init; }

    /// <summary>−1 short, 0, +1 long.</summary>
    public double VampStep { get; init; }
}
