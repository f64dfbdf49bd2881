using System.Security.Claims;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Support;

/// <summary>An empty shop in a real, migrated database file of its own that disappears with the test.</summary>
public sealed class TestShop : IAsyncDisposable, IDbContextFactory<ShopDbContext>
{
    private static readonly Lazy<Task<string>> Template = new(MakeTemplateAsync);

    private readonly DbContextOptions<ShopDbContext> _options;

    private TestShop(ShopFolder folder, Guid shopId)
    {
        Folder = folder;
        ShopId = shopId;
        _options = ShopDatabase.Options<ShopDbContext>(folder.DatabaseFile);
        Fitter = new Actor(Guid.CreateVersion7(), shopId, "Orla", IsManager: false, "tablet 1");
        Manager = new Actor(Guid.CreateVersion7(), shopId, "Ines", IsManager: true, "tablet 2");
        Writes = new ShopWrites(this, WriteLock, Clock);
    }

    public ShopFolder Folder { get; }

    public Guid ShopId { get; }

    public Actor Fitter { get; }

    public Actor Manager { get; }

    public FakeTimeProvider Clock { get; } = new(new DateTimeOffset(2026, 3, 14, 15, 9, 0, TimeSpan.Zero));

    public WriteLock WriteLock { get; } = new();

    public ShopWrites Writes { get; }

    /// <summary>What the fitter reads through.</summary>
    public ShopContexts Reads => ReadsOf(Fitter);

    public static async Task<TestShop> OpenAsync()
    {
        var folder = new ShopFolder(Directory.CreateTempSubdirectory("shopfit-test-").FullName);
        File.Copy(await Template.Value, folder.DatabaseFile);
        await using var db = new ShopDbContext(ShopDatabase.Options<ShopDbContext>(folder.DatabaseFile));
        return new TestShop(folder, await db.Shops.Select(shop => shop.Id).SingleAsync());
    }

    /// <summary>A fresh context that sees this shop.</summary>
    public ShopDbContext CreateDbContext() => new(_options) { ShopId = ShopId };

    /// <summary>What somebody reads through.</summary>
    public ShopContexts ReadsOf(Actor actor) => new(this, new CurrentActor(new SignedIn(actor)));

    /// <summary>Puts a row into the shop.</summary>
    public async Task<TEntity> HasAsync<TEntity>(TEntity entity)
        where TEntity : class
    {
        await using var db = CreateDbContext();
        db.Add(entity);
        await db.SaveChangesAsync();
        return entity;
    }

    /// <summary>Registers this shop, with somebody signed in, where the site registers the real one.</summary>
    public IServiceCollection AddTo(IServiceCollection services, Actor? signedIn = null) => services
        .AddSingleton<TimeProvider>(Clock)
        .AddSingleton<IDbContextFactory<ShopDbContext>>(this)
        .AddSingleton(WriteLock)
        .AddSingleton(Writes)
        .AddScoped<AuthenticationStateProvider>(_ => new SignedIn(signedIn ?? Fitter))
        .AddScoped<CurrentActor>()
        .AddScoped<ShopContexts>();

    public ValueTask DisposeAsync()
    {
        using (var connection = new SqliteConnection(CreateDbContext().Database.GetConnectionString()))
        {
            SqliteConnection.ClearPool(connection);
        }

        WriteLock.Dispose();
        Directory.Delete(Folder.Path, recursive: true);
        return ValueTask.CompletedTask;
    }

    private static async Task<string> MakeTemplateAsync()
    {
        var folder = new ShopFolder(Directory.CreateTempSubdirectory("shopfit-template-").FullName);
        var file = folder.DatabaseFile;
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(folder.Path, recursive: true);
        await new ShopPreparation(folder, TimeProvider.System).RunAsync(CancellationToken.None);

        // A copy of the file alone is whole only when nothing is left in the log beside it.
        await using var connection = new SqliteConnection($"Data Source={file};Pooling=False");
        await connection.OpenAsync();
        await using var command = connection.CreateCommand();
        command.CommandText = "PRAGMA wal_checkpoint(TRUNCATE);";
        await command.ExecuteNonQueryAsync();
        return file;
    }

    private sealed class SignedIn(Actor actor) : AuthenticationStateProvider
    {
        public override Task<AuthenticationState> GetAuthenticationStateAsync() =>
            Task.FromResult(new AuthenticationState(ShopClaims.PrincipalOf(actor, "test")));
    }
}
