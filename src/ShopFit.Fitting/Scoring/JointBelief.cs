using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Pads;
using ShopFit.Fitting.Shoes;
using ShopFit.Fitting.TryOns;

namespace ShopFit.Fitting.Scoring;

/// <summary>
/// One Gaussian over both feet and over what is not known of the shoes tried on: for each maker, model and pair tried,
/// eight numbers with a prior mean of 0 and a standard deviation of 1, one for each part of the form.
/// </summary>
/// <remarks>
/// The real inside of a pair = form on file + maker's SD · maker's number + model's SD · model's number + scatter's SD ·
/// pair's number. Shoes never tried need no numbers here: theirs are independent of everything.
/// </remarks>
internal sealed class JointBelief
{
    public const int FeetSize = 2 * Traits.Count;

    private readonly Dictionary<(ShoeLevel Level, string Key), int> _places;

    private JointBelief(Gaussian all, Dictionary<(ShoeLevel, string), int> places)
    {
        All = all;
        _places = places;
    }

    /// <summary>Feet first, then eight numbers for each maker, model and pair tried.</summary>
    public Gaussian All { get; }

    /// <summary>The makers, models and pairs tried, in the order of their numbers.</summary>
    public IEnumerable<(ShoeLevel Level, string Key)> Tried => _places.OrderBy(place => place.Value).Select(place => place.Key);

    /// <summary>Where the eight numbers of a maker, model or pair start; null where it was not tried.</summary>
    public int? PlaceOf(ShoeLevel level, string key) => _places.TryGetValue((level, key), out int place) ? place : null;

    /// <exception cref="ArgumentException">A try-on names a shoe, a check, a pad or an answer that is not there.</exception>
    public static JointBelief Of(ShortlistQuestion question)
    {
        if (question.TryOns.Count == 0)
        {
            return new(question.Feet.Joint, []);
        }

        var shoes = TriedShoes.Of(question);
        var places = new Dictionary<(ShoeLevel, string), int>();
        var keys = shoes.Values
            .SelectMany(shoe => ShoeLevels.All.Select(level => (level, ShoeLevels.KeyOf(shoe, level))))
            .Distinct()
            .OrderBy(key => key.level).ThenBy(key => key.Item2, StringComparer.Ordinal);
        foreach (var key in keys)
        {
            places[key] = FeetSize + (ShoeForm.Parts * places.Count);
        }

        var prior = WithShoes(question.Feet.Joint, FeetSize + (ShoeForm.Parts * places.Count));
        var joint = new JointBelief(prior, places);

        // In a fixed order, so that the order of tapping does not even show in the last bits.
        OrdinalAnswer[] answers = [.. question.TryOns
            .SelectMany(tryOn => tryOn.Answers.Select(answer => (TryOn: tryOn, Answer: answer)))
            .Where(entry => !TriedShoes.CheckOf(entry.Answer, question.Defaults).OnlyRecorded)
            .OrderBy(entry => entry.TryOn.Sku, StringComparer.Ordinal)
            .ThenBy(entry => entry.Answer.Foot)
            .ThenBy(entry => entry.Answer.Check, StringComparer.Ordinal)
            .ThenBy(entry => entry.Answer.Answer)
            .ThenBy(entry => entry.Answer.ByDancer)
            .ThenBy(entry => string.Join('+', entry.TryOn.Pads.Select(pad => $"{pad.Foot}:{pad.Pad}").Order(StringComparer.Ordinal)), StringComparer.Ordinal)
            .Select(entry => joint.AnswerOf(shoes[entry.TryOn.Sku], entry.TryOn, entry.Answer, question))];
        return new(ExpectationPropagation.After(prior, answers).Belief, places);
    }

    /// <summary>The direction of one ease of a pair, and its constant: ease = constant + direction · all, and what of it is not in here.</summary>
    public double AddEase(Span<double> direction, ShoeOnFile shoe, Side foot, EaseRow row, double factor, FitDefaults defaults)
    {
        EaseModel.AddNeed(direction, row, foot, -factor);
        double constant = -row.NeedConstant;
        if (row.Part is { } part)
        {
            constant += shoe.Form[part];
            foreach (var level in ShoeLevels.All)
            {
                if (PlaceOf(level, ShoeLevels.KeyOf(shoe, level)) is { } place)
                {
                    direction[place + (int)part] += factor * ShoeLevels.SdOf(shoe.Form, part, level, defaults);
                }
            }
        }

        return factor * constant;
    }

    private OrdinalAnswer AnswerOf(ShoeOnFile shoe, TryOn tryOn, CheckAnswer answer, ShortlistQuestion question)
    {
        var defaults = question.Defaults;
        var check = TriedShoes.CheckOf(answer, defaults);
        var pads = TriedShoes.PadsUnder(tryOn, answer.Foot, defaults);
        double[] direction = new double[All.Size];
        double constant = 0;
        foreach (var term in check.Sees)
        {
            constant += AddEase(direction, shoe, answer.Foot, EaseModel.RowOf(term.Criterion, defaults), term.Factor, defaults);
            constant += term.Factor * PadSets.ShiftOf(pads, term.Criterion);
        }

        double noise = check.Noise
            * (question.FirstPair ? defaults.Answers.FirstPairNoise : 1)
            * (answer.ByDancer && !check.AlwaysByDancer ? defaults.Answers.DancersWordNoise : 1);
        return new OrdinalAnswer(
            direction,
            answer.Answer == 0 ? double.NegativeInfinity : (answer.Answer == 1 ? check.Lower : check.Upper) - constant,
            answer.Answer == 2 ? double.PositiveInfinity : (answer.Answer == 1 ? check.Upper : check.Lower) - constant,
            noise);
    }

    private static Gaussian WithShoes(Gaussian feet, int size)
    {
        double[] mean = new double[size];
        double[] covariance = new double[size * size];
        feet.Mean.CopyTo(mean);
        for (int i = 0; i < feet.Size; i++)
        {
            feet.Covariance.Slice(i * feet.Size, feet.Size).CopyTo(covariance.AsSpan(i * size));
        }

        for (int i = feet.Size; i < size; i++)
        {
            covariance[(i * size) + i] = 1;
        }

        return new Gaussian(mean, covariance);
    }
}
