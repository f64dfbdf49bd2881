namespace ShopFit.Seed;

/// <summary>What stands on the shelf as the two years go by, and what the makers deliver.</summary>
internal sealed class DemoStock
{
    /// <summary>How many of what sold is ordered again: every shelf has holes *(cp)*.</summary>
    private const double OrderedAgain = 0.85;

    /// <summary>How many of what was missed is taken in *(cp)*.</summary>
    private const double TakenIn = 0.6;

    /// <summary>Most pairs of one size.</summary>
    private const int MostOfOneSize = 4;

    /// <summary>Haberdashery is ordered again from this level on, and here after so many days *(cp)*.</summary>
    private const int ReorderAt = 4;
    private const int HaberdasheryDays = 5;

    private readonly int[] _pairs;
    private readonly Dictionary<int, int> _soldSince = [];
    private readonly List<int> _missed = [];
    private readonly Dictionary<string, int> _goods;
    private readonly Dictionary<string, int> _usual;
    private readonly List<(DateOnly Day, string Code, int Pieces)> _coming = [];
    private readonly List<(DateOnly Day, string Code, int Pieces)> _delivered = [];
    private readonly DemoPairs _shoes;
    private readonly DemoRandom _random = DemoRandom.Of("deliveries");
    private int _next;

    internal DemoStock(DemoPairs shoes, IReadOnlyDictionary<string, int> goods)
    {
        _shoes = shoes;
        _pairs = [.. shoes.Sizes.Select(size => size.OnHand)];
        _goods = goods.ToDictionary(item => item.Key, item => item.Value, StringComparer.Ordinal);
        _usual = goods.ToDictionary(item => item.Key, item => item.Value, StringComparer.Ordinal);
    }

    /// <summary>All that was delivered, oldest first.</summary>
    internal IReadOnlyList<(DateOnly Day, string Code, int Pieces)> Delivered => _delivered;

    internal bool Has(int pair) => _pairs[pair] > 0;

    internal bool Has(string code) => !_goods.TryGetValue(code, out var pieces) || pieces > 0;

    /// <summary>Lets the days up to this one pass: what was due has come.</summary>
    internal void PassTo(DateOnly day)
    {
        while (_next < DemoCalendar.Deliveries.Count && DemoCalendar.Deliveries[_next] <= day)
        {
            DeliverShoes(DemoCalendar.Deliveries[_next]);
            _next++;
        }

        foreach (var parcel in _coming.Where(parcel => parcel.Day <= day).ToList())
        {
            _coming.Remove(parcel);
            Put(parcel.Day, parcel.Code, parcel.Pieces);
        }
    }

    internal void Sell(int pair)
    {
        _pairs[pair]--;
        _soldSince[pair] = _soldSince.GetValueOrDefault(pair) + 1;
    }

    /// <summary>Sells something of the haberdashery; more of it is ordered when little is left.</summary>
    internal void Sell(DateOnly day, string code)
    {
        if (!_goods.TryGetValue(code, out var pieces))
        {
            return;
        }

        _goods[code] = pieces - 1;
        if (pieces - 1 <= ReorderAt && !_coming.Exists(parcel => parcel.Code == code))
        {
            Order(day.AddDays(HaberdasheryDays), code, _usual[code] - pieces + 1);
        }
    }

    /// <summary>Somebody would have bought it.</summary>
    internal void Miss(int pair) => _missed.Add(pair);

    internal void Order(DateOnly arrives, string code, int pieces) => _coming.Add((DemoCalendar.Open(arrives), code, pieces));

    private void DeliverShoes(DateOnly day)
    {
        var pieces = new SortedDictionary<int, int>();
        foreach (var (pair, sold) in _soldSince.OrderBy(entry => entry.Key))
        {
            pieces[pair] = Enumerable.Range(0, sold).Count(_ => _random.Chance(OrderedAgain));
        }

        foreach (var pair in _missed.Where(_ => _random.Chance(TakenIn)))
        {
            pieces[pair] = pieces.GetValueOrDefault(pair) + 1;
        }

        foreach (var (pair, wanted) in pieces)
        {
            var count = Math.Min(wanted, MostOfOneSize - _pairs[pair]);
            if (count > 0)
            {
                Put(day, _shoes.Sizes[pair].Sku, count);
            }
        }

        _soldSince.Clear();
        _missed.Clear();
    }

    private void Put(DateOnly day, string code, int pieces)
    {
        _delivered.Add((day, code, pieces));
        if (_shoes.IndexOf.TryGetValue(code, out var pair))
        {
            _pairs[pair] += pieces;
        }
        else
        {
            _goods[code] += pieces;
        }
    }
}
