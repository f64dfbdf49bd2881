using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Fittings;

/// <summary>How one person likes to work at one tablet.</summary>
public sealed class FitterHabits : IShopRow
{
    private FitterHabits()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public Guid PersonId { get; private set; }

    public string Tablet { get; private set; } = "";

    /// <summary>Drawing and fields are turned for somebody who sits opposite the dancer.</summary>
    public bool FacesDancer { get; private set; }

    /// <summary>Key of a <see cref="ReadIn"/>: what lengths are read in; null where nobody chose.</summary>
    public string? LengthsIn { get; private set; }

    public static FitterHabits Of(Guid id, Actor actor) => new()
    {
        Id = id,
        ShopId = actor.ShopId,
        PersonId = actor.PersonId,
        Tablet = actor.Tablet,
    };

    /// <summary>Which way drawing and fields are turned from now on.</summary>
    public void Face(bool dancer) => FacesDancer = dancer;

    /// <summary>What lengths are read in from now on.</summary>
    public void ReadLengthsIn(ReadIn choice) => LengthsIn = choice.Key;
}

internal sealed class FitterHabitsConfiguration : IEntityTypeConfiguration<FitterHabits>
{
    public void Configure(EntityTypeBuilder<FitterHabits> builder)
    {
        builder.ToTable("FitterHabits");
        builder.Property(habits => habits.Tablet).HasMaxLength(TabletCookie.LongestName);
        builder.Property(habits => habits.LengthsIn).HasMaxLength(20);
        builder.HasIndex(habits => new { habits.ShopId, habits.PersonId, habits.Tablet }).IsUnique();
    }
}
