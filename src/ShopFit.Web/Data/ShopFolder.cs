namespace ShopFit.Web.Data;

/// <summary>The folder that holds everything a shop must not lose.</summary>
/// <param name="Path">Full path of the folder.</param>
/// <param name="IsDemo">Whether it is the demo shop's; that has a file of its own, so that it never mixes with a real shop.</param>
public sealed record ShopFolder(string Path, bool IsDemo = false)
{
    /// <summary>The database.</summary>
    public string DatabaseFile => System.IO.Path.Combine(Path, IsDemo ? "demo.db" : "shop.db");

    /// <summary>Copies of the database, made before it is changed to a newer shape.</summary>
    public string Backups => System.IO.Path.Combine(Path, "backups");

    /// <summary>Held by whichever program brings the database up to date.</summary>
    internal string PreparationLock => System.IO.Path.Combine(Path, IsDemo ? "demo.lock" : "shop.lock");

    /// <summary>The folder that was asked for, or else one of this user's own, outside the program's files.</summary>
    public static ShopFolder At(string? path, bool isDemo)
    {
        if (!string.IsNullOrWhiteSpace(path))
        {
            return new ShopFolder(System.IO.Path.GetFullPath(path), isDemo);
        }

        var own = System.IO.Path.Combine(
            Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify),
            "ShopFit");
        return new ShopFolder(isDemo ? System.IO.Path.Combine(own, "demo") : own, isDemo);
    }
}
