using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Learning;
using ShopFit.Fitting.Pads;
using ShopFit.Fitting.Shoes;
using ShopFit.Fitting.TryOns;

namespace ShopFit.Fitting.Scoring;

/// <summary>
/// One Gaussian over both feet and over what is not known of the shoes tried on: for each maker, model and pair tried,
/// eight numbers, one for each part of the form, with a prior mean of 0 and a standard deviation of 1 where the shop has learnt nothing yet.
/// </summary>
/// <remarks>
/// The real inside of a pair = form on file + maker's SD · maker's number + model's SD · model's number + scatter's SD ·
/// pair's number. Shoes never tried need no numbers here: see <see cref="LearntPrior"/>.
/// </remarks>
internal sealed class JointBelief
{
    public const int FeetSize = 2 * Traits.Count;

    private readonly Dictionary<ShoeKey, int> _places;

    private JointBelief(Gaussian all, Dictionary<ShoeKey, int> places, LearntOffsets learnt)
    {
        All = all;
        _places = places;
        Learnt = learnt;
    }

    /// <summary>Feet first, then eight numbers for each maker, model and pair tried.</summary>
    public Gaussian All { get; }

    /// <summary>What was known of makers and models before these try-ons.</summary>
    public LearntOffsets Learnt { get; }

    /// <summary>The makers, models and pairs tried, in the order of their numbers.</summary>
    public IEnumerable<ShoeKey> Tried => _places.OrderBy(place => place.Value).Select(place => place.Key);

    /// <summary>Where the eight numbers of a maker, model or pair start; null where it was not tried.</summary>
    public int? PlaceOf(ShoeKey key) => _places.TryGetValue(key, out int place) ? place : null;

    /// <exception cref="ArgumentException">A try-on names a shoe, a check, a pad or an answer that is not there.</exception>
    public static JointBelief Of(ShortlistQuestion question) =>
        question.TryOns.Count == 0
            ? new(question.Feet.Joint, [], question.Learnt)
            : Of(question.Feet, TriedShoes.Of(question.TryOns, question.Shoes, question.Defaults), question.TryOns, [], question.FirstPair, question.Defaults, question.Learnt);

    /// <summary>The belief after a closed fitting, with what its sale says of the pair.</summary>
    /// <exception cref="ArgumentException">A try-on or the sale names a shoe, a check, a pad or an answer that is not there.</exception>
    public static JointBelief Of(ToldByFitting told, LearntOffsets learnt)
    {
        TryOn[] sold = [.. told.Fitted.Select(fitted => new TryOn(fitted.Sku, null, [], fitted.Pads))];
        var shoes = TriedShoes.Of([.. told.TryOns, .. sold], told.Tried, told.Defaults);
        return Of(told.Feet, shoes, told.TryOns, told.Fitted, told.FirstPair, told.Defaults, learnt, told.Kind);
    }

