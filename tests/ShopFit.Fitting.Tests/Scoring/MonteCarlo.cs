using MathNet.Numerics.LinearAlgebra;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Shoes;

namespace ShopFit.Fitting.Scoring;

/// <summary>The chance of fit once more, as plainly as it can be written: draw feet and shoe, try every set of pads.</summary>
internal static class MonteCarlo
{
    public static double ChanceOfFit(FeetBelief feet, ShoeForm form, FitDefaults defaults, int draws) =>
        ChanceOneFits(feet, [new ShoeOnFile("pair", "maker", "model", form, OnShelf: true)], defaults, draws);

    /// <summary>The chance of one pair where something is known of its maker's and its model's numbers: eight of each, the maker's first.</summary>
    public static double ChanceOfFit(FeetBelief feet, ShoeForm form, Gaussian numbers, FitDefaults defaults, int draws)
    {
        var random = new Random(2);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        double[] Drawn(Gaussian belief, double[,] factor)
        {
            double[] z = [.. Enumerable.Range(0, belief.Size).Select(_ => Normal())];
            return [.. Enumerable.Range(0, belief.Size).Select(i => belief.Mean[i] + Enumerable.Range(0, i + 1).Sum(j => factor[i, j] * z[j]))];
        }

        double[,] FactorOf(Gaussian belief) =>
            Matrix<double>.Build.Dense(belief.Size, belief.Size, belief.Covariance.ToArray()).Cholesky().Factor.ToArray();

        double[,] feetFactor = FactorOf(feet.Joint);
        double[,] numbersFactor = FactorOf(numbers);
        double[][] sets = [.. NaiveSets(defaults)];
        int fits = 0;
        for (int draw = 0; draw < draws; draw++)
        {
            double[] x = Drawn(feet.Joint, feetFactor);
            double[] known = Drawn(numbers, numbersFactor);
            double[] shoe = [.. Enumerable.Range(0, ShoeForm.Parts).Select(part => form[(FormPart)part]
                + (defaults.FormSds.MakersPart((FormPart)part, form.SourceOf((FormPart)part)) * known[part])
                + (defaults.FormSds.ModelsPart((FormPart)part, form.SourceOf((FormPart)part)) * known[ShoeForm.Parts + part])
                + (defaults.FormSds.PairScatter[part] * Normal()))];
            fits += Fits(Eases(shoe, x, 0), sets, defaults) && Fits(Eases(shoe, x, Traits.Count), sets, defaults) ? 1 : 0;
        }

        return (double)fits / draws;
    }

    /// <summary>The chance that at least one of some pairs fits; those of one maker and of one model share how they differ from their forms.</summary>
    public static double ChanceOneFits(FeetBelief feet, IReadOnlyList<ShoeOnFile> shoes, FitDefaults defaults, int draws)
    {
        var joint = feet.Joint;
        var covariance = Matrix<double>.Build.Dense(joint.Size, joint.Size, joint.Covariance.ToArray());
        double[,] factor = covariance.Cholesky().Factor.ToArray();
        var random = new Random(1);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

        double[] mean = joint.Mean.ToArray();
        double[] z = new double[mean.Length];
        double[] x = new double[mean.Length];
        double[] shoe = new double[ShoeForm.Parts];
        double[][] sets = [.. NaiveSets(defaults)];
        int fits = 0;
        for (int draw = 0; draw < draws; draw++)
        {
            for (int i = 0; i < z.Length; i++)
            {
                z[i] = Normal();
                x[i] = mean[i];
                for (int j = 0; j <= i; j++)
                {
                    x[i] += factor[i, j] * z[j];
                }
            }

            var shared = new Dictionary<string, double[]>();
            double[] Shared(string key)
            {
                if (!shared.TryGetValue(key, out double[]? values))
                {
                    shared[key] = values = [.. shoe.Select(_ => Normal())];
                }

                return values;
            }

            bool one = false;
            for (int s = 0; s < shoes.Count && !one; s++)
            {
                var form = shoes[s].Form;
                double[] maker = Shared($"maker {shoes[s].Maker}");
                double[] model = Shared($"model {shoes[s].Model}");
                for (int part = 0; part < shoe.Length; part++)
                {
                    var of = (FormPart)part;
                    shoe[part] = form[of]
                        + (defaults.FormSds.MakersPart(of, form.SourceOf(of)) * maker[part])
                        + (defaults.FormSds.ModelsPart(of, form.SourceOf(of)) * model[part])
                        + (defaults.FormSds.PairScatter[part] * Normal());
                }

                one = Fits(Eases(shoe, x, 0), sets, defaults) && Fits(Eases(shoe, x, Traits.Count), sets, defaults);
            }

            fits += one ? 1 : 0;
        }

        return (double)fits / draws;
    }

    /// <summary>Whether some allowed set brings every ease of a pointe shoe to a desirability of a half.</summary>
    public static bool Fits(double[] eases, double[][] sets, FitDefaults defaults)
    {
        var criteria = defaults.CriteriaOf("pointe")!;
        foreach (double[] set in sets)
        {
            bool works = true;
            for (int c = 0; works && c < eases.Length; c++)
            {
                works = !(set[c] < 0 && eases[c] < criteria[c].IdealFrom) && criteria[c].Desirability(eases[c] + set[c]) >= .5;
            }

            if (works)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The shifts of no pad, each correcting pad and each two of them, in the order of the criteria.</summary>
    public static IEnumerable<double[]> NaiveSets(FitDefaults defaults)
    {
        var criteria = defaults.CriteriaOf("pointe")!;
        var pads = defaults.Pads.Where(pad => pad.Corrects).ToArray();
        double[] Shifts(params Pads.Pad[] set) => [.. criteria.Select(criterion => set.Sum(pad => pad.Effects.GetValueOrDefault(criterion.Id)))];
        yield return Shifts();
        for (int i = 0; i < pads.Length; i++)
        {
            yield return Shifts(pads[i]);
            for (int j = i + 1; j < pads.Length; j++)
            {
                yield return Shifts(pads[i], pads[j]);
            }
        }
    }

    private static double[] Eases(double[] shoe, double[] x, int foot) =>
    [
        shoe[0] - x[foot],
        shoe[1] - x[foot + 4],
        shoe[2] - (x[foot + 3] - x[foot + 9]),
        shoe[3] - x[foot + 5],
        shoe[4] - x[foot + 6],
        shoe[5] - x[foot + 7],
        shoe[6] - (x[foot] - x[foot + 1]),
        shoe[7] - (2 + (.6 * x[foot + 11]) + (.05 * (x[foot + 10] - 80))),
        -x[foot + 8],
    ];
}
