using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;

namespace ShopFit.Web.Features.Shelf;

/// <summary>How many pieces of an item stand at a place. Always the sum of its ledger lines.</summary>
/// <remarks>Changed only together with a ledger line, by a guarded update in the database.</remarks>
public sealed class StockLevel : IShopRow
{
    private StockLevel()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public Guid ItemId { get; private set; }

    public Guid PlaceId { get; private set; }

    public int OnHand { get; private set; }

    /// <summary>Of those, how many are put aside for somebody.</summary>
    public int Reserved { get; private set; }

    /// <exception cref="ArgumentOutOfRangeException"><paramref name="onHand"/> is negative.</exception>
    public static StockLevel Of(Guid id, Guid shopId, Guid itemId, Guid placeId, int onHand)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(onHand);
        return new StockLevel { Id = id, ShopId = shopId, ItemId = itemId, PlaceId = placeId, OnHand = onHand };
    }
}

internal sealed class StockLevelConfiguration : IEntityTypeConfiguration<StockLevel>
{
    public void Configure(EntityTypeBuilder<StockLevel> builder)
    {
        builder.ToTable("StockLevels", table =>
        {
            table.HasCheckConstraint("CK_StockLevels_OnHand", "\"OnHand\" >= 0");
            table.HasCheckConstraint("CK_StockLevels_Reserved", "\"Reserved\" BETWEEN 0 AND \"OnHand\"");
        });
        builder.HasIndex(level => new { level.ShopId, level.ItemId, level.PlaceId }).IsUnique();
        builder.HasOne<Item>().WithMany().HasForeignKey(level => level.ItemId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<ShelfPlace>().WithMany().HasForeignKey(level => level.PlaceId).OnDelete(DeleteBehavior.Restrict);
    }
}
