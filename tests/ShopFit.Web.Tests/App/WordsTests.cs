using System.Collections;
using System.Globalization;
using System.Resources;
using System.Text.RegularExpressions;

namespace ShopFit.Web.App;

/// <summary>The screens speak English in their source, and the word lists must hold every sentence of it, or a translation would have holes.</summary>
public sealed partial class WordsTests
{
    private static readonly System.Reflection.Assembly Web = typeof(ShopWords).Assembly;

    private static readonly string[] Names =
    [
        .. Web.GetTypes()
            .Where(type => type.Name.EndsWith("Words", StringComparison.Ordinal) && type is { IsPublic: true, IsAbstract: false } && SourcesOf(type.Name).Any())
            .Select(type => type.FullName!),
    ];

    public static TheoryData<string> Lists { get; } = new(Names);

    [Theory]
    [MemberData(nameof(Lists))]
    public void Every_sentence_in_the_source_stands_in_the_list_of_words(string list)
    {
        var known = new ResourceManager(list, Web).GetResourceSet(CultureInfo.InvariantCulture, createIfNotExists: true, tryParents: false)!
            .Cast<DictionaryEntry>().Select(entry => (string)entry.Key).ToHashSet(StringComparer.Ordinal);

        var missing = SourcesOf(list.Split('.')[^1]).SelectMany(source => Keys().Matches(source).Select(match => match.Groups["key"].Value)).Where(key => !known.Contains(key));

        Assert.Empty(missing.Distinct(StringComparer.Ordinal));
    }

    [Fact]
    public void There_is_a_list_for_the_frame_the_fitting_and_the_dancers() =>
        Assert.Superset(
            new HashSet<string>(["ShopFit.Web.App.ShopWords", "ShopFit.Web.Features.Fittings.FittingWords", "ShopFit.Web.Features.Dancers.DancerWords"], StringComparer.Ordinal),
            Names.ToHashSet(StringComparer.Ordinal));

    private static IEnumerable<string> SourcesOf(string list) => typeof(WordsTests).Assembly.GetManifestResourceNames()
        .Where(name => name.StartsWith("source/", StringComparison.Ordinal))
        .Select(Read)
        .Where(source => source.Contains($"IStringLocalizer<{list}>", StringComparison.Ordinal));

    private static string Read(string name)
    {
        using var reader = new StreamReader(typeof(WordsTests).Assembly.GetManifestResourceStream(name)!);
        return reader.ReadToEnd();
    }

    // Words["..."], and both arms of Words[condition ? "..." : "..."].
    [GeneratedRegex("""\b[Ww]ords\[(?:[^"\]]*\? )?"(?<key>[^"]+)"|\b[Ww]ords\[[^"\]]*\? "[^"]+" : "(?<key>[^"]+)"(?=[,\]])""", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 5000)]
    private static partial Regex Keys();
}
