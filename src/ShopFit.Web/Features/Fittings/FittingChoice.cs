using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Sales;

namespace ShopFit.Web.Features.Fittings;

/// <summary>What lies ready to be decided on: the pair, its pads, the bag and the fitter's words. The newest holds; none is ever edited.</summary>
public sealed class FittingChoice : IShopRow
{
    private FittingChoice()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public Guid FittingId { get; private set; }

    public DateTimeOffset ChosenAt { get; private set; }

    public Guid PersonId { get; private set; }

    public string Tablet { get; private set; } = "";

    public Guid SizeId { get; private set; }

    /// <summary>The pads that the fitter put under the feet, as JSON; null while those that are proposed will do.</summary>
    public string? PadsJson { get; private set; }

    /// <summary>What else goes into the bag, as JSON.</summary>
    public string ExtrasJson { get; private set; } = "[]";

    public string OverruleReason { get; private set; } = "";

    public string AdviceNote { get; private set; } = "";

    /// <summary>One of <see cref="OverruleReasons"/>; empty where none was tapped.</summary>
    public string OverruleCode { get; private set; } = "";

    /// <summary>The smaller size that was asked for; empty where none was.</summary>
    public string AskedLabel { get; private set; } = "";

    /// <summary>What was advised when it was asked for; empty where it was not.</summary>
    public string AdvisedPair { get; private set; } = "";

    /// <summary>The first of the proposals when it was chosen; null where there was none.</summary>
    public Guid? SuggestedSizeId { get; private set; }

    /// <summary>The discount that was asked for, as JSON; null where none was.</summary>
    public string? DiscountJson { get; private set; }

    public static FittingChoice Of(Guid id, Actor actor, DateTimeOffset chosenAt, ChosenForFitting chosen) => new()
    {
        Id = id,
        ShopId = actor.ShopId,
        FittingId = chosen.FittingId,
        ChosenAt = chosenAt,
        PersonId = actor.PersonId,
        Tablet = actor.Tablet,
        SizeId = chosen.SizeId,
        PadsJson = chosen.Pads is null ? null : PadsAsJson.Write(chosen.Pads),
        ExtrasJson = ExtrasAsJson.Write(chosen.Extras),
        OverruleReason = chosen.OverruleReason,
        AdviceNote = chosen.AdviceNote,
        OverruleCode = chosen.OverruleCode,
        AskedLabel = chosen.Asked?.Label.Trim() ?? "",
        AdvisedPair = chosen.Asked?.Advised.Trim() ?? "",
        SuggestedSizeId = chosen.SuggestedSizeId,
        DiscountJson = AskedDiscount.ToJson(chosen.Discount),
    };

    /// <summary>The row as it was chosen.</summary>
    public ChosenForFitting Chosen() => new(FittingId, SizeId, PadsJson is null ? null : PadsAsJson.Read(PadsJson), ExtrasAsJson.Read(ExtrasJson), OverruleReason, AdviceNote, AskedDiscount.FromJson(DiscountJson))
    {
        OverruleCode = OverruleCode,
        Asked = AskedLabel.Length is 0 ? null : new AskedSize(AskedLabel, AdvisedPair),
        SuggestedSizeId = SuggestedSizeId,
    };

    /// <summary>What lies ready in a fitting; null while nothing was chosen.</summary>
    public static Task<FittingChoice?> NewestAsync(ShopDbContext db, Guid fittingId, CancellationToken cancellationToken) =>
        db.FittingChoices.AsNoTracking()
            .Where(row => row.FittingId == fittingId)
            .OrderByDescending(row => row.ChosenAt).ThenByDescending(row => row.Id)
            .FirstOrDefaultAsync(cancellationToken);
}

internal sealed class FittingChoiceConfiguration : IEntityTypeConfiguration<FittingChoice>
{
    public void Configure(EntityTypeBuilder<FittingChoice> builder)
    {
        builder.ToTable("FittingChoices");
        builder.Property(choice => choice.Tablet).HasMaxLength(60);
        builder.Property(choice => choice.OverruleReason).HasMaxLength(SellFittingRequest.LongestNote);
        builder.Property(choice => choice.DiscountJson).HasMaxLength(200);
        builder.Property(choice => choice.AdviceNote).HasMaxLength(SellFittingRequest.LongestNote);
        builder.Property(choice => choice.OverruleCode).HasMaxLength(20);
        builder.Property(choice => choice.AskedLabel).HasMaxLength(AskedSize.LongestLabel);
        builder.Property(choice => choice.AdvisedPair).HasMaxLength(AskedSize.LongestAdvised);
        builder.HasIndex(choice => new { choice.ShopId, choice.FittingId, choice.ChosenAt });
        builder.HasOne<FittingRecord>().WithMany().HasForeignKey(choice => choice.FittingId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<ShoeSize>().WithMany().HasForeignKey(choice => choice.SizeId).OnDelete(DeleteBehavior.Restrict);
    }
}
