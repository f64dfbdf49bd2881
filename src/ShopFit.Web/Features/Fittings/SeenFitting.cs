using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Feet;
using ShopFit.Web.Features.Arrival;
using ShopFit.Web.Features.Settings;
using ShopFit.Web.Features.Studios;

namespace ShopFit.Web.Features.Fittings;

/// <summary>A fitting as its pages show it.</summary>
public sealed record SeenFitting
{
    public required Guid Id { get; init; }

    public required Guid? DancerId { get; init; }

    /// <summary>Her name; empty where nobody is on file.</summary>
    public required string DancerName { get; init; }

    /// <summary>What she is called; her first name where nothing else was said.</summary>
    public required string KnownAs { get; init; }

    /// <summary>Open fittings of sisters and brothers.</summary>
    public IReadOnlyList<SiblingDraft> SiblingDrafts { get; init; } = [];

    public required string Studio { get; init; }

    /// <summary>What the teacher asks of the shoe.</summary>
    public TeacherAsks Asked { get; init; } = TeacherAsks.Nothing;

    /// <summary>What was said when the dancer sat down.</summary>
    public SeenArrival Arrival { get; init; } = SeenArrival.Empty;

    public required string Kind { get; init; }

    public required bool FirstPair { get; init; }

    public required bool SoreLeft { get; init; }

    public required bool SoreRight { get; init; }

    public required bool SkinBroken { get; init; }

    public required DateOnly? TeacherAgreedOn { get; init; }

    public required int Version { get; init; }

    public required DateTimeOffset OpenedAt { get; init; }

    public required DateTimeOffset? ClosedAt { get; init; }

    /// <summary>How often it was opened again because its sale was taken back.</summary>
    public int TimesReopened { get; init; }

    /// <summary>When something was last entered.</summary>
    public required DateTimeOffset SavedAt { get; init; }

    /// <summary>Pairs that she was sold at earlier fittings.</summary>
    public required int PairsBefore { get; init; }

    /// <summary>The readings that stand, in the order in which they were taken.</summary>
    public required IReadOnlyList<SeenReading> Readings { get; init; }

    /// <summary>What the belief is made of.</summary>
    public required FittingEvidence Evidence { get; init; }

    /// <summary>What was fetched and tried on.</summary>
    public SeenTries Tries { get; init; } = SeenTries.None;

    /// <summary>What lies ready to be decided on; null while nothing was chosen.</summary>
    public required SeenChoice? Choice { get; init; }

    /// <summary>How it ended; null while it is open.</summary>
    public required SeenDecision? Decision { get; init; }

    /// <summary>What was proposed first when it was closed; null where nothing was.</summary>
    public SeenSuggestion? Suggested { get; init; }

    /// <summary>The wall clock of the shop.</summary>
    public required ShopTime Time { get; init; }

    /// <summary>"mm" or "in": what the shop reads lengths in.</summary>
    public required string Units { get; init; }

    /// <summary>Id of the size system that the shop offers first.</summary>
    public required string SizeSystem { get; init; }

    public bool IsOpen => ClosedAt is null;

    /// <summary>Whether she is too young for this kind of shoe.</summary>
    public bool IsForLater => PointeAge.IsForLater(Kind, Evidence.AgeYears);

    /// <summary>Why nothing is tried on today; null where nothing speaks against it.</summary>
    public NoTryOn? NoTryOn => TryOnToday.Bars(Kind, Evidence.AgeYears, SkinBroken);

    /// <summary>The readings of one trait of one foot, oldest first.</summary>
    public IReadOnlyList<SeenReading> ReadingsOf(Side foot, Trait trait) => [.. Readings.Where(reading => reading.Reading.Foot == foot && reading.Reading.Trait == trait)];

    /// <summary>The word chosen for a trait of a foot.</summary>
    public SeenReading? WordOf(Side foot, Trait trait) => ReadingsOf(foot, trait).LastOrDefault(reading => reading.Reading.Unit is ReadingUnit.Word);

    /// <summary>The numbers read of a trait of a foot, oldest first.</summary>
    public IReadOnlyList<SeenReading> NumbersOf(Side foot, Trait trait) => [.. ReadingsOf(foot, trait).Where(reading => reading.Reading.Unit is not ReadingUnit.Word)];
}

/// <summary>One reading with its key.</summary>
public sealed record SeenReading(Guid Id, DateTimeOffset TakenAt, Reading Reading);

/// <summary>What lies ready, with its key.</summary>
public sealed record SeenChoice(Guid Id, DateTimeOffset At, ChosenForFitting Chosen);

/// <summary>The first of the proposals.</summary>
/// <param name="Pair">Its name.</param>
/// <param name="Chance">Its chance of fit at closing, 0 to 1.</param>
public sealed record SeenSuggestion(string Pair, double Chance);

/// <summary>How a fitting ended.</summary>
/// <param name="Kind">One of <see cref="DecisionKinds"/>.</param>
/// <param name="Reason">One of <see cref="NotTodayReasons"/>; empty where something was bought.</param>
/// <param name="Why">In the fitter's words.</param>
/// <param name="At">When.</param>
/// <param name="Pair">Name of the pair; empty where there is none.</param>
/// <param name="PaperId">The sheet to take home, where one was made.</param>
public sealed record SeenDecision(string Kind, string Reason, string Why, DateTimeOffset At, string Pair, Guid? PaperId)
{
    /// <summary>The day to come back on, or until which the pair is wished for; null where none was said.</summary>
    public DateOnly? DueOn { get; init; }
}
