using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Feet;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Fittings;

/// <summary>One reading of one foot, kept just as it was given. Withdrawn, never edited.</summary>
public sealed class FittingReading : IShopRow
{
    private FittingReading()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public Guid FittingId { get; private set; }

    public DateTimeOffset TakenAt { get; private set; }

    public Guid PersonId { get; private set; }

    public string Tablet { get; private set; } = "";

    public Side Foot { get; private set; }

    /// <summary>Id of the trait, such as "heel-to-ball".</summary>
    public string Trait { get; private set; } = "";

    public double Value { get; private set; }

    public ReadingUnit Unit { get; private set; }

    /// <summary>Id of the size system; only with a size.</summary>
    public string? SizeSystem { get; private set; }

    /// <summary>How it was taken, such as "tape"; null where nobody said.</summary>
    public string? Method { get; private set; }

    public DateTimeOffset? WithdrawnAt { get; private set; }

    public static FittingReading Of(Guid id, Actor actor, Guid fittingId, DateTimeOffset takenAt, Side foot, string trait, double value, ReadingUnit unit, string? sizeSystem = null, string? method = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(trait);
        return new FittingReading
        {
            Id = id,
            ShopId = actor.ShopId,
            FittingId = fittingId,
            TakenAt = takenAt,
            PersonId = actor.PersonId,
            Tablet = actor.Tablet,
            Foot = foot,
            Trait = trait,
            Value = value,
            Unit = unit,
            SizeSystem = sizeSystem,
            Method = method,
        };
    }

    /// <summary>Takes it back; the row stays.</summary>
    public void Withdraw(DateTimeOffset at) => WithdrawnAt ??= at;

    /// <summary>Lets it count again, as if it had never been taken back.</summary>
    public void Restore() => WithdrawnAt = null;
}

internal sealed class FittingReadingConfiguration : IEntityTypeConfiguration<FittingReading>
{
    public void Configure(EntityTypeBuilder<FittingReading> builder)
    {
        builder.Property(reading => reading.Tablet).HasMaxLength(60);
        builder.Property(reading => reading.Foot).HasConversion<string>().HasMaxLength(10);
        builder.Property(reading => reading.Trait).HasMaxLength(40);
        builder.Property(reading => reading.Unit).HasConversion<string>().HasMaxLength(20);
        builder.Property(reading => reading.SizeSystem).HasMaxLength(20);
        builder.Property(reading => reading.Method).HasMaxLength(40);
        builder.HasIndex(reading => new { reading.ShopId, reading.FittingId, reading.TakenAt });
        builder.HasOne<FittingRecord>().WithMany().HasForeignKey(reading => reading.FittingId).OnDelete(DeleteBehavior.Restrict);
    }
}
