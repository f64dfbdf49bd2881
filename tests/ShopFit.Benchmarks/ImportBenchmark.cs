using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace ShopFit.Benchmarks;

/// <summary>The whole program, start to end, as somebody at the command line waits for it.</summary>
internal static class ImportBenchmark
{
    private const int Rows = 20_000;
    private const int Models = 40;
    private const int SizesOfAModel = Rows / Models;

    public static async Task RunAsync(TextWriter report, CancellationToken cancellationToken)
    {
        var folder = Directory.CreateTempSubdirectory("shopfit-import-").FullName;
        try
        {
            var file = Path.Combine(folder, "catalogue.csv");
            await File.WriteAllTextAsync(file, Catalogue(), cancellationToken);
            foreach (var time in new[] { "first import", "same file again" })
            {
                var (seconds, said) = await ImportAsync(file, folder, cancellationToken);
                await report.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"{time,-16} {seconds,6:0.0} s   {said}"));
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static string Catalogue()
    {
        var text = new StringBuilder("sku,maker,model,kind,sizeSystem,size,width,option,lengthMm,formSource,onHand\n");
        for (var row = 0; row < Rows; row++)
        {
            var (model, size) = (row / SizesOfAModel, row % SizesOfAModel);
            text.Append(CultureInfo.InvariantCulture, $"S{row},Maker {model % 7},Model {model},pointe,eu,{30 + (size % 20 * 0.5)},W{size / 20},O{size / 20},{220 + (size % 60)},maker,{row % 3}\n");
        }

        return text.ToString();
    }

    private static async Task<(double Seconds, string Said)> ImportAsync(string file, string folder, CancellationToken cancellationToken)
    {
        var program = Path.Combine(AppContext.BaseDirectory, "ShopFit.Web.dll");
        var started = Stopwatch.GetTimestamp();
        using var process = Process.Start(new ProcessStartInfo("dotnet", [program, "import-catalogue", file, "--data", folder])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
        }) ?? throw new InvalidOperationException("dotnet could not be started.");
        var said = await process.StandardOutput.ReadToEndAsync(cancellationToken);
        await process.WaitForExitAsync(cancellationToken);
        var seconds = Stopwatch.GetElapsedTime(started).TotalSeconds;
        return process.ExitCode == 0
            ? (seconds, said.Trim().Split('\n')[^1])
            : throw new InvalidOperationException($"The import failed: {said}");
    }
}
