using MathNet.Numerics.LinearAlgebra;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Shoes;

namespace ShopFit.Fitting.Scoring;

/// <summary>The chance of fit once more, as plainly as it can be written: draw feet and shoe, try every set of pads.</summary>
internal static class MonteCarlo
{
    public static double ChanceOfFit(FeetBelief feet, ShoeForm form, FitDefaults defaults, int draws)
    {
        var joint = feet.Joint;
        var covariance = Matrix<double>.Build.Dense(joint.Size, joint.Size, joint.Covariance.ToArray());
        var root = covariance.Cholesky().Factor;
        var random = new Random(1);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

        double[] mean = joint.Mean.ToArray();
        double[,] factor = root.ToArray();
        double[] z = new double[mean.Length];
        double[] x = new double[mean.Length];
        double[] shoe = new double[ShoeForm.Parts];
        double[] totals = [.. Enumerable.Range(0, ShoeForm.Parts).Select(part => defaults.FormSds.Total((FormPart)part, form.SourceOf((FormPart)part)))];
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

            for (int part = 0; part < shoe.Length; part++)
            {
                shoe[part] = form[(FormPart)part] + (totals[part] * Normal());
            }

            if (Fits(Eases(shoe, x, 0), sets, defaults) && Fits(Eases(shoe, x, Traits.Count), sets, defaults))
            {
                fits++;
            }
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
