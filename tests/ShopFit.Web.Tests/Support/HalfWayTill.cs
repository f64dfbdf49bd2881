using System.Diagnostics;
using System.Runtime.CompilerServices;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Shelf;

namespace ShopFit.Web.Support;

/// <summary>This test program, started once more as a till that takes one piece, begins to take another and never ends, so that it can be killed for real.</summary>
public static class HalfWayTill
{
    public const string Acknowledged = "acknowledged";
    public const string HalfWay = "half-way";

    private const string Orders = "SHOPFIT_TEST_HALF_WAY_TILL";

    /// <summary>Starts it.</summary>
    public static Process Start(ShopFolder folder, Guid shopId, Guid itemId, Guid placeId)
    {
        var start = new ProcessStartInfo("dotnet", [typeof(HalfWayTill).Assembly.Location]) { RedirectStandardOutput = true, UseShellExecute = false };
        start.Environment[Orders] = $"{folder.Path}|{shopId}|{itemId}|{placeId}";
        return Process.Start(start)!;
    }

    // Runs before the test runner does, and only with orders keeps it from running at all.
    [ModuleInitializer]
    internal static void BeTheTillIfOrdered()
    {
        if (Environment.GetEnvironmentVariable(Orders)?.Split('|') is [var path, var shopId, var itemId, var placeId])
        {
            TakeTwiceAsync(new ShopFolder(path), Guid.Parse(shopId), Guid.Parse(itemId), Guid.Parse(placeId)).GetAwaiter().GetResult();
        }
    }

    private static async Task TakeTwiceAsync(ShopFolder folder, Guid shopId, Guid itemId, Guid placeId)
    {
        using var writeLock = new WriteLock();
        var writes = new ShopWrites(new Factory(folder), writeLock, TimeProvider.System);
        var actor = new Actor(Guid.CreateVersion7(), shopId, "Orla", IsManager: false, "tablet 1");

        await TakeAsync(() => Task.CompletedTask);
        Console.WriteLine(Acknowledged);
        await TakeAsync(() =>
        {
            Console.WriteLine(HalfWay);
            return Task.Delay(Timeout.InfiniteTimeSpan);
        });

        Task<Taken> TakeAsync(Func<Task> beforeTheEnd)
        {
            var commandId = Guid.CreateVersion7();
            return writes.RunAsync(
                actor,
                commandId,
                "Take",
                async (db, cancellationToken) =>
                {
                    await db.StockLevels.ExecuteUpdateAsync(set => set.SetProperty(level => level.OnHand, level => level.OnHand - 1), cancellationToken);
                    db.LedgerLines.Add(LedgerLine.Of(Guid.CreateVersion7(), actor, TimeProvider.System.GetUtcNow(), itemId, placeId, -1, LedgerReasons.Sold, commandId));
                    await db.SaveChangesAsync(cancellationToken);
                    await beforeTheEnd();
                    return new Taken();
                },
                CancellationToken.None);
        }
    }

    private sealed record Taken;

    private sealed class Factory(ShopFolder folder) : IDbContextFactory<ShopDbContext>
    {
        public ShopDbContext CreateDbContext() => new(ShopDatabase.Options<ShopDbContext>(folder.DatabaseFile));
    }
}
