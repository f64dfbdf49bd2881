using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Pads;
using ShopFit.Fitting.TryOns;

namespace ShopFit.Fitting.Scoring;

/// <summary>Finds what try-ons speak of, and says plainly what cannot be found.</summary>
internal static class TriedShoes
{
    /// <exception cref="ArgumentException">A pair tried is not among the shoes of the question, or an answer or pad is unknown.</exception>
    public static Dictionary<string, ShoeOnFile> Of(ShortlistQuestion question) => Of(question.TryOns, question.Shoes, question.Defaults);

    /// <exception cref="ArgumentException">A pair tried is not among the shoes, or an answer or pad is unknown.</exception>
    public static Dictionary<string, ShoeOnFile> Of(IReadOnlyList<TryOn> tryOns, IReadOnlyList<ShoeOnFile> shoes, FitDefaults defaults)
    {
        var wanted = tryOns.Select(tryOn => tryOn.Sku).ToHashSet(StringComparer.Ordinal);
        var found = new Dictionary<string, ShoeOnFile>(StringComparer.Ordinal);
        foreach (var shoe in shoes)
        {
            if (wanted.Contains(shoe.Sku))
            {
                found[shoe.Sku] = shoe;
            }
        }

        foreach (var tryOn in tryOns)
        {
            if (!found.ContainsKey(tryOn.Sku))
            {
                throw new ArgumentException($"The pair '{tryOn.Sku}' was tried on but is not among the shoes of this kind.", nameof(tryOns));
            }

            foreach (var answer in tryOn.Answers)
            {
                _ = CheckOf(answer, defaults);
                if (answer.Answer is < 0 or > 2)
                {
                    throw new ArgumentException($"An answer to '{answer.Check}' is 0, 1 or 2, not {answer.Answer}.", nameof(tryOns));
                }
            }

            foreach (var foot in Enum.GetValues<Side>())
            {
                _ = PadsUnder(tryOn, foot, defaults);
            }
        }

        return found;
    }

    public static Check CheckOf(CheckAnswer answer, FitDefaults defaults) =>
        defaults.FindCheck(answer.Check) ?? throw new ArgumentException($"There is no check called '{answer.Check}'.", nameof(answer));

    public static Pad[] PadsUnder(TryOn tryOn, Side foot, FitDefaults defaults) =>
    [
        .. tryOn.Pads.Where(pad => pad.Foot == foot).Select(pad =>
            defaults.FindPad(pad.Pad) ?? throw new ArgumentException($"There is no pad called '{pad.Pad}'.", nameof(tryOn))),
    ];
}
