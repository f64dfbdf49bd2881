using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Settings;

/// <summary>The tax on one category of goods. A category without a row is not taxed.</summary>
public sealed class TaxRate : IShopRow
{
    private TaxRate()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    /// <summary>A category of items, such as "shoes".</summary>
    public string Category { get; private set; } = "";

    /// <summary>Hundredths of a per cent: 1900 is 19 %.</summary>
    public int RateBasisPoints { get; private set; }

    /// <exception cref="ArgumentOutOfRangeException"><paramref name="rateBasisPoints"/> is negative or above 100 %.</exception>
    public static TaxRate Of(Guid id, Guid shopId, string category, int rateBasisPoints)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(category);
        var rate = new TaxRate { Id = id, ShopId = shopId, Category = category };
        rate.Change(rateBasisPoints);
        return rate;
    }

    /// <summary>Sets the tax from now on; what was sold keeps the tax that it was sold with.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="rateBasisPoints"/> is negative or above 100 %.</exception>
    public void Change(int rateBasisPoints)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(rateBasisPoints);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(rateBasisPoints, 10_000);
        RateBasisPoints = rateBasisPoints;
    }
}

internal sealed class TaxRateConfiguration : IEntityTypeConfiguration<TaxRate>
{
    public void Configure(EntityTypeBuilder<TaxRate> builder)
    {
        builder.ToTable("TaxRates", table => table.HasCheckConstraint("CK_TaxRates_Rate", "\"RateBasisPoints\" BETWEEN 0 AND 10000"));
        builder.Property(rate => rate.Category).HasMaxLength(40);
        builder.HasIndex(rate => new { rate.ShopId, rate.Category }).IsUnique();
    }
}
