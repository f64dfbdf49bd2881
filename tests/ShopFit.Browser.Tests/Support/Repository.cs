namespace ShopFit.Browser.Support;

/// <summary>Where the source tree lies that these tests were built from.</summary>
internal static class Repository
{
    public static string Root { get; } = Find(AppContext.BaseDirectory);

    private static string Find(string folder) =>
        File.Exists(Path.Combine(folder, "ShopFit.sln"))
            ? folder
            : Find(Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("ShopFit.sln was not found above the tests."));
}
