namespace ShopFit.Web.Features.Fittings;

/// <summary>What a fitter says of a pair on two feet by one tap, in the trade's own words. Codes; <see cref="TryOnWords"/> has the words.</summary>
public static class TryOnTags
{
    /// <summary>It hurts: the pair comes off, and nobody here says what it is.</summary>
    public const string Hurts = "hurts";

    /// <summary>The row of what the dancer says.</summary>
    internal const string OfDancer = "dancer";

    private static readonly TryOnTagGroup[] Everywhere =
    [
        new("length", ["too-short", "too-long"]),
        new("joints", ["joints-tight", "joints-loose"]),
        new("heel", ["heel-digs", "heel-baggy"]),
    ];

    private static readonly TryOnTagGroup[] EnPointe =
    [
        new("length", ["too-short", "too-long"]),
        new("box", ["box-narrow", "box-wide"]),
        new("joints", ["joints-tight", "joints-loose"]),
        new("crown", ["crown-presses", "crown-gaps"]),
        new("vamp", ["vamp-short", "vamp-long"]),
        new("heel", ["heel-digs", "heel-baggy"]),
        new("in-the-box", ["sinks", "knuckles"]),
        new("platform", ["short-of-it", "over-it"]),
        new("shank", ["shank-soft", "shank-hard", "twists"]),
    ];

    private static readonly TryOnTagGroup Dancer = new(OfDancer, ["feels-good", Hurts]);

    /// <summary>The rows in which the tags of a kind of footwear are offered.</summary>
    public static IReadOnlyList<TryOnTagGroup> For(string kind) => [.. kind is "pointe" ? EnPointe : Everywhere, Dancer];

    /// <summary>Whether a code is one of the tags of any kind.</summary>
    public static bool Known(string tag) => EnPointe.Append(Dancer).Any(group => group.Tags.Contains(tag));
}

/// <summary>Tags about one place, the tight or short one first.</summary>
/// <param name="Id">Code of the place.</param>
/// <param name="Tags">Codes of the tags.</param>
public sealed record TryOnTagGroup(string Id, IReadOnlyList<string> Tags);
