using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Scoring;
using ShopFit.Web.Features.Fittings;

namespace ShopFit.Web.Features.Demo;

/// <summary>Two years of the demo shop beside those who are known by name: studios, dancers, visits, and what was delivered meanwhile.</summary>
internal sealed record DemoYears(
    IReadOnlyList<DemoStudio> Studios,
    IReadOnlyList<DemoGuardian> Guardians,
    IReadOnlyList<DemoDancer> Dancers,
    IReadOnlyList<DemoDelivery> Deliveries,
    IReadOnlyList<DemoVisit> Visits)
{
    /// <summary>The part from a moment on; everybody is still on file.</summary>
    public DemoYears From(DateTimeOffset at) => this with
    {
        Deliveries = [.. Deliveries.Where(delivery => delivery.At >= at)],
        Visits = [.. Visits.Where(visit => visit.OpenedAt >= at)],
    };

    /// <summary>How many more pieces of a thing stood there at a moment than in the beginning.</summary>
    /// <param name="at">The moment.</param>
    /// <param name="code">Code of the thing.</param>
    /// <param name="padId">The pad that it is; null where it is none.</param>
    public int MoreBy(DateTimeOffset at, string code, string? padId = null)
    {
        var sold = Visits.Where(visit => visit.OpenedAt < at && visit.Decision?.Kind == DecisionKinds.Sold).ToList();
        return Deliveries.Where(delivery => delivery.At < at && delivery.Code == code).Sum(delivery => delivery.Pieces)
            - sold.Count(visit => visit.Decision!.Sku == code)
            - sold.Count(visit => padId is not null && visit.Decision!.Pads.Any(pad => pad.Pad == padId))
            - sold.Sum(visit => visit.Extras.Count(extra => extra == code));
    }
}

internal sealed record DemoStudio(string Name, string Teachers, string Colour, string Ribbon, string Wishes, IReadOnlyList<string> Asked, IReadOnlyList<string> NotWanted);

internal sealed record DemoDelivery(DateTimeOffset At, string Code, int Pieces);

/// <summary>One visit; it is open where nothing was decided.</summary>
internal sealed record DemoVisit(
    string Key,
    string Dancer,
    string Kind,
    bool FirstPair,
    DateOnly? TeacherAgreedOn,
    DateTimeOffset OpenedAt,
    DateTimeOffset? ClosedAt,
    string Fitter,
    string Sore,
    IReadOnlyList<DemoBothFeet> Readings,
    IReadOnlyList<DemoTryOn> TryOns,
    DemoDecision? Decision,
    IReadOnlyList<string> Extras);

/// <summary>What was read of two feet, or of one; a word where no method is said.</summary>
internal sealed record DemoBothFeet(string Trait, double? Left, double? Right, string? Method)
{
    public IEnumerable<(IReadOnlyList<Side> Feet, double Value)> Entries()
    {
        if (Left is { } both && Left.Equals(Right))
        {
            yield return ([Side.Left, Side.Right], both);
            yield break;
        }

        if (Left is { } left)
        {
            yield return ([Side.Left], left);
        }

        if (Right is { } right)
        {
            yield return ([Side.Right], right);
        }
    }
}
