using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Papers;

namespace ShopFit.Web.Features.Sales;

/// <summary>A receipt with its number: of a sale, of a void or of a return. Numbers run without a gap in each year of a shop.</summary>
public sealed class SaleReceipt : IShopRow
{
    private SaleReceipt()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public Guid SaleId { get; private set; }

    /// <summary>One of <see cref="ReceiptKinds"/>.</summary>
    public string Kind { get; private set; } = "";

    /// <summary>The year of the shop's business day.</summary>
    public int Year { get; private set; }

    /// <summary>From 1.</summary>
    public int Number { get; private set; }

    public DateTimeOffset MadeAt { get; private set; }

    /// <summary>The paper that is drawn from its facts.</summary>
    public Guid PaperId { get; private set; }

    /// <exception cref="ArgumentOutOfRangeException"><paramref name="number"/> is below 1.</exception>
    public static SaleReceipt Of(Guid id, Guid shopId, Guid saleId, string kind, int year, int number, DateTimeOffset madeAt, Guid paperId)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(kind);
        ArgumentOutOfRangeException.ThrowIfLessThan(number, 1);
        return new SaleReceipt { Id = id, ShopId = shopId, SaleId = saleId, Kind = kind, Year = year, Number = number, MadeAt = madeAt, PaperId = paperId };
    }
}

internal sealed class SaleReceiptConfiguration : IEntityTypeConfiguration<SaleReceipt>
{
    public void Configure(EntityTypeBuilder<SaleReceipt> builder)
    {
        builder.ToTable("SaleReceipts", table => table.HasCheckConstraint("CK_SaleReceipts_Number", "\"Number\" > 0"));
        builder.Property(receipt => receipt.Kind).HasMaxLength(10);
        builder.HasIndex(receipt => new { receipt.ShopId, receipt.Year, receipt.Number }).IsUnique();
        builder.HasIndex(receipt => new { receipt.ShopId, receipt.SaleId });
        builder.HasOne<Sale>().WithMany().HasForeignKey(receipt => receipt.SaleId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<Paper>().WithMany().HasForeignKey(receipt => receipt.PaperId).OnDelete(DeleteBehavior.Restrict);
    }
}
