using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;
using ShopFit.Web.Shared;

namespace ShopFit.Web.Features.Studios;

/// <summary>Where dancers take class: who teaches there, and what the teachers ask of a shoe.</summary>
public sealed class Studio : IShopRow
{
    /// <summary>Longest name, as the database keeps it.</summary>
    public const int LongestName = 200;

    /// <summary>Longest wish in words.</summary>
    public const int LongestWords = 500;

    private Studio()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public string Name { get; private set; } = "";

    /// <summary>The name as it is compared: a studio is on file once, however it is written.</summary>
    public string NameKey { get; private set; } = "";

    /// <summary>Who teaches there: names with commas between them; may be empty.</summary>
    public string Teachers { get; private set; } = "";

    /// <summary>The colour that the teacher asks for; may be empty.</summary>
    public string Colour { get; private set; } = "";

    /// <summary>The ribbon and elastic that the teacher asks for; may be empty.</summary>
    public string Ribbon { get; private set; } = "";

    /// <summary>What else the teacher asks for; may be empty.</summary>
    public string OtherWishes { get; private set; } = "";

    /// <summary>Goes up with every change, so that two tablets cannot overwrite each other unseen.</summary>
    public int Version { get; private set; }

    public static Studio Of(Guid id, Guid shopId, string name)
    {
        var studio = new Studio { Id = id, ShopId = shopId, Version = 1 };
        studio.Rename(name);
        return studio;
    }

    /// <summary>The key under which a name is on file.</summary>
    public static string KeyOf(string name) => FoldedText.Of(name) is { Length: > 0 } key ? key : name.Trim();

    /// <summary>Says what is known of it.</summary>
    public void Describe(string name, string teachers, string colour, string ribbon, string otherWishes)
    {
        Rename(name);
        Teachers = teachers.Trim();
        Colour = colour.Trim();
        Ribbon = ribbon.Trim();
        OtherWishes = otherWishes.Trim();
        Version++;
    }

    private void Rename(string name)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        Name = name.Trim();
        NameKey = KeyOf(name);
    }
}

internal sealed class StudioConfiguration : IEntityTypeConfiguration<Studio>
{
    public void Configure(EntityTypeBuilder<Studio> builder)
    {
        builder.Property(studio => studio.Name).HasMaxLength(Studio.LongestName);
        // Taking letters apart makes some names longer.
        builder.Property(studio => studio.NameKey).HasMaxLength(4 * Studio.LongestName);
        builder.Property(studio => studio.Teachers).HasMaxLength(Studio.LongestWords);
        builder.Property(studio => studio.Colour).HasMaxLength(Studio.LongestWords);
        builder.Property(studio => studio.Ribbon).HasMaxLength(Studio.LongestWords);
        builder.Property(studio => studio.OtherWishes).HasMaxLength(Studio.LongestWords);
        builder.Property(studio => studio.Version).IsConcurrencyToken();
        builder.HasIndex(studio => new { studio.ShopId, studio.NameKey }).IsUnique();
    }
}
