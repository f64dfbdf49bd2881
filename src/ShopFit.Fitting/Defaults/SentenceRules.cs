namespace ShopFit.Fitting.Defaults;

/// <summary>When the sentences say likely, fairly sure and the like (cp).</summary>
public sealed record SentenceRules
{
    /// <summary>"Very sure" while the 90 % interval is at most this share of the eases that fit.</summary>
    public double VerySure { get; init; } = 0.5;

    /// <summary>"Fairly sure" while it is at most this share; wider is "not sure".</summary>
    public double FairlySure { get; init; } = 1;

    /// <summary>"About right" up to this far outside the ideal band, mm.</summary>
    public double AboutRight { get; init; } = 0.5;

    /// <summary>"A little" up to this far outside the ideal band, mm; further off, the millimetres are said.</summary>
    public double ALittle { get; init; } = 1.5;

    /// <summary>What a millimetre of the two above is for the shank, points.</summary>
    public double PointsAMillimetre { get; init; } = 0.5;

    /// <summary>A place stands out while its expected desirability is below this.</summary>
    public double NothingStandsOut { get; init; } = 0.95;

    /// <summary>A fit is "likely" from this chance on.</summary>
    public double Likely { get; init; } = 0.6;

    /// <summary>"Even" from this chance on.</summary>
    public double Even { get; init; } = 0.45;

    /// <summary>"Perhaps" from this chance on; below, "unlikely".</summary>
    public double Perhaps { get; init; } = 0.25;
}

/// <summary>How much one question may hold.</summary>
/// <param name="Readings">Readings at most.</param>
/// <param name="TryOns">Try-ons at most.</param>
/// <param name="Pairs">Pairs answered at most.</param>
/// <param name="PairsUsual">Pairs answered where no number is asked for.</param>
public sealed record QuestionLimits(int Readings = 200, int TryOns = 20, int Pairs = 100, int PairsUsual = 10);
