using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.CommandLine;

/// <summary>The shop without the web, for a command that does one thing and ends.</summary>
internal sealed class CommandShop : IAsyncDisposable
{
    private readonly ServiceProvider _services;
    private readonly AsyncServiceScope _scope;

    private CommandShop(ServiceProvider services, AsyncServiceScope scope, Actor actor)
    {
        _services = services;
        _scope = scope;
        Actor = actor;
    }

    /// <summary>Whoever runs the command, for the one shop in the folder.</summary>
    public Actor Actor { get; }

    /// <summary>An action or a query.</summary>
    public T Get<T>()
        where T : notnull => _scope.ServiceProvider.GetRequiredService<T>();

    /// <summary>Opens the shop in a folder and brings its database up to date.</summary>
    public static async Task<CommandShop> OpenAsync(string? data, CancellationToken cancellationToken)
    {
        var services = new ServiceCollection().AddShop(ShopFolder.At(data, isDemo: false)).BuildServiceProvider();
        await services.GetRequiredService<ShopPreparation>().RunAsync(cancellationToken);
        await using var db = await services.GetRequiredService<IDbContextFactory<ShopDbContext>>().CreateDbContextAsync(cancellationToken);
        var shopId = await db.Shops.Select(shop => shop.Id).SingleAsync(cancellationToken);
        return new CommandShop(services, services.CreateAsyncScope(), Actor.CommandLine(shopId));
    }

    public async ValueTask DisposeAsync()
    {
        await _scope.DisposeAsync();
        await _services.DisposeAsync();
    }
}
