using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.Shoes;

namespace ShopFit.Fitting.Learning;

/// <summary>What a shop has learnt of its makers and models: how far what they make really is from its form on file.</summary>
/// <remarks>
/// One Gaussian over eight numbers for each maker and each model, with a mean of 0 and a standard deviation of 1 for what was never
/// fitted; the offset of a model = maker's SD · maker's number + model's SD · model's number. What one fitting says of two models
/// together is kept: one Gaussian for each model apart is too sure of itself. Immutable: each fitting makes new ones, in the order given,
/// so that the same records always lead to the same value.
/// </remarks>
public sealed class LearntOffsets
{
    /// <summary>So many models are kept together; of more, those fitted least are kept apart (the time grows with the square).</summary>
    public const int MostTogether = 150;

    private const int Parts = ShoeForm.Parts;

    private readonly Gaussian _together;
    private readonly Dictionary<ShoeKey, int> _places;
    private readonly Dictionary<ShoeKey, Gaussian> _apart;
    private readonly Dictionary<string, int> _fittings;
    private readonly HashSet<string> _frozen;

    private LearntOffsets(
        Gaussian together, Dictionary<ShoeKey, int> places, Dictionary<ShoeKey, Gaussian> apart, Dictionary<string, int> fittings, HashSet<string> frozen)
    {
        (_together, _places, _apart, _fittings, _frozen) = (together, places, apart, fittings, frozen);
    }

    /// <summary>Nothing learnt yet: every model starts from its form on file.</summary>
    public static LearntOffsets None { get; } = new(new Gaussian([], []), [], [], [], []);

    /// <summary>In how many fittings a model was tried on that told something of it.</summary>
    public int FittingsOf(string model) => _fittings.GetValueOrDefault(model);

    /// <summary>Whether what is known of a model stays as it is, whatever fittings say.</summary>
    public bool IsFrozen(string model) => _frozen.Contains(model);

    /// <summary>What is known of how far a model is from its form on file.</summary>
    /// <param name="shoe">Any size of the model: how its form is known decides how far it may be off.</param>
    /// <param name="defaults">The numbers of the shop.</param>
    public ModelOffset OffsetOf(ShoeOnFile shoe, FitDefaults defaults)
    {
        var numbers = Of([new(ShoeLevel.Maker, shoe.Maker), new(ShoeLevel.Model, shoe.Model)]);
        double[] mean = new double[Parts];
        double[] sd = new double[Parts];
        double[] direction = new double[numbers.Size];
        for (int part = 0; part < Parts; part++)
        {
            direction.AsSpan().Clear();
            direction[part] = ShoeLevels.SdOf(shoe.Form, (FormPart)part, ShoeLevel.Maker, defaults);
            direction[Parts + part] = ShoeLevels.SdOf(shoe.Form, (FormPart)part, ShoeLevel.Model, defaults);
            var (centre, variance) = numbers.Along(direction);
            (mean[part], sd[part]) = (centre, Math.Sqrt(variance));
        }

        return new ModelOffset(mean, sd, FittingsOf(shoe.Model), IsFrozen(shoe.Model));
    }

    /// <summary>What is known once another fitting has closed.</summary>
    /// <exception cref="ArgumentException">The fitting speaks of a shoe, a check or a pad that is not there.</exception>
    public LearntOffsets After(ToldByFitting told)
    {
        var shoes = told.Tried.DistinctBy(shoe => shoe.Sku).ToArray();
        if (shoes.Length == 0)
        {
            return this;
        }

        var after = JointBelief.Of(told, this);
        ShoeKey[] moved = [.. after.Tried.Where(key => key.Level != ShoeLevel.Pair && !(key.Level == ShoeLevel.Model && IsFrozen(key.Key)))];
        int[] at = [.. moved.SelectMany(key => Enumerable.Range(after.PlaceOf(key)!.Value, Parts))];
        var (together, places) = With(moved);
        var next = Moved(together, [.. moved.SelectMany(key => Enumerable.Range(places[key], Parts))], Marginal(after.All, at));
        var fittings = new Dictionary<string, int>(_fittings);
        foreach (var key in moved.Where(key => key.Level == ShoeLevel.Model))
        {
            fittings[key.Key] = fittings.GetValueOrDefault(key.Key) + 1;
        }

        var apart = _apart.Where(entry => !moved.Contains(entry.Key)).ToDictionary();
        return new LearntOffsets(next, places, apart, fittings, _frozen).Trimmed();
    }

    /// <summary>The same, with a model's own part forgotten: as if it had never been fitted.</summary>
    public LearntOffsets Forgetting(string model)
    {
        var key = new ShoeKey(ShoeLevel.Model, model);
        var (together, places) = Without(key);
        return new LearntOffsets(
            together, places, _apart.Where(entry => entry.Key != key).ToDictionary(), _fittings.Where(entry => entry.Key != model).ToDictionary(), _frozen);
    }

    /// <summary>The same, with what is known of a model held as it is, or let go again.</summary>
    public LearntOffsets Freezing(string model, bool frozen = true)
    {
        if (frozen == IsFrozen(model))
        {
            return this;
        }

        HashSet<string> held = [.. _frozen];
        if (!frozen)
        {
            held.Remove(model);
            return new LearntOffsets(_together, _places, _apart, _fittings, held);
        }

        // Held apart from all others: what is learnt of them must not move it.
        held.Add(model);
        var key = new ShoeKey(ShoeLevel.Model, model);
        var (together, places) = Without(key);
        var apart = new Dictionary<ShoeKey, Gaussian>(_apart) { [key] = Of([key]) };
        return new LearntOffsets(together, places, apart, _fittings, held);
    }

