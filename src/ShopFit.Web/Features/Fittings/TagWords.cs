using Microsoft.Extensions.Localization;

namespace ShopFit.Web.Features.Fittings;

/// <summary>The tags of a try-on in words.</summary>
internal static class TagWords
{
    /// <summary>A tag as it stands on its key.</summary>
    public static string Tag(string tag, IStringLocalizer<TryOnWords> words) => tag switch
    {
        "too-short" => words["too short"],
        "too-long" => words["too long"],
        "box-narrow" => words["narrow"],
        "box-wide" => words["wide"],
        "joints-tight" => words["tight"],
        "joints-loose" => words["loose"],
        "crown-presses" => words["presses"],
        "crown-gaps" => words["gaps"],
        "vamp-short" => words["short"],
        "vamp-long" => words["long"],
        "heel-digs" => words["digs"],
        "heel-baggy" => words["baggy"],
        "sinks" => words["sinks"],
        "knuckles" => words["knuckles"],
        "short-of-it" => words["not on it"],
        "over-it" => words["over it"],
        "shank-soft" => words["soft"],
        "shank-hard" => words["hard"],
        "twists" => words["twists"],
        "feels-good" => words["feels good"],
        TryOnTags.Hurts => words["hurts"],
        _ => tag,
    };

    /// <summary>The place that a row of tags is about.</summary>
    public static string Group(string group, IStringLocalizer<TryOnWords> words) => group switch
    {
        "length" => words["Length"],
        "box" => words["Box"],
        "joints" => words["Joints"],
        "crown" => words["Crown"],
        "vamp" => words["Vamp"],
        "heel" => words["Heel"],
        "in-the-box" => words["In the box"],
        "platform" => words["Platform"],
        "shank" => words["Shank"],
        "dancer" => words["In their words"],
        _ => group,
    };

    /// <summary>A tag that stands alone: with its place, unless it says that itself.</summary>
    public static string Alone(string tag, IStringLocalizer<TryOnWords> words) =>
        tag is "too-short" or "too-long" or "sinks" or "knuckles" or "twists" or "feels-good" or TryOnTags.Hurts
        || TryOnTags.For("pointe").FirstOrDefault(row => row.Tags.Contains(tag)) is not { } group
            ? Tag(tag, words)
            : words["{0} {1}", Group(group.Id, words), Tag(tag, words)].Value;
}
