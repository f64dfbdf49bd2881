using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Shelf;
using ShopFit.Web.Support;

namespace ShopFit.Web.Data;

public sealed class ShopWritesTests : IAsyncLifetime
{
    private TestShop _shop = null!;
    private Item _item = null!;
    private ShelfPlace _place = null!;

    public async ValueTask InitializeAsync()
    {
        _shop = await TestShop.OpenAsync();
        _item = await _shop.HasAsync(Item.Of(Guid.CreateVersion7(), _shop.ShopId, "A-1", "A thing", ItemCategories.Pads));
        _place = await _shop.HasAsync(ShelfPlace.Of(Guid.CreateVersion7(), _shop.ShopId, "B3"));
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task The_same_command_again_gets_the_first_outcome_and_writes_nothing()
    {
        await HasOnHandAsync(5);
        var commandId = Guid.CreateVersion7();

        var first = await TakeAsync(commandId);
        var second = await TakeAsync(commandId);

        Assert.IsType<TakeOutcome.Taken>(first);
        Assert.Equal(first, second);
        Assert.Equal((4, 1), await CountsAsync());
    }

    [Fact]
    public async Task Two_tills_taking_the_last_piece_at_once_take_it_once()
    {
        await HasOnHandAsync(1);

        var outcomes = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => Task.Run(() => TakeAsync(Guid.CreateVersion7()))));

        Assert.Single(outcomes.OfType<TakeOutcome.Taken>());
        Assert.Equal(7, outcomes.OfType<TakeOutcome.Gone>().Count());
        Assert.Equal((0, 1), await CountsAsync());
    }

    [Fact]
    public async Task Two_programs_on_one_file_take_the_last_piece_once()
    {
        await HasOnHandAsync(1);
        using var elsewhere = new WriteLock();
        var otherProgram = new ShopWrites(_shop, elsewhere, _shop.Clock);

        var outcomes = await Task.WhenAll(
            Task.Run(() => TakeAsync(Guid.CreateVersion7())),
            Task.Run(() => TakeAsync(Guid.CreateVersion7(), otherProgram)));

        Assert.Single(outcomes.OfType<TakeOutcome.Taken>());
        Assert.Equal((0, 1), await CountsAsync());
    }

    [Fact]
    public async Task Failing_half_way_leaves_nothing_half_written()
    {
        await HasOnHandAsync(5);
        var commandId = Guid.CreateVersion7();

        await Assert.ThrowsAsync<InvalidTimeZoneException>(() => _shop.Writes.RunAsync<TakeOutcome>(
            _shop.Fitter,
            commandId,
            "Take",
            async (db, cancellationToken) =>
            {
                await TakeOneAsync(db, commandId, cancellationToken);
                await db.SaveChangesAsync(cancellationToken);
                throw new InvalidTimeZoneException("something unforeseen");
            },
            TestContext.Current.CancellationToken));

        Assert.Equal((5, 0), await CountsAsync());
        Assert.IsType<TakeOutcome.Taken>(await TakeAsync(commandId));
    }

    [Fact]
    public async Task A_refusal_leaves_no_trace_and_the_command_may_be_sent_again()
    {
        await HasOnHandAsync(0);
        var commandId = Guid.CreateVersion7();

        var refused = await _shop.Writes.RunAsync<TakeOutcome>(
            _shop.Fitter,
            commandId,
            "Take",
            async (db, cancellationToken) =>
            {
                db.LedgerLines.Add(Line(commandId));
                await db.SaveChangesAsync(cancellationToken);
                return new TakeOutcome.Gone();
            },
            TestContext.Current.CancellationToken);

        Assert.IsType<TakeOutcome.Gone>(refused);
        Assert.Equal((0, 0), await CountsAsync());
        await using var db = _shop.CreateDbContext();
        Assert.False(await db.Commands.AnyAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_command_keeps_who_gave_it_where_and_when()
    {
        await HasOnHandAsync(1);
        var commandId = Guid.CreateVersion7();

        await TakeAsync(commandId);

        await using var db = _shop.CreateDbContext();
        var command = await db.Commands.SingleAsync(TestContext.Current.CancellationToken);
        Assert.Equal(
            (commandId, _shop.Fitter.PersonId, "tablet 1", "Take", _shop.Clock.GetUtcNow()),
            (command.Id, command.PersonId, command.Tablet, command.Action, command.DoneAt));
    }

    [Fact]
    public async Task A_key_that_was_used_for_something_else_is_refused()
    {
        await HasOnHandAsync(1);
        var commandId = Guid.CreateVersion7();
        await TakeAsync(commandId);

        await Assert.ThrowsAsync<InvalidOperationException>(() => _shop.Writes.RunAsync<TakeOutcome>(
            _shop.Fitter, commandId, "Something else", (_, _) => Task.FromResult<TakeOutcome>(new TakeOutcome.Gone()), TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task Only_a_manager_may_do_what_is_for_managers()
    {
        Task<TakeOutcome> RunAsync(Actor actor) => _shop.Writes.RunAsManagerAsync<TakeOutcome>(
            actor, Guid.CreateVersion7(), "Take", (_, _) => Task.FromResult<TakeOutcome>(new TakeOutcome.Taken(Guid.Empty)), TestContext.Current.CancellationToken);

        await Assert.ThrowsAsync<NotPermittedException>(() => RunAsync(_shop.Fitter));
        Assert.IsType<TakeOutcome.Taken>(await RunAsync(_shop.Manager));
    }

    private Task<StockLevel> HasOnHandAsync(int onHand) =>
        _shop.HasAsync(StockLevel.Of(Guid.CreateVersion7(), _shop.ShopId, _item.Id, _place.Id, onHand));

    private Task<TakeOutcome> TakeAsync(Guid commandId, ShopWrites? writes = null) => (writes ?? _shop.Writes).RunAsync<TakeOutcome>(
        _shop.Fitter,
        commandId,
        "Take",
        async (db, cancellationToken) => await TakeOneAsync(db, commandId, cancellationToken),
        TestContext.Current.CancellationToken);

    private async Task<TakeOutcome> TakeOneAsync(ShopDbContext db, Guid commandId, CancellationToken cancellationToken)
    {
        var taken = await db.StockLevels
            .Where(level => level.ItemId == _item.Id && level.OnHand > level.Reserved)
            .ExecuteUpdateAsync(set => set.SetProperty(level => level.OnHand, level => level.OnHand - 1), cancellationToken);
        if (taken == 0)
        {
            return new TakeOutcome.Gone();
        }

        var line = Line(commandId);
        db.LedgerLines.Add(line);
        return new TakeOutcome.Taken(line.Id);
    }

    private LedgerLine Line(Guid commandId) => LedgerLine.Of(
        Guid.CreateVersion7(), _shop.Fitter, _shop.Clock.GetUtcNow(), _item.Id, _place.Id, -1, LedgerReasons.Sold, commandId);

    private async Task<(int OnHand, int Lines)> CountsAsync()
    {
        await using var db = _shop.CreateDbContext();
        return (
            await db.StockLevels.SumAsync(level => level.OnHand, TestContext.Current.CancellationToken),
            await db.LedgerLines.CountAsync(TestContext.Current.CancellationToken));
    }

    [JsonDerivedType(typeof(Taken), "taken")]
    [JsonDerivedType(typeof(Gone), "gone")]
    private abstract record TakeOutcome
    {
        public sealed record Taken(Guid LineId) : TakeOutcome;

        public sealed record Gone : TakeOutcome, IRefusal;
    }
}
