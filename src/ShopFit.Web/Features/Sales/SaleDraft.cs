using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Sales;

/// <summary>A bag that is being filled without a fitting. What is in it, its <see cref="SaleDraftBag"/> rows say; it is sold once.</summary>
public sealed class SaleDraft : IShopRow
{
    private SaleDraft()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public DateTimeOffset OpenedAt { get; private set; }

    /// <summary>The sale that it became; null while it is open. Set by a guarded update only.</summary>
    public Guid? SaleId { get; private set; }

    public static SaleDraft Of(Guid id, Actor actor, DateTimeOffset openedAt) => new() { Id = id, ShopId = actor.ShopId, OpenedAt = openedAt };
}

internal sealed class SaleDraftConfiguration : IEntityTypeConfiguration<SaleDraft>
{
    public void Configure(EntityTypeBuilder<SaleDraft> builder)
    {
        builder.ToTable("SaleDrafts");
        builder.HasIndex(draft => new { draft.ShopId, draft.OpenedAt });
        builder.HasOne<Sale>().WithMany().HasForeignKey(draft => draft.SaleId).OnDelete(DeleteBehavior.Restrict);
    }
}
