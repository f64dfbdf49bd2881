namespace ShopFit.Fitting.Seed;

/// <summary>The shipped files of the demo shop.</summary>
internal static class SeedFiles
{
    private static readonly string Folder = FindFolder();

    internal static string Text(string file) => File.ReadAllText(Path.Combine(Folder, file));

    /// <summary>The rows of a file without quoted cells, by column.</summary>
    internal static IReadOnlyList<IReadOnlyDictionary<string, string>> Rows(string file)
    {
        var lines = Text(file).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var columns = lines[0].Split(',');
        return [.. lines.Skip(1).Select(line => columns.Zip(line.Split(',')).ToDictionary(cell => cell.First, cell => cell.Second))];
    }

    private static string FindFolder()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "ShopFit.sln")))
        {
            folder = folder.Parent;
        }

        return Path.Combine(folder?.FullName ?? throw new DirectoryNotFoundException("ShopFit.sln lies in no folder above the tests."), "seed");
    }
}
