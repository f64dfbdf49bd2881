using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using System.Text;

namespace ShopFit.Browser.Support;

/// <summary>The real program with its demo shop, in a process and a data folder of its own, on a free port of this machine.</summary>
public class RunningShop : IAsyncLifetime
{
    private static readonly TimeSpan StartsWithin = TimeSpan.FromSeconds(90);
    private readonly StringBuilder _output = new();
    private readonly bool _withDemo;
    private Process? _process;

    public RunningShop()
        : this(withDemo: true)
    {
    }

    protected RunningShop(bool withDemo) => _withDemo = withDemo;

    public string Address { get; } = $"http://127.0.0.1:{FreePort()}";

    public string Data { get; } = Directory.CreateTempSubdirectory("shopfit-browser-").FullName;

    public string Output
    {
        get
        {
            lock (_output)
            {
                return _output.ToString();
            }
        }
    }

    public async ValueTask InitializeAsync()
    {
        Start();
        using var client = new HttpClient { BaseAddress = new Uri(Address) };
        var began = Stopwatch.StartNew();
        while (!await IsHealthyAsync(client))
        {
            if (_process!.HasExited)
            {
                throw new InvalidOperationException($"The shop stopped with {_process.ExitCode} at its start. It said:\n{Output}");
            }

            if (began.Elapsed > StartsWithin)
            {
                throw new InvalidOperationException($"The shop did not start. It said:\n{Output}");
            }

            await Task.Delay(100);
        }
    }

    /// <summary>Stops the program as a power cut would, and starts it again on the same data.</summary>
    public async Task RestartAfterPowerCutAsync()
    {
        _process!.Kill(entireProcessTree: true);
        await _process.WaitForExitAsync();
        await InitializeAsync();
    }

    public async ValueTask DisposeAsync()
    {
        if (_process is { HasExited: false })
        {
            _process.Kill(entireProcessTree: true);
            await _process.WaitForExitAsync();
        }

        _process?.Dispose();
        Directory.Delete(Data, recursive: true);
        GC.SuppressFinalize(this);
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private static async Task<bool> IsHealthyAsync(HttpClient client)
    {
        try
        {
            using var answer = await client.GetAsync(new Uri("/healthz", UriKind.Relative));
            return answer.IsSuccessStatusCode;
        }
        catch (HttpRequestException)
        {
            return false;
        }
    }

    private void Start()
    {
        // The published program, as a shop would run it. tests/run.sh publishes it; by hand: see DEVELOPERS.md.
        var program = Path.Combine(Repository.Root, "artifacts", "shop", "ShopFit.Web.dll");
        if (!File.Exists(program))
        {
            throw new InvalidOperationException($"There is no {program}: dotnet publish src/ShopFit.Web -c Release -o artifacts/shop");
        }

        var start = new ProcessStartInfo("dotnet", [program, .. _withDemo ? ["--demo"] : Array.Empty<string>(), "--data", Data, "--urls", Address])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Path.GetDirectoryName(program),
        };
        _process = Process.Start(start) ?? throw new InvalidOperationException("dotnet could not be started.");
        _process.OutputDataReceived += Keep;
        _process.ErrorDataReceived += Keep;
        _process.BeginOutputReadLine();
        _process.BeginErrorReadLine();
    }

    private void Keep(object sender, DataReceivedEventArgs line)
    {
        lock (_output)
        {
            _output.AppendLine(line.Data);
        }
    }
}
