using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Shelf;

/// <summary>One change of one stock level: what, where, why and by whom. Never edited.</summary>
public sealed class LedgerLine : IShopRow
{
    private LedgerLine()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public DateTimeOffset At { get; private set; }

    public Guid ItemId { get; private set; }

    public Guid PlaceId { get; private set; }

    /// <summary>Pieces that came (positive) or went (negative); never 0.</summary>
    public int Change { get; private set; }

    /// <summary>One of <see cref="LedgerReasons"/>.</summary>
    public string Reason { get; private set; } = "";

    /// <summary>The command that changed it.</summary>
    public Guid CommandId { get; private set; }

    /// <summary>Who; empty for the command line.</summary>
    public Guid PersonId { get; private set; }

    public string Tablet { get; private set; } = "";

    public Guid? SaleId { get; private set; }

    /// <exception cref="ArgumentOutOfRangeException"><paramref name="change"/> is 0.</exception>
    public static LedgerLine Of(Guid id, Actor actor, DateTimeOffset at, Guid itemId, Guid placeId, int change, string reason, Guid commandId, Guid? saleId = null)
    {
        ArgumentOutOfRangeException.ThrowIfZero(change);
        return new LedgerLine
        {
            Id = id,
            ShopId = actor.ShopId,
            At = at,
            ItemId = itemId,
            PlaceId = placeId,
            Change = change,
            Reason = reason,
            CommandId = commandId,
            PersonId = actor.PersonId,
            Tablet = actor.Tablet,
            SaleId = saleId,
        };
    }
}

internal sealed class LedgerLineConfiguration : IEntityTypeConfiguration<LedgerLine>
{
    public void Configure(EntityTypeBuilder<LedgerLine> builder)
    {
        builder.ToTable("LedgerLines", table => table.HasCheckConstraint("CK_LedgerLines_Change", "\"Change\" <> 0"));
        builder.Property(line => line.Reason).HasMaxLength(20);
        builder.Property(line => line.Tablet).HasMaxLength(60);
        builder.HasIndex(line => new { line.ShopId, line.ItemId, line.At });
        builder.HasIndex(line => new { line.ShopId, line.CommandId });
        builder.HasOne<Item>().WithMany().HasForeignKey(line => line.ItemId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<ShelfPlace>().WithMany().HasForeignKey(line => line.PlaceId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<Sales.Sale>().WithMany().HasForeignKey(line => line.SaleId).OnDelete(DeleteBehavior.Restrict);
    }
}
