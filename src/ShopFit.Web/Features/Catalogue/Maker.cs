using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>Who makes shoes.</summary>
public sealed class Maker : IShopRow
{
    private Maker()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public string Name { get; private set; } = "";

    public static Maker Of(Guid id, Guid shopId, string name)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        return new Maker { Id = id, ShopId = shopId, Name = name.Trim() };
    }
}

internal sealed class MakerConfiguration : IEntityTypeConfiguration<Maker>
{
    public void Configure(EntityTypeBuilder<Maker> builder)
    {
        builder.Property(maker => maker.Name).HasMaxLength(200);
        builder.HasIndex(maker => new { maker.ShopId, maker.Name }).IsUnique();
    }
}
