using System.Text.Json.Serialization;
using CsCheck;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Shelf;

public sealed class StockMovesTests : IAsyncLifetime
{
    private TestShop _shop = null!;
    private Item _item = null!;
    private ShelfPlace[] _places = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        _shop = await TestShop.OpenAsync();
        _item = await _shop.HasAsync(Item.Of(Guid.CreateVersion7(), _shop.ShopId, "A1", "A pair", ItemCategories.Shoes));
        _places =
        [
            await _shop.HasAsync(ShelfPlace.Of(Guid.CreateVersion7(), _shop.ShopId, "B3")),
            await _shop.HasAsync(ShelfPlace.Of(Guid.CreateVersion7(), _shop.ShopId, "A1")),
            await _shop.HasAsync(ShelfPlace.Of(Guid.CreateVersion7(), _shop.ShopId, "Van", sells: false)),
        ];
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task After_any_moves_a_level_is_the_sum_of_its_lines()
    {
        var moves = Gen.OneOf(
            Gen.Select(Gen.Int[0, 2], Gen.Int[1, 4], (place, quantity) => (Place: place, Quantity: quantity)),
            Gen.Int[1, 3].Select(quantity => (Place: -1, Quantity: quantity))).List[1, 25];

        await moves.SampleAsync(
            async sequence =>
            {
                foreach (var (place, quantity) in sequence)
                {
                    await MoveAsync(place, quantity);
                }

                await using var db = _shop.CreateDbContext();
                var levels = await db.StockLevels.ToDictionaryAsync(level => level.PlaceId, level => level.OnHand, Stop);
                var lines = await db.LedgerLines.GroupBy(line => line.PlaceId).Select(group => new { group.Key, Sum = group.Sum(line => line.Change) }).ToDictionaryAsync(group => group.Key, group => group.Sum, Stop);
                Assert.Equal(lines, levels);
                Assert.All(levels.Values, onHand => Assert.InRange(onHand, 0, int.MaxValue));
            },
            iter: 20,
            threads: 1);
    }

    [Fact]
    public async Task Pieces_are_taken_by_place_and_never_from_one_that_does_not_sell()
    {
        await MoveAsync(place: 0, quantity: 2);
        await MoveAsync(place: 1, quantity: 1);
        await MoveAsync(place: 2, quantity: 5);

        Assert.IsType<MoveOutcome.Moved>(await MoveAsync(place: -1, quantity: 2));

        Assert.Equal("1, 0, 5", await OnHandAsync());
        Assert.IsType<MoveOutcome.NotThere>(await MoveAsync(place: -1, quantity: 2));
        Assert.Equal("1, 0, 5", await OnHandAsync());
    }

    [Fact]
    public async Task What_is_put_aside_is_not_taken()
    {
        await MoveAsync(place: 0, quantity: 2);
        await using (var db = _shop.CreateDbContext())
        {
            await db.StockLevels.ExecuteUpdateAsync(row => row.SetProperty(level => level.Reserved, 2), Stop);
        }

        Assert.IsType<MoveOutcome.NotThere>(await MoveAsync(place: -1, quantity: 1));
    }

    [Fact]
    public async Task Two_sellers_of_the_last_pair_take_it_once()
    {
        await MoveAsync(place: 0, quantity: 1);
        using var start = new Barrier(2);

        var outcomes = new MoveOutcome[2];
        var sellers = Enumerable.Range(0, 2).Select(seller => new Thread(() =>
        {
            start.SignalAndWait();
            outcomes[seller] = MoveAsync(place: -1, quantity: 1).GetAwaiter().GetResult();
        })).ToList();
        sellers.ForEach(seller => seller.Start());
        sellers.ForEach(seller => seller.Join());

        Assert.Single(outcomes.OfType<MoveOutcome.Moved>());
        Assert.Single(outcomes.OfType<MoveOutcome.NotThere>());
        Assert.Equal("0, 0, 0", await OnHandAsync());
    }

    [Fact]
    public async Task The_first_stock_makes_a_place_for_itself_even_beside_a_van_of_that_name()
    {
        await using var db = _shop.CreateDbContext();
        await db.ShelfPlaces.ExecuteDeleteAsync(Stop);
        db.ShelfPlaces.Add(ShelfPlace.Of(Guid.CreateVersion7(), _shop.ShopId, StockMoves.FirstPlaceCode, sells: false));
        await db.SaveChangesAsync(Stop);

        var placeId = await StockMoves.UsualPlaceAsync(db, _shop.ShopId, Stop);

        Assert.Equal(placeId, await StockMoves.UsualPlaceAsync(db, _shop.ShopId, Stop));
        Assert.True((await db.ShelfPlaces.SingleAsync(place => place.Id == placeId, Stop)).Sells);
    }

    /// <summary>Puts pieces down at a place, or takes them where the place is negative.</summary>
    private Task<MoveOutcome> MoveAsync(int place, int quantity)
    {
        var commandId = Guid.CreateVersion7();
        return _shop.Writes.RunAsync<MoveOutcome>(
            _shop.Fitter,
            commandId,
            "Move",
            async (db, stop) =>
            {
                var move = new StockMove(_shop.Fitter, commandId, _shop.Clock.GetUtcNow(), place < 0 ? LedgerReasons.Sold : LedgerReasons.Opening);
                if (place < 0)
                {
                    return await StockMoves.TakeAsync(db, move, _item.Id, quantity, stop) ? new MoveOutcome.Moved() : new MoveOutcome.NotThere();
                }

                await StockMoves.AddAsync(db, move, _item.Id, _places[place].Id, quantity, stop);
                return new MoveOutcome.Moved();
            },
            Stop);
    }

    private async Task<string> OnHandAsync()
    {
        await using var db = _shop.CreateDbContext();
        var levels = await db.StockLevels.ToDictionaryAsync(level => level.PlaceId, level => level.OnHand, Stop);
        return string.Join(", ", _places.Select(place => levels.GetValueOrDefault(place.Id)));
    }

    [JsonDerivedType(typeof(Moved), "moved")]
    [JsonDerivedType(typeof(NotThere), "not-there")]
    private abstract record MoveOutcome
    {
        public sealed record Moved : MoveOutcome;

        public sealed record NotThere : MoveOutcome, IRefusal;
    }
}
