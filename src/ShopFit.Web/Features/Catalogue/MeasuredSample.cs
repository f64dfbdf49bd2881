using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Fitting.Shoes;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>One pair that the shop measured on the inside. The whole model is graded from it. Withdrawn, never edited.</summary>
public sealed class MeasuredSample : IShopRow
{
    private MeasuredSample()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    /// <summary>The model it is one of.</summary>
    public Guid ModelId { get; private set; }

    /// <summary>The size that was measured.</summary>
    public Guid SizeId { get; private set; }

    /// <summary>The shop's day on which it was measured.</summary>
    public DateOnly MeasuredOn { get; private set; }

    /// <summary>Who held the calliper, as it was written down.</summary>
    public string MeasuredBy { get; private set; } = "";

    public double? LengthMm { get; private set; }

    public double? BoxBreadthMm { get; private set; }

    public double? BallGirthMm { get; private set; }

    public double? HeelBreadthMm { get; private set; }

    public double? CrownDepthMm { get; private set; }

    public double? ToeSlopeMm { get; private set; }

    public double? VampMm { get; private set; }

    /// <summary>0 soft to 10 stiff.</summary>
    public double? ShankPoints { get; private set; }

    public DateTimeOffset EnteredAt { get; private set; }

    public Guid PersonId { get; private set; }

    public string Tablet { get; private set; } = "";

    public DateTimeOffset? WithdrawnAt { get; private set; }

    /// <summary>What was measured, in the order of <see cref="FormPart"/>; null where a part was not.</summary>
    public IReadOnlyList<double?> Parts => [LengthMm, BoxBreadthMm, BallGirthMm, HeelBreadthMm, CrownDepthMm, ToeSlopeMm, VampMm, ShankPoints];

    /// <exception cref="ArgumentException">There are not eight parts, or none of them was measured.</exception>
    public static MeasuredSample Of(Guid id, Actor actor, Guid modelId, Guid sizeId, DateOnly measuredOn, string measuredBy, IReadOnlyList<double?> parts, DateTimeOffset enteredAt)
    {
        if (parts.Count != ShoeForm.Parts || parts.All(part => part is null))
        {
            throw new ArgumentException($"A sample has {ShoeForm.Parts} parts, one measured at least.", nameof(parts));
        }

        return new MeasuredSample
        {
            Id = id,
            ShopId = actor.ShopId,
            ModelId = modelId,
            SizeId = sizeId,
            MeasuredOn = measuredOn,
            MeasuredBy = measuredBy.Trim(),
            LengthMm = parts[(int)FormPart.Length],
            BoxBreadthMm = parts[(int)FormPart.BoxBreadth],
            BallGirthMm = parts[(int)FormPart.BallGirth],
            HeelBreadthMm = parts[(int)FormPart.HeelBreadth],
            CrownDepthMm = parts[(int)FormPart.CrownDepth],
            ToeSlopeMm = parts[(int)FormPart.ToeSlope],
            VampMm = parts[(int)FormPart.Vamp],
            ShankPoints = parts[(int)FormPart.Shank],
            EnteredAt = enteredAt,
            PersonId = actor.PersonId,
            Tablet = actor.Tablet,
        };
    }

    /// <summary>Takes it back; the row stays.</summary>
    public void Withdraw(DateTimeOffset at) => WithdrawnAt ??= at;

    /// <summary>Lets it count again, because taking it back was a slip.</summary>
    public void Restore() => WithdrawnAt = null;
}

internal sealed class MeasuredSampleConfiguration : IEntityTypeConfiguration<MeasuredSample>
{
    public void Configure(EntityTypeBuilder<MeasuredSample> builder)
    {
        builder.Property(sample => sample.MeasuredBy).HasMaxLength(100);
        builder.Property(sample => sample.Tablet).HasMaxLength(100);
        builder.Ignore(sample => sample.Parts);
        builder.HasIndex(sample => new { sample.ShopId, sample.ModelId });
        builder.HasOne<ShoeModel>().WithMany().HasForeignKey(sample => sample.ModelId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<ShoeSize>().WithMany().HasForeignKey(sample => sample.SizeId).OnDelete(DeleteBehavior.Restrict);
    }
}
