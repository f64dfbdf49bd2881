using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;

namespace ShopFit.Web.Features.Fittings;

/// <summary>What the fitter was shown when a fitting was closed, so that reprints and later comparisons are true.</summary>
public sealed class FittingSnapshot : IShopRow
{
    private FittingSnapshot()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public Guid FittingId { get; private set; }

    /// <summary>Fingerprint of the fit numbers that were in force.</summary>
    public string DefaultsFingerprint { get; private set; } = "";

    /// <summary>Version of what the shop had learnt about its models; 0 where nothing.</summary>
    public int OffsetsVersion { get; private set; }

    /// <summary>Chance of fit, 0 to 1; null where no pair was judged.</summary>
    public double? ChanceOfFit { get; private set; }

    /// <summary>Score, 0 to 1; null where no pair was judged.</summary>
    public double? Score { get; private set; }

    public string PadsJson { get; private set; } = "[]";

    public string CriteriaJson { get; private set; } = "[]";

    /// <summary>The first of the proposals; null where there was none.</summary>
    public Guid? SuggestedSizeId { get; private set; }

    /// <summary>Its chance of fit, 0 to 1; null where there was none.</summary>
    public double? SuggestedChance { get; private set; }

    /// <summary>Keeps what was proposed first beside what was decided on.</summary>
    public FittingSnapshot Beside(Guid? suggestedSizeId, double? suggestedChance)
    {
        (SuggestedSizeId, SuggestedChance) = (suggestedSizeId, suggestedChance);
        return this;
    }

    public static FittingSnapshot Of(Guid id, Guid shopId, Guid fittingId, string defaultsFingerprint, int offsetsVersion, double? chanceOfFit, double? score, string padsJson, string criteriaJson) => new()
    {
        Id = id,
        ShopId = shopId,
        FittingId = fittingId,
        DefaultsFingerprint = defaultsFingerprint,
        OffsetsVersion = offsetsVersion,
        ChanceOfFit = chanceOfFit,
        Score = score,
        PadsJson = padsJson,
        CriteriaJson = criteriaJson,
    };
}

internal sealed class FittingSnapshotConfiguration : IEntityTypeConfiguration<FittingSnapshot>
{
    public void Configure(EntityTypeBuilder<FittingSnapshot> builder)
    {
        builder.Property(snapshot => snapshot.DefaultsFingerprint).HasMaxLength(64);
        // One each time it was closed: a sale that was taken back opens a fitting again. The newest key holds.
        builder.HasIndex(snapshot => new { snapshot.ShopId, snapshot.FittingId });
        builder.HasOne<ShoeSize>().WithMany().HasForeignKey(snapshot => snapshot.SuggestedSizeId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<FittingRecord>().WithMany().HasForeignKey(snapshot => snapshot.FittingId).OnDelete(DeleteBehavior.Restrict);
    }
}
