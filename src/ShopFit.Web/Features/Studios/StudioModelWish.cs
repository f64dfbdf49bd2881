using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;

namespace ShopFit.Web.Features.Studios;

/// <summary>A model that a studio's teacher asks for, or does not want to see.</summary>
public sealed class StudioModelWish : IShopRow
{
    private StudioModelWish()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public Guid StudioId { get; private set; }

    public Guid ModelId { get; private set; }

    /// <summary>True where she asks for it, false where she does not want it.</summary>
    public bool IsAsked { get; private set; }

    public static StudioModelWish Of(Guid id, Guid shopId, Guid studioId, Guid modelId, bool isAsked) =>
        new() { Id = id, ShopId = shopId, StudioId = studioId, ModelId = modelId, IsAsked = isAsked };
}

internal sealed class StudioModelWishConfiguration : IEntityTypeConfiguration<StudioModelWish>
{
    public void Configure(EntityTypeBuilder<StudioModelWish> builder)
    {
        builder.HasIndex(wish => new { wish.ShopId, wish.StudioId, wish.ModelId }).IsUnique();
        builder.HasOne<Studio>().WithMany().HasForeignKey(wish => wish.StudioId).OnDelete(DeleteBehavior.Cascade);
        builder.HasOne<ShoeModel>().WithMany().HasForeignKey(wish => wish.ModelId).OnDelete(DeleteBehavior.Cascade);
    }
}
