using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Fittings;

/// <summary>What is believed of the feet of a fitting, by the numbers of the shop.</summary>
public sealed class FeetQueries(FitNumbers numbers)
{
    /// <summary>The belief, worked out away from the screen.</summary>
    public async Task<FittingBelief> BelieveAsync(SeenFitting fitting, CancellationToken cancellationToken)
    {
        var defaults = await numbers.SeeAsync(cancellationToken);
        return await Task.Run(() => FittingBelief.Of(fitting.Evidence, defaults), cancellationToken);
    }
}
