namespace ShopFit.Web.Features.Settings;

/// <summary>How the paths of changed settings begin. A fit number has its own path, which begins with the name of its table.</summary>
public static class SettingPaths
{
    /// <summary>Settings of the shop: "shop.currency".</summary>
    public const string Shop = "shop.";

    /// <summary>Somebody who works here: "people.{id}.name".</summary>
    public const string People = "people.";

    /// <summary>A key of another program: "keys.{id}".</summary>
    public const string Keys = "keys.";
}
