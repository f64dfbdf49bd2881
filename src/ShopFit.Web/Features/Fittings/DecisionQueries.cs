using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Fittings;

/// <summary>What can be put under a foot at the end of a fitting. Reads only.</summary>
public sealed class DecisionQueries(FitNumbers numbers)
{
    /// <summary>Ids of all pads that may be put under a foot in a kind of footwear, those that correct first.</summary>
    public async Task<IReadOnlyList<string>> PadsAsync(string kind, CancellationToken cancellationToken) =>
        [.. (await numbers.SeeAsync(cancellationToken)).PadsOf(kind).OrderByDescending(pad => pad.Corrects).Select(pad => pad.Id)];
}
