using System.Diagnostics;
using System.Globalization;

namespace ShopFit.Web.Support;

/// <summary>The real program, started as somebody would start it.</summary>
public sealed class ShopProgram : IDisposable
{
    private readonly Process _process;

    private ShopProgram(Process process) => _process = process;

    /// <summary>Starts it.</summary>
    public static ShopProgram Start(params string[] args)
    {
        var start = new ProcessStartInfo("dotnet", [typeof(ShopSite).Assembly.Location, .. args])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        return new ShopProgram(Process.Start(start)!);
    }

    /// <summary>Starts it and waits for its end.</summary>
    public static async Task<Ended> RunAsync(params string[] args)
    {
        using var program = Start(args);
        return await program.EndAsync();
    }

    /// <summary>The next line that it prints.</summary>
    public async Task<string> ReadLineAsync()
    {
        if (await _process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken) is { } line)
        {
            return line;
        }

        var ended = await EndAsync();
        throw new InvalidOperationException($"It ended with {ended.Code}: {ended.Errors}");
    }

    /// <summary>Asks it to stop as a service manager does, and waits for its end.</summary>
    public async Task<Ended> StopAsync()
    {
        using var kill = Process.Start("kill", ["-TERM", _process.Id.ToString(CultureInfo.InvariantCulture)]);
        await kill.WaitForExitAsync(TestContext.Current.CancellationToken);
        return await EndAsync();
    }

    public void Dispose()
    {
        if (!_process.HasExited)
        {
            _process.Kill();
        }

        _process.Dispose();
    }

    private async Task<Ended> EndAsync()
    {
        var output = _process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        var errors = _process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await _process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return new Ended(_process.ExitCode, await output, await errors);
    }

    /// <summary>How it ended and all that it said.</summary>
    public sealed record Ended(int Code, string Output, string Errors);
}
