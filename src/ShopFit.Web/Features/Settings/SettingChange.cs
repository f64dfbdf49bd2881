using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Settings;

/// <summary>One setting that somebody changed: what it was, what it became, who, when and why. Never edited.</summary>
public sealed class SettingChange : IShopRow
{
    /// <summary>Most characters of what a setting was or became.</summary>
    public const int LongestValue = 500;

    /// <summary>Most characters of a reason.</summary>
    public const int LongestReason = 500;

    private SettingChange()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public DateTimeOffset At { get; private set; }

    /// <summary>Who changed it; empty for the command line.</summary>
    public Guid PersonId { get; private set; }

    public string Tablet { get; private set; } = "";

    /// <summary>Which setting: the path of a fit number, or the name of a setting of the shop, such as "shop.currency".</summary>
    public string Path { get; private set; } = "";

    /// <summary>What it was; null where it stood at its default or did not exist.</summary>
    public string? Before { get; private set; }

    /// <summary>What it became; null where it went back to its default or exists no more.</summary>
    public string? After { get; private set; }

    public string Reason { get; private set; } = "";

    public static SettingChange Of(Guid id, Actor actor, DateTimeOffset at, string path, string? before, string? after, string reason = "")
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        return new SettingChange
        {
            Id = id,
            ShopId = actor.ShopId,
            At = at,
            PersonId = actor.PersonId,
            Tablet = actor.Tablet,
            Path = path,
            Before = before,
            After = after,
            Reason = reason.Trim(),
        };
    }
}

internal sealed class SettingChangeConfiguration : IEntityTypeConfiguration<SettingChange>
{
    public void Configure(EntityTypeBuilder<SettingChange> builder)
    {
        builder.Property(change => change.Tablet).HasMaxLength(60);
        builder.Property(change => change.Path).HasMaxLength(100);
        builder.Property(change => change.Before).HasMaxLength(SettingChange.LongestValue);
        builder.Property(change => change.After).HasMaxLength(SettingChange.LongestValue);
        builder.Property(change => change.Reason).HasMaxLength(SettingChange.LongestReason);
        builder.HasIndex(change => new { change.ShopId, change.Path, change.At });
    }
}
