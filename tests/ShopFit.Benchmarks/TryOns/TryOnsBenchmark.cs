using System.Globalization;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
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
    internal sealed record Settings(int Shops, int DancersAShop, int Sizes, int OnShelf, double Misread, string? SurveyPath, int Seed);

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
            Line(output, "model, feet known", settings, feet, (fitting, _) => fitting.ByModel(full: true, learnsFromTries: true, feetKnown: true), once: true);
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"stated chances, quick: {quick.Said()}"));
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"stated chances, full:  {whole.Said()}"));
            output.WriteLine();
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
                var played = new Played?[settings.DancersAShop];
                Parallel.For(0, played.Length, i =>
                {
                    int seed = ((settings.Seed + shopSeed) * 10_007) + i;
                    var fitting = new PlayedFitting(shop, feet, settings.Misread, seed);
                    played[i] = fitting.ShelfHoldsFit ? play(fitting, full) : null;
                });
                foreach (var one in played.OfType<Played>())
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
    internal sealed record Played(int? Tries, IReadOnlyList<(double Said, bool Fitted)> Chances, IReadOnlyList<bool> Inside);

    /// <summary>Many fittings counted.</summary>
    internal sealed class Tally
    {
        private readonly List<Played> _played = [];

        public double MeanTries => _played.Average(one => (double)(one.Tries ?? NeverFitted));

        public double FirstTry => _played.Average(one => one.Tries == 1 ? 1.0 : 0);

        public double Fitted => _played.Average(one => one.Tries is null ? 0 : 1.0);

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

        public PlayedFitting(SimulatedShop shop, IReadOnlyList<IReadOnlyDictionary<Trait, double>>? survey, double misread, int seed)
        {
            (_shop, _misread, _seed) = (shop, misread, seed);
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
                    return new(tries, [], []);
                }

                fitter.Saw(_dancer.Answer(_shop.TrueForm(next), random));
            }

            return new(null, [], []);
        }

        public Played ByModel(bool full, bool learnsFromTries, bool feetKnown = false)
        {
            var random = new Random(_seed + 1);
            var feet = feetKnown
                ? SimulatedDancer.Everybody(Defaults).After(_dancer.ReadExactly(), Exact).Belief
                : _dancer.Read(full, _misread, random);
            var tryOns = new List<TryOn>();
            var tried = new HashSet<string>(StringComparer.Ordinal);
            var chances = new List<(double, bool)>();
            var inside = new List<bool>();
            for (int tries = 1; tries <= Most; tries++)
            {
                var question = new ShortlistQuestion
                {
                    Feet = feet,
                    Shoes = _shop.Shoes,
                    Kind = Kind,
                    Limit = 1,
                    Allows = shoe => !tried.Contains(shoe.Sku),
                    TryOns = learnsFromTries ? tryOns : [],
                    Defaults = Defaults,
                };
                var next = Shortlist.Of(question).Pairs[0];
                double[] form = _shop.TrueForm(next.Shoe);
                bool fits = TrulyFits(next.Shoe);
                chances.Add((next.ChanceOfFit, fits));
                inside.AddRange(next.Criteria.Select(fit => Holds(fit, next, form)));
                if (fits)
                {
                    return new(tries, chances, inside);
                }

                tried.Add(next.Shoe.Sku);
                tryOns.Add(new TryOn(next.Shoe.Sku, false, _dancer.Answer(form, random), []));
            }

            return new(null, chances, inside);
        }

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
