namespace ShopFit.Web;

/// <summary>What is logged: warnings, and never who somebody is.</summary>
internal static class ShopLogs
{
    /// <summary>Sets the levels.</summary>
    public static void Keep(ILoggingBuilder logging)
    {
        // Below a warning the framework logs addresses, and an address can hold what was searched for.
        logging.SetMinimumLevel(LogLevel.Warning);
        logging.AddFilter(null, LogLevel.Warning);

        // Warns that the keys in the database are not encrypted: whoever can read the file can read the shop anyway.
        logging.AddFilter("Microsoft.AspNetCore.DataProtection.KeyManagement.XmlKeyManager", LogLevel.Error);
    }
}