    private static JointBelief Of(
        FeetBelief feet, Dictionary<string, ShoeOnFile> shoes, IReadOnlyList<TryOn> tryOns, IReadOnlyList<FoundToFit> fitted,
        bool firstPair, FitDefaults defaults, LearntOffsets learnt, string? kind = null)
    {
        ShoeKey[] keys = [.. shoes.Values
            .SelectMany(shoe => ShoeLevels.All.Select(level => new ShoeKey(level, ShoeLevels.KeyOf(shoe, level))))
            .Distinct()
            .OrderBy(key => key.Level).ThenBy(key => key.Key, StringComparer.Ordinal)];
        var places = keys.Select((key, i) => (key, i)).ToDictionary(entry => entry.key, entry => FeetSize + (ShoeForm.Parts * entry.i));
        var prior = Beside(feet.Joint, learnt.Of(keys));
        var joint = new JointBelief(prior, places, learnt);

        // In a fixed order, so that the order of tapping does not even show in the last bits.
        var answers = tryOns
            .SelectMany(tryOn => tryOn.Answers.Select(answer => (TryOn: tryOn, Answer: answer)))
            .Where(entry => !TriedShoes.CheckOf(entry.Answer, defaults).OnlyRecorded)
            .OrderBy(entry => entry.TryOn.Sku, StringComparer.Ordinal)
            .ThenBy(entry => entry.Answer.Foot)
            .ThenBy(entry => entry.Answer.Check, StringComparer.Ordinal)
            .ThenBy(entry => entry.Answer.Answer)
            .ThenBy(entry => entry.Answer.ByDancer)
            .ThenBy(entry => string.Join('+', entry.TryOn.Pads.Select(pad => $"{pad.Foot}:{pad.Pad}").Order(StringComparer.Ordinal)), StringComparer.Ordinal)
            .Select(entry => joint.AnswerOf(shoes[entry.TryOn.Sku], entry.TryOn, entry.Answer, firstPair, defaults));
        var fits = fitted
            .OrderBy(pair => pair.Sku, StringComparer.Ordinal)
            .SelectMany(pair => joint.EasesInside(shoes[pair.Sku], pair, EaseModel.Of(kind!, defaults), defaults));
        return new(ExpectationPropagation.After(prior, [.. answers, .. fits]).Belief, places, learnt);
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
                if (PlaceOf(new(level, ShoeLevels.KeyOf(shoe, level))) is { } place)
                {
                    direction[place + (int)part] += factor * ShoeLevels.SdOf(shoe.Form, part, level, defaults);
                }
            }
        }

        return factor * constant;
    }

    private OrdinalAnswer AnswerOf(ShoeOnFile shoe, TryOn tryOn, CheckAnswer answer, bool firstPair, FitDefaults defaults)
    {
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
            * (firstPair ? defaults.Answers.FirstPairNoise : 1)
            * (answer.ByDancer && !check.AlwaysByDancer ? defaults.Answers.DancersWordNoise : 1);
        return new OrdinalAnswer(
            direction,
            answer.Answer == 0 ? double.NegativeInfinity : (answer.Answer == 1 ? check.Lower : check.Upper) - constant,
            answer.Answer == 2 ? double.PositiveInfinity : (answer.Answer == 1 ? check.Upper : check.Lower) - constant,
            noise);
    }

    // A pair fits when every ease of both feet, its pads counted, lies where that place counts as fitting.
    private IEnumerable<OrdinalAnswer> EasesInside(ShoeOnFile shoe, FoundToFit fitted, EaseModel model, FitDefaults defaults)
    {
        foreach (var foot in Enum.GetValues<Side>())
        {
            Pad[] pads = [.. fitted.Pads.Where(pad => pad.Foot == foot).Select(pad => defaults.FindPad(pad.Pad)!)];
            for (int c = 0; c < model.Count; c++)
            {
                var (from, to) = model.Criteria[c].EasesOf(defaults.FitsFrom);
                double[] direction = new double[All.Size];
                double constant = AddEase(direction, shoe, foot, model.Rows[c], 1, defaults) + PadSets.ShiftOf(pads, model.Criteria[c].Id);
                yield return new OrdinalAnswer(direction, from - constant, to - constant, 0, fitted.Weight);
            }
        }
    }

    private static Gaussian Beside(Gaussian feet, Gaussian shoes)
    {
        int size = feet.Size + shoes.Size;
        double[] mean = [.. feet.Mean, .. shoes.Mean];
        double[] covariance = new double[size * size];
        for (int i = 0; i < feet.Size; i++)
        {
            feet.Covariance.Slice(i * feet.Size, feet.Size).CopyTo(covariance.AsSpan(i * size));
        }

        for (int i = 0; i < shoes.Size; i++)
        {
            shoes.Covariance.Slice(i * shoes.Size, shoes.Size).CopyTo(covariance.AsSpan(((feet.Size + i) * size) + feet.Size));
        }

        return new Gaussian(mean, covariance);
    }
}
