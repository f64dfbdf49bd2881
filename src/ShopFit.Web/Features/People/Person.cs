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

    /// <summary>Since when they may not sign in; null: they may.</summary>
    public DateTimeOffset? SignInOffAt { get; private set; }

    /// <summary>Whether they may sign in.</summary>
    public bool MaySignIn => SignInOffAt is null;

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

    /// <summary>Changes both names.</summary>
    public void Rename(string userName, string displayName, string normalizedUserName)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(userName);
        ArgumentException.ThrowIfNullOrWhiteSpace(displayName);
        UserName = userName.Trim();
        NormalizedUserName = normalizedUserName;
        DisplayName = displayName.Trim();
        ConcurrencyStamp = Guid.CreateVersion7().ToString();
    }

    /// <summary>Changes the password. Wrong ones typed before are forgotten, and whoever is signed in is signed out.</summary>
    public void ChangePassword(string passwordHash)
    {
        PasswordHash = passwordHash;
        AccessFailedCount = 0;
        LockoutEnd = null;
        SignOutEverywhere();
    }

    /// <summary>Shuts them out from a moment on; null lets them in again.</summary>
    public void SwitchSignIn(DateTimeOffset? offAt)
    {
        SignInOffAt = offAt;
        SignOutEverywhere();
    }

    // The cookie of every tablet carries the stamp that was true when it was made.
    private void SignOutEverywhere()
    {
        SecurityStamp = Guid.CreateVersion7().ToString("N");
        ConcurrencyStamp = Guid.CreateVersion7().ToString();
    }
}

internal sealed class PersonConfiguration : IEntityTypeConfiguration<Person>
{
    public void Configure(EntityTypeBuilder<Person> builder)
    {
        builder.Property(person => person.DisplayName).HasMaxLength(Person.LongestName);
        builder.Ignore(person => person.MaySignIn);
        builder.HasIndex(person => person.ShopId);
        builder.HasOne<Settings.Shop>().WithMany().HasForeignKey(person => person.ShopId).OnDelete(DeleteBehavior.Restrict);
    }
}
