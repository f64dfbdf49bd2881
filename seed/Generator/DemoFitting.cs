using ShopFit.Fitting.Scoring;

namespace ShopFit.Seed;

/// <summary>A fitting of the history.</summary>
internal sealed record DemoFitting
{
    /// <summary>Only for references inside the files.</summary>
    public required string Key { get; init; }

    public required DemoDancer Dancer { get; init; }

    public required string Kind { get; init; }

    public required bool FirstPair { get; init; }

    /// <summary>When the teacher said yes to a first pair of pointe shoes; null where nobody told, or it is none.</summary>
    public required DateOnly? TeacherAgreedOn { get; init; }

    /// <summary>UTC.</summary>
    public required DateTime OpenedAt { get; init; }

    /// <summary>UTC; null while it is open.</summary>
    public required DateTime? ClosedAt { get; init; }

    /// <summary>Key of who kneels.</summary>
    public required string Fitter { get; init; }

    /// <summary>The foot that is sore; empty where none is.</summary>
    public required string Sore { get; init; }

    public required IReadOnlyList<DemoReading> Readings { get; init; }

    public required IReadOnlyList<DemoTryOn> TryOns { get; init; }

    /// <summary>How it ended; null while it is open.</summary>
    public required DemoEnding? Ending { get; init; }
}

/// <summary>A pair that was tried on.</summary>
internal sealed record DemoTryOn(string Sku, bool Fits, IReadOnlyList<PadUnderFoot> Pads);

/// <summary>How a fitting ended.</summary>
/// <param name="Kind">"sold", "order", "come-back" or "not-today".</param>
/// <param name="Reason">Why not today; empty otherwise.</param>
/// <param name="Why">In the fitter's words.</param>
/// <param name="Sku">The pair; empty where there is none.</param>
/// <param name="Pads">Pads that go with it.</param>
/// <param name="Extras">Codes of what else goes into the bag, a piece each.</param>
internal sealed record DemoEnding(string Kind, string Reason, string Why, string Sku, IReadOnlyList<PadUnderFoot> Pads, IReadOnlyList<string> Extras);
