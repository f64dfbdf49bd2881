using ShopFit.Fitting.Scoring;

namespace ShopFit.Fitting.Pads;

/// <summary>Which sets of pads bring the ease of one criterion to a fit, as steps over the ease without pads.</summary>
/// <remarks>
/// A set works where the shifted ease fits. A pad can shrink a shoe and never grow it: a set that lowers an ease is not offered
/// where that ease already lies below its ideal band.
/// </remarks>
/// <param name="From">Where each step starts, ascending; the ease belongs to the last step that starts at or below it.</param>
/// <param name="Sets">The sets that work: before the first step, and then on each.</param>
internal sealed record EaseSteps(double[] From, ulong[] Sets)
{
    /// <summary>Below this ease no set works.</summary>
    public double Lowest { get; } = From.Length == 0 ? double.PositiveInfinity : From[0];

    /// <summary>From this ease on no set works; infinite where there is no such ease.</summary>
    public double Beyond { get; } = From.Length == 0 ? double.NegativeInfinity : Sets[^1] == 0 ? From[^1] : double.PositiveInfinity;

    /// <summary>Whether some set may work at an ease.</summary>
    public bool Reaches(double ease) => ease >= Lowest && ease < Beyond;

    public static EaseSteps Of(Criterion criterion, double fitsFrom, double[] shifts)
    {
        var (from, to) = criterion.EasesOf(fitsFrom);
        double[] lows = [.. shifts.Select(shift => shift < 0 ? Math.Max(from - shift, criterion.IdealFrom) : from - shift)];
        double[] highs = [.. shifts.Select(shift => to - shift)];

        // Ends belong to the band, so the next number up is the first beyond it.
        double[] starts = [.. lows.Concat(highs.Where(double.IsFinite).Select(Math.BitIncrement)).Distinct().Order()];
        ulong[] sets = new ulong[starts.Length + 1];
        for (int step = 0; step < starts.Length; step++)
        {
            for (int k = 0; k < shifts.Length; k++)
            {
                if (lows[k] <= starts[step] && starts[step] <= highs[k])
                {
                    sets[step + 1] |= 1UL << k;
                }
            }
        }

        // A step on which the same sets work as on the one before is no step.
        int[] steps = [.. Enumerable.Range(0, starts.Length).Where(step => sets[step + 1] != sets[step])];
        return new EaseSteps([.. steps.Select(step => starts[step])], [sets[0], .. steps.Select(step => sets[step + 1])]);
    }

    /// <summary>Which eases fit with pads that are in there already, helpful or not.</summary>
    public static EaseSteps Stated(Criterion criterion, double fitsFrom, double shift)
    {
        var (from, to) = criterion.EasesOf(fitsFrom);
        return double.IsFinite(to)
            ? new EaseSteps([from - shift, Math.BitIncrement(to - shift)], [0, 1, 0])
            : new EaseSteps([from - shift], [0, 1]);
    }

    /// <summary>The sets that work at an ease.</summary>
    public ulong At(double ease)
    {
        int step = 0;
        while (step < From.Length && ease >= From[step])
        {
            step++;
        }

        return Sets[step];
    }
}
