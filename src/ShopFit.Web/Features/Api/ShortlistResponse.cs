using System.ComponentModel;
using System.ComponentModel.DataAnnotations;

namespace ShopFit.Web.Features.Api;

/// <summary>The answer: the pairs most likely to fit both feet, best first.</summary>
internal sealed record ShortlistResponse
{
    public required IReadOnlyList<AnsweredPair> Pairs { get; init; }

    [Description("Chance that any pair on the shelf fits.")]
    [Range(0.0, 1.0)]
    public required double ChanceOnShelf { get; init; }

    [Description("What has to be said beside it.")]
    public required IReadOnlyList<AnsweredNotice> Notices { get; init; }
}

/// <summary>One pair of the answer.</summary>
internal sealed record AnsweredPair
{
    [Description("The shop's code of the pair.")]
    public required string Sku { get; init; }

    [Description("Chance that some allowed set of pads makes it fit on both feet.")]
    [Range(0.0, 1.0)]
    public required double ChanceOfFit { get; init; }

    [Description("Expected score of the worse foot with the pads named.")]
    [Range(0.0, 1.0)]
    public required double Score { get; init; }

    [Description("Whether a free pair stands in a place that sells.")]
    public required bool OnShelf { get; init; }

    [Description("The best set of pads for each foot; none is a good answer.")]
    public required IReadOnlyList<PadOfFoot> Pads { get; init; }

    [Description("How it sits at each place of each foot, pads counted.")]
    public required IReadOnlyList<AnsweredCriterion> Criteria { get; init; }

    [Description("Why it stands where it stands, in one sentence.")]
    public required string Reason { get; init; }
}

/// <summary>How one place of one foot sits in the shoe.</summary>
internal sealed record AnsweredCriterion
{
    [IdList(IdList.Feet)]
    public required string Foot { get; init; }

    [IdList(IdList.Criteria)]
    public required string Criterion { get; init; }

    [Description("Expected ease, shoe minus foot, in mm (the shank: points).")]
    public required double Ease { get; init; }

    [Description("Lower end of the 90 % interval.")]
    public required double Low { get; init; }

    [Description("Upper end of the 90 % interval.")]
    public required double High { get; init; }

    [Description("How good that is: 1 right, 0 no fit.")]
    [Range(0.0, 1.0)]
    public required double Desirability { get; init; }
}

/// <summary>A remark beside the answer.</summary>
internal sealed record AnsweredNotice
{
    [IdList(IdList.Notices)]
    public required string Code { get; init; }

    [Description("The same for people, in English.")]
    public required string Text { get; init; }
}
