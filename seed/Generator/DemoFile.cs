using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;

namespace ShopFit.Seed;

/// <summary>What the shop has on file about a dancer while the two years go by, and the truth behind it.</summary>
internal sealed class DemoFile
{
    private readonly DemoFeet _feet;
    private FeetBelief? _belief;
    private double _believedAt;

    internal DemoFile(DemoDancer dancer)
    {
        Dancer = dancer;
        Random = DemoRandom.Of($"fittings of {dancer.Key}");
        _feet = DemoFeet.Of(dancer.Sex, dancer.AgeOn(dancer.Arrives), Random);
    }

    internal DemoDancer Dancer { get; }

    internal DemoRandom Random { get; }

    /// <summary>How many fittings there were.</summary>
    internal int Count { get; set; }

    /// <summary>The last pair of each kind, and when it was bought.</summary>
    internal Dictionary<string, (int Pair, DateOnly Day)> Bought { get; } = new(StringComparer.Ordinal);

    /// <summary>The last day on which the words were read; null while they never were.</summary>
    internal DateOnly? ReadInWords { get; set; }

    internal double[] FeetOn(DateOnly day) => _feet.At(Dancer.AgeOn(day));

    /// <summary>What is believed after these readings of that day.</summary>
    internal FeetBelief Believe(DateOnly day, IReadOnlyList<DemoReading> readings)
    {
        var age = Dancer.AgeOn(day);
        var before = _belief is null
            ? FeetBelief.Prior(Dancer.Sex, age, FitDefaults.Standard)
            : _belief.CarriedForward(Dancer.Sex, _believedAt, age, FitDefaults.Standard);
        _belief = before.After([.. DemoReadings.AsRead(readings)], FitDefaults.Standard).Belief;
        _believedAt = age;
        return _belief;
    }
}