    /// <summary>The numbers of some makers, models and pairs, eight each, in the order given.</summary>
    internal Gaussian Of(IReadOnlyList<ShoeKey> keys)
    {
        int size = Parts * keys.Count;
        double[] mean = new double[size];
        double[] covariance = new double[size * size];
        for (int k = 0; k < keys.Count; k++)
        {
            if (_places.TryGetValue(keys[k], out int place))
            {
                for (int other = 0; other <= k; other++)
                {
                    if (_places.TryGetValue(keys[other], out int otherPlace))
                    {
                        CopyBlock(_together, place, otherPlace, covariance, size, Parts * k, Parts * other);
                    }
                }

                _together.Mean.Slice(place, Parts).CopyTo(mean.AsSpan(Parts * k));
            }
            else if (_apart.TryGetValue(keys[k], out var own))
            {
                own.Mean.CopyTo(mean.AsSpan(Parts * k));
                CopyBlock(own, 0, 0, covariance, size, Parts * k, Parts * k);
            }
            else
            {
                for (int i = Parts * k; i < Parts * (k + 1); i++)
                {
                    covariance[(i * size) + i] = 1;
                }
            }
        }

        return new Gaussian(mean, covariance);
    }

    // All numbers kept together, with those of these keys among them.
    private (Gaussian All, Dictionary<ShoeKey, int> Places) With(ShoeKey[] keys)
    {
        var places = new Dictionary<ShoeKey, int>(_places);
        foreach (var key in keys.Where(key => !places.ContainsKey(key)))
        {
            places[key] = Parts * places.Count;
        }

        return (Of([.. places.OrderBy(entry => entry.Value).Select(entry => entry.Key)]), places);
    }

    private (Gaussian All, Dictionary<ShoeKey, int> Places) Without(ShoeKey key)
    {
        ShoeKey[] left = [.. _places.OrderBy(entry => entry.Value).Select(entry => entry.Key).Where(entry => entry != key)];
        return (Of(left), left.Select((entry, i) => (entry, i)).ToDictionary(entry => entry.entry, entry => Parts * entry.i));
    }

    // Some numbers are known better now; all others follow by what they share with them.
    private static Gaussian Moved(Gaussian all, int[] at, Gaussian now)
    {
        int size = all.Size;
        int moved = at.Length;
        var before = Marginal(all, at);
        double[] inverse = Vectors.Inverse(before.Covariance, moved);
        double[] gain = new double[size * moved];
        for (int row = 0; row < size; row++)
        {
            for (int column = 0; column < moved; column++)
            {
                double sum = 0;
                for (int k = 0; k < moved; k++)
                {
                    sum += all.Covariance[(row * size) + at[k]] * inverse[(k * moved) + column];
                }

                gain[(row * moved) + column] = sum;
            }
        }

        double[] step = [.. Enumerable.Range(0, moved).Select(i => now.Mean[i] - before.Mean[i])];
        double[] change = new double[moved * moved];
        for (int i = 0; i < change.Length; i++)
        {
            change[i] = now.Covariance[i] - before.Covariance[i];
        }

        double[] mean = [.. all.Mean];
        double[] covariance = [.. all.Covariance];
        double[] carried = new double[moved];
        for (int row = 0; row < size; row++)
        {
            var gains = gain.AsSpan(row * moved, moved);
            mean[row] += Vectors.Dot(gains, step);
            for (int k = 0; k < moved; k++)
            {
                carried[k] = Vectors.Dot(gains, change.AsSpan(k * moved, moved));
            }

            for (int column = 0; column <= row; column++)
            {
                covariance[(row * size) + column] += Vectors.Dot(carried, gain.AsSpan(column * moved, moved));
                covariance[(column * size) + row] = covariance[(row * size) + column];
            }
        }

        return new Gaussian(mean, covariance);
    }

    private LearntOffsets Trimmed()
    {
        var models = _places.Keys.Where(key => key.Level == ShoeLevel.Model).ToArray();
        var kept = this;
        foreach (var key in models.OrderBy(key => FittingsOf(key.Key)).ThenBy(key => key.Key, StringComparer.Ordinal).Take(Math.Max(0, models.Length - MostTogether)))
        {
            var own = kept.Of([key]);
            var (together, places) = kept.Without(key);
            kept = new LearntOffsets(together, places, new Dictionary<ShoeKey, Gaussian>(kept._apart) { [key] = own }, _fittings, _frozen);
        }

        return kept;
    }

    private static Gaussian Marginal(Gaussian all, int[] at)
    {
        double[] mean = new double[at.Length];
        double[] covariance = new double[at.Length * at.Length];
        for (int row = 0; row < at.Length; row++)
        {
            mean[row] = all.Mean[at[row]];
            for (int column = 0; column < at.Length; column++)
            {
                covariance[(row * at.Length) + column] = all.Covariance[(at[row] * all.Size) + at[column]];
            }
        }

        return new Gaussian(mean, covariance);
    }

    private static void CopyBlock(Gaussian from, int row, int column, double[] to, int size, int toRow, int toColumn)
    {
        for (int i = 0; i < Parts; i++)
        {
            for (int j = 0; j < Parts; j++)
            {
                double value = from.Covariance[((row + i) * from.Size) + column + j];
                to[((toRow + i) * size) + toColumn + j] = value;
                to[((toColumn + j) * size) + toRow + i] = value;
            }
        }
    }
}
