using ShopFit.Fitting.Pads;

namespace ShopFit.Fitting.Scoring;

/// <summary>One question being answered.</summary>
/// <remarks>
/// Each pair is bounded by its single eases, which costs no draws; the most promising are ranked by few draws while their bound can
/// still beat the best found; the finalists are counted over all draws. What is not shown is never judged.
/// </remarks>
internal sealed class ShortlistSearch : IDisposable
{
    private const int FirstDraws = 256;
    private const int RankingDraws = 1024;
    private const int FewestFinalists = 40;
    private const int RestOfShelfDraws = 4096;

    // What cannot reach this chance is not worth a draw.
    private const double Hopeless = 1e-3;

    private readonly ShortlistQuestion _question;
    private readonly EaseBelief _belief;
    private readonly PadSets _sets;
    private readonly Draws _draws;
    private readonly EaseMoments _moments;
    private readonly FitDraws _fits;
    private readonly PairJudge _judge;

    private ShortlistSearch(ShortlistQuestion question, EaseBelief belief, PadSets sets, Draws draws)
    {
        _question = question;
        _belief = belief;
        _sets = sets;
        _draws = draws;
        _moments = new EaseMoments(belief, question.Defaults);
        _fits = new FitDraws(belief.Model, sets, draws);
        _judge = new PairJudge(belief.Model, sets, _moments, draws, question.Defaults);
    }

    public static ShortlistSearch Of(ShortlistQuestion question)
    {
        var model = EaseModel.Of(question.Kind, question.Defaults);
        var sets = PadSets.Of(model, question.Defaults);
        var belief = EaseBelief.Of(model, JointBelief.Of(question));
        var (known, draws) = TriedVerdicts.Apply(question, belief, Draws.Of(belief.All), sets);
        return new ShortlistSearch(question, known, sets, draws);
    }

    public PairFit Judge(ShoeOnFile shoe)
    {
        var numbers = NumbersOf(shoe);
        return _judge.Judge(numbers, Chance(_fits.Count(numbers, 0, Draws.Count, [])));
    }

    public Shortlist Run(CancellationToken cancellationToken)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(_question.Limit, 1, nameof(ShortlistQuestion.Limit));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(_question.Limit, _question.Defaults.Limits.Pairs, nameof(ShortlistQuestion.Limit));

        var promising = Promising(cancellationToken);
        bool shelfOnly = _question.From == ShortlistFrom.Shelf;
        var finalists = Finalists([.. promising.Where(entry => !shelfOnly || entry.Shoe.OnShelf)], cancellationToken);

        byte[] covered = new byte[Draws.Count];
        byte[] fits = new byte[Draws.Count];
        var counted = new List<(ShoeNumbers Shoe, double Chance)>();
        foreach (var shoe in finalists)
        {
            cancellationToken.ThrowIfCancellationRequested();
            counted.Add((shoe, Chance(_fits.Count(shoe, 0, Draws.Count, fits))));
            if (shoe.Shoe.OnShelf)
            {
                for (int i = 0; i < covered.Length; i++)
                {
                    covered[i] |= fits[i];
                }
            }
        }

