using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Scoring;

namespace ShopFit.Seed;

/// <summary>Two years of the demo shop, day by day: who came, what was read and tried, what was bought and what walked out.</summary>
internal sealed class DemoDiary
{
    /// <summary>Most pairs that are tried in one fitting.</summary>
    private const int MostTries = 5;

    /// <summary>A pair less likely than this is not fetched.</summary>
    private const double WorthAWalk = 0.06;

    /// <summary>Another size of the model is fetched where it should score more than this.</summary>
    private const double WorthAnotherSize = 0.35;

    /// <summary>How often what happens *(cp)*.</summary>
    private const double TeacherAgrees = 0.85;
    private const double IsSore = 0.025;
    private const double IsUndecided = 0.035;
    private const double IsOrdered = 0.45;
    private const double ComesBack = 0.25;
    private const double ReturnsAfterWalkOut = 0.6;

    /// <summary>What a pair may cost without a thought, in minor units, and how often more, or less, is too much.</summary>
    private const int Dear = 7_000;
    private const double TooDear = 0.09;
    private const double TooDearAnyway = 0.012;

    /// <summary>Words are asked again after so many days.</summary>
    private const int WordsLast = 300;

    private readonly DemoPairs _shoes;
    private readonly DemoStock _stock;
    private readonly DemoChooser _chooser;
    private readonly DemoHours _hours = new();
    private readonly Dictionary<string, string> _padCodes;
    private readonly Dictionary<string, DemoFile> _files;
    private readonly PriorityQueue<DemoVisit, (DateOnly, int)> _visits = new();
    private readonly List<DemoFitting> _fittings = [];
    private int _thoughtOf;

    private DemoDiary(DemoPeople people, IReadOnlyList<DemoSize> sizes, IReadOnlyList<DemoGoods> goods)
    {
        _shoes = new DemoPairs(sizes);
        _stock = new DemoStock(_shoes, goods.Where(item => item.TracksStock).ToDictionary(item => item.Code, item => item.OnHand, StringComparer.Ordinal));
        _chooser = new DemoChooser(_shoes, _stock);
        _padCodes = goods.Where(item => item.PadId.Length > 0).ToDictionary(item => item.PadId, item => item.Code, StringComparer.Ordinal);
        _files = people.Dancers.ToDictionary(dancer => dancer.Key, dancer => new DemoFile(dancer), StringComparer.Ordinal);
        foreach (var dancer in people.Dancers)
        {
            foreach (var (day, kind) in DemoVisits.Of(dancer))
            {
                Expect(day, dancer, kind);
            }
        }
    }

    /// <summary>All fittings, oldest first.</summary>
    internal IReadOnlyList<DemoFitting> Fittings => _fittings;

    /// <summary>All deliveries, oldest first.</summary>
    internal IReadOnlyList<(DateOnly Day, string Code, int Pieces)> Deliveries => _stock.Delivered;

    /// <summary>Lives through the two years.</summary>
    internal static DemoDiary Write(DemoPeople people, IReadOnlyList<DemoSize> sizes, IReadOnlyList<DemoGoods> goods)
    {
        var diary = new DemoDiary(people, sizes, goods);
        while (diary._visits.TryDequeue(out var visit, out _) && visit.Day < DemoCalendar.AsOf)
        {
            diary._stock.PassTo(visit.Day);
            diary.Fit(visit);
        }

        diary._stock.PassTo(DemoCalendar.AsOf);
        diary.BeginToday(people);
        return diary;
    }

    private void Expect(DateOnly day, DemoDancer dancer, string kind, bool again = false, string? ordered = null) =>
        _visits.Enqueue(new DemoVisit(day, dancer, kind, _thoughtOf, again, ordered), (day, _thoughtOf++));

    private void Fit(DemoVisit visit)
    {
        if (_hours.Next(visit.Day, visit.Dancer.IsMinor) is not { } turn)
        {
            Expect(DemoCalendar.Open(visit.Day.AddDays(1)), visit.Dancer, visit.Kind, visit.Again, visit.Ordered);
            return;
        }

        var begun = Begin(visit, turn.Fitter, turn.At);
        var random = begun.File.Random;
        var (ending, tries) = End(visit, begun);
        var closedAt = turn.At.AddMinutes(12 + (2 * begun.Fitting.Readings.Count) + (8 * tries.Count) + random.Below(9));
        _hours.Busy(turn.Fitter, closedAt);
        _fittings.Add(begun.Fitting with { ClosedAt = closedAt, TryOns = tries, Ending = ending });
        Afterwards(visit, ending, random);
    }

