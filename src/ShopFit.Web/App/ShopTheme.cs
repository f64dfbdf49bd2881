namespace ShopFit.Web.App;

/// <summary>The component kit in our type and room. Its colours come from <c>theme/tokens.css</c> by way of <c>theme/kit.css</c>.</summary>
internal static class ShopTheme
{
    private static readonly string[] Type = ["Inter", "system-ui", "sans-serif"];

    public static MudBlazor.MudTheme Kit { get; } = new()
    {
        LayoutProperties = new() { DefaultBorderRadius = "6px" },
        Typography = new()
        {
            Default = new MudBlazor.DefaultTypography { FontFamily = Type, FontSize = "1rem", LineHeight = "1.4", LetterSpacing = "normal" },
            Body1 = new MudBlazor.Body1Typography { FontSize = "1rem", LineHeight = "1.4", LetterSpacing = "normal" },
            Body2 = new MudBlazor.Body2Typography { FontSize = "0.875rem", LineHeight = "1.4", LetterSpacing = "normal" },
            Button = new MudBlazor.ButtonTypography { FontSize = "0.9375rem", FontWeight = "500", TextTransform = "none", LetterSpacing = "normal" },
        },
    };
}
