namespace ShopFit.Web.Data;

/// <summary>Brings the database up to date before the first request can come in.</summary>
internal sealed class PrepareBeforeServing(ShopPreparation preparation) : IHostedLifecycleService
{
    public Task StartingAsync(CancellationToken cancellationToken) => preparation.RunAsync(cancellationToken);

    public Task StartAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StartedAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StoppingAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StoppedAsync(CancellationToken cancellationToken) => Task.CompletedTask;
}
