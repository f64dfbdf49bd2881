namespace ShopFit.Web.Data;

/// <summary>The folder that holds everything a shop must not lose.</summary>
/// <param name="Path">Full path of the folder.</param>
public sealed record ShopFolder(string Path)
{
    /// <summary>The database.</summary>
    public string DatabaseFile => System.IO.Path.Combine(Path, "shop.db");

    /// <summary>The folder of this user's own shop, outside the program's files.</summary>
    public static ShopFolder Default => new(System.IO.Path.Combine(
        Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify),
        "ShopFit"));
}
