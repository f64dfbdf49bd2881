namespace ShopFit.Web.Data;

/// <summary>Lets one writer at a time through in this process.</summary>
/// <remarks>SQLite has one writer anyway; queueing here costs milliseconds where its own waiting costs hundreds.</remarks>
public sealed class WriteLock : IDisposable
{
    private readonly SemaphoreSlim _turn = new(1, 1);

    /// <summary>Waits for its turn; disposing what it answers gives the turn back.</summary>
    public async Task<IDisposable> EnterAsync(CancellationToken cancellationToken)
    {
        await _turn.WaitAsync(cancellationToken);
        return new Turn(_turn);
    }

    public void Dispose() => _turn.Dispose();

    private sealed class Turn(SemaphoreSlim turn) : IDisposable
    {
        public void Dispose() => turn.Release();
    }
}
