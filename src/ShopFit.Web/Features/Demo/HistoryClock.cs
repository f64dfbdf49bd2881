namespace ShopFit.Web.Features.Demo;

/// <summary>Stands at the moment of history that is being loaded, so that the shop's own actions write it down as of then.</summary>
internal sealed class HistoryClock : TimeProvider
{
    public DateTimeOffset Now { get; set; }

    public override DateTimeOffset GetUtcNow() => Now;
}
