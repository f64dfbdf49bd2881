using System.Numerics;
using ShopFit.Web.Shared;

namespace ShopFit.Web.Features.Dancers;

/// <summary>Finds dancers by what somebody begins to type, forgiving accents and slips of the finger.</summary>
/// <remarks>
/// Every word typed must be like some word of the dancer. How like is worked out once for each different word of all dancers,
/// so twenty thousand of them are no more work than their few thousand names.
/// </remarks>
public sealed class DancerIndex
{
    // What a word that is the same, begins so, holds it, or is a slip away is worth. The order is what matters: common practice, no source.
    private const float Same = 1f;
    private const float Begins = 0.9f;
    private const float Holds = 0.6f;
    private const float OneSlip = 0.55f;
    private const float TwoSlips = 0.35f;

    // Two letters stand inside half of all names.
    private const int LeastHeld = 3;

    // Up to here a slip would make everything like everything; from there two slips are forgiven.
    private const int LeastForOneSlip = 4;
    private const int LeastForTwoSlips = 8;

    // A first word that is right says more than a last one.
    private const float OfFirstWord = 0.05f;

    private static readonly float[] WorthOfField = [1f, 0.98f, 0.7f, 0.6f];

    private readonly IReadOnlyList<DancerOnFile> _dancers;
    private readonly string[] _words;
    private readonly uint[] _letters;
    private readonly (int Word, byte Field, bool First)[][] _wordsOf;

    public DancerIndex(IReadOnlyList<DancerOnFile> dancers)
    {
        var numbers = new Dictionary<string, int>(StringComparer.Ordinal);
        var wordsOf = new List<(int, byte, bool)>();
        _dancers = dancers;
        _wordsOf = new (int, byte, bool)[dancers.Count][];
        for (var index = 0; index < dancers.Count; index++)
        {
            wordsOf.Clear();
            var dancer = dancers[index];
            Add(dancer.Name, 0);
            Add(dancer.KnownAs, 1);
            Add(dancer.Guardian, 2);
            Add(dancer.Studio, 3);
            _wordsOf[index] = [.. wordsOf];
        }

        _words = [.. numbers.OrderBy(word => word.Value).Select(word => word.Key)];
        _letters = [.. _words.Select(word => LettersOf(word))];

        void Add(string text, byte field)
        {
            var first = true;
            foreach (var word in FoldedText.Of(text).Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                if (!numbers.TryGetValue(word, out var number))
                {
                    numbers.Add(word, number = numbers.Count);
                }

                wordsOf.Add((number, field, first));
                first = false;
            }
        }
    }

    /// <summary>The dancers that are most like what was typed, the likest first; all of them, as they are on file, where nothing was.</summary>
    public IReadOnlyList<DancerOnFile> Find(string? typed, int count)
    {
        var asked = FoldedText.Of(typed ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (asked.Length is 0)
        {
            // Signs that are part of no name find nobody.
            return string.IsNullOrWhiteSpace(typed) ? [.. _dancers.Take(count)] : [];
        }

        var likeness = asked.Select(Likeness).ToArray();
        var found = new List<(float Worth, int Index)>();
        for (var index = 0; index < _wordsOf.Length; index++)
        {
            if (Worth(_wordsOf[index], likeness) is > 0 and var worth)
            {
                found.Add((worth, index));
            }
        }

        // Dancers are on file in the order of their names, which decides among equals.
        return [.. found.OrderByDescending(each => each.Worth).ThenBy(each => each.Index).Take(count).Select(each => _dancers[each.Index])];
    }

    private static float Worth((int Word, byte Field, bool First)[] words, float[][] likeness)
    {
        var sum = 0f;
        foreach (var like in likeness)
        {
            var best = 0f;
            foreach (var (word, field, first) in words)
            {
                if (like[word] > 0)
                {
                    best = Math.Max(best, (like[word] + (first ? OfFirstWord : 0)) * WorthOfField[field]);
                }
            }

            if (best is 0)
            {
                return 0;
            }

            sum += best;
        }

        return sum;
    }

    private float[] Likeness(string asked)
    {
        var slips = asked.Length >= LeastForTwoSlips ? 2 : asked.Length >= LeastForOneSlip ? 1 : 0;
        var letters = LettersOf(asked);
        var likeness = new float[_words.Length];
        for (var index = 0; index < _words.Length; index++)
        {
            var word = _words[index];
            // A word that lacks more of the letters than there may be slips cannot be like it.
            if (BitOperations.PopCount(letters & ~_letters[index]) > slips)
            {
                continue;
            }

            likeness[index] = word.StartsWith(asked, StringComparison.Ordinal)
                ? word.Length == asked.Length ? Same : Begins
                : asked.Length >= LeastHeld && word.Contains(asked, StringComparison.Ordinal) ? Holds
                : slips > 0 ? BySlips(TypingSlips.Least(asked, word, slips), slips) : 0;
        }

        return likeness;
    }

    private static float BySlips(int found, int allowed) => found > allowed ? 0 : found is 1 ? OneSlip : TwoSlips;

    // One bit for each letter, the rarer signs together.
    private static uint LettersOf(string word)
    {
        var letters = 0u;
        foreach (var sign in word)
        {
            letters |= sign is >= 'a' and <= 'z' ? 1u << (sign - 'a') : 1u << (26 + (sign % 6));
        }

        return letters;
    }
}

/// <summary>A dancer with all by which she is found.</summary>
public sealed record DancerOnFile(Guid Id, string Name, string KnownAs, DateOnly? BirthDate, string Studio, string Guardian);
