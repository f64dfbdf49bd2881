using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Fitting.Feet;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Fittings;

/// <summary>One visit of one dancer: what was read, tried and decided hangs on it. A draft until it is closed.</summary>
/// <remarks>Age and sex are copied here, so that what was learnt stays true when the dancer is forgotten.</remarks>
public sealed class FittingRecord : IShopRow
{
    private FittingRecord()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    /// <summary>Whom; null where nobody is on file, or when they were forgotten.</summary>
    public Guid? DancerId { get; private set; }

    /// <summary>Kind of footwear, such as "pointe".</summary>
    public string Kind { get; private set; } = "";

    public bool FirstPair { get; private set; }

    public DateTimeOffset OpenedAt { get; private set; }

    /// <summary>The person who opened it.</summary>
    public Guid OpenedBy { get; private set; }

    public string Tablet { get; private set; } = "";

    public DateTimeOffset? ClosedAt { get; private set; }

    /// <summary>Age in years on the day; null counts as adult.</summary>
    public double? AgeYears { get; private set; }

    public Sex? Sex { get; private set; }

    public bool SoreLeft { get; private set; }

    public bool SoreRight { get; private set; }

    /// <summary>Skin is broken somewhere: nothing is tried on today.</summary>
    public bool SkinBroken { get; private set; }

    /// <summary>The day on which the teacher said yes to a first pair; null while nobody told.</summary>
    public DateOnly? TeacherAgreedOn { get; private set; }

    /// <summary>Goes up with every change of the header, so that two tablets cannot overwrite each other unseen.</summary>
    public int Version { get; private set; }

    /// <summary>How often it was opened again because its sale was taken back; each time another sale may end it.</summary>
    public int TimesReopened { get; private set; }

    public bool IsDraft => ClosedAt is null;

    public static FittingRecord Of(Guid id, Actor actor, Guid? dancerId, string kind, DateTimeOffset openedAt, double? ageYears, Sex? sex)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(kind);
        return new FittingRecord
        {
            Id = id,
            ShopId = actor.ShopId,
            DancerId = dancerId,
            Kind = kind,
            OpenedAt = openedAt,
            OpenedBy = actor.PersonId,
            Tablet = actor.Tablet,
            AgeYears = ageYears,
            Sex = sex,
            Version = 1,
        };
    }

    /// <summary>What is asked before the first reading.</summary>
    /// <exception cref="InvalidOperationException">It is closed.</exception>
    public void Start(bool firstPair, bool soreLeft, bool soreRight, bool skinBroken = false, DateOnly? teacherAgreedOn = null)
    {
        MustBeDraft();
        FirstPair = firstPair;
        SoreLeft = soreLeft;
        SoreRight = soreRight;
        SkinBroken = skinBroken;
        TeacherAgreedOn = teacherAgreedOn;
        Version++;
    }

    /// <summary>Closes it; only taking back its sale opens it again.</summary>
    /// <exception cref="InvalidOperationException">It is closed already.</exception>
    public void Close(DateTimeOffset at)
    {
        MustBeDraft();
        ClosedAt = at;
        Version++;
    }

    /// <summary>Opens it again, just as it lay, because what closed it was taken back.</summary>
    /// <exception cref="InvalidOperationException">It is open.</exception>
    public void Reopen()
    {
        if (IsDraft)
        {
            throw new InvalidOperationException("This fitting is open.");
        }

        ClosedAt = null;
        TimesReopened++;
        Version++;
    }

    private void MustBeDraft()
    {
        if (!IsDraft)
        {
            throw new InvalidOperationException("This fitting is closed.");
        }
    }
}

internal sealed class FittingRecordConfiguration : IEntityTypeConfiguration<FittingRecord>
{
    public void Configure(EntityTypeBuilder<FittingRecord> builder)
    {
        builder.ToTable("Fittings");
        builder.Ignore(fitting => fitting.IsDraft);
        builder.Property(fitting => fitting.Kind).HasMaxLength(20);
        builder.Property(fitting => fitting.Tablet).HasMaxLength(60);
        builder.Property(fitting => fitting.Sex).HasConversion<string>().HasMaxLength(10);
        builder.Property(fitting => fitting.Version).IsConcurrencyToken();
        builder.HasIndex(fitting => new { fitting.ShopId, fitting.DancerId, fitting.OpenedAt });
        builder.HasIndex(fitting => new { fitting.ShopId, fitting.ClosedAt });
        builder.HasOne<Dancer>().WithMany().HasForeignKey(fitting => fitting.DancerId).OnDelete(DeleteBehavior.SetNull);
    }
}
