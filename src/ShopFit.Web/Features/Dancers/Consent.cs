using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Dancers;

/// <summary>That somebody agreed to a dancer's feet being measured and kept on file.</summary>
public sealed class Consent : IShopRow
{
    private Consent()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public Guid DancerId { get; private set; }

    /// <summary>Who agreed: "guardian" or "dancer". Their names stand with them, not here.</summary>
    public string GivenBy { get; private set; } = "";

    public DateTimeOffset GivenAt { get; private set; }

    /// <summary>Who heard it.</summary>
    public Guid PersonId { get; private set; }

    public DateTimeOffset? WithdrawnAt { get; private set; }

    public static Consent Of(Guid id, Actor actor, Guid dancerId, string givenBy, DateTimeOffset givenAt)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(givenBy);
        return new Consent { Id = id, ShopId = actor.ShopId, DancerId = dancerId, GivenBy = givenBy, GivenAt = givenAt, PersonId = actor.PersonId };
    }

    /// <summary>Whoever gave it takes it back; the row stays.</summary>
    public void Withdraw(DateTimeOffset at) => WithdrawnAt ??= at;

    /// <summary>Lets it hold again, as if it had never been taken back.</summary>
    public void Restore() => WithdrawnAt = null;
}

internal sealed class ConsentConfiguration : IEntityTypeConfiguration<Consent>
{
    public void Configure(EntityTypeBuilder<Consent> builder)
    {
        builder.Property(consent => consent.GivenBy).HasMaxLength(20);
        builder.HasIndex(consent => new { consent.ShopId, consent.DancerId });
        builder.HasOne<Dancer>().WithMany().HasForeignKey(consent => consent.DancerId).OnDelete(DeleteBehavior.Cascade);
    }
}
