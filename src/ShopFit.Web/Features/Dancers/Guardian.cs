using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Dancers;

/// <summary>Whoever answers for a child.</summary>
public sealed class Guardian : IShopRow
{
    private Guardian()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public string Name { get; private set; } = "";

    public string Contact { get; private set; } = "";

    public static Guardian Of(Guid id, Guid shopId, string name, string contact)
    {
        var guardian = new Guardian { Id = id, ShopId = shopId };
        guardian.Describe(name, contact);
        return guardian;
    }

    /// <summary>Changes their name and how to reach them, for all the children they answer for.</summary>
    public void Describe(string name, string contact)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        Name = name.Trim();
        Contact = contact.Trim();
    }
}

internal sealed class GuardianConfiguration : IEntityTypeConfiguration<Guardian>
{
    public void Configure(EntityTypeBuilder<Guardian> builder)
    {
        builder.Property(guardian => guardian.Name).HasMaxLength(200);
        builder.Property(guardian => guardian.Contact).HasMaxLength(200);
        builder.HasIndex(guardian => guardian.ShopId);
    }
}
