using System.CommandLine;

namespace ShopFit.Web.CommandLine;

/// <summary>The option that every command takes: where the shop is kept.</summary>
internal static class DataOption
{
    public static Option<string?> Make() => new("--data")
    {
        Description = "Folder that holds the shop: database, keys and backups. Default: a folder ShopFit among this user's own application data.",
        HelpName = "FOLDER",
    };
}
