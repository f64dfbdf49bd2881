using System.Data;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Data;

/// <summary>The one way in which anything in the shop is changed: once for each command, all of it or nothing.</summary>
/// <remarks>
/// What several actions share takes the open context and is called from inside; an action never runs another action,
/// since the second would wait for the first for ever. Outcomes are records; an abstract one names its kinds with
/// <see cref="System.Text.Json.Serialization.JsonDerivedTypeAttribute"/>.
/// </remarks>
public sealed class ShopWrites(IDbContextFactory<ShopDbContext> contexts, WriteLock writeLock, TimeProvider clock)
{
    /// <summary>Runs a piece of work that every fitter may do.</summary>
    /// <param name="actor">Who acts.</param>
    /// <param name="commandId">Key of the command, made where the button is. The same key gets the first outcome again and changes nothing.</param>
    /// <param name="action">Name of the action, for the record.</param>
    /// <param name="work">What is to be done; it may leave unsaved changes, which are saved with the outcome. It must be safe to run again from the start.</param>
    /// <param name="cancellationToken">Gives up before anything is written; once the work is done it is kept.</param>
    /// <exception cref="NotPermittedException">The actor has no shop.</exception>
    /// <exception cref="InvalidOperationException">The key was used for another command.</exception>
    public async Task<TOutcome> RunAsync<TOutcome>(
        Actor actor,
        Guid commandId,
        string action,
        Func<ShopDbContext, CancellationToken, Task<TOutcome>> work,
        CancellationToken cancellationToken)
        where TOutcome : class
    {
        if (actor.ShopId == Guid.Empty)
        {
            throw new NotPermittedException($"{action} needs a shop.");
        }

        using var turn = await writeLock.EnterAsync(cancellationToken);
        await using var db = await contexts.CreateDbContextAsync(cancellationToken);
        db.ShopId = actor.ShopId;
        await using var transaction = await db.Database.BeginTransactionAsync(IsolationLevel.Serializable, cancellationToken);

        if (await db.Commands.AsNoTracking().SingleOrDefaultAsync(command => command.Id == commandId, cancellationToken) is { } known)
        {
            return FirstOutcomeOf<TOutcome>(known, actor, action);
        }

        var outcome = await work(db, cancellationToken);
        if (outcome is IRefusal)
        {
            await transaction.RollbackAsync(CancellationToken.None);
            return outcome;
        }

        db.Commands.Add(CommandRecord.Of(commandId, actor, action, JsonSerializer.Serialize(outcome, JsonSerializerOptions.Web), clock.GetUtcNow()));
        await db.SaveChangesAsync(CancellationToken.None);
        await transaction.CommitAsync(CancellationToken.None);
        return outcome;
    }

    /// <summary>Runs a piece of work that only managers may do.</summary>
    /// <inheritdoc cref="RunAsync{TOutcome}"/>
    public Task<TOutcome> RunAsManagerAsync<TOutcome>(
        Actor actor,
        Guid commandId,
        string action,
        Func<ShopDbContext, CancellationToken, Task<TOutcome>> work,
        CancellationToken cancellationToken)
        where TOutcome : class =>
        actor.IsManager
            ? RunAsync(actor, commandId, action, work, cancellationToken)
            : throw new NotPermittedException($"{action} is for managers.");

    private static TOutcome FirstOutcomeOf<TOutcome>(CommandRecord known, Actor actor, string action)
        where TOutcome : class =>
        known.Action == action && known.PersonId == actor.PersonId
            ? JsonSerializer.Deserialize<TOutcome>(known.OutcomeJson, JsonSerializerOptions.Web)!
            : throw new InvalidOperationException($"Command {known.Id} was already used for {known.Action}.");
}
