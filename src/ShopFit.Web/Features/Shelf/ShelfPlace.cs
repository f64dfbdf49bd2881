using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Shelf;

/// <summary>A place where stock stands, such as B3.</summary>
public sealed class ShelfPlace : IShopRow
{
    private ShelfPlace()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public string Code { get; private set; } = "";

    /// <summary>Whether what stands here can be sold now. The van's cannot.</summary>
    public bool Sells { get; private set; }

    public static ShelfPlace Of(Guid id, Guid shopId, string code, bool sells = true)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(code);
        return new ShelfPlace { Id = id, ShopId = shopId, Code = code.Trim(), Sells = sells };
    }
}

internal sealed class ShelfPlaceConfiguration : IEntityTypeConfiguration<ShelfPlace>
{
    public void Configure(EntityTypeBuilder<ShelfPlace> builder)
    {
        builder.Property(place => place.Code).HasMaxLength(20);
        builder.HasIndex(place => new { place.ShopId, place.Code }).IsUnique();
    }
}
