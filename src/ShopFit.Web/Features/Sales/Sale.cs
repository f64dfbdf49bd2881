using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Features.Fittings;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Sales;

/// <summary>What was sold at once. The amounts are those of the day, whatever prices say later.</summary>
public sealed class Sale : IShopRow
{
    private Sale()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public Guid? FittingId { get; private set; }

    public Guid? DancerId { get; private set; }

    public DateTimeOffset SoldAt { get; private set; }

    public Guid PersonId { get; private set; }

    public string Tablet { get; private set; } = "";

    /// <summary>ISO 4217 code.</summary>
    public string Currency { get; private set; } = "";

    /// <summary>What was paid, tax included, in minor units.</summary>
    public long TotalMinor { get; private set; }

    /// <summary>The tax in it, in minor units.</summary>
    public long TaxMinor { get; private set; }

    /// <summary>The voucher that was used; null where none was.</summary>
    public Guid? VoucherId { get; private set; }

    /// <summary>When it was taken back as a whole; null while it stands.</summary>
    public DateTimeOffset? VoidedAt { get; private set; }

    /// <summary>Who took it back.</summary>
    public Guid? VoidedBy { get; private set; }

    /// <summary>Why it was taken back; empty while it stands.</summary>
    public string VoidReason { get; private set; } = "";

    /// <exception cref="ArgumentOutOfRangeException">An amount is negative.</exception>
    public static Sale Of(Guid id, Actor actor, Guid? fittingId, Guid? dancerId, DateTimeOffset soldAt, string currency, long totalMinor, long taxMinor, Guid? voucherId = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(currency);
        ArgumentOutOfRangeException.ThrowIfNegative(totalMinor);
        ArgumentOutOfRangeException.ThrowIfNegative(taxMinor);
        return new Sale
        {
            Id = id,
            ShopId = actor.ShopId,
            FittingId = fittingId,
            DancerId = dancerId,
            SoldAt = soldAt,
            PersonId = actor.PersonId,
            Tablet = actor.Tablet,
            Currency = currency,
            TotalMinor = totalMinor,
            TaxMinor = taxMinor,
            VoucherId = voucherId,
        };
    }

    /// <summary>Takes it back as a whole; the row stays.</summary>
    /// <exception cref="InvalidOperationException">It was taken back before.</exception>
    public void Void(DateTimeOffset at, Guid by, string reason)
    {
        if (VoidedAt is not null)
        {
            throw new InvalidOperationException("This sale was taken back before.");
        }

        (VoidedAt, VoidedBy, VoidReason) = (at, by, reason.Trim());
    }

    /// <summary>Lets it stand again, because taking it back was a slip.</summary>
    public void Restore() => (VoidedAt, VoidedBy, VoidReason) = (null, null, "");
}

internal sealed class SaleConfiguration : IEntityTypeConfiguration<Sale>
{
    public void Configure(EntityTypeBuilder<Sale> builder)
    {
        builder.ToTable("Sales", table => table.HasCheckConstraint("CK_Sales_Amounts", "\"TotalMinor\" >= 0 AND \"TaxMinor\" BETWEEN 0 AND \"TotalMinor\""));
        builder.Property(sale => sale.Tablet).HasMaxLength(60);
        builder.Property(sale => sale.Currency).HasMaxLength(3);
        builder.Property(sale => sale.VoidReason).HasMaxLength(VoidSale.LongestReason);
        builder.HasIndex(sale => new { sale.ShopId, sale.SoldAt });
        // A fitting is sold once, even if a rule in the code were wrong.
        builder.HasIndex(sale => new { sale.ShopId, sale.FittingId }).IsUnique().HasFilter("\"VoidedAt\" IS NULL");
        builder.HasOne<FittingRecord>().WithMany().HasForeignKey(sale => sale.FittingId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<Voucher>().WithMany().HasForeignKey(sale => sale.VoucherId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<Dancer>().WithMany().HasForeignKey(sale => sale.DancerId).OnDelete(DeleteBehavior.SetNull);
    }
}
