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

    private bool IsMarked => File.Exists(folder.DemoMark);

    /// <summary>Opens it, filled; false, and nothing is changed, where the folder holds a real shop.</summary>
    public async Task<bool> OpenAsync(CancellationToken cancellationToken)
    {
        try
        {
            await preparation.RunAsync(cancellationToken);
        }
        catch (SqliteException exception) when (IsMarked && CannotBeOpened.Contains(exception.SqliteErrorCode))
        {
            SqliteConnection.ClearAllPools();
            foreach (var file in FileEndings.Select(ending => folder.DatabaseFile + ending))
            {
                File.Delete(file);
            }

            await preparation.RunAsync(cancellationToken);
        }

        await using var scope = scopes.CreateAsyncScope();
        if (!IsMarked && await IsInUseAsync(scope.ServiceProvider, cancellationToken))
        {
            return false;
        }

        await File.WriteAllTextAsync(folder.DemoMark, "What this folder holds was invented. It is made afresh when it cannot be opened.\n", cancellationToken);
        await FillAsync(scope.ServiceProvider, cancellationToken);
        return true;
    }

    // A shop in which nobody works and nothing is on file may become the demo; it may have keys of the API already.
    private static async Task<bool> IsInUseAsync(IServiceProvider services, CancellationToken cancellationToken)
    {
        await using var db = await services.GetRequiredService<IDbContextFactory<ShopDbContext>>().CreateDbContextAsync(cancellationToken);
        return await db.Users.AnyAsync(cancellationToken)
            || await db.Items.IgnoreQueryFilters().AnyAsync(cancellationToken)
            || await db.Dancers.IgnoreQueryFilters().AnyAsync(cancellationToken);
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
