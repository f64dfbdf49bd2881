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

    /// <summary>Standard deviations: level · parts + part.</summary>
    public double[] Sds { get; } = new double[ShoeLevels.Count * ShoeForm.Parts];

    /// <summary>For each level the row of the draws where its numbers start; −1 where it was never tried.</summary>
    public int[] Places { get; } = new int[ShoeLevels.Count];

    /// <summary>For each level where its run starts in the pool, for what was never tried.</summary>
    public int[] Starts { get; } = new int[ShoeLevels.Count];

    public static ShoeNumbers Of(ShoeOnFile shoe, EaseBelief belief, FitDefaults defaults)
    {
        var numbers = new ShoeNumbers(shoe);
        foreach (var level in ShoeLevels.All)
        {
            string key = ShoeLevels.KeyOf(shoe, level);
            numbers.Places[(int)level] = belief.PlaceOf(level, key);
            numbers.Starts[(int)level] = FixedDraws.StartOf(key);
            for (int part = 0; part < ShoeForm.Parts; part++)
            {
                numbers.Sds[((int)level * ShoeForm.Parts) + part] = ShoeLevels.SdOf(shoe.Form, (FormPart)part, level, defaults);
            }
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
        difference.Clear();
        for (int level = 0; level < ShoeLevels.Count; level++)
        {
            double sd = Sds[(level * ShoeForm.Parts) + part];
            if (sd == 0)
            {
                continue;
            }

            var numbers = Places[level] < 0
                ? FixedDraws.Pool(level, part).AsSpan(Starts[level] + start, difference.Length)
                : draws.Row(Places[level] + part).Slice(start, difference.Length);
            Draws.AddScaled(difference, numbers, sd);
        }
    }
}
