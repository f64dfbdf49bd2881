using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Fittings;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Sales;

namespace ShopFit.Web.Features.Papers;

/// <summary>A paper as it was handed over: its facts are kept, and drawing it again gives the same paper.</summary>
public sealed class Paper : IShopRow
{
    private Paper()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    /// <summary>Which paper, such as "take-home-sheet".</summary>
    public string Kind { get; private set; } = "";

    public Guid? FittingId { get; private set; }

    public Guid? SaleId { get; private set; }

    public DateTimeOffset MadeAt { get; private set; }

    public Guid PersonId { get; private set; }

    /// <summary>Version of the shape of <see cref="FactsJson"/>.</summary>
    public int FormatVersion { get; private set; }

    public string FactsJson { get; private set; } = "{}";

    public static Paper Of(Guid id, Actor actor, string kind, Guid? fittingId, Guid? saleId, DateTimeOffset madeAt, int formatVersion, string factsJson)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(kind);
        ArgumentException.ThrowIfNullOrWhiteSpace(factsJson);
        return new Paper
        {
            Id = id,
            ShopId = actor.ShopId,
            Kind = kind,
            FittingId = fittingId,
            SaleId = saleId,
            MadeAt = madeAt,
            PersonId = actor.PersonId,
            FormatVersion = formatVersion,
            FactsJson = factsJson,
        };
    }
}

internal sealed class PaperConfiguration : IEntityTypeConfiguration<Paper>
{
    public void Configure(EntityTypeBuilder<Paper> builder)
    {
        builder.Property(paper => paper.Kind).HasMaxLength(40);
        builder.HasIndex(paper => new { paper.ShopId, paper.FittingId });
        builder.HasIndex(paper => new { paper.ShopId, paper.SaleId });
        builder.HasOne<FittingRecord>().WithMany().HasForeignKey(paper => paper.FittingId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<Sale>().WithMany().HasForeignKey(paper => paper.SaleId).OnDelete(DeleteBehavior.Restrict);
    }
}
