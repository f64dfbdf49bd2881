using System.Globalization;
using System.Numerics;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Learning;
using ShopFit.Fitting.Pads;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.Shoes;
using ShopFit.Fitting.TryOns;

namespace ShopFit.Benchmarks.TryOns;

/// <summary>Fittings played from the readings to the first pair that truly fits: by the model, by the size chart, and by somebody who knows all.</summary>
internal static class TryOnsBenchmark
{
    private const string Kind = "pointe";
    private const int Most = 11;
    private const int NeverFitted = 12;

    private static readonly FitDefaults Defaults = FitDefaults.Standard;
    private static readonly EaseModel Model = EaseModel.Of(Kind, Defaults);
    private static readonly PadSets Sets = PadSets.Of(Model, Defaults);

    /// <summary>How a run is made.</summary>
    internal sealed record Settings(int Shops, int DancersAShop, int Sizes, int OnShelf, double Misread, string? SurveyPath, int Seed, int LearningShops, int LearningDancers);

    public static void Run(TextWriter output, Settings settings)
    {
        var survey = settings.SurveyPath is { } path && File.Exists(path) ? SimulatedDancer.Survey(path) : null;
        foreach (var feet in survey is null ? new[] { (IReadOnlyList<IReadOnlyDictionary<Trait, double>>?)null } : [null, survey])
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"feet {(feet is null ? "from the prior" : "from the survey")}: {settings.Shops} shops of {settings.Sizes} sizes, {settings.OnShelf} on the shelf, {settings.DancersAShop} dancers each, {settings.Misread:P0} misread"));
            output.WriteLine("                                quick: tries  first try  fitted   full: tries  first try  fitted");
            Line(output, "size chart", settings, feet, (fitting, full) => fitting.ByChart(full));
            Line(output, "model, nothing taken in", settings, feet, (fitting, full) => fitting.ByModel(full, learnsFromTries: false));
            var (quick, whole) = Line(output, "model", settings, feet, (fitting, full) => fitting.ByModel(full, learnsFromTries: true));
            Line(output, "model, shoes known", settings, feet, (fitting, full) => fitting.ByModel(full, learnsFromTries: true, shoesKnown: true));
            Line(output, "model, feet known", settings, feet, (fitting, _) => fitting.ByModel(full: true, learnsFromTries: true, feetKnown: true), once: true);
            Line(output, "model, both known", settings, feet, (fitting, _) => fitting.ByModel(full: true, learnsFromTries: true, feetKnown: true, shoesKnown: true), once: true);
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"stated chances, quick: {quick.Said()}"));
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"stated chances, full:  {whole.Said()}"));
            output.WriteLine();
        }

        LearntOverDancers(output, settings, survey);
    }

    // One shop after the other serves its dancers in turn and keeps what it learns of its models.
    private static void LearntOverDancers(TextWriter output, Settings settings, IReadOnlyList<IReadOnlyDictionary<Trait, double>>? feet)
    {
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"offsets learnt: {settings.LearningShops} shops, {settings.LearningDancers} dancers each in turn, feet {(feet is null ? "from the prior" : "from the survey")}"));
        foreach (bool full in new[] { false, true })
        {
            var late = new Tally();
            var errors = new Dictionary<int, List<double>>();
            int[] held = new int[2];
            Lock gate = new();
            Parallel.For(0, settings.LearningShops, shopSeed =>
            {
                var shop = SimulatedShop.Of(settings.Seed + 500 + shopSeed, settings.Sizes, settings.OnShelf, Defaults);
                var learnt = LearntOffsets.None;
                var models = shop.Shoes.DistinctBy(shoe => shoe.Model).ToArray();
                for (int i = 0; i < settings.LearningDancers; i++)
                {
                    var fitting = new PlayedFitting(shop, feet, settings.Misread, ((settings.Seed + 500 + shopSeed) * 10_007) + i);
                    var before = learnt;
                    var played = fitting.ByModel(full, learnsFromTries: true, learnt: learnt, close: told => learnt = learnt.After(told));
                    lock (gate)
                    {
                        if (i >= settings.LearningDancers - 50)
                        {
                            late.Add(played);
                        }

                        foreach (var model in models.Where(model => learnt.FittingsOf(model.Model) != before.FittingsOf(model.Model)))
                        {
                            int count = learnt.FittingsOf(model.Model);
                            var offset = learnt.OffsetOf(model, Defaults);
                            if (count is 1 or 3 or 10 or 30 or 100)
                            {
                                errors.TryAdd(count, []);
                                errors[count].Add(offset.Mean(FormPart.Length) - shop.TrueOffset(model, FormPart.Length));
                            }

                            for (int part = 0; part < ShoeForm.Parts; part++)
                            {
                                held[0] += Math.Abs(offset.Means[part] - shop.TrueOffset(model, (FormPart)part)) <= 1.645 * offset.Sds[part] ? 1 : 0;
                                held[1]++;
                            }
                        }
                    }
                }
            });
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {(full ? "full " : "quick")} last 50: tries {late.MeanTries:0.00}, first try {late.FirstTry:0%}, fitted {late.Fitted:0.0%}; {late.Said()}"));
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"        offset of length off by (RMS, mm): {string.Join(", ", errors.OrderBy(entry => entry.Key).Select(entry => string.Create(CultureInfo.InvariantCulture, $"{Math.Sqrt(entry.Value.Average(error => error * error)):0.00} after {entry.Key} ({entry.Value.Count} models)")))}; 90 % intervals of offsets held {(double)held[0] / held[1]:0.0%}"));
        }
    }

    private static (Tally Quick, Tally Full) Line(
        TextWriter output, string name, Settings settings, IReadOnlyList<IReadOnlyDictionary<Trait, double>>? feet,
        Func<PlayedFitting, bool, Played> play, bool once = false)
    {
        var tallies = new List<Tally>();
        foreach (bool full in once ? new[] { true } : [false, true])
        {
            var tally = new Tally();
            foreach (int shopSeed in Enumerable.Range(0, settings.Shops))
            {
                var shop = SimulatedShop.Of(settings.Seed + shopSeed, settings.Sizes, settings.OnShelf, Defaults);
                var played = new Played[settings.DancersAShop];
                Parallel.For(0, played.Length, i =>
                {
                    int seed = ((settings.Seed + shopSeed) * 10_007) + i;
                    var fitting = new PlayedFitting(shop, feet, settings.Misread, seed);
                    played[i] = play(fitting, full);
                });
                foreach (var one in played)
                {
                    tally.Add(one);
                }
            }

            tallies.Add(tally);
        }

        string text = string.Join("       ", tallies.Select(tally => string.Create(
            CultureInfo.InvariantCulture, $"{tally.MeanTries,8:0.00}  {tally.FirstTry,8:0%}  {tally.Fitted,7:0.0%}")));
        output.WriteLine($"{name,-30}{text}");
        return (tallies[0], tallies[^1]);
    }

    /// <summary>One fitting as it went.</summary>
    /// <param name="Tries">Pairs tried until one fitted; null: none did.</param>
    /// <param name="Chances">What was said of each pair before it was tried, and whether it fitted.</param>
    /// <param name="Inside">For each ease of each of these pairs, whether it lay in its 90 % interval.</param>
    /// <param name="Possible">Whether any pair on the shelf fits.</param>
    internal sealed record Played(bool Possible, int? Tries, IReadOnlyList<(double Said, bool Fitted)> Chances, IReadOnlyList<bool> Inside);

    /// <summary>Many fittings counted: tries among those for whom the shelf holds a fit, chances among all.</summary>
    internal sealed class Tally
    {
        private readonly List<Played> _played = [];

        private IEnumerable<Played> Possible => _played.Where(one => one.Possible);

        public double MeanTries => Possible.Average(one => (double)(one.Tries ?? NeverFitted));

        public double FirstTry => Possible.Average(one => one.Tries == 1 ? 1.0 : 0);

        public double Fitted => Possible.Average(one => one.Tries is null ? 0 : 1.0);

        public void Add(Played one) => _played.Add(one);

        public string Said()
        {
            var chances = _played.SelectMany(one => one.Chances).ToArray();
            double error = chances.GroupBy(chance => Math.Min(9, (int)(chance.Said * 10)))
                .Sum(bin => Math.Abs(bin.Sum(chance => chance.Said - (chance.Fitted ? 1 : 0)))) / chances.Length;
            double inside = _played.SelectMany(one => one.Inside).Average(held => held ? 1.0 : 0);
            string bins = string.Join(' ', chances.GroupBy(chance => Math.Min(9, (int)(chance.Said * 10))).OrderBy(bin => bin.Key).Select(bin => string.Create(
                CultureInfo.InvariantCulture, $"{bin.Average(chance => chance.Said):0.00}→{bin.Average(chance => chance.Fitted ? 1.0 : 0):0.00} ({bin.Count()})")));
            return string.Create(CultureInfo.InvariantCulture, $"calibration error {error:0.000}, 90 % intervals held {inside:0.0%} [{bins}]");
        }
    }

    /// <summary>One dancer in one shop, the same whoever fits her.</summary>
    internal sealed class PlayedFitting
    {
        private readonly SimulatedShop _shop;
        private readonly SimulatedDancer _dancer;
        private readonly double _misread;
        private readonly int _seed;
        private readonly Dictionary<string, ShoeOnFile> _bySku;

        public PlayedFitting(SimulatedShop shop, IReadOnlyList<IReadOnlyDictionary<Trait, double>>? survey, double misread, int seed)
        {
            (_shop, _misread, _seed) = (shop, misread, seed);
            _bySku = shop.Shoes.ToDictionary(shoe => shoe.Sku);
            var random = new Random(seed);
            _dancer = survey is null
                ? SimulatedDancer.FromPrior(random, Defaults)
                : SimulatedDancer.FromSurvey(survey[random.Next(survey.Count)], random, Defaults);
        }

        public bool ShelfHoldsFit => _shop.Shoes.Any(shoe => shoe.OnShelf && TrulyFits(shoe));

        public Played ByChart(bool full)
        {
            var random = new Random(_seed + 1);
            var fitter = new ChartFitter(_shop, _dancer.Read(full, _misread, random), Defaults, random);
            for (int tries = 1; tries <= Most; tries++)
            {
                var next = fitter.Next();
                if (TrulyFits(next))
                {
                    return new(ShelfHoldsFit, tries, [], []);
                }

                fitter.Saw(_dancer.Answer(_shop.TrueForm(next), random));
            }

            return new(ShelfHoldsFit, null, [], []);
        }

        public Played ByModel(bool full, bool learnsFromTries, bool feetKnown = false, bool shoesKnown = false, LearntOffsets? learnt = null, Action<ToldByFitting>? close = null)
        {
            var defaults = Defaults;
            var onFile = shoesKnown ? _shop.WithOffsetsKnown(out defaults).Shoes : _shop.Shoes;
            var random = new Random(_seed + 1);
            var feet = feetKnown
                ? SimulatedDancer.Everybody(Defaults).After(_dancer.ReadExactly(), Exact).Belief
                : _dancer.Read(full, _misread, random);
            var tryOns = new List<TryOn>();
            var chances = new List<(double, bool)>();
            var inside = new List<bool>();
            int? fitted = null;
            while (fitted is null && tryOns.Count < Most)
            {
                var question = new ShortlistQuestion
                {
                    Feet = feet,
                    Shoes = onFile,
                    Kind = Kind,
                    Limit = 1,
                    TryOns = learnsFromTries ? tryOns : [.. tryOns.Select(tryOn => tryOn with { Fits = null, Answers = [] })],
                    Learnt = learnt ?? LearntOffsets.None,
                    Defaults = defaults,
                };
                var next = NextPair.Of(question).List.Pairs[0];
                var shoe = _bySku[next.Shoe.Sku];
                double[] form = _shop.TrueForm(shoe);
                bool fits = TrulyFits(shoe);
                chances.Add((next.ChanceOfFit, fits));
                inside.AddRange(next.Criteria.Select(fit => Holds(fit, next, form)));
                tryOns.Add(new TryOn(shoe.Sku, fits, _dancer.Answer(form, random), []));
                fitted = fits ? tryOns.Count : null;
            }

            if (close is not null)
            {
                // What fits is sold with the pads that make it fit, and nobody came back yet.
                FoundToFit[] sold = fitted is null ? [] : [new(tryOns[^1].Sku, PadsThatFit(_bySku[tryOns[^1].Sku]))];
                close(new ToldByFitting
                {
                    Feet = feet, Kind = Kind, Tried = [.. tryOns.Select(tryOn => _bySku[tryOn.Sku])], TryOns = tryOns, Fitted = sold, Defaults = Defaults,
                });
            }

            return new(ShelfHoldsFit, fitted, chances, inside);
        }

        private IReadOnlyList<PadUnderFoot> PadsThatFit(ShoeOnFile shoe) =>
        [
            .. Enum.GetValues<Side>().SelectMany(foot =>
            {
                ulong works = ulong.MaxValue;
                for (int c = 0; c < Model.Count; c++)
                {
                    works &= Sets.Steps[c].At(_dancer.Ease(_shop.TrueForm(shoe), foot, Model.Rows[c]));
                }

                return Sets.Sets[BitOperations.TrailingZeroCount(works)].Select(pad => new PadUnderFoot(foot, pad.Id));
            }),
        ];

        private static FitDefaults Exact { get; } = Defaults with { ReadingSd = [.. Defaults.ReadingSd.Select(_ => 0.05)] };

        private bool Holds(CriterionFit fit, PairFit pair, double[] form)
        {
            double ease = _dancer.Ease(form, fit.Foot, EaseModel.RowOf(fit.Criterion.Id, Defaults))
                + PadSets.ShiftOf(pair.Pads.Where(pad => pad.Foot == fit.Foot).Select(pad => Defaults.FindPad(pad.Pad)!), fit.Criterion.Id);
            return fit.Low <= ease && ease <= fit.High;
        }

        private bool TrulyFits(ShoeOnFile shoe) => _dancer.Fits(_shop.TrueForm(shoe), Model, Sets);
    }
}
