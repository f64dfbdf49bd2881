using System.Globalization;
using System.Text.RegularExpressions;

namespace ShopFit.Web.App;

/// <summary>Every pair of colours that carries text or an edge, in the four dresses. Formulas: W3C, WCAG 2.2, "relative luminance" and "contrast ratio".</summary>
public sealed partial class TokensTests
{
    private static readonly string Css = ReadCss();

    public static TheoryData<string, string> Dresses { get; } = new(
        from theme in new[] { "light", "dark" }
        from contrast in new[] { "usual", "high" }
        select (theme, contrast));

    // The worked values of the definition itself: black on white is 21:1, and #777777 on white just misses 4.5:1 (W3C, Understanding 1.4.3).
    [Theory]
    [InlineData("#000000", "#FFFFFF", 21)]
    [InlineData("#777777", "#FFFFFF", 4.48)]
    [InlineData("#767676", "#FFFFFF", 4.54)]
    public void Contrast_is_counted_as_the_guidelines_do(string one, string other, double ratio) => Assert.Equal(ratio, Contrast(one, other), 2);

    [Theory]
    [MemberData(nameof(Dresses))]
    public void Text_can_be_read_on_every_surface_it_stands_on(string theme, string contrast)
    {
        var colours = Colours(theme, contrast);
        foreach (var (text, surface, least) in new[]
        {
            ("ink", "paper", 7), ("ink", "mat", 7), ("ink", "foot-soft", 7), ("ink", "attention-soft", 7), ("ink", "harm-soft", 7),
            ("ink-soft", "paper", 4.5), ("ink-soft", "mat", 4.5), ("ink-soft", "attention-soft", 4.5),
            ("attention", "paper", 4.5), ("attention", "mat", 4.5), ("attention", "attention-soft", 4.5),
            ("harm", "paper", 4.5), ("harm", "mat", 4.5), ("harm", "harm-soft", 4.5),
            ("on-chosen", "chosen", 7), ("paper", "foot", 4.5), ("paper", "ink", 7),
        })
        {
            Assert.True(Contrast(colours[text], colours[surface]) >= least, $"{text} on {surface} ({theme}, {contrast}): {Contrast(colours[text], colours[surface]):0.00}");
        }
    }

    [Theory]
    [MemberData(nameof(Dresses))]
    public void Edges_and_lines_of_the_drawing_can_be_told_from_every_surface(string theme, string contrast)
    {
        var colours = Colours(theme, contrast);
        foreach (var line in new[] { "edge", "foot", "shoe", "attention", "harm" })
        {
            foreach (var surface in new[] { "paper", "mat" })
            {
                Assert.True(Contrast(colours[line], colours[surface]) >= 3, $"{line} on {surface} ({theme}, {contrast}): {Contrast(colours[line], colours[surface]):0.00}");
            }
        }
    }

    private static Dictionary<string, string> Colours(string theme, string contrast)
    {
        var colours = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (Match rule in Rules().Matches(Css))
        {
            var selector = rule.Groups["selector"].Value;
            var worn = (!selector.Contains("data-theme", StringComparison.Ordinal) || theme is "dark")
                && (!selector.Contains("data-contrast", StringComparison.Ordinal) || contrast is "high");
            if (worn)
            {
                foreach (Match colour in ColourLines().Matches(rule.Groups["body"].Value))
                {
                    colours[colour.Groups["name"].Value] = colour.Groups["value"].Value;
                }
            }
        }

        return colours;
    }

    private static double Contrast(string one, string other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(string colour)
    {
        double Channel(int from)
        {
            var share = int.Parse(colour.AsSpan(from, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
        }

        return (0.2126 * Channel(1)) + (0.7152 * Channel(3)) + (0.0722 * Channel(5));
    }

    private static string ReadCss()
    {
        using var reader = new StreamReader(typeof(TokensTests).Assembly.GetManifestResourceStream("tokens.css")!);
        return reader.ReadToEnd();
    }

    [GeneratedRegex(@"(?<selector>(?::root\s*|\[data-[^{]*))\{(?<body>[^}]*)\}", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Rules();

    [GeneratedRegex(@"--(?<name>[a-z-]+): (?<value>#[0-9A-Fa-f]{6});", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex ColourLines();
}
