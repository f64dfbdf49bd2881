using System.ComponentModel;
using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;

namespace ShopFit.Web.Features.Api;

/// <summary>The body of a request for a shortlist, as other programs write it. <see cref="ShortlistRequestReader"/> reads it.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
internal sealed record ShortlistRequest
{
    [Description("What was read of the feet, in any order. One foot only, or nothing, is valid; both feet are answered. Repeated numbers are independent readings; of a repeated word the last holds.")]
    [MaxLength(ShortlistRequestReader.MostReadings)]
    public IReadOnlyList<RequestedReading> Readings { get; init; } = [];

    public RequestedDancer Dancer { get; init; } = new();

    [Description("What was tried on already, in order.")]
    [MaxLength(ShortlistRequestReader.MostTryOns)]
    public IReadOnlyList<RequestedTryOn> TryOns { get; init; } = [];

    [Description("Only what stands on the shelf, or all that can be had.")]
    [IdList(IdList.From)]
    [DefaultValue("shelf")]
    public string From { get; init; } = "shelf";

    [Description("How many pairs are wanted at most.")]
    [Range(1, ShortlistRequestReader.LargestLimit)]
    [DefaultValue(ShortlistRequestReader.UsualLimit)]
    public int Limit { get; init; } = ShortlistRequestReader.UsualLimit;

    [Description("The kind of footwear.")]
    [IdList(IdList.Kinds)]
    [DefaultValue(ShortlistRequestReader.UsualKind)]
    public string Kind { get; init; } = ShortlistRequestReader.UsualKind;

    [Description("The day the question is about, 2000-01-01 to 2100-12-31; left out: today by the shop's calendar. Feet grow, so age changes answers.")]
    public DateOnly AsOf { get; init; }
}

/// <summary>One reading of one trait of one foot.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
internal sealed record RequestedReading
{
    [Description("The dancer's own left or right.")]
    [IdList(IdList.Feet)]
    public required string Foot { get; init; }

    [Description("What was read.")]
    [IdList(IdList.Traits)]
    public required string Trait { get; init; }

    [Description("The number, in the unit. Ranges in mm: length 100 to 350, heel-to-ball 60 to 260, breadths 25 to 140, ball-girth 100 to 350, forefoot-depth 15 to 100, toe-slope -10 to 60, second-toe-lead -30 to 30, squeeze 0 to 60; point-range 0 to 130 degrees; strength 0 to 10 points. A word is 0, 1 or 2.")]
    public required double Value { get; init; }

    [Description("The unit: mm or in for what is kept in millimetres, deg for point-range, points for strength, size for a length read off a gauge, word for one of three ordered words.")]
    [IdList(IdList.Units)]
    public required string Unit { get; init; }

    [Description("The size system; required with the unit size, refused with any other.")]
    [IdList(IdList.SizeSystems)]
    public string SizeSystem { get; init; } = "";

    [Description("How it was taken, such as gauge or tape.")]
    [StringLength(ShortlistRequestReader.LongestMethod, MinimumLength = 1)]
    public string Method { get; init; } = "";
}

/// <summary>What is known of the dancer. No name: it is not needed.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
internal sealed record RequestedDancer
{
    [Description("An age of 2 to 110 on the day asked about; left out: an adult, with a notice.")]
    public DateOnly BirthDate { get; init; }

    [Description("Which surveyed feet hers are compared with; left out: both.")]
    [IdList(IdList.Sexes)]
    public string Sex { get; init; } = "";

    [Description("Whether this is her first pair.")]
    [DefaultValue(false)]
    public bool FirstPair { get; init; }
}

/// <summary>A pair that was tried on, and what was seen.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
internal sealed record RequestedTryOn
{
    [Description("Code of a pair of this kind that is on file.")]
    [StringLength(ShortlistRequestReader.LongestText, MinimumLength = 1)]
    public required string Sku { get; init; }

    [Description("True: it fits with the stated pads. False: it fits with no allowed set of pads.")]
    public required bool Fits { get; init; }

    [Description("Answers to checks, each check once a foot.")]
    [MaxLength(ShortlistRequestReader.MostAnswers)]
    public IReadOnlyList<RequestedAnswer> Answers { get; init; } = [];

    [Description("Pads that were under the feet, each once a foot.")]
    [MaxLength(ShortlistRequestReader.MostPads)]
    public IReadOnlyList<PadOfFoot> Pads { get; init; } = [];
}

/// <summary>One answer to one check.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
internal sealed record RequestedAnswer
{
    [IdList(IdList.Feet)]
    public required string Foot { get; init; }

    [IdList(IdList.Checks)]
    public required string Check { get; init; }

    [Description("The first, second or third of the check's ordered answers.")]
    [Range(0, 2)]
    public required int Answer { get; init; }

    [Description("What the fitter saw, or the dancer's own word, which counts for less.")]
    [IdList(IdList.Observers)]
    [DefaultValue("fitter")]
    public string By { get; init; } = "fitter";
}

/// <summary>A pad and the foot it goes under.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
internal sealed record PadOfFoot
{
    [IdList(IdList.Feet)]
    public required string Foot { get; init; }

    [IdList(IdList.Pads)]
    public required string Pad { get; init; }
}