        var seen = finalists.Select(shoe => shoe.Shoe).ToHashSet(ReferenceEqualityComparer.Instance);
        double chanceOnShelf = ChanceOnShelf(covered, promising.Where(entry => entry.Shoe.OnShelf && !seen.Contains(entry.Shoe)), cancellationToken);
        return new Shortlist(Shown(counted), chanceOnShelf);
    }

    public void Dispose() => _draws.Dispose();

    private static double Chance(int fits) => (double)fits / Draws.Count;

    private ShoeNumbers NumbersOf(ShoeOnFile shoe) => ShoeNumbers.Of(shoe, _belief, _question.Defaults);

    // All pairs in the order of what they can reach at best.
    private List<(ShoeOnFile Shoe, double Bound)> Promising(CancellationToken cancellationToken)
    {
        var promising = new List<(ShoeOnFile Shoe, double Bound)>();
        var hopeless = new List<(ShoeOnFile Shoe, double Bound)>();
        foreach (var shoe in _question.Shoes)
        {
            double bound = Bound(shoe);
            (bound >= Hopeless ? promising : hopeless).Add((shoe, bound));
        }

        cancellationToken.ThrowIfCancellationRequested();
        promising.Sort(ByBound);
        int wanted = Math.Max(FewestFinalists, 2 * _question.Limit);
        if (promising.Count(entry => _question.From == ShortlistFrom.Catalogue || entry.Shoe.OnShelf) < wanted)
        {
            // Even when nothing fits, the nearest are shown.
            hopeless.Sort(ByBound);
            promising.AddRange(hopeless.Where(entry => _question.From == ShortlistFrom.Catalogue || entry.Shoe.OnShelf).Take(wanted));
        }

        return promising;
    }

    private static int ByBound((ShoeOnFile Shoe, double Bound) left, (ShoeOnFile Shoe, double Bound) right)
    {
        int order = right.Bound.CompareTo(left.Bound);
        return order != 0 ? order : string.CompareOrdinal(left.Shoe.Sku, right.Shoe.Sku);
    }

    // No pair fits more often than its worst single ease can be brought to a fit by some set.
    private double Bound(ShoeOnFile shoe)
    {
        var places = _moments.PlacesOf(shoe);
        double bound = 1;
        int criteria = _belief.Model.Count;
        for (int c = 0; c < criteria; c++)
        {
            var steps = _sets.Steps[c];
            for (int foot = 0; foot < 2; foot++)
            {
                var (mean, sd) = _moments.Of(shoe, places, (foot * criteria) + c);
                bound = Math.Min(bound, NormalTable.Between((steps.Lowest - mean) / sd, (steps.Beyond - mean) / sd));
            }

            if (bound < Hopeless)
            {
                return bound;
            }
        }

        return bound;
    }

    private List<ShoeNumbers> Finalists(List<(ShoeOnFile Shoe, double Bound)> candidates, CancellationToken cancellationToken)
    {
        int finalists = Math.Max(FewestFinalists, 2 * _question.Limit);
        int best = finalists / 2;
        var ranked = new List<(ShoeNumbers Shoe, int Fits)>();
        var leaders = new PriorityQueue<int, int>();
        foreach (var (shoe, bound) in candidates)
        {
            if (leaders.Count == best && bound * RankingDraws < leaders.Peek() && ranked.Count >= finalists)
            {
                break;
            }

            cancellationToken.ThrowIfCancellationRequested();
            var numbers = NumbersOf(shoe);
            int fits = _fits.Count(numbers, 0, FirstDraws, []);
            if (leaders.Count == best && ranked.Count >= finalists && AtMost(fits) < leaders.Peek())
            {
                continue;
            }

            fits += _fits.Count(numbers, FirstDraws, RankingDraws - FirstDraws, []);
            ranked.Add((numbers, fits));
            leaders.Enqueue(fits, fits);
            if (leaders.Count > best)
            {
                leaders.Dequeue();
            }
        }

        // A stable sort: among equals the higher bound stays ahead.
        return [.. ranked.OrderByDescending(entry => entry.Fits).Take(finalists).Select(entry => entry.Shoe)];
    }

    // What all the ranking draws can be expected to show at best, four standard errors above what the first have shown.
    private static double AtMost(int firstFits)
    {
        double share = (firstFits + 1.0) / FirstDraws;
        return RankingDraws * (share + (4 * Math.Sqrt(share / FirstDraws)));
    }

    private List<PairFit> Shown(List<(ShoeNumbers Shoe, double Chance)> counted)
    {
        var byChance = counted.OrderByDescending(entry => entry.Chance).ToList();
        int limit = Math.Min(_question.Limit, byChance.Count);
        if (limit == 0)
        {
            return [];
        }

        // Whoever ties with the last one shown has to be judged too.
        double last = byChance[limit - 1].Chance;
        return [.. byChance
            .Where(entry => entry.Chance >= last)
            .Select(entry => _judge.Judge(entry.Shoe, entry.Chance))
            .OrderByDescending(fit => fit.ChanceOfFit)
            .ThenByDescending(fit => fit.Score)
            .ThenBy(fit => fit.Shoe.Sku, StringComparer.Ordinal)
            .Take(limit)];
    }

    // The finalists are known for every draw; what the rest of the shelf adds is small, so fewer draws tell it.
    private double ChanceOnShelf(byte[] covered, IEnumerable<(ShoeOnFile Shoe, double Bound)> rest, CancellationToken cancellationToken)
    {
        int byFinalists = covered.Count(fits => fits != 0);
        var open = new List<int>(Enumerable.Range(0, RestOfShelfDraws).Where(draw => covered[draw] == 0));
        int before = open.Count;
        foreach (var (shoe, _) in rest)
        {
            if (open.Count == 0)
            {
                break;
            }

            cancellationToken.ThrowIfCancellationRequested();
            _fits.RemoveFitting(NumbersOf(shoe), open);
        }

        // As a share of what the finalists leave open: added as it is, it could lead past certainty.
        double byRest = before == 0 ? 0 : (double)(before - open.Count) / before;
        return Chance(byFinalists) + ((1 - Chance(byFinalists)) * byRest);
    }
}
