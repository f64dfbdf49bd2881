using ShopFit.Fitting.Feet;
using ShopFit.Web.Features.Fittings;

namespace ShopFit.Web.Features.Dancers;

/// <summary>One fitting of a dancer, and what it told.</summary>
/// <param name="Row">When it was, and how it ended.</param>
/// <param name="Why">Why it ended so, in the fitter's words; empty where nothing was written.</param>
/// <param name="Advice">What was advised or overruled; empty where nothing was.</param>
/// <param name="LastPair">What the pair before had done, as ids of answers.</param>
/// <param name="LastPairNote">What else was said of it; empty where nothing was.</param>
/// <param name="Tried">Pairs that were tried, in order.</param>
/// <param name="Numbers">Numbers that were read, with what changed since the time before.</param>
public sealed record Visit(
    FittingRow Row, string Why, string Advice, IReadOnlyList<string> LastPair, string LastPairNote, IReadOnlyList<TriedPair> Tried, IReadOnlyList<VisitNumber> Numbers);

/// <summary>A pair that was tried.</summary>
public sealed record TriedPair(string Name, bool? Fits, string Note);

/// <summary>A number that was read.</summary>
/// <param name="Foot">Of which foot.</param>
/// <param name="Trait">What was read.</param>
/// <param name="Millimetres">The average of the readings that stand, mm.</param>
/// <param name="Change">How much more than at the fitting before that read it, mm; null where none did.</param>
public sealed record VisitNumber(Side Foot, Trait Trait, double Millimetres, double? Change);
