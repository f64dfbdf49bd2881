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
    private const int RestOfShelfShare = 8;
    private const int CountedToOrder = 10;

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
        var (known, draws) = TriedVerdicts.Apply(question, belief, Draws.Of(belief.All, question.TryOns.Count == 0 ? Draws.Count : Draws.CountAfterTryOns), sets);
        return new ShortlistSearch(question, known, sets, draws);
    }

    public PairFit Judge(ShoeOnFile shoe)
    {
        var numbers = NumbersOf(shoe);
        return _judge.Judge(numbers, Chance(_fits.Count(numbers, 0, _draws.Length, [])));
    }

    /// <summary>How a pair sits with nothing but the feet in it: every place of both feet.</summary>
    public IReadOnlyList<CriterionFit> WithoutPads(ShoeOnFile shoe) => _judge.WithoutPads(NumbersOf(shoe));

    public Shortlist Run(CancellationToken cancellationToken) => ListOf(Found(cancellationToken), cancellationToken);

    /// <summary>The shortlist, and of it the pairs that are worth a walk together.</summary>
    public FetchList Run(Func<ShoeOnFile, IReadOnlyList<string>> placesOf, IReadOnlySet<string> atHand, CancellationToken cancellationToken)
    {
        var found = Found(cancellationToken);
        var list = ListOf(found, cancellationToken);
        var judged = list.Pairs.ToDictionary(fit => fit.Shoe.Sku, StringComparer.Ordinal);

        // In one order, whatever the order of the shoes on file: of two choices that are as good, the first is taken.
        CountedPair[] worthIt = [.. found.Counted
            .Where(pair => !atHand.Contains(pair.Shoe.Shoe.Sku))
            .OrderByDescending(pair => pair.Fits)
            .ThenBy(pair => pair.Shoe.Shoe.Sku, StringComparer.Ordinal)
            .Take(FewestFinalists)];
        int[] chosen = BestTogether.Of([.. worthIt.Select(pair => pair.Draws)], FetchList.OneWalk);
        var stops = WalkingOrder.Of([.. chosen.Select(index => placesOf(worthIt[index].Shoe.Shoe))]);

        ulong[] anyFits = DrawBits.Union(chosen.Select(index => worthIt[index].Draws));
        var fetched = stops.Select(stop =>
        {
            var pair = worthIt[chosen[stop.Index]];
            ulong[] withoutIt = DrawBits.Union(chosen.Where((_, index) => index != stop.Index).Select(index => worthIt[index].Draws));
            return new FetchedPair(
                judged.GetValueOrDefault(pair.Shoe.Shoe.Sku) ?? _judge.Judge(pair.Shoe, Chance(pair.Fits)),
                stop.Place,
                Chance(DrawBits.CountBeyond(withoutIt, pair.Draws)));
        });
        return new FetchList([.. fetched], Chance(DrawBits.Count(anyFits)), list, BestToOrder(found.Promising, cancellationToken), found.InReach);
    }

    public void Dispose() => _draws.Dispose();

    // Every pair bounded, the best of those allowed counted over all draws.
    private FoundPairs Found(CancellationToken cancellationToken)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(_question.Limit, 1, nameof(ShortlistQuestion.Limit));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(_question.Limit, _question.Defaults.Limits.Pairs, nameof(ShortlistQuestion.Limit));

        var inReach = new List<ShoeOnFile>();
        var promising = Promising(inReach, cancellationToken);
        bool shelfOnly = _question.From == ShortlistFrom.Shelf;
        var finalists = Finalists([.. promising.Where(entry => !shelfOnly || entry.Shoe.OnShelf)], cancellationToken);
        return new FoundPairs(promising, [.. finalists.Select(shoe => Counted(shoe, cancellationToken))], inReach);
    }

    private CountedPair Counted(ShoeNumbers shoe, CancellationToken cancellationToken)
    {
        cancellationToken.ThrowIfCancellationRequested();
        ulong[] draws = new ulong[DrawBits.Words];
        return new CountedPair(shoe, _fits.Count(shoe, 0, _draws.Length, draws), draws);
    }

    private Shortlist ListOf(FoundPairs found, CancellationToken cancellationToken)
    {
        ulong[] covered = DrawBits.Union(found.Counted.Where(pair => pair.Shoe.Shoe.OnShelf).Select(pair => pair.Draws));
        var seen = found.Counted.Select(pair => pair.Shoe.Shoe).ToHashSet(ReferenceEqualityComparer.Instance);
        double chanceOnShelf = ChanceOnShelf(covered, found.Promising.Where(entry => entry.Shoe.OnShelf && !seen.Contains(entry.Shoe)), cancellationToken);
        return new Shortlist(Shown(found.Counted), chanceOnShelf);
    }

    // The likeliest of what would have to be ordered; ranked by few draws, so the first few are counted over all.
    private PairFit? BestToOrder(IEnumerable<(ShoeOnFile Shoe, double Bound)> promising, CancellationToken cancellationToken) =>
        Finalists([.. promising.Where(entry => !entry.Shoe.OnShelf)], cancellationToken)
            .Take(CountedToOrder)
            .Select(shoe => Counted(shoe, cancellationToken))
            .OrderByDescending(pair => pair.Fits)
            .ThenBy(pair => pair.Shoe.Shoe.Sku, StringComparer.Ordinal)
            .Take(1)
            .Select(pair => _judge.Judge(pair.Shoe, Chance(pair.Fits)))
            .FirstOrDefault();

    private double Chance(int fits) => (double)fits / _draws.Length;

    private ShoeNumbers NumbersOf(ShoeOnFile shoe) => ShoeNumbers.Of(shoe, _belief, _question.Defaults);

    // All pairs in the order of what they can reach at best.
    private List<(ShoeOnFile Shoe, double Bound)> Promising(List<ShoeOnFile> inReach, CancellationToken cancellationToken)
    {
        var promising = new List<(ShoeOnFile Shoe, double Bound)>();
        var hopeless = new List<(ShoeOnFile Shoe, double Bound)>();
        foreach (var shoe in _question.Shoes)
        {
            double bound = Bound(shoe);
            if (bound >= Hopeless)
            {
                inReach.Add(shoe);
            }

            if (_question.Allows is null || _question.Allows(shoe))
            {
                (bound >= Hopeless ? promising : hopeless).Add((shoe, bound));
            }
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

    private List<PairFit> Shown(IReadOnlyList<CountedPair> counted)
    {
        var byChance = counted.OrderByDescending(pair => pair.Fits).ToList();
        int limit = Math.Min(_question.Limit, byChance.Count);
        if (limit == 0)
        {
            return [];
        }

        // Whoever ties with the last one shown has to be judged too.
        int last = byChance[limit - 1].Fits;
        return [.. byChance
            .Where(pair => pair.Fits >= last)
            .Select(pair => _judge.Judge(pair.Shoe, Chance(pair.Fits)))
            .OrderByDescending(fit => fit.ChanceOfFit)
            .ThenByDescending(fit => fit.Score)
            .ThenBy(fit => fit.Shoe.Sku, StringComparer.Ordinal)
            .Take(limit)];
    }

    // The finalists are known for every draw; what the rest of the shelf adds is small, so fewer draws tell it.
    private double ChanceOnShelf(ulong[] covered, IEnumerable<(ShoeOnFile Shoe, double Bound)> rest, CancellationToken cancellationToken)
    {
        int byFinalists = DrawBits.Count(covered);
        var open = new List<int>(Enumerable.Range(0, _draws.Length / RestOfShelfShare).Where(draw => !DrawBits.Has(covered, draw)));
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

    private sealed record CountedPair(ShoeNumbers Shoe, int Fits, ulong[] Draws);

    private sealed record FoundPairs(
        IReadOnlyList<(ShoeOnFile Shoe, double Bound)> Promising, IReadOnlyList<CountedPair> Counted, IReadOnlyList<ShoeOnFile> InReach);
}
