using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Fittings;

/// <summary>One walk to the shelf, and the pairs that were fetched. Withdrawn, never edited.</summary>
public sealed class FittingWalk : IShopRow
{
    /// <summary>What two hands carry in one walk, pairs.</summary>
    public const int MostPairs = 3;

    private FittingWalk()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public Guid FittingId { get; private set; }

    public DateTimeOffset WalkedAt { get; private set; }

    public Guid PersonId { get; private set; }

    public string Tablet { get; private set; } = "";

    /// <summary>Keys of the sizes that were fetched, in the order of the list, as JSON.</summary>
    public string SizeIdsJson { get; private set; } = "[]";

    public DateTimeOffset? WithdrawnAt { get; private set; }

    public static FittingWalk Of(Guid id, Actor actor, Guid fittingId, DateTimeOffset walkedAt, IReadOnlyList<Guid> sizeIds)
    {
        ArgumentOutOfRangeException.ThrowIfZero(sizeIds.Count, nameof(sizeIds));
        return new FittingWalk
        {
            Id = id,
            ShopId = actor.ShopId,
            FittingId = fittingId,
            WalkedAt = walkedAt,
            PersonId = actor.PersonId,
            Tablet = actor.Tablet,
            SizeIdsJson = JsonSerializer.Serialize(sizeIds),
        };
    }

    /// <summary>The sizes that were fetched.</summary>
    public IReadOnlyList<Guid> SizeIds() => JsonSerializer.Deserialize<List<Guid>>(SizeIdsJson) ?? [];

    /// <summary>Takes it back; the row stays.</summary>
    public void Withdraw(DateTimeOffset at) => WithdrawnAt ??= at;

    /// <summary>Lets it count again, as if it had never been taken back.</summary>
    public void Restore() => WithdrawnAt = null;
}

internal sealed class FittingWalkConfiguration : IEntityTypeConfiguration<FittingWalk>
{
    public void Configure(EntityTypeBuilder<FittingWalk> builder)
    {
        builder.Property(walk => walk.Tablet).HasMaxLength(60);
        builder.Property(walk => walk.SizeIdsJson).HasMaxLength(200);
        builder.HasIndex(walk => new { walk.ShopId, walk.FittingId, walk.WalkedAt });
        builder.HasOne<FittingRecord>().WithMany().HasForeignKey(walk => walk.FittingId).OnDelete(DeleteBehavior.Restrict);
    }
}
