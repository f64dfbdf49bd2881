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

    public DateTimeOffset? VoidedAt { get; private set; }

    /// <exception cref="ArgumentOutOfRangeException">An amount is negative.</exception>
    public static Sale Of(Guid id, Actor actor, Guid? fittingId, Guid? dancerId, DateTimeOffset soldAt, string currency, long totalMinor, long taxMinor)
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
        };
    }

    /// <summary>Takes it back as a whole; the row stays.</summary>
    public void Void(DateTimeOffset at) => VoidedAt ??= at;
}

internal sealed class SaleConfiguration : IEntityTypeConfiguration<Sale>
{
    public void Configure(EntityTypeBuilder<Sale> builder)
    {
        builder.ToTable("Sales", table => table.HasCheckConstraint("CK_Sales_Amounts", "\"TotalMinor\" >= 0 AND \"TaxMinor\" BETWEEN 0 AND \"TotalMinor\""));
        builder.Property(sale => sale.Tablet).HasMaxLength(60);
        builder.Property(sale => sale.Currency).HasMaxLength(3);
        builder.HasIndex(sale => new { sale.ShopId, sale.SoldAt });
        // A fitting is sold once, even if a rule in the code were wrong.
        builder.HasIndex(sale => new { sale.ShopId, sale.FittingId }).IsUnique().HasFilter("\"VoidedAt\" IS NULL");
        builder.HasOne<FittingRecord>().WithMany().HasForeignKey(sale => sale.FittingId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<Dancer>().WithMany().HasForeignKey(sale => sale.DancerId).OnDelete(DeleteBehavior.SetNull);
    }
}
