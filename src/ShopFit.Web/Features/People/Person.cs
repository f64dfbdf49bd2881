using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace ShopFit.Web.Features.People;

/// <summary>Somebody who works in the shop and signs in.</summary>
public sealed class Person : IdentityUser<Guid>
{
    /// <summary>Most characters of a name.</summary>
    public const int LongestName = 200;

    private Person()
    {
    }

    public Guid ShopId { get; private set; }

    /// <summary>The name that colleagues see, such as "Orla".</summary>
    public string DisplayName { get; private set; } = "";

    public static Person Of(Guid id, Guid shopId, string userName, string displayName)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(userName);
        ArgumentException.ThrowIfNullOrWhiteSpace(displayName);
        return new Person
        {
            Id = id,
            ShopId = shopId,
            UserName = userName.Trim(),
            DisplayName = displayName.Trim(),
            SecurityStamp = Guid.CreateVersion7().ToString("N"),
            LockoutEnabled = true,
        };
    }
}

internal sealed class PersonConfiguration : IEntityTypeConfiguration<Person>
{
    public void Configure(EntityTypeBuilder<Person> builder)
    {
        builder.Property(person => person.DisplayName).HasMaxLength(Person.LongestName);
        builder.HasIndex(person => person.ShopId);
        builder.HasOne<Settings.Shop>().WithMany().HasForeignKey(person => person.ShopId).OnDelete(DeleteBehavior.Restrict);
    }
}
