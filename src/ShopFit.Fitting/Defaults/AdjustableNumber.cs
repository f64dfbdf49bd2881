namespace ShopFit.Fitting.Defaults;

/// <summary>One number of the fit model that a shop may set itself: where it stands, its unit and what is allowed.</summary>
/// <remarks>
/// Numbers are shown as tables: those of one <see cref="Group"/> are one table, <see cref="Row"/> and <see cref="Column"/> say where in it.
/// All of it is data, so that a page, a file and a check speak of the same numbers.
/// </remarks>
public sealed class AdjustableNumber
{
    private readonly Func<FitDefaults, double?> _get;
    private readonly Func<FitDefaults, double, FitDefaults> _with;

    internal AdjustableNumber(string group, string row, string column, NumberUnit unit, double lowest, double highest, Func<FitDefaults, double?> get, Func<FitDefaults, double, FitDefaults> with)
    {
        Group = group;
        Row = row;
        Column = column;
        Unit = unit;
        Lowest = lowest;
        Highest = highest;
        _get = get;
        _with = with;
        Default = get(FitDefaults.Standard) ?? throw new ArgumentException("The standard numbers hold every number that can be adjusted.", nameof(get));
    }

    /// <summary>Stable id: group, row and column, such as <c>bands.pointe.length.ideal-to</c>.</summary>
    public string Path => $"{Group}.{Row}.{Column}";

    /// <summary>The table that it stands in, such as <c>bands.pointe</c>.</summary>
    public string Group { get; }

    /// <summary>The row of that table, such as <c>length</c>.</summary>
    public string Row { get; }

    /// <summary>The column of that table, such as <c>ideal-to</c>.</summary>
    public string Column { get; }

    /// <summary>Its unit.</summary>
    public NumberUnit Unit { get; }

    /// <summary>Smallest value that makes sense.</summary>
    public double Lowest { get; }

    /// <summary>Largest value that makes sense; where <see cref="MayBeEndless"/>, positive infinity too.</summary>
    public double Highest { get; }

    /// <summary>Whether it may be infinite: a band without an upper end.</summary>
    public bool MayBeEndless => double.IsPositiveInfinity(Default);

    /// <summary>The value it has until a shop sets its own.</summary>
    public double Default { get; }

    /// <summary>Where the default comes from; null: common practice, no published source.</summary>
    public string? Source { get; init; }

    /// <summary>Its value in these numbers; null where they have no such row.</summary>
    public double? In(FitDefaults numbers) => _get(numbers);

    /// <summary>These numbers with another value here. Whether they still make sense, <see cref="FitDefaults.Problems"/> says.</summary>
    public FitDefaults Set(FitDefaults numbers, double value) => _with(numbers, value);

    /// <summary>What is wrong with a value by itself; null where nothing is.</summary>
    public FitProblemCode? Refuses(double value)
    {
        if (double.IsPositiveInfinity(value) && MayBeEndless)
        {
            return null;
        }

        return !double.IsFinite(value) ? FitProblemCode.NotFinite
            : value < Lowest || value > Highest ? FitProblemCode.OutOfRange
            : Unit is NumberUnit.Count or NumberUnit.YesOrNo && value != Math.Floor(value) ? FitProblemCode.NotWhole
            : null;
    }
}

/// <summary>The unit of a number that a shop may set.</summary>
public enum NumberUnit
{
    /// <summary>Millimetres.</summary>
    Millimetres = 0,

    /// <summary>Points, 0 to 10.</summary>
    Points = 1,

    /// <summary>Degrees of angle.</summary>
    Degrees = 2,

    /// <summary>A share, a chance or a correlation, 0 to 1.</summary>
    Share = 3,

    /// <summary>A multiple of something.</summary>
    Times = 4,

    /// <summary>A pure number: a weight beside other weights, an exponent.</summary>
    Pure = 5,

    /// <summary>Millimetres of one length a millimetre of another.</summary>
    PerMillimetre = 6,

    /// <summary>Points a degree of angle.</summary>
    PointsADegree = 7,

    /// <summary>Millimetres a step of a label.</summary>
    MillimetresAStep = 8,

    /// <summary>Millimetres a year.</summary>
    MillimetresAYear = 9,

    /// <summary>Years of age.</summary>
    Years = 10,

    /// <summary>A whole number of things.</summary>
    Count = 11,

    /// <summary>0 no, 1 yes.</summary>
    YesOrNo = 12,
}
