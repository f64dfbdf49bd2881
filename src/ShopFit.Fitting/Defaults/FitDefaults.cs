using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Pads;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.TryOns;

namespace ShopFit.Fitting.Defaults;

/// <summary>Every number of the fit model that a shop can change, with its starting value. The one place for them.</summary>
/// <remarks>
/// Immutable. A shop's own numbers are the standard ones <c>with</c> a table replaced. Numbers marked
/// (cp) are common practice, with no published source.
/// </remarks>
public sealed record FitDefaults
{
    /// <summary>The starting values.</summary>
    public static FitDefaults Standard { get; } = new();

    /// <summary>Surveyed adult feet, in the order of <see cref="Sex"/>.</summary>
    public IReadOnlyList<SurveyedFeet> Adults { get; init; } = [SurveyedFeet.Women, SurveyedFeet.Men];

    /// <summary>Traits that no survey gives, as what is known of them given another trait.</summary>
    public IReadOnlyList<DerivedTrait> DerivedTraits { get; init; } = TraitTables.Derived;

    /// <summary>How alike the two feet are: correlation of each trait, left with right, in the order of <see cref="Trait"/>.</summary>
    /// <remarks>0.97 for mm traits gives a left-right difference of length with an SD of 3.05 mm: 19 % differ by more than 4 mm (SATRA 2018, as reported). The rest is (cp). Traits that are correlated with each other need the same value.</remarks>
    public IReadOnlyList<double> LeftRightCorrelation { get; init; } = TraitTables.LeftRightCorrelation;

    /// <summary>Repeatability of one reading by one measurer: standard deviation in the trait's unit, in the order of <see cref="Trait"/> (cp).</summary>
    public IReadOnlyList<double> ReadingSd { get; init; } = TraitTables.ReadingSd;

    /// <summary>How words are understood.</summary>
    public WordReadings Words { get; init; } = new();

    /// <summary>How gross misreadings are recognised.</summary>
    public GrossReadings Gross { get; init; } = new();

    /// <summary>Feet while they grow.</summary>
    public Growth Growth { get; init; } = new();

    /// <summary>What a size label alone says about the inside of a shoe.</summary>
    public LabelForm Label { get; init; } = new();

    /// <summary>How far the real inside of a pair may be from its form on file.</summary>
    public FormUncertainty FormSds { get; init; } = new();

    /// <summary>Which part of a shoe and which traits of a foot make up each ease.</summary>
    public IReadOnlyList<EaseRow> Eases { get; init; } = CriterionTables.Eases;

    /// <summary>The criteria of each kind of footwear (cp).</summary>
    public IReadOnlyList<FootwearKind> Kinds { get; init; } = CriterionTables.Kinds;

    /// <summary>Desirability from which a place counts as fitting (cp).</summary>
    public double FitsFrom { get; init; } = 0.5;

    /// <summary>The pads of the shop (cp).</summary>
    public IReadOnlyList<Pad> Pads { get; init; } = PadTable.All;

    /// <summary>How pads are proposed.</summary>
    public PadRules PadRules { get; init; } = new();

    /// <summary>The checks at a try-on (cp).</summary>
    public IReadOnlyList<Check> Checks { get; init; } = CheckTable.All;

    /// <summary>How much an answer at a try-on counts.</summary>
    public AnswerRules Answers { get; init; } = new();

    /// <summary>When the sentences say likely, fairly sure and the like.</summary>
    public SentenceRules Sentences { get; init; } = new();

    /// <summary>How much one question may hold.</summary>
    public QuestionLimits Limits { get; init; } = new();

    /// <summary>A hash of every number here: equal numbers give equal text, on every machine.</summary>
    /// <remarks>Kept with a fitting when it closes, so that it can be said later which numbers were used.</remarks>
    public string Fingerprint() => Fingerprints.Of(this);

    /// <summary>What makes no sense in these numbers, each by itself and all together; empty where they can be used.</summary>
    /// <remarks>Numbers with a problem may make a shortlist that is not finite, or none at all.</remarks>
    public IReadOnlyList<FitProblem> Problems() => FitProblems.Of(this);

    /// <summary>The criteria of a kind of footwear, or null where there is no such kind.</summary>
    public IReadOnlyList<Criterion>? CriteriaOf(string kind) =>
        Kinds.FirstOrDefault(row => row.Id == kind)?.Criteria;

    /// <summary>The traits that a kind of footwear asks about: whatever else is read of the feet says little about its fit.</summary>
    /// <remarks>The breadth of the ball is asked for where its girth is: it is read in a moment, and tells much of the girth.</remarks>
    /// <exception cref="ArgumentException">There is no such kind of footwear.</exception>
    public IReadOnlySet<Trait> TraitsOf(string kind)
    {
        var traits = CriteriaOfKind(kind)
            .SelectMany(criterion => Eases.Where(row => row.Criterion == criterion.Id))
            .SelectMany(row => row.Need)
            .Select(term => term.Trait)
            .ToHashSet();
        if (traits.Contains(Trait.BallGirth))
        {
            traits.Add(Trait.BallBreadth);
        }

        return traits;
    }

    /// <summary>The pads that go into a kind of footwear: those whose first purpose it asks about.</summary>
    /// <remarks>A toe cap takes up a little length too, but nobody puts one into a jazz shoe for that.</remarks>
    /// <exception cref="ArgumentException">There is no such kind of footwear.</exception>
    public IReadOnlyList<Pad> PadsOf(string kind)
    {
        var criteria = CriteriaOfKind(kind);
        return [.. Pads.Where(pad => pad.Effects.Count > 0 && criteria.Any(criterion => criterion.Id == pad.Effects.MaxBy(effect => Math.Abs(effect.Value)).Key))];
    }

    /// <summary>The same numbers, by which no pad is proposed that does not go into a kind of footwear. It is still known where it was used.</summary>
    /// <exception cref="ArgumentException">There is no such kind of footwear.</exception>
    public FitDefaults ForKind(string kind)
    {
        var fitting = PadsOf(kind).ToHashSet(ReferenceEqualityComparer.Instance);
        return fitting.Count == Pads.Count ? this : this with { Pads = [.. Pads.Select(pad => fitting.Contains(pad) ? pad : pad with { Corrects = false })] };
    }

    private IReadOnlyList<Criterion> CriteriaOfKind(string kind) =>
        CriteriaOf(kind) ?? throw new ArgumentException($"There is no kind of footwear called '{kind}'.", nameof(kind));

    /// <summary>The pad with that id, or null where there is none.</summary>
    public Pad? FindPad(string id) => Pads.FirstOrDefault(pad => pad.Id == id);

    /// <summary>The check with that id, or null where there is none.</summary>
    public Check? FindCheck(string id) => Checks.FirstOrDefault(check => check.Id == id);
}
