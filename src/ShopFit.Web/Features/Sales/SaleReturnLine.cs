using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Sales;

/// <summary>Pieces of one line of a sale that came back. Amounts in minor units, not negative.</summary>
public sealed class SaleReturnLine : IShopRow
{
    private SaleReturnLine()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public Guid ReturnId { get; private set; }

    public Guid SaleLineId { get; private set; }

    public int Quantity { get; private set; }

    public long TotalMinor { get; private set; }

    public long TaxMinor { get; private set; }

    /// <exception cref="ArgumentOutOfRangeException">The quantity is below 1, or an amount is negative.</exception>
    public static SaleReturnLine Of(Guid id, Guid shopId, Guid returnId, Guid saleLineId, int quantity, LineAmount amount)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(quantity, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(amount.TotalMinor);
        ArgumentOutOfRangeException.ThrowIfNegative(amount.TaxMinor);
        return new SaleReturnLine { Id = id, ShopId = shopId, ReturnId = returnId, SaleLineId = saleLineId, Quantity = quantity, TotalMinor = amount.TotalMinor, TaxMinor = amount.TaxMinor };
    }
}

internal sealed class SaleReturnLineConfiguration : IEntityTypeConfiguration<SaleReturnLine>
{
    public void Configure(EntityTypeBuilder<SaleReturnLine> builder)
    {
        builder.ToTable("SaleReturnLines", table => table.HasCheckConstraint("CK_SaleReturnLines_Quantity", "\"Quantity\" > 0"));
        builder.HasIndex(line => new { line.ShopId, line.ReturnId });
        builder.HasIndex(line => new { line.ShopId, line.SaleLineId });
        builder.HasOne<SaleReturn>().WithMany().HasForeignKey(line => line.ReturnId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<SaleLine>().WithMany().HasForeignKey(line => line.SaleLineId).OnDelete(DeleteBehavior.Restrict);
    }
}
