using ShopFit.Fitting.Defaults;

namespace ShopFit.Fitting.Feet;

/// <summary>How long feet are at an age, and how much a growing foot gains between two ages.</summary>
public static class GrowthCurve
{
    /// <summary>Mean and standard deviation of the foot length at an age, mm, up to the age at which adults take over.</summary>
    /// <remarks>
    /// Straight lines between the ages of the table. Below the table its first step goes on down to
    /// <see cref="Growth.Youngest"/>, with the spread of its first row; younger counts as that old. From
    /// <see cref="Growth.JoinFrom"/> on a straight line leads to the adult survey.
    /// </remarks>
    public static (double Mean, double Sd) LengthAt(Sex sex, double ageYears, FitDefaults defaults)
    {
        var growth = defaults.Growth;
        var adult = defaults.Adults[(int)sex];
        if (ageYears >= growth.AdultFrom)
        {
            return (adult.Means[0], adult.Sds[0]);
        }

        var table = Table(sex, growth);
        if (ageYears <= growth.JoinFrom)
        {
            return OnTable(table, Math.Max(ageYears, growth.Youngest));
        }

        var young = OnTable(table, growth.JoinFrom);
        double share = (ageYears - growth.JoinFrom) / (growth.AdultFrom - growth.JoinFrom);
        return (young.Mean + (share * (adult.Means[0] - young.Mean)), young.Sd + (share * (adult.Sds[0] - young.Sd)));
    }

    /// <summary>Mean growth of the length between two ages, mm; never less than nothing.</summary>
    /// <remarks>The table's own steps, each at least zero: its small dips at the end are other children, not shrinking feet. Nothing after the table ends.</remarks>
    public static double MeanStep(Sex sex, double fromAgeYears, double toAgeYears, FitDefaults defaults) =>
        Grown(sex, toAgeYears, defaults.Growth) - Grown(sex, fromAgeYears, defaults.Growth);

    // Length gained since the youngest age told apart.
    private static double Grown(Sex sex, double ageYears, Growth growth)
    {
        var table = Table(sex, growth);
        double firstStep = (table[1].Mean - table[0].Mean) / (table[1].AgeYears - table[0].AgeYears);
        double grown = firstStep * (Math.Clamp(ageYears, growth.Youngest, table[0].AgeYears) - growth.Youngest);
        double highest = table[0].Mean;
        for (int i = 1; i < table.Count; i++)
        {
            double share = Math.Clamp((ageYears - table[i - 1].AgeYears) / (table[i].AgeYears - table[i - 1].AgeYears), 0, 1);
            grown += share * Math.Max(0, table[i].Mean - highest);
            highest = Math.Max(highest, table[i].Mean);
        }

        return grown;
    }

    private static IReadOnlyList<LengthAtAge> Table(Sex sex, Growth growth) => sex == Sex.Female ? growth.Girls : growth.Boys;

    private static (double Mean, double Sd) OnTable(IReadOnlyList<LengthAtAge> table, double ageYears)
    {
        int upper = 1;
        while (upper < table.Count - 1 && table[upper].AgeYears < ageYears)
        {
            upper++;
        }

        var (from, to) = (table[upper - 1], table[upper]);
        double share = (ageYears - from.AgeYears) / (to.AgeYears - from.AgeYears);
        double spread = Math.Clamp(share, 0, 1);
        return (from.Mean + (Math.Min(share, 1) * (to.Mean - from.Mean)), from.Sd + (spread * (to.Sd - from.Sd)));
    }
}
