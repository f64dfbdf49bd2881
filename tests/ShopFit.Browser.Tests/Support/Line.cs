using System.Net;
using System.Net.Sockets;

namespace ShopFit.Browser.Support;

/// <summary>The line between a tablet and the shop's computer, which can be cut and mended while both go on.</summary>
internal sealed class Line : IAsyncDisposable
{
    private readonly CancellationTokenSource _ending = new();
    private readonly TcpListener _listener = new(IPAddress.Loopback, 0);
    private readonly int _shop;
    private readonly Task _answering;
    private readonly Lock _gate = new();
    private CancellationTokenSource _cut = new();

    private Line(int shop)
    {
        _shop = shop;
        _listener.Start();
        _answering = AnswerAsync();
    }

    /// <summary>Where the tablet finds the shop at this end of the line.</summary>
    public string Address => $"http://127.0.0.1:{((IPEndPoint)_listener.LocalEndpoint).Port}";

    public static Line To(RunningShop shop) => new(new Uri(shop.Address).Port);

    /// <summary>Ends what goes over the line, and lets nothing over it until it is mended.</summary>
    public void Cut()
    {
        lock (_gate)
        {
            _cut.Cancel();
        }
    }

    public void Mend()
    {
        lock (_gate)
        {
            _cut.Dispose();
            _cut = new CancellationTokenSource();
        }
    }

    public async ValueTask DisposeAsync()
    {
        await _ending.CancelAsync();
        Cut();
        _listener.Stop();
        await _answering;
        _listener.Dispose();
        _ending.Dispose();
        _cut.Dispose();
    }

    private async Task AnswerAsync()
    {
        var calls = new List<Task>();
        while (!_ending.IsCancellationRequested)
        {
            try
            {
                var tablet = await _listener.AcceptTcpClientAsync(_ending.Token);
                CancellationToken cut;
                lock (_gate)
                {
                    cut = _cut.Token;
                }

                calls.Add(CarryAsync(tablet, cut));
            }
            catch (OperationCanceledException)
            {
                break;
            }
        }

        await Task.WhenAll(calls);
    }

    private async Task CarryAsync(TcpClient tablet, CancellationToken cut)
    {
        using var here = tablet;
        using var there = new TcpClient();
        try
        {
            await there.ConnectAsync(IPAddress.Loopback, _shop, cut);
            await Task.WhenAny(
                here.GetStream().CopyToAsync(there.GetStream(), cut),
                there.GetStream().CopyToAsync(here.GetStream(), cut));
        }
        catch (Exception broken) when (broken is OperationCanceledException or SocketException or IOException)
        {
            // Cut, or the shop is not there: the tablet finds its call ended.
        }
    }
}
