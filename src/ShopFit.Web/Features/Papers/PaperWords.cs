using System.Globalization;
using System.Resources;

namespace ShopFit.Web.Features.Papers;

/// <summary>The sentences that go onto papers as facts, from the resource file of the same name.</summary>
internal static class PaperWords
{
    private static readonly ResourceManager Resources = new(typeof(PaperWords));

    /// <summary>A sentence with its values filled in, in the current UI culture.</summary>
    public static string Say(string key, params ReadOnlySpan<object?> values) =>
        string.Format(CultureInfo.CurrentCulture, Find(key) ?? throw new MissingManifestResourceException($"There is no sentence for {key}."), values);

    /// <summary>A text that a shop's own additions may lack.</summary>
    public static string? Find(string key) => Resources.GetString(key, CultureInfo.CurrentUICulture);
}
