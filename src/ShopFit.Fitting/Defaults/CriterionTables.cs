using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.Shoes;

namespace ShopFit.Fitting.Defaults;

/// <summary>A kind of footwear and what is asked of it.</summary>
/// <param name="Id">Stable id, such as <c>pointe</c>.</param>
/// <param name="Criteria">Its criteria, in the order in which they are shown.</param>
public sealed record FootwearKind(string Id, IReadOnlyList<Criterion> Criteria);

/// <summary>How much of a trait an ease takes away.</summary>
/// <param name="Trait">The trait.</param>
/// <param name="Factor">mm (points) of need a unit of the trait.</param>
public sealed record TraitTerm(Trait Trait, double Factor);

/// <summary>An ease: part of the shoe, minus what the foot needs there.</summary>
/// <param name="Criterion">Id of the criterion it belongs to.</param>
/// <param name="Part">The part of the shoe; null where no part of the shoe is concerned.</param>
/// <param name="NeedConstant">Constant part of the need.</param>
/// <param name="Need">The rest of the need, linear in the traits.</param>
public sealed record EaseRow(string Criterion, FormPart? Part, double NeedConstant, IReadOnlyList<TraitTerm> Need);

/// <summary>The criteria and the eases they judge, all (cp).</summary>
public static class CriterionTables
{
    /// <summary>The eases, by criterion.</summary>
    public static IReadOnlyList<EaseRow> Eases { get; } =
    [
        new("length", FormPart.Length, 0, [new(Trait.Length, 1)]),
        new("box", FormPart.BoxBreadth, 0, [new(Trait.ToeBreadth, 1)]),
        new("ball", FormPart.BallGirth, 0, [new(Trait.BallGirth, 1), new(Trait.Squeeze, -1)]),
        new("heel", FormPart.HeelBreadth, 0, [new(Trait.HeelBreadth, 1)]),
        new("crown", FormPart.CrownDepth, 0, [new(Trait.ForefootDepth, 1)]),
        new("taper", FormPart.ToeSlope, 0, [new(Trait.ToeSlope, 1)]),
        new("vamp", FormPart.Vamp, 0, [new(Trait.Length, 1), new(Trait.HeelToBall, -1)]),

        // Need = 2 + 0.6 a point of strength + 0.05 a degree of point range beyond 80.
        new("shank", FormPart.Shank, 2 - (0.05 * 80), [new(Trait.Strength, 0.6), new(Trait.PointRange, 0.05)]),

        // The sign makes a longer second toe tight and lets a shorter one never count against a shoe.
        new("toe-line", null, 0, [new(Trait.SecondToeLead, 1)]),
    ];

    /// <summary>Every kind of footwear.</summary>
    public static IReadOnlyList<FootwearKind> Kinds { get; } =
    [
        new("pointe", Pointe()),
        new("demi-pointe", [.. Pointe().Where(criterion => criterion.Id != "shank")]),
        new("soft", Soft()),
        new("jazz", Soft()),
        new("tap", Heeled()),
        new("character", Heeled()),
    ];

    private static IReadOnlyList<Criterion> Pointe() =>
    [
        new("length", -4, -1, 2, 6, 3),
        new("box", -8, -2, 1, 7, 2),
        new("ball", -15, -5, 0, 10, 3),
        new("heel", -10, -4, -1, 7, 1),
        new("crown", -6, -2, 2, 7, 1),
        new("taper", -12, -4, 4, 12, 1.5) { TightIsAbove = true },
        new("vamp", -9, -2, 5, 13, 1.5),
        new("shank", -4, -1.5, 1.5, 4, 1.5),
        new("toe-line", -6, -2, double.PositiveInfinity, double.PositiveInfinity, 0.5),
    ];

    private static IReadOnlyList<Criterion> Soft() =>
    [
        new("length", -3, -1, 2, 6, 3),
        new("ball", -12, -6, 0, 6, 3),
        new("heel", -8, -4, 0, 6, 1),
    ];

    private static IReadOnlyList<Criterion> Heeled() =>
    [
        new("length", 0, 2, 8, 14, 3),
        new("ball", -8, -4, 2, 10, 3),
        new("heel", -6, -3, 0, 5, 1),
    ];
}
