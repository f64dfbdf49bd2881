namespace ShopFit.Web.Shared;

/// <summary>Where each pad lies, drawn on half a right shoe seen from above, big toe at the left.</summary>
/// <remarks>A picture of the place, not of the pad's size. Units of a box of 52 by 64.</remarks>
internal static class PadPlaces
{
    /// <summary>The toe half of a shoe, open towards the heel.</summary>
    public const string ToeHalf = "M7 62C6 50 4 40 5 28C6 16 9 7 17 4H31C39 7 46 18 47 32C48 44 46 53 44 62";

    /// <summary>The heel half of a shoe, open towards the toes.</summary>
    public const string HeelHalf = "M11 2C10 16 8 26 8 38C8 53 16 61 26 61C36 61 44 53 44 38C44 26 43 16 42 2";

    private static readonly Dictionary<string, PadPlace> Places = new(StringComparer.Ordinal)
    {
        ["second-toe-hollow"] = new(ToeHalf, "M10 20C11 12 14 8 18 7.5C18 15 25 15 25 7.5H30C36 9 41 15 43 24L38 26C32 20 16 18 10 20Z"),
        ["first-toe-lift"] = new(ToeHalf, "M9 22C9 12 13 7.5 18 7.5H21C22 12 22 18 20 23C17 26 11 26 9 22Z"),
        ["toe-cap"] = new(ToeHalf, "M8 30C8 17 11 8 17.5 7H30.5C37 9 43 19 44 32C33 26 18 25 8 30Z"),
        ["heel-cushion"] = new(HeelHalf, "M11 36C11 51 17 58 26 58S41 51 41 36L34 40C34 47 31 50 26 50S18 47 18 40Z"),
        ["joint-cushion"] = new(ToeHalf, "M7 42C12 40 14 46 14 52S12 61 9 61C8 54 7 48 7 42ZM45 36C40 35 38 41 38 47S39 57 42 58C44 51 45 44 45 36Z"),
        ["toe-cushion"] = new(ToeHalf, "M8 20C13 18 15 24 14 30S11 39 8 38C7 32 7 26 8 20ZM43 24C38 22 36 28 37 34S40 43 44 42C45 36 44 30 43 24Z"),
        ["loose-wool"] = new(ToeHalf, "M12 18C9 14 13 8 17 10C19 6 25 6 27 9C31 6 36 10 35 14C40 15 41 21 37 22C35 26 29 26 27 23C24 27 18 26 17 22C13 24 10 21 12 18Z"),
        ["toe-spacer"] = new(ToeHalf, "M21 8C24 8 25 12 24.5 17S23 27 21.5 27S19 23 18.5 17S19 8 21 8Z"),
    };

    /// <summary>The place of a pad; null for a pad that has no picture.</summary>
    public static PadPlace? Of(string padId) => Places.GetValueOrDefault(padId);
}

/// <summary>Half a shoe and the place in it.</summary>
/// <param name="Half">Path of the half of the shoe.</param>
/// <param name="Place">Path of what is filled.</param>
internal sealed record PadPlace(string Half, string Place);
