using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Fitting.Feet;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Studios;

namespace ShopFit.Web.Features.Dancers;

/// <summary>Somebody who is fitted. Who they are stands here and with their guardian, and nowhere else.</summary>
public sealed class Dancer : IShopRow
{
    private Dancer()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public string Name { get; private set; } = "";

    /// <summary>What they like to be called; may be empty.</summary>
    public string KnownAs { get; private set; } = "";

    public DateOnly? BirthDate { get; private set; }

    /// <summary>Said where the day of birth is not known: under age, or grown; null while nobody asked.</summary>
    public bool? SaidUnderAge { get; private set; }

    public Sex? Sex { get; private set; }

    /// <summary>Where she takes class; null where nobody has said.</summary>
    public Guid? StudioId { get; private set; }

    public string Teacher { get; private set; } = "";

    public Guid? GuardianId { get; private set; }

    /// <summary>BCP 47 tag of the language their papers are in.</summary>
    public string Language { get; private set; } = "en";

    /// <summary>Goes up with every change, so that two tablets cannot overwrite each other unseen.</summary>
    public int Version { get; private set; }

    public static Dancer Of(Guid id, Guid shopId, string name)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        return new Dancer { Id = id, ShopId = shopId, Name = name.Trim(), Version = 1 };
    }

    /// <summary>Changes what is known of them.</summary>
    public void Describe(string name, string knownAs, DateOnly? birthDate, Sex? sex, string teacher)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        Name = name.Trim();
        KnownAs = knownAs.Trim();
        BirthDate = birthDate;
        Sex = sex;
        Teacher = teacher.Trim();
        Version++;
    }

    /// <summary>Answers "under age, or grown?" where the day of birth is not known.</summary>
    public void SayAge(bool? underAge) => SaidUnderAge = underAge;

    /// <summary>Whether somebody else answers for them on that day; null where neither the day of birth nor the answer is known.</summary>
    public bool? IsMinorOn(DateOnly day) => BirthDate is { } born ? born <= day && Age.InYears(born, day) < Age.Grown : SaidUnderAge;

    /// <summary>Says where they take class; null where nowhere.</summary>
    public void DancesAt(Guid? studioId) => StudioId = studioId;

    /// <summary>Says who answers for them.</summary>
    public void AnsweredForBy(Guid guardianId) => GuardianId = guardianId;
}

internal sealed class DancerConfiguration : IEntityTypeConfiguration<Dancer>
{
    public void Configure(EntityTypeBuilder<Dancer> builder)
    {
        builder.Property(dancer => dancer.Name).HasMaxLength(200);
        builder.Property(dancer => dancer.KnownAs).HasMaxLength(200);
        builder.Property(dancer => dancer.Sex).HasConversion<string>().HasMaxLength(10);
        builder.Property(dancer => dancer.Teacher).HasMaxLength(200);
        builder.Property(dancer => dancer.Language).HasMaxLength(35);
        builder.Property(dancer => dancer.Version).IsConcurrencyToken();
        builder.HasIndex(dancer => new { dancer.ShopId, dancer.Name });
        builder.HasOne<Guardian>().WithMany().HasForeignKey(dancer => dancer.GuardianId).OnDelete(DeleteBehavior.SetNull);
        builder.HasOne<Studio>().WithMany().HasForeignKey(dancer => dancer.StudioId).OnDelete(DeleteBehavior.SetNull);
    }
}
