using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Demo;

/// <summary>Makes the demo shop where there is none. One that is there is kept, unless it cannot be opened any more.</summary>
internal sealed class DemoShop(ShopFolder folder, ShopPreparation preparation, IServiceScopeFactory scopes)
{
    // Result codes of SQLite, https://www.sqlite.org/rescode.html: damaged, no database, and a statement that does not
    // suit what is in it, as when another version of the program made it.
    private static readonly int[] CannotBeOpened = [11, 26, 1];

    private static readonly string[] FileEndings = ["", "-wal", "-shm"];

    // Key of the command that makes the people, the same at every start.
    private static readonly Guid MakePeople = new("019abf00-0000-7000-8000-000000000001");

    /// <summary>Opens it, with its people at least.</summary>
    public async Task OpenAsync(CancellationToken cancellationToken)
    {
        try
        {
            await preparation.RunAsync(cancellationToken);
        }
        catch (SqliteException exception) when (CannotBeOpened.Contains(exception.SqliteErrorCode))
        {
            SqliteConnection.ClearAllPools();
            foreach (var file in FileEndings.Select(ending => folder.DatabaseFile + ending))
            {
                File.Delete(file);
            }

            await preparation.RunAsync(cancellationToken);
        }

        await using var scope = scopes.CreateAsyncScope();
        await FillAsync(scope.ServiceProvider, cancellationToken);
    }

    private static async Task FillAsync(IServiceProvider services, CancellationToken cancellationToken)
    {
        await using var db = await services.GetRequiredService<IDbContextFactory<ShopDbContext>>().CreateDbContextAsync(cancellationToken);
        var actor = Actor.CommandLine(await db.Shops.Select(shop => shop.Id).SingleAsync(cancellationToken));
        await MakePeopleAsync(services.GetRequiredService<ShopWrites>(), services.GetRequiredService<NewPerson>(), actor, cancellationToken);
        await services.GetRequiredService<LoadDemo>().RunAsync(actor.ShopId, cancellationToken);
    }

    private static Task<PeopleMade> MakePeopleAsync(ShopWrites writes, NewPerson newPerson, Actor actor, CancellationToken cancellationToken) => writes.RunAsManagerAsync(
        actor,
        MakePeople,
        nameof(MakePeopleAsync),
        async (db, innerCancellationToken) =>
        {
            foreach (var person in new[] { DemoPeople.Fitter, DemoPeople.Manager })
            {
                await newPerson.ApplyAsync(db, Guid.CreateVersion7(), person.UserName, person.DisplayName, person.Password, person.Role, innerCancellationToken);
            }

            return new PeopleMade();
        },
        cancellationToken);

    private sealed record PeopleMade;
}
