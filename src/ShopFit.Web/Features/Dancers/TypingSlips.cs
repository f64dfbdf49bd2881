namespace ShopFit.Web.Features.Dancers;

/// <summary>Counts the slips between what somebody is typing and a word: a letter more, a letter less, another letter, two that changed places.</summary>
/// <remarks>
/// Damerau 1964, Communications of the ACM 7(3): 171-176, named these four; the table is Wagner and Fischer's (1974, Journal of
/// the ACM 21(1): 168-173). The end of the word is free, since it is still being typed.
/// </remarks>
public static class TypingSlips
{
    // Longer words are not names of people.
    private const int LongestWord = 40;

    /// <summary>The fewest slips that lead from a beginning of the word to what was typed; anything above <paramref name="most"/> where there are more.</summary>
    public static int Least(string typed, string word, int most)
    {
        if (typed.Length > LongestWord)
        {
            return most + 1;
        }

        // Only so much of the word can matter.
        var width = Math.Min(word.Length, typed.Length + most);
        if (width < typed.Length - most)
        {
            return most + 1;
        }

        Span<int> before = stackalloc int[width + 1];
        Span<int> last = stackalloc int[width + 1];
        Span<int> now = stackalloc int[width + 1];
        for (var column = 0; column <= width; column++)
        {
            last[column] = column;
        }

        for (var row = 1; row <= typed.Length; row++)
        {
            now[0] = row;
            var least = row;
            for (var column = 1; column <= width; column++)
            {
                var slips = Math.Min(Math.Min(last[column], now[column - 1]) + 1, last[column - 1] + (typed[row - 1] == word[column - 1] ? 0 : 1));
                if (row > 1 && column > 1 && typed[row - 1] == word[column - 2] && typed[row - 2] == word[column - 1])
                {
                    slips = Math.Min(slips, before[column - 2] + 1);
                }

                now[column] = slips;
                least = Math.Min(least, slips);
            }

            if (least > most)
            {
                return most + 1;
            }

            var spare = before;
            before = last;
            last = now;
            now = spare;
        }

        var fewest = int.MaxValue;
        for (var column = 0; column <= width; column++)
        {
            fewest = Math.Min(fewest, last[column]);
        }

        return fewest;
    }
}
