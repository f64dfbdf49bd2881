namespace ShopFit.Fitting.Defaults;

/// <summary>Numbers of the fit model that make no sense, by themselves or together.</summary>
/// <param name="Code">What is wrong.</param>
/// <param name="Paths">The numbers concerned, as <see cref="AdjustableNumber.Path"/>; where none of those is concerned, the name of the table.</param>
public sealed record FitProblem(FitProblemCode Code, IReadOnlyList<string> Paths);

/// <summary>What can be wrong with numbers of the fit model.</summary>
public enum FitProblemCode
{
    /// <summary>Not a finite number.</summary>
    NotFinite = 0,

    /// <summary>Outside the range that makes sense; a standard deviation of 0 or less among others.</summary>
    OutOfRange = 1,

    /// <summary>A count that is not whole.</summary>
    NotWhole = 2,

    /// <summary>A band whose limits do not follow each other: no fit below, ideal from, ideal to, no fit above.</summary>
    LimitsOutOfOrder = 3,

    /// <summary>A band whose ideal part ends above, and whose limit does not.</summary>
    RampWithoutEnd = 4,

    /// <summary>A kind of footwear in which nothing counts.</summary>
    NothingCounts = 5,

    /// <summary>A second threshold that does not lie above the first.</summary>
    ThresholdsOutOfOrder = 6,

    /// <summary>Steps that must rise and do not.</summary>
    StepsOutOfOrder = 7,

    /// <summary>Correlations and spreads that no feet can have: their covariance is not positive definite.</summary>
    NotPositiveDefinite = 8,

    /// <summary>A correlation that does not lie between −1 and 1.</summary>
    NoCorrelation = 9,

    /// <summary>An ease that a band, a pad or a check speaks of and that does not exist.</summary>
    UnknownEase = 10,

    /// <summary>More sets of pads than can be searched.</summary>
    TooManyPadSets = 11,

    /// <summary>A table with another number of entries than it must have.</summary>
    WrongShape = 12,

    /// <summary>A number that the model does not know.</summary>
    UnknownNumber = 13,

    /// <summary>Something other than a number where a number belongs.</summary>
    NotANumber = 14,
}
