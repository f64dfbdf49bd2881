using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>A price that somebody set by hand, and what it was before. Withdrawn, never edited.</summary>
public sealed class PriceChange : IShopRow
{
    private PriceChange()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public Guid ItemId { get; private set; }

    /// <summary>The command that set it, the same for all sizes that were set at once.</summary>
    public Guid CommandId { get; private set; }

    /// <summary>Minor units before; null where there was no price.</summary>
    public long? FromMinor { get; private set; }

    /// <summary>Minor units from then on.</summary>
    public long ToMinor { get; private set; }

    public DateTimeOffset ChangedAt { get; private set; }

    public Guid PersonId { get; private set; }

    public string Tablet { get; private set; } = "";

    public DateTimeOffset? WithdrawnAt { get; private set; }

    public static PriceChange Of(Guid id, Actor actor, Guid commandId, Guid itemId, long? fromMinor, long toMinor, DateTimeOffset changedAt) => new()
    {
        Id = id,
        ShopId = actor.ShopId,
        ItemId = itemId,
        CommandId = commandId,
        FromMinor = fromMinor,
        ToMinor = toMinor,
        ChangedAt = changedAt,
        PersonId = actor.PersonId,
        Tablet = actor.Tablet,
    };

    /// <summary>Takes it back; the row stays.</summary>
    public void Withdraw(DateTimeOffset at) => WithdrawnAt ??= at;
}

internal sealed class PriceChangeConfiguration : IEntityTypeConfiguration<PriceChange>
{
    public void Configure(EntityTypeBuilder<PriceChange> builder)
    {
        builder.Property(change => change.Tablet).HasMaxLength(100);
        builder.HasIndex(change => new { change.ShopId, change.ItemId });
        builder.HasIndex(change => new { change.ShopId, change.CommandId });
        builder.HasOne<Item>().WithMany().HasForeignKey(change => change.ItemId).OnDelete(DeleteBehavior.Restrict);
    }
}
