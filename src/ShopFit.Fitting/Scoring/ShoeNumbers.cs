using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Shoes;

namespace ShopFit.Fitting.Scoring;

/// <summary>One pair made ready for many draws: its form, and for each level where its numbers come from and how far they reach.</summary>
internal sealed class ShoeNumbers
{
    private ShoeNumbers(ShoeOnFile shoe)
    {
        Shoe = shoe;
    }

    public ShoeOnFile Shoe { get; }

    /// <summary>How far a draw of 1 reaches: level · parts + part.</summary>
    public double[] Sds { get; } = new double[ShoeLevels.Count * ShoeForm.Parts];

    /// <summary>For each level the row of the draws where its numbers start; −1 where it was never tried.</summary>
    public int[] Places { get; } = new int[ShoeLevels.Count];

    /// <summary>For each level where its run starts in the pool, for what was never tried.</summary>
    public int[] Starts { get; } = new int[ShoeLevels.Count];

    /// <summary>What is known of each part beyond its form on file, whatever the draw.</summary>
    public double[] Constants { get; } = new double[ShoeForm.Parts];

    public static ShoeNumbers Of(ShoeOnFile shoe, EaseBelief belief, FitDefaults defaults)
    {
        var numbers = new ShoeNumbers(shoe);
        foreach (var level in ShoeLevels.All)
        {
            string key = ShoeLevels.KeyOf(shoe, level);
            numbers.Places[(int)level] = belief.PlaceOf(new(level, key));
            numbers.Starts[(int)level] = FixedDraws.StartOf(key);
        }

        var learnt = belief.LearntOf(shoe);
        bool makerTried = numbers.Places[(int)ShoeLevel.Maker] >= 0;
        bool modelTried = numbers.Places[(int)ShoeLevel.Model] >= 0;
        for (int part = 0; part < ShoeForm.Parts; part++)
        {
            double maker = ShoeLevels.SdOf(shoe.Form, (FormPart)part, ShoeLevel.Maker, defaults);
            double model = ShoeLevels.SdOf(shoe.Form, (FormPart)part, ShoeLevel.Model, defaults);
            if (!modelTried)
            {
                numbers.Constants[part] += model * learnt.Constant[part];
                maker += model * learnt.Slope[part];
                model *= learnt.ModelSd[part];
            }

            if (!makerTried)
            {
                numbers.Constants[part] += maker * learnt.MakerMean[part];
                maker *= learnt.MakerSd[part];
            }

            numbers.Sds[part] = maker;
            numbers.Sds[ShoeForm.Parts + part] = model;
            numbers.Sds[(2 * ShoeForm.Parts) + part] = ShoeLevels.SdOf(shoe.Form, (FormPart)part, ShoeLevel.Pair, defaults);
        }

        return numbers;
    }

    /// <summary>Writes the shoe's difference from its form on file, for each part, over some draws.</summary>
    /// <param name="part">Which part.</param>
    /// <param name="draws">The draws of what was tried.</param>
    /// <param name="start">The first draw.</param>
    /// <param name="difference">Where to write; its length is the number of draws.</param>
    public void Difference(int part, Draws draws, int start, Span<double> difference)
    {
        var maker = Numbers(ShoeLevel.Maker, part, draws, start, difference.Length);
        var model = Numbers(ShoeLevel.Model, part, draws, start, difference.Length);
        var pair = Numbers(ShoeLevel.Pair, part, draws, start, difference.Length);
        double makerSd = Sds[part];
        double modelSd = Sds[ShoeForm.Parts + part];
        double pairSd = Sds[(2 * ShoeForm.Parts) + part];
        double constant = Constants[part];
        ref double to = ref MemoryMarshal.GetReference(difference);
        ref double first = ref MemoryMarshal.GetReference(maker);
        ref double second = ref MemoryMarshal.GetReference(model);
        ref double third = ref MemoryMarshal.GetReference(pair);
        int i = 0;
        for (; i <= difference.Length - Vector256<double>.Count; i += Vector256<double>.Count)
        {
            var sum = Vector256.Create(constant) + (Vector256.Create(makerSd) * Vector256.LoadUnsafe(ref first, (nuint)i))
                + (Vector256.Create(modelSd) * Vector256.LoadUnsafe(ref second, (nuint)i))
                + (Vector256.Create(pairSd) * Vector256.LoadUnsafe(ref third, (nuint)i));
            sum.StoreUnsafe(ref to, (nuint)i);
        }

        for (; i < difference.Length; i++)
        {
            difference[i] = constant + (makerSd * maker[i]) + (modelSd * model[i]) + (pairSd * pair[i]);
        }
    }

    /// <summary>The shoe's difference from its form on file for one part in one draw: the same number as in a run of them.</summary>
    public double DifferenceAt(int part, Draws draws, int draw) =>
        Constants[part] + (Sds[part] * Number(ShoeLevel.Maker, part, draws, draw))
        + (Sds[ShoeForm.Parts + part] * Number(ShoeLevel.Model, part, draws, draw))
        + (Sds[(2 * ShoeForm.Parts) + part] * Number(ShoeLevel.Pair, part, draws, draw));

    private double Number(ShoeLevel level, int part, Draws draws, int draw)
    {
        int place = Places[(int)level];
        return place < 0 ? FixedDraws.Pool((int)level, part)[Starts[(int)level] + draw] : draws.Row(place + part)[draw];
    }

    private ReadOnlySpan<double> Numbers(ShoeLevel level, int part, Draws draws, int start, int count) =>
        Places[(int)level] < 0
            ? FixedDraws.Pool((int)level, part).AsSpan(Starts[(int)level] + start, count)
            : draws.Row(Places[(int)level] + part).Slice(start, count);
}
