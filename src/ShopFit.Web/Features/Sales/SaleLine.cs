using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;

namespace ShopFit.Web.Features.Sales;

/// <summary>One line of a sale. Amounts in minor units.</summary>
public sealed class SaleLine : IShopRow
{
    private SaleLine()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public Guid SaleId { get; private set; }

    public Guid ItemId { get; private set; }

    /// <summary>What stood on the receipt.</summary>
    public string Text { get; private set; } = "";

    public int Quantity { get; private set; }

    public long UnitPriceMinor { get; private set; }

    public long DiscountMinor { get; private set; }

    public int TaxRateBasisPoints { get; private set; }

    public long TaxMinor { get; private set; }

    /// <summary>Paid for the line, tax included.</summary>
    public long TotalMinor { get; private set; }

    /// <summary>How many of it came back, 0 up to the quantity; changed by a guarded update only.</summary>
    public int ReturnedQuantity { get; private set; }

    /// <exception cref="ArgumentOutOfRangeException">The quantity is below 1, or an amount is negative.</exception>
    public static SaleLine Of(Guid id, Guid shopId, Guid saleId, Guid itemId, string text, int quantity, long unitPriceMinor, long discountMinor, int taxRateBasisPoints, long taxMinor, long totalMinor)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(quantity, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(unitPriceMinor);
        ArgumentOutOfRangeException.ThrowIfNegative(discountMinor);
        ArgumentOutOfRangeException.ThrowIfNegative(taxMinor);
        ArgumentOutOfRangeException.ThrowIfNegative(totalMinor);
        return new SaleLine
        {
            Id = id,
            ShopId = shopId,
            SaleId = saleId,
            ItemId = itemId,
            Text = text,
            Quantity = quantity,
            UnitPriceMinor = unitPriceMinor,
            DiscountMinor = discountMinor,
            TaxRateBasisPoints = taxRateBasisPoints,
            TaxMinor = taxMinor,
            TotalMinor = totalMinor,
        };
    }
}

internal sealed class SaleLineConfiguration : IEntityTypeConfiguration<SaleLine>
{
    public void Configure(EntityTypeBuilder<SaleLine> builder)
    {
        builder.ToTable("SaleLines", table =>
        {
            table.HasCheckConstraint("CK_SaleLines_Quantity", "\"Quantity\" > 0");
            table.HasCheckConstraint("CK_SaleLines_Returned", "\"ReturnedQuantity\" BETWEEN 0 AND \"Quantity\"");
            table.HasCheckConstraint("CK_SaleLines_Amounts", "\"UnitPriceMinor\" >= 0 AND \"DiscountMinor\" >= 0 AND \"TaxMinor\" >= 0 AND \"TotalMinor\" >= 0");
        });
        builder.Property(line => line.Text).HasMaxLength(300);
        builder.HasIndex(line => new { line.ShopId, line.SaleId });
        builder.HasOne<Sale>().WithMany().HasForeignKey(line => line.SaleId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<Item>().WithMany().HasForeignKey(line => line.ItemId).OnDelete(DeleteBehavior.Restrict);
    }
}
