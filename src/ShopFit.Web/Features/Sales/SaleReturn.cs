using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Sales;

/// <summary>Goods of a sale that came back at once, and the money given for them. Amounts in minor units, not negative.</summary>
public sealed class SaleReturn : IShopRow
{
    private SaleReturn()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public Guid SaleId { get; private set; }

    public DateTimeOffset ReturnedAt { get; private set; }

    public Guid PersonId { get; private set; }

    public string Tablet { get; private set; } = "";

    /// <summary>Why, in the fitter's words; may be empty.</summary>
    public string Reason { get; private set; } = "";

    /// <summary>Given back, tax included.</summary>
    public long TotalMinor { get; private set; }

    /// <summary>The tax in it.</summary>
    public long TaxMinor { get; private set; }

    /// <summary>When it was undone as a slip; null while it stands.</summary>
    public DateTimeOffset? WithdrawnAt { get; private set; }

    /// <exception cref="ArgumentOutOfRangeException">An amount is negative.</exception>
    public static SaleReturn Of(Guid id, Actor actor, Guid saleId, DateTimeOffset returnedAt, string reason, long totalMinor, long taxMinor)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(totalMinor);
        ArgumentOutOfRangeException.ThrowIfNegative(taxMinor);
        return new SaleReturn
        {
            Id = id,
            ShopId = actor.ShopId,
            SaleId = saleId,
            ReturnedAt = returnedAt,
            PersonId = actor.PersonId,
            Tablet = actor.Tablet,
            Reason = reason.Trim(),
            TotalMinor = totalMinor,
            TaxMinor = taxMinor,
        };
    }

    /// <summary>Undoes it; the row stays.</summary>
    public void Withdraw(DateTimeOffset at) => WithdrawnAt ??= at;
}

internal sealed class SaleReturnConfiguration : IEntityTypeConfiguration<SaleReturn>
{
    public void Configure(EntityTypeBuilder<SaleReturn> builder)
    {
        builder.ToTable("SaleReturns", table => table.HasCheckConstraint("CK_SaleReturns_Amounts", "\"TotalMinor\" >= 0 AND \"TaxMinor\" BETWEEN 0 AND \"TotalMinor\""));
        builder.Property(one => one.Tablet).HasMaxLength(60);
        builder.Property(one => one.Reason).HasMaxLength(VoidSale.LongestReason);
        builder.HasIndex(one => new { one.ShopId, one.SaleId });
        builder.HasIndex(one => new { one.ShopId, one.ReturnedAt });
        builder.HasOne<Sale>().WithMany().HasForeignKey(one => one.SaleId).OnDelete(DeleteBehavior.Restrict);
    }
}
