using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Scoring;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Features.Fittings;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Papers;

/// <summary>All that is known at the moment of a sale and may stand on the sheet.</summary>
internal sealed record SoldFitting
{
    public required FittingRecord Fitting { get; init; }

    /// <summary>Null where nobody is on file.</summary>
    public required Dancer? Dancer { get; init; }

    /// <summary>Name of the dancer's studio; empty where none is known.</summary>
    public required string Studio { get; init; }

    public required Shop Shop { get; init; }

    /// <summary>The name of whoever fitted.</summary>
    public required string Fitter { get; init; }

    public required DateTimeOffset At { get; init; }

    public required ShoeDetails Pair { get; init; }

    /// <summary>How it fits, the chosen pads counted.</summary>
    public required PairFit Fit { get; init; }

    public required IReadOnlyList<PadUnderFoot> Pads { get; init; }

    public required FeetBelief Feet { get; init; }

    /// <summary>How many pairs were tried, this one counted.</summary>
    public required int PairsTried { get; init; }

    /// <summary>Whether sewing was bought.</summary>
    public required bool SewnByShop { get; init; }

    /// <summary>What the fitter wrote for the sheet; empty where nothing.</summary>
    public required string FitterDecided { get; init; }

    /// <summary>Why this pair, in the fitter's words; empty where the numbers say it.</summary>
    public required string Why { get; init; }

    public required FitDefaults Numbers { get; init; }
}
