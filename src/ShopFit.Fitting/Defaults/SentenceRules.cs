namespace ShopFit.Fitting.Defaults;

/// <summary>When the sentences say likely, fairly sure and the like (cp).</summary>
public sealed record SentenceRules
{
    /// <summary>"Very sure" while the 90 % interval is at most this many times as wide as the ideal band.</summary>
    public double VerySure { get; init; } = 1;

    /// <summary>"Fairly sure" while it is at most this many times as wide; wider is "not sure".</summary>
    public double FairlySure { get; init; } = 2;

    /// <summary>Part of the way from the ideal band to a limit up to which a place is only "a little" off.</summary>
    public double ALittle { get; init; } = 0.5;

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
