namespace ShopFit.Web.Data;

/// <summary>The folder that holds everything a shop must not lose.</summary>
/// <param name="Path">Full path of the folder.</param>
/// <param name="IsDemo">Whether the demo shop is asked for. A folder that holds it is marked, so that it never mixes with a real shop.</param>
public sealed record ShopFolder(string Path, bool IsDemo = false)
{
    /// <summary>The database.</summary>
    public string DatabaseFile => System.IO.Path.Combine(Path, "shop.db");

    /// <summary>Copies of the database, made before it is changed to a newer shape.</summary>
    public string Backups => System.IO.Path.Combine(Path, "backups");

    /// <summary>Held by whichever program brings the database up to date.</summary>
    internal string PreparationLock => System.IO.Path.Combine(Path, "shop.lock");

    /// <summary>A file that is there when what the folder holds was invented.</summary>
    internal string DemoMark => System.IO.Path.Combine(Path, "this-is-the-demo-shop");

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
