using System.Numerics;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using ShopFit.Fitting.Pads;
using ShopFit.Fitting.Shoes;

namespace ShopFit.Fitting.Scoring;

/// <summary>Says for each draw whether some allowed set of pads makes a pair fit on both feet.</summary>
/// <param name="model">The eases.</param>
/// <param name="steps">For each foot and criterion, which sets bring an ease to a fit.</param>
/// <param name="draws">The draws.</param>
/// <remarks>Works on blocks that stay in the nearest cache, four draws at a time. Not for several threads at once.</remarks>
internal sealed class FitDraws(EaseModel model, EaseSteps[][] steps, Draws draws)
{
    private const int Block = 256;
    private const int Lanes = 4;

    private readonly double[] _differences = new double[ShoeForm.Parts * Block];
    private readonly int[] _parts = [.. model.Rows.Select(row => row.Part is { } part ? (int)part : -1)];
    private readonly double[] _forms = new double[model.Count];

    /// <summary>The same sets for either foot.</summary>
    public FitDraws(EaseModel model, PadSets sets, Draws draws)
        : this(model, [sets.Steps, sets.Steps], draws)
    {
    }

    /// <summary>How many of some draws fit.</summary>
    /// <param name="shoe">The pair.</param>
    /// <param name="start">First draw, a multiple of four.</param>
    /// <param name="count">How many, a multiple of four.</param>
    /// <param name="fits">Where to set a bit for each draw that fits, the first of them lowest in the first word; empty where nobody asks.</param>
    public int Count(ShoeNumbers shoe, int start, int count, Span<ulong> fits)
    {
        TakeForm(shoe);
        fits.Clear();
        int found = 0;
        for (int from = start; from < start + count; from += Block)
        {
            int length = Math.Min(Block, start + count - from);
            foreach (int part in _parts)
            {
                if (part >= 0)
                {
                    shoe.Difference(part, draws, from, _differences.AsSpan(part * Block, length));
                }
            }

            found += CountBlock(from, length, from - start, fits);
        }

        return found;
    }

    /// <summary>Takes those draws out of a list in which the pair fits.</summary>
    /// <remarks>One draw after the other: most of them end at the first criterion, so nothing is made ready in advance.</remarks>
    public void RemoveFitting(ShoeNumbers shoe, List<int> open)
    {
        TakeForm(shoe);
        int kept = 0;
        for (int i = 0; i < open.Count; i++)
        {
            if (!Fits(shoe, open[i]))
            {
                open[kept++] = open[i];
            }
        }

        open.RemoveRange(kept, open.Count - kept);
    }

    private bool Fits(ShoeNumbers shoe, int draw)
    {
        // What no set brings to a fit ends most draws at their first criteria; which sets do is asked of the few that are left.
        Span<double> shoeSides = stackalloc double[_forms.Length];
        for (int c = 0; c < _forms.Length; c++)
        {
            double shoeSide = _forms[c] + (_parts[c] < 0 ? 0 : shoe.DifferenceAt(_parts[c], draws, draw));
            if (!steps[0][c].Reaches(shoeSide - draws.Row(c)[draw]) || !steps[1][c].Reaches(shoeSide - draws.Row(_forms.Length + c)[draw]))
            {
                return false;
            }

            shoeSides[c] = shoeSide;
        }

        ulong left = ulong.MaxValue;
        ulong right = ulong.MaxValue;
        for (int c = 0; c < _forms.Length; c++)
        {
            double shoeSide = shoeSides[c];
            left &= steps[0][c].At(shoeSide - draws.Row(c)[draw]);
            right &= steps[1][c].At(shoeSide - draws.Row(_forms.Length + c)[draw]);
            if (left == 0 || right == 0)
            {
                return false;
            }
        }

        return true;
    }

    private void TakeForm(ShoeNumbers shoe)
    {
        for (int c = 0; c < _forms.Length; c++)
        {
            _forms[c] = _parts[c] < 0 ? 0 : shoe.Shoe.Form[(FormPart)_parts[c]];
        }
    }

    private int CountBlock(int from, int length, int firstBit, Span<ulong> fits)
    {
        ref double differences = ref MemoryMarshal.GetArrayDataReference(_differences);
        ref double needs = ref MemoryMarshal.GetReference(draws.Row(0));
        double[] forms = _forms;
        int[] parts = _parts;
        int found = 0;
        for (int i = 0; i < length; i += Lanes)
        {
            var both = Vector256<ulong>.AllBitsSet;
            for (int foot = 0; foot < 2 && both != Vector256<ulong>.Zero; foot++)
            {
                var works = Vector256<ulong>.AllBitsSet;
                for (int c = 0; c < forms.Length; c++)
                {
                    int need = (((foot * forms.Length) + c) * Draws.Count) + from + i;
                    var ease = Vector256.Create(forms[c]) - Vector256.LoadUnsafe(ref needs, (nuint)need);
                    if (parts[c] >= 0)
                    {
                        ease += Vector256.LoadUnsafe(ref differences, (nuint)((parts[c] * Block) + i));
                    }

                    works &= At(steps[foot][c], ease);
                    if (works == Vector256<ulong>.Zero)
                    {
                        break;
                    }
                }

                both &= ~Vector256.Equals(works, Vector256<ulong>.Zero);
            }

            uint lanes = both.ExtractMostSignificantBits();
            found += BitOperations.PopCount(lanes);
            if (!fits.IsEmpty)
            {
                int bit = firstBit + i;
                fits[bit / DrawBits.Word] |= (ulong)lanes << (bit % DrawBits.Word);
            }
        }

        return found;
    }

    private static Vector256<ulong> At(EaseSteps steps, Vector256<double> ease)
    {
        double[] from = steps.From;
        ulong[] works = steps.Sets;
        var result = Vector256<ulong>.Zero;
        for (int step = 0; step < from.Length; step++)
        {
            var reached = Vector256.GreaterThanOrEqual(ease, Vector256.Create(from[step])).AsUInt64();
            result = Vector256.ConditionalSelect(reached, Vector256.Create(works[step + 1]), result);
        }

        return result;
    }
}
