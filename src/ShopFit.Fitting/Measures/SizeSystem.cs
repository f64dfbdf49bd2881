namespace ShopFit.Fitting.Measures;

/// <summary>A way of naming the length of a shoe: where its scale starts and how far apart its sizes are.</summary>
/// <remarks>The nine systems of the interchange formats. Formulas and their sources stand beside each.</remarks>
public sealed class SizeSystem
{
    /// <summary>All nine, in the order in which they are offered.</summary>
    public static IReadOnlyList<SizeSystem> All => throw new NotSupportedException("Not written yet.");

    /// <summary>The stable id used in files and requests, such as <c>us-women</c>.</summary>
    public string Id => throw new NotSupportedException("Not written yet.");

    /// <summary>The system with that id, or null where there is none.</summary>
    public static SizeSystem? Find(string id) => throw new NotSupportedException("Not written yet.");

    /// <summary>Distance between two neighbouring labels a shoe can carry, in sizes (0.5 where half sizes are made).</summary>
    public double LabelStep => throw new NotSupportedException("Not written yet.");

    /// <summary>Smallest size that the system names here.</summary>
    public double Smallest => throw new NotSupportedException("Not written yet.");

    /// <summary>Largest size that the system names here.</summary>
    public double Largest => throw new NotSupportedException("Not written yet.");

    /// <summary>The length of the foot that the system means by a size.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The size is not a finite number within the system's range.</exception>
    public Millimetres FootLengthOf(double size) => throw new NotSupportedException("Not written yet.");

    /// <summary>The size, unrounded, of a foot of this length.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The foot lies outside the system's range.</exception>
    public double SizeOfFoot(Millimetres foot) => throw new NotSupportedException("Not written yet.");

    /// <summary>Whether a size lies within the system's range, so that it can be converted.</summary>
    public bool Covers(double size) => throw new NotSupportedException("Not written yet.");
}
