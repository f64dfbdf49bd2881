using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>A model of a maker: one last, made in many sizes.</summary>
public sealed class ShoeModel : IShopRow
{
    private ShoeModel()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public Guid MakerId { get; private set; }

    public string Name { get; private set; } = "";

    /// <summary>Kind of footwear, such as "pointe".</summary>
    public string Kind { get; private set; } = "";

    /// <summary>"paste", "moulded" or "soft"; null where nobody has said.</summary>
    public string? Construction { get; private set; }

    public bool Discontinued { get; private set; }

    public static ShoeModel Of(Guid id, Guid shopId, Guid makerId, string name, string kind, string? construction = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentException.ThrowIfNullOrWhiteSpace(kind);
        return new ShoeModel { Id = id, ShopId = shopId, MakerId = makerId, Name = name.Trim(), Kind = kind, Construction = construction };
    }

    /// <summary>Says how it is made: "paste", "moulded" or "soft".</summary>
    public void MadeOf(string construction) => Construction = construction;

    /// <summary>Says how it is made and whether it still is; null where nobody knows how.</summary>
    public void Describe(string? construction, bool discontinued)
    {
        Construction = construction;
        Discontinued = discontinued;
    }

    /// <summary>The maker makes it no longer; what stands on the shelf can still be sold.</summary>
    public void Discontinue() => Discontinued = true;
}

internal sealed class ShoeModelConfiguration : IEntityTypeConfiguration<ShoeModel>
{
    public void Configure(EntityTypeBuilder<ShoeModel> builder)
    {
        builder.ToTable("ShoeModels", table =>
            table.HasCheckConstraint("CK_ShoeModels_Construction", "\"Construction\" IN ('paste', 'moulded', 'soft')"));
        builder.Property(model => model.Name).HasMaxLength(200);
        builder.Property(model => model.Kind).HasMaxLength(20);
        builder.Property(model => model.Construction).HasMaxLength(20);
        builder.HasIndex(model => new { model.ShopId, model.MakerId, model.Name }).IsUnique();
        builder.HasOne<Maker>().WithMany().HasForeignKey(model => model.MakerId).OnDelete(DeleteBehavior.Restrict);
    }
}
