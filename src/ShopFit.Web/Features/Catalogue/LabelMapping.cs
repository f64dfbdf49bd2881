using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Fitting.Shoes;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>What the shop once said of the words on a maker's labels. The newest that was not withdrawn holds.</summary>
public sealed class LabelMapping : IShopRow
{
    private LabelMapping()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public Guid MakerId { get; private set; }

    /// <summary>The <see cref="LabelMeanings"/>, as JSON.</summary>
    public string MeaningsJson { get; private set; } = "{}";

    public DateTimeOffset MappedAt { get; private set; }

    public Guid PersonId { get; private set; }

    public string Tablet { get; private set; } = "";

    public DateTimeOffset? WithdrawnAt { get; private set; }

    public static LabelMapping Of(Guid id, Actor actor, Guid makerId, LabelMeanings meanings, DateTimeOffset mappedAt) => new()
    {
        Id = id,
        ShopId = actor.ShopId,
        MakerId = makerId,
        MeaningsJson = Write(meanings),
        MappedAt = mappedAt,
        PersonId = actor.PersonId,
        Tablet = actor.Tablet,
    };

    /// <summary>What it says.</summary>
    public LabelMeanings Meanings() => JsonSerializer.Deserialize<LabelMeanings>(MeaningsJson, JsonSerializerOptions.Web)!;

    /// <summary>Takes it back; the row stays.</summary>
    public void Withdraw(DateTimeOffset at) => WithdrawnAt ??= at;

    /// <summary>Lets it count again, because taking it back was a slip.</summary>
    public void Restore() => WithdrawnAt = null;

    /// <summary>Meanings as text: equal meanings give equal text, whatever the order of the words.</summary>
    internal static string Write(LabelMeanings meanings) => JsonSerializer.Serialize(
        new LabelMeanings
        {
            Systems = Sorted(meanings.Systems),
            Widths = Sorted(meanings.Widths),
            Options = Sorted(meanings.Options),
            Shanks = Sorted(meanings.Shanks),
        },
        JsonSerializerOptions.Web);

    private static Dictionary<string, TMeaning> Sorted<TMeaning>(IReadOnlyDictionary<string, TMeaning> meanings) =>
        meanings.OrderBy(meaning => meaning.Key, StringComparer.Ordinal).ToDictionary(meaning => meaning.Key, meaning => meaning.Value, StringComparer.Ordinal);
}

internal sealed class LabelMappingConfiguration : IEntityTypeConfiguration<LabelMapping>
{
    public void Configure(EntityTypeBuilder<LabelMapping> builder)
    {
        builder.Property(mapping => mapping.Tablet).HasMaxLength(100);
        builder.HasIndex(mapping => new { mapping.ShopId, mapping.MakerId });
        builder.HasOne<Maker>().WithMany().HasForeignKey(mapping => mapping.MakerId).OnDelete(DeleteBehavior.Restrict);
    }
}
