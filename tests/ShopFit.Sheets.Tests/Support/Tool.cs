using System.ComponentModel;
using System.Diagnostics;

namespace ShopFit.Sheets.Support;

/// <summary>Runs a program of poppler-utils or qpdf that judges a PDF from outside.</summary>
internal static class Tool
{
    public static async Task<(int Code, string Output)> RunAsync(string name, params IEnumerable<string> arguments)
    {
        var start = new ProcessStartInfo(name, arguments) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        try
        {
            using var process = Process.Start(start)!;
            var output = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
            var errors = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
            await process.WaitForExitAsync(TestContext.Current.CancellationToken);
            return (process.ExitCode, await output + await errors);
        }
        catch (Win32Exception)
        {
            Assert.Fail($"{name} is not installed. The sheets are judged by poppler-utils and qpdf: apt-get install poppler-utils qpdf, or run tests/run.sh, which does so.");
            throw;
        }
    }
}
