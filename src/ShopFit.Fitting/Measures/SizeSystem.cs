namespace ShopFit.Fitting.Measures;

/// <summary>A way of naming the length of a shoe: where its scale starts and how far apart its sizes are.</summary>
/// <remarks>
/// <para>
/// The nine systems of the interchange formats. Every one is a straight line: a size more is always the
/// same number of millimetres more. The systems of thirds of an inch and of Paris points are defined on the
/// <em>last</em>; the foot that a size means there is the usual one, two size points shorter than the last
/// (ISO/TS 19407:2015 warns that no conversion between them is exact). <c>mondopoint</c> (ISO 9407) and
/// <c>jp</c> (JIS S 5037) name the foot itself.
/// </para>
/// <para>The range of sizes of a system is ours: what is made for feet from toddlers to the largest adult.</para>
/// </remarks>
public sealed class SizeSystem
{
    /// <summary>Shortest foot that is converted, mm.</summary>
    public const double ShortestFoot = 100;

    /// <summary>Longest foot that is converted, mm.</summary>
    public const double LongestFoot = 350;

    /// <summary>Millimetres in a third of an inch, the barleycorn of the British and American scales.</summary>
    private const double ThirdOfInch = Millimetres.PerInch / 3;

    /// <summary>Millimetres in a Paris point: two thirds of a centimetre.</summary>
    private const double ParisPoint = 20.0 / 3;

    private readonly double _millimetresPerSize;
    private readonly double _footAtZero;
    private readonly double? _lastAtZero;

    private SizeSystem(string id, double perSize, double footAtZero, double? lastAtZero, double smallest, double largest, double labelStep)
    {
        Id = id;
        _millimetresPerSize = perSize;
        _footAtZero = footAtZero;
        _lastAtZero = lastAtZero;
        Smallest = smallest;
        Largest = largest;
        LabelStep = labelStep;
    }

    /// <summary>All nine, in the order in which they are offered.</summary>
    /// <remarks>
    /// L the last and F the foot, in inches (EU: centimetres). Where a constant is added to L on the last, two
    /// points less are added on the foot. British child size 0 is a last of 4 inches, child 13 is adult 0.
    /// </remarks>
    public static IReadOnlyList<SizeSystem> All { get; } =
    [
        // 1.5 L; 1.5 F + 2. A Paris point has its zero at 0 (ISO/TS 19407:2015, clause 3).
        new("eu", ParisPoint, -2 * ParisPoint, 0, smallest: 16, largest: 50, labelStep: 0.5),

        // 3 L − 25; 3 F − 23.
        InThirdsOfAnInch("uk-adult", onLast: 25, largest: 16),

        // 3 L − 12; 3 F − 10.
        InThirdsOfAnInch("uk-child", onLast: 12, largest: 13.5),

        // 3 L − 24 (last form from memory); 3 F − 22, which is also the men's scale of the sliding gauge.
        InThirdsOfAnInch("us-men", onLast: 24, largest: 17),

        // 3 L − 22.5; 3 F − 20.5: the men's scale and one and a half, the women's scale of the sliding gauge.
        InThirdsOfAnInch("us-women", onLast: 22.5, largest: 18.5),

        // 3 L − 23; 3 F − 21: the men's scale and one.
        InThirdsOfAnInch("us-women-fia", onLast: 23, largest: 18),

        // 3 L − 11 2/3; 3 F − 9 2/3. A handbook prints 11 3/4, a twelfth of a size away.
        InThirdsOfAnInch("us-child", onLast: 11 + (2.0 / 3), largest: 13.5),

        // ISO 9407: the foot in mm; steps of 5 mm (range 1 of DIN 66074-2:1975).
        new("mondopoint", 1, 0, null, ShortestFoot, LongestFoot, labelStep: 5),

        // JIS S 5037: the foot in cm, in halves.
        new("jp", 10, 0, null, ShortestFoot / 10, LongestFoot / 10, labelStep: 0.5),
    ];

    /// <summary>The stable id used in files and requests, such as <c>us-women</c>.</summary>
    public string Id { get; }

    /// <summary>Distance between two neighbouring labels a shoe can carry, in sizes (0.5 where half sizes are made).</summary>
    public double LabelStep { get; }

    /// <summary>Smallest size that the system names here.</summary>
    public double Smallest { get; }

    /// <summary>Largest size that the system names here.</summary>
    public double Largest { get; }

    /// <summary>The system with that id, or null where there is none. Capitals count.</summary>
    public static SizeSystem? Find(string id) => All.FirstOrDefault(system => system.Id == id);

    /// <summary>Whether a size lies within the system's range, so that it can be converted.</summary>
    public bool Covers(double size) => size >= Smallest && size <= Largest;

    /// <summary>The length of the foot that the system means by a size.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The size is not a finite number within the system's range.</exception>
    public Millimetres FootLengthOf(double size) => Millimetres.From(_footAtZero + (Covered(size) * _millimetresPerSize));

    /// <summary>The length of the last that the system means by a size; null where the system names the foot and leaves the last to the maker.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The size is not a finite number within the system's range.</exception>
    public Millimetres? LastLengthOf(double size)
    {
        var covered = Covered(size);
        return _lastAtZero is { } start ? Millimetres.From(start + (covered * _millimetresPerSize)) : null;
    }

    /// <summary>The size, unrounded, of a foot of this length.</summary>
    /// <remarks>It may lie outside <see cref="Smallest"/> to <see cref="Largest"/>, where no shoe is made: ask <see cref="Covers"/>.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The foot is not 100 to 350 mm long.</exception>
    public double SizeOfFoot(Millimetres foot) =>
        foot.Value is >= ShortestFoot and <= LongestFoot
            ? (foot.Value - _footAtZero) / _millimetresPerSize
            : throw new ArgumentOutOfRangeException(nameof(foot), foot.Value, $"A foot is {ShortestFoot} to {LongestFoot} mm long.");

    /// <summary>The label nearest to a size; a size halfway between two labels takes the larger.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The size is not finite, or no label of the system lies that near.</exception>
    public double NearestLabel(double size) => Covered(Math.Floor((size / LabelStep) + 0.5) * LabelStep);

    /// <summary>The id, for logs and messages.</summary>
    public override string ToString() => Id;

    private static SizeSystem InThirdsOfAnInch(string id, double onLast, double largest) => new(
        id,
        ThirdOfInch,
        (onLast - 2) * ThirdOfInch,
        onLast * ThirdOfInch,
        smallest: 0,
        largest,
        labelStep: 0.5);

    private double Covered(double size) =>
        Covers(size)
            ? size
            : throw new ArgumentOutOfRangeException(nameof(size), size, $"Sizes of {Id} go from {Smallest} to {Largest}.");
}