    // Up to the last reading.
    private (DemoFile File, DemoFitting Fitting, FeetBelief Feet) Begin(DemoVisit visit, string fitter, DateTime at)
    {
        var (file, dancer) = (_files[visit.Dancer.Key], visit.Dancer);
        var random = file.Random;
        var firstPair = !file.Bought.ContainsKey(visit.Kind) && dancer.Path != DemoPath.Experienced;
        var agreed = visit.Kind == "pointe" && firstPair && random.Chance(TeacherAgrees);
        var known = file.ReadInWords is { } read && visit.Day.DayNumber - read.DayNumber < WordsLast;
        var readings = DemoReadings.Of(file.FeetOn(visit.Day), visit.Kind, dancer.Sex, dancer.AgeOn(visit.Day), known, random);
        file.ReadInWords = known || visit.Kind is not ("pointe" or "demi-pointe") ? file.ReadInWords : visit.Day;
        file.Count++;
        return (file, new DemoFitting
        {
            Key = $"{dancer.Key}-{file.Count}",
            Dancer = dancer,
            Kind = visit.Kind,
            FirstPair = firstPair,
            TeacherAgreedOn = agreed ? visit.Day.AddDays(-random.Between(3, 20)) : null,
            OpenedAt = at,
            ClosedAt = null,
            Fitter = fitter,
            Sore = random.Chance(IsSore) ? random.Pick(["left", "right"]) : "",
            Readings = readings,
            TryOns = [],
            Ending = null,
        }, file.Believe(visit.Day, readings));
    }

    private (DemoEnding Ending, IReadOnlyList<DemoTryOn> Tries) End(DemoVisit visit, (DemoFile File, DemoFitting Fitting, FeetBelief Feet) begun)
    {
        var (file, fitting, feet) = begun;
        var random = file.Random;
        if (visit.Kind == "pointe" && fitting.FirstPair && fitting.TeacherAgreedOn is null)
        {
            return (Not("not-ready", random), []);
        }

        if (fitting.Sore.Length > 0 && random.Chance(0.5))
        {
            return (Not("sore", random), []);
        }

        var (tries, fitted) = Try(visit, file, feet, fitting.FirstPair);
        if (fitted is not { } pair)
        {
            return (NothingFits(visit, file, feet, fitting.FirstPair), tries);
        }

        var size = _shoes.Sizes[pair];
        var dear = size.Model.PriceMinor >= Dear ? TooDear : TooDearAnyway;
        if (random.Chance(dear) || random.Chance(IsUndecided))
        {
            return (Not(random.Chance(dear / (dear + IsUndecided)) ? "price" : "undecided", random), tries);
        }

        var pads = tries[^1].Pads;
        _stock.Sell(pair);
        foreach (var code in pads.Select(pad => _padCodes[pad.Pad]).Distinct(StringComparer.Ordinal))
        {
            _stock.Sell(visit.Day, code);
        }

        IReadOnlyList<string> extras = [.. DemoExtras.Of(visit.Dancer, visit.Kind, random).Where(_stock.Has)];
        foreach (var code in extras)
        {
            _stock.Sell(visit.Day, code);
        }

        file.Bought[visit.Kind] = (pair, visit.Day);
        return (new DemoEnding("sold", "", DemoWhy.Sold(visit.Kind, random), size.Sku, pads, extras), tries);
    }

    // The pair that was ordered, the same again where feet have stopped growing, then what is likely.
    private (IReadOnlyList<DemoTryOn> Tries, int? Fitted) Try(DemoVisit visit, DemoFile file, FeetBelief feet, bool firstPair)
    {
        var random = file.Random;
        var trueFeet = file.FeetOn(visit.Day);
        var tries = new List<DemoTryOn>();
        var candidates = new List<int>();
        if (visit.Ordered is not null)
        {
            candidates.Add(_shoes.IndexOf[visit.Ordered]);
        }
        else if (file.Bought.TryGetValue(visit.Kind, out var last) && visit.Dancer.AgeOn(visit.Day) >= 16 && random.Chance(0.7))
        {
            candidates.Add(last.Pair);
        }

        var asked = false;
        while (tries.Count < MostTries)
        {
            candidates.RemoveAll(pair => !_stock.Has(pair));
            if (candidates.Count == 0 && !asked)
            {
                asked = true;
                candidates.AddRange(_chooser.FromShelf(visit.Dancer, visit.Kind, feet, firstPair)
                    .Where(one => one.Chance >= WorthAWalk && !tries.Exists(tried => tried.Sku == _shoes.Sizes[one.Pair].Sku))
                    .Select(one => one.Pair));
            }

            if (candidates.Count == 0)
            {
                break;
            }

            var pair = candidates[0];
            candidates.RemoveAt(0);
            candidates.Remove(pair);
            var seen = DemoTrueFit.Look(visit.Kind, trueFeet, _shoes.InHand(pair, random), pad => _stock.Has(_padCodes[pad]), random);
            tries.Add(new DemoTryOn(_shoes.Sizes[pair].Sku, seen.Fits, seen.Pads));
            if (seen.Fits)
            {
                return (tries, pair);
            }

            // What was wrong with it says which other size of the model is worth the walk.
            if (Better(pair, seen, visit.Kind, tries) is { } better)
            {
                candidates.Insert(0, better);
            }
        }

        return (tries, null);
    }

