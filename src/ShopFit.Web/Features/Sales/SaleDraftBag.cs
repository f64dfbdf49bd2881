using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Features.Fittings;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Sales;

/// <summary>What a bag held after one more tap, and for whom. The newest holds; none is ever edited.</summary>
public sealed class SaleDraftBag : IShopRow
{
    private SaleDraftBag()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public Guid DraftId { get; private set; }

    public DateTimeOffset KeptAt { get; private set; }

    public Guid PersonId { get; private set; }

    public string Tablet { get; private set; } = "";

    /// <summary>For whom; null where it matters to nobody, or when they were forgotten.</summary>
    public Guid? DancerId { get; private set; }

    /// <summary>What is in it, as JSON.</summary>
    public string ThingsJson { get; private set; } = "[]";

    /// <summary>The discount that was asked for, as JSON; null where none was.</summary>
    public string? DiscountJson { get; private set; }

    public static SaleDraftBag Of(Guid id, Actor actor, DateTimeOffset keptAt, KeptBag bag) => new()
    {
        Id = id,
        ShopId = actor.ShopId,
        DraftId = bag.DraftId,
        KeptAt = keptAt,
        PersonId = actor.PersonId,
        Tablet = actor.Tablet,
        DancerId = bag.DancerId,
        ThingsJson = ExtrasAsJson.Write(bag.Wish.Extras),
        DiscountJson = AskedDiscount.ToJson(bag.Wish.Discount),
    };

    /// <summary>The row as it was kept.</summary>
    public KeptBag Kept() => new(DraftId, new BagWish(ExtrasAsJson.Read(ThingsJson), AskedDiscount.FromJson(DiscountJson)), DancerId);
}

internal sealed class SaleDraftBagConfiguration : IEntityTypeConfiguration<SaleDraftBag>
{
    public void Configure(EntityTypeBuilder<SaleDraftBag> builder)
    {
        builder.ToTable("SaleDraftBags");
        builder.Property(bag => bag.Tablet).HasMaxLength(60);
        builder.Property(bag => bag.DiscountJson).HasMaxLength(200);
        builder.HasIndex(bag => new { bag.ShopId, bag.DraftId, bag.KeptAt });
        builder.HasOne<SaleDraft>().WithMany().HasForeignKey(bag => bag.DraftId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<Dancer>().WithMany().HasForeignKey(bag => bag.DancerId).OnDelete(DeleteBehavior.SetNull);
    }
}
