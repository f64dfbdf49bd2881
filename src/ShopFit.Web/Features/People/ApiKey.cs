using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.People;

/// <summary>Lets another program ask this shop's questions. Only a hash of the key is kept.</summary>
public sealed class ApiKey : IShopRow
{
    /// <summary>Most characters of a name.</summary>
    public const int LongestName = 200;

    private ApiKey()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public string Name { get; private set; } = "";

    /// <summary>SHA-256 of the key.</summary>
    public byte[] KeyHash { get; private set; } = [];

    public DateTimeOffset CreatedAt { get; private set; }

    public DateTimeOffset? RevokedAt { get; private set; }

    public static ApiKey Of(Guid id, Guid shopId, string name, byte[] keyHash, DateTimeOffset createdAt)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        return new ApiKey { Id = id, ShopId = shopId, Name = name.Trim(), KeyHash = keyHash, CreatedAt = createdAt };
    }

    public void Revoke(DateTimeOffset at) => RevokedAt ??= at;

    /// <summary>Lets it open again, because revoking it was a slip.</summary>
    public void Restore() => RevokedAt = null;
}

internal sealed class ApiKeyConfiguration : IEntityTypeConfiguration<ApiKey>
{
    public void Configure(EntityTypeBuilder<ApiKey> builder)
    {
        builder.Property(key => key.Name).HasMaxLength(ApiKey.LongestName);
        builder.Property(key => key.KeyHash).HasMaxLength(32);
        builder.HasIndex(key => key.KeyHash).IsUnique();
        builder.HasIndex(key => new { key.ShopId, key.Name });
    }
}