    private int? Better(int pair, DemoTrueFit seen, string kind, List<DemoTryOn> tries) => Enumerable.Range(0, _shoes.Sizes.Count)
        .Where(other => _shoes.Sizes[other].Model == _shoes.Sizes[pair].Model && _stock.Has(other) && !tries.Exists(tried => tried.Sku == _shoes.Sizes[other].Sku))
        .Select(other => (Pair: (int?)other, Score: seen.ScoreOf(kind, _shoes.OnFile[pair].Form, _shoes.OnFile[other].Form)))
        .Where(one => one.Score > WorthAnotherSize)
        .OrderByDescending(one => one.Score)
        .FirstOrDefault().Pair;

    private DemoEnding NothingFits(DemoVisit visit, DemoFile file, FeetBelief feet, bool firstPair)
    {
        var random = file.Random;
        if (_chooser.FromCatalogue(visit.Dancer, visit.Kind, feet, firstPair) is { } wanted)
        {
            _stock.Miss(wanted);
            if (!visit.Again && random.Chance(IsOrdered))
            {
                var longer = feet.Mean(Side.Left, Trait.Length) > feet.Mean(Side.Right, Trait.Length) ? Side.Left : Side.Right;
                return new DemoEnding("order", "", DemoWhy.Order(longer, random), _shoes.Sizes[wanted].Sku, [], []);
            }
        }

        return random.Chance(ComesBack) ? new DemoEnding("come-back", "", DemoWhy.Back(random), "", [], []) : Not("not-on-shelf", random);
    }

    private static DemoEnding Not(string reason, DemoRandom random) => new("not-today", reason, DemoWhy.Not(reason, random), "", [], []);

    // An order comes and is tried; who walked out may look in again.
    private void Afterwards(DemoVisit visit, DemoEnding ending, DemoRandom random)
    {
        if (ending.Kind == "order")
        {
            var arrives = visit.Day.AddDays(_shoes.Sizes[_shoes.IndexOf[ending.Sku]].Maker.LeadTimeDays);
            if (arrives < DemoCalendar.AsOf)
            {
                _stock.Order(arrives, ending.Sku, 1);
            }

            Expect(DemoCalendar.Open(arrives.AddDays(random.Between(2, 6))), visit.Dancer, visit.Kind, again: true, ending.Sku);
        }
        else if (!visit.Again && (ending.Kind == "come-back" || (ending.Kind == "not-today" && random.Chance(ReturnsAfterWalkOut))))
        {
            Expect(DemoCalendar.Open(visit.Day.AddDays(random.Between(14, 40))), visit.Dancer, visit.Kind, again: true);
        }
    }

    /// <summary>What lies open this afternoon: two sisters, somebody with a pair that fits, somebody who has just sat down.</summary>
    private void BeginToday(DemoPeople people)
    {
        var known = people.Dancers.Where(dancer => _files[dancer.Key].Count > 0).ToList();
        var sister = known.First(dancer => dancer.Sex == Sex.Female && AgeToday(dancer) is >= 12.1 and < 15
            && known.Exists(other => other != dancer && other.Guardian == dancer.Guardian && other.Sex == Sex.Female && AgeToday(other) < 12));
        var younger = known.First(other => other != sister && other.Guardian == sister.Guardian && other.Sex == Sex.Female && AgeToday(other) < 12);
        var grown = known.First(dancer => dancer.Path == DemoPath.Experienced && _files[dancer.Key].Bought.ContainsKey("pointe"));
        var man = known.First(dancer => dancer.Sex == Sex.Male && !dancer.IsMinor);
        var at = DemoCalendar.AsOf.ToDateTime(new TimeOnly(15, 40));
        Leave(sister, "pointe", "wren", at, tries: 1, read: true);
        Leave(younger, "soft", "wren", at.AddMinutes(2), tries: 0, read: true);
        Leave(grown, "pointe", "corin", at.AddMinutes(9), tries: MostTries, read: true);
        Leave(man, "jazz", "corin", at.AddMinutes(26), tries: 0, read: false);

        double AgeToday(DemoDancer dancer) => dancer.AgeOn(DemoCalendar.AsOf);
    }

    private void Leave(DemoDancer dancer, string kind, string fitter, DateTime at, int tries, bool read)
    {
        var visit = new DemoVisit(DemoCalendar.AsOf, dancer, kind, _thoughtOf++);
        var begun = Begin(visit, fitter, at);
        var tried = tries == 0 ? [] : Try(visit, begun.File, begun.Feet, begun.Fitting.FirstPair).Tries.Take(tries).ToList();
        _fittings.Add(begun.Fitting with
        {
            Sore = "",
            TeacherAgreedOn = kind == "pointe" && begun.Fitting.FirstPair ? DemoCalendar.AsOf.AddDays(-9) : null,
            Readings = read ? begun.Fitting.Readings : [],
            TryOns = tried,
        });
    }
}
