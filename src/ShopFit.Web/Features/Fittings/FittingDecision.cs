using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Fittings;

/// <summary>What was decided and why. Withdrawn, never edited.</summary>
public sealed class FittingDecision : IShopRow
{
    private FittingDecision()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public Guid FittingId { get; private set; }

    public DateTimeOffset DecidedAt { get; private set; }

    public Guid PersonId { get; private set; }

    public string Tablet { get; private set; } = "";

    /// <summary>One of <see cref="DecisionKinds"/>.</summary>
    public string Kind { get; private set; } = "";

    /// <summary>One of <see cref="NotTodayReasons"/> where nothing was bought today; empty otherwise.</summary>
    public string Reason { get; private set; } = "";

    /// <summary>Why, in the fitter's words; printed on the sheet.</summary>
    public string Why { get; private set; } = "";

    /// <summary>The day to come back on, or until which a pair is wished for; null where none was said.</summary>
    public DateOnly? DueOn { get; private set; }

    public Guid? SizeId { get; private set; }

    /// <summary>The pads that go with it, as JSON.</summary>
    public string PadsJson { get; private set; } = "[]";

    /// <summary>Advice of the fitter's own for the sheet; may be empty.</summary>
    public string AdviceNote { get; private set; } = "";

    /// <summary>Why the fitter went against the advice shown; empty where they did not.</summary>
    public string OverruleReason { get; private set; } = "";

    /// <summary>One of <see cref="OverruleReasons"/>; empty where none was tapped.</summary>
    public string OverruleCode { get; private set; } = "";

    public DateTimeOffset? WithdrawnAt { get; private set; }

    public static FittingDecision Of(Guid id, Actor actor, Guid fittingId, DateTimeOffset decidedAt, string kind, string why, Guid? sizeId, string padsJson = "[]", string adviceNote = "", string overruleReason = "", string reason = "", string overruleCode = "", DateOnly? dueOn = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(kind);
        return new FittingDecision
        {
            Id = id,
            ShopId = actor.ShopId,
            FittingId = fittingId,
            DecidedAt = decidedAt,
            PersonId = actor.PersonId,
            Tablet = actor.Tablet,
            Kind = kind,
            Reason = reason,
            Why = why.Trim(),
            DueOn = dueOn,
            SizeId = sizeId,
            PadsJson = padsJson,
            AdviceNote = adviceNote.Trim(),
            OverruleReason = overruleReason.Trim(),
            OverruleCode = overruleCode,
        };
    }

    /// <summary>Takes it back; the row stays.</summary>
    public void Withdraw(DateTimeOffset at) => WithdrawnAt ??= at;

    /// <summary>Lets it stand again, because taking it back was a slip.</summary>
    public void Restore() => WithdrawnAt = null;
}

internal sealed class FittingDecisionConfiguration : IEntityTypeConfiguration<FittingDecision>
{
    public void Configure(EntityTypeBuilder<FittingDecision> builder)
    {
        builder.ToTable("FittingDecisions", table =>
            table.HasCheckConstraint("CK_FittingDecisions_Kind", "\"Kind\" IN ('sold', 'order', 'come-back', 'not-today')"));
        builder.Property(decision => decision.Tablet).HasMaxLength(60);
        builder.Property(decision => decision.Kind).HasMaxLength(20);
        builder.Property(decision => decision.Reason).HasMaxLength(20);
        builder.Property(decision => decision.Why).HasMaxLength(1000);
        builder.Property(decision => decision.AdviceNote).HasMaxLength(1000);
        builder.Property(decision => decision.OverruleReason).HasMaxLength(1000);
        builder.Property(decision => decision.OverruleCode).HasMaxLength(20);
        builder.HasIndex(decision => new { decision.ShopId, decision.FittingId, decision.DecidedAt });
        builder.HasOne<FittingRecord>().WithMany().HasForeignKey(decision => decision.FittingId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<ShoeSize>().WithMany().HasForeignKey(decision => decision.SizeId).OnDelete(DeleteBehavior.Restrict);
    }
}
