using System.CommandLine;
using System.Globalization;
using ShopFit.Web.Features.Catalogue;

namespace ShopFit.Web.CommandLine;

/// <summary>Takes a catalogue file over, or says what is wrong with it.</summary>
internal static class ImportCatalogueCommand
{
    public static Command Make()
    {
        var file = new Argument<string>("FILE") { Description = "The catalogue: CSV in UTF-8 with a header row, one row a size." };
        var dryRun = new Option<bool>("--dry-run") { Description = "Says what would happen and changes nothing." };
        var skipBad = new Option<bool>("--skip-bad") { Description = "Takes the good rows although others are bad. Without it, one bad row and nothing is taken." };
        var data = DataOption.Make();
        var command = new Command("import-catalogue", "Takes a catalogue file over: new codes, and what is new about known ones. Importing a file again changes nothing.")
        {
            file,
            dryRun,
            skipBad,
            data,
        };
        command.SetAction((parsed, cancellationToken) =>
            RunAsync(parsed.GetRequiredValue(file), parsed.GetValue(dryRun), parsed.GetValue(skipBad), parsed.GetValue(data), cancellationToken));
        return command;
    }

    private static async Task<int> RunAsync(string path, bool dryRun, bool skipBad, string? data, CancellationToken cancellationToken)
    {
        if (!File.Exists(path))
        {
            throw new CommandException($"There is no file \"{path}\".");
        }

        await using var shop = await CommandShop.OpenAsync(data, cancellationToken);
        var check = shop.Get<CheckCatalogue>();
        await using var stream = File.OpenRead(path);
        var file = await check.ReadAsync(shop.Actor.ShopId, stream, cancellationToken);

        var report = await check.CompareAsync(shop.Actor.ShopId, file, cancellationToken);
        Print(report);
        if (!report.IsTaken(skipBad))
        {
            throw Refusal(report);
        }

        if (dryRun)
        {
            Console.WriteLine(Counts("Would take", report.New, report.Changed, report.Unchanged, report.Skipped));
            return 0;
        }

        // Somebody else may have changed the shop since the comparison, so the import compares for itself.
        switch (await shop.Get<ImportCatalogue>().RunAsync(shop.Actor, Guid.CreateVersion7(), file, skipBad, cancellationToken))
        {
            case ImportOutcome.Imported taken:
                Console.WriteLine(Counts("Took", taken.New, taken.Changed, taken.Unchanged, taken.Skipped));
                return 0;
            case ImportOutcome.Refused refused:
                throw Refusal(refused.Report);
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }

    private static void Print(CatalogueReport report)
    {
        foreach (var problem in report.Problems)
        {
            Console.WriteLine(problem.Column is null
                ? string.Create(CultureInfo.InvariantCulture, $"line {problem.Line}: {problem.Sentence}")
                : string.Create(CultureInfo.InvariantCulture, $"line {problem.Line}, {problem.Column}: {problem.Sentence}"));
        }

        if (report.ProblemCount > report.Problems.Count)
        {
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"... and {report.ProblemCount - report.Problems.Count} more."));
        }
    }

    private static CommandException Refusal(CatalogueReport report) => new(string.Create(
        CultureInfo.InvariantCulture,
        $"Nothing was taken: {report.ProblemCount} {(report.ProblemCount == 1 ? "problem" : "problems")} in the file.{(report.IsTable && report.Good > 0 ? $" Good rows: {report.Good}; --skip-bad takes them." : "")}"));

    private static string Counts(string verb, int added, int changed, int unchanged, int skipped) =>
        string.Create(CultureInfo.InvariantCulture, $"{verb} {added} new, {changed} changed, {unchanged} unchanged, {skipped} skipped.");
}
