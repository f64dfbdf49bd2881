using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.People;

/// <summary>What happens when somebody sets the shop up: they become its first manager, if nobody was quicker.</summary>
public sealed class MakeFirstManager(IDbContextFactory<ShopDbContext> contexts, ShopWrites writes, NewPerson newPerson)
{
    /// <summary>Makes the first manager while there is nobody at all.</summary>
    public async Task<FirstManagerOutcome> RunAsync(Guid commandId, string userName, string displayName, string password, CancellationToken cancellationToken)
    {
        if (password.Length < NewPerson.ShortestPassword)
        {
            return new FirstManagerOutcome.PasswordTooShort();
        }

        Guid shopId;
        await using (var db = await contexts.CreateDbContextAsync(cancellationToken))
        {
            shopId = await db.Shops.Select(shop => shop.Id).SingleAsync(cancellationToken);
        }

        // The command's key serves as the person's: a second press of the button means the same person.
        var actor = new Actor(commandId, shopId, displayName, IsManager: true, Tablet: "");
        return await writes.RunAsync<FirstManagerOutcome>(
            actor,
            commandId,
            nameof(MakeFirstManager),
            async (db, innerCancellationToken) =>
            {
                if (await db.Users.AnyAsync(innerCancellationToken))
                {
                    return new FirstManagerOutcome.SomebodyIsHere();
                }

                await newPerson.ApplyAsync(db, commandId, userName, displayName, password, Roles.Manager, innerCancellationToken);
                return new FirstManagerOutcome.Made(commandId);
            },
            cancellationToken);
    }
}

/// <summary>How setting up ended.</summary>
[JsonDerivedType(typeof(Made), "made")]
[JsonDerivedType(typeof(SomebodyIsHere), "somebody-is-here")]
[JsonDerivedType(typeof(PasswordTooShort), "password-too-short")]
public abstract record FirstManagerOutcome
{
    private FirstManagerOutcome()
    {
    }

    public sealed record Made(Guid PersonId) : FirstManagerOutcome;

    public sealed record SomebodyIsHere : FirstManagerOutcome, IRefusal;

    public sealed record PasswordTooShort : FirstManagerOutcome, IRefusal;
}
