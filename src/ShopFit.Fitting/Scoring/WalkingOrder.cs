using System.Globalization;

namespace ShopFit.Fitting.Scoring;

/// <summary>In which order pairs are fetched, and each from which of its places: as few stops as can be, in the order of the shelf.</summary>
/// <remarks>
/// A shop writes its places as it likes, such as B3 or 12. What stands before the number is taken for the bay, the number
/// for the way along it (common practice, no source); a place without a number is a bay of its own.
/// </remarks>
internal static class WalkingOrder
{
    // Of a pair that stands in many places, the first few are enough to choose from.
    private const int MostPlaces = 5;

    /// <summary>One stop for each pair, in the order of the walk. Pairs that stand nowhere come last, in the order in which they were given.</summary>
    /// <param name="places">For each pair, the places where it stands; may be empty.</param>
    public static IReadOnlyList<WalkStop> Of(IReadOnlyList<IReadOnlyList<string>> places)
    {
        var ways = Ways(places, 0).Select(way => way.ToArray()).ToList();
        string?[] best = ways
            .OrderBy(way => way.OfType<string>().Select(BayOf).Distinct(StringComparer.OrdinalIgnoreCase).Count())
            .ThenBy(way => way.OfType<string>().Distinct(StringComparer.Ordinal).Count())
            .First();
        return
        [
            .. best.Select((place, index) => new WalkStop(index, place))
                .OrderBy(stop => stop.Place is null)
                .ThenBy(stop => BayOf(stop.Place ?? ""), StringComparer.OrdinalIgnoreCase)
                .ThenBy(stop => NumberOf(stop.Place ?? ""))
                .ThenBy(stop => stop.Place, StringComparer.Ordinal)
                .ThenBy(stop => stop.Index),
        ];
    }

    // Every way to take each pair from one of its places; the first way takes the first place of each.
    private static IEnumerable<IEnumerable<string?>> Ways(IReadOnlyList<IReadOnlyList<string>> places, int from)
    {
        if (from == places.Count)
        {
            return [[]];
        }

        var here = places[from].Take(MostPlaces).Cast<string?>().DefaultIfEmpty();
        return here.SelectMany(place => Ways(places, from + 1).Select(rest => rest.Prepend(place)));
    }

    private static string BayOf(string place) => place[..BayLength(place)].TrimEnd();

    private static int NumberOf(string place)
    {
        string number = new([.. place[BayLength(place)..].TakeWhile(char.IsAsciiDigit)]);
        return int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out int value) ? value : 0;
    }

    private static int BayLength(string place)
    {
        int digit = place.AsSpan().IndexOfAnyInRange('0', '9');
        return digit < 0 ? place.Length : digit;
    }
}

/// <summary>Where one of the pairs is taken from.</summary>
/// <param name="Index">Which of the pairs that were given.</param>
/// <param name="Place">The place; null where it stands nowhere.</param>
internal sealed record WalkStop(int Index, string? Place);
