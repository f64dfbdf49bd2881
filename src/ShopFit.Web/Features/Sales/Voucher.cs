using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Sales;

/// <summary>A code that gives a discount on its terms. Made and ended, never edited; its uses are counted by guarded updates.</summary>
public sealed class Voucher : IShopRow
{
    private Voucher()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    /// <summary>As it is printed, in capitals; unique in the shop.</summary>
    public string Code { get; private set; } = "";

    /// <summary>Hundredths of a per cent, 1 to 10,000; null where it is an amount.</summary>
    public int? PercentBasisPoints { get; private set; }

    /// <summary>Minor units counted as the prices are; null where it is a percentage.</summary>
    public long? AmountMinor { get; private set; }

    /// <summary>First business day on which it holds; null: from the beginning.</summary>
    public DateOnly? ValidFrom { get; private set; }

    /// <summary>Last business day on which it holds; null: until it is ended.</summary>
    public DateOnly? ValidTo { get; private set; }

    /// <summary>How often it can be used in all; null: as often as wanted.</summary>
    public int? MostUses { get; private set; }

    /// <summary>How many sales that stand have used it.</summary>
    public int Used { get; private set; }

    /// <summary>Least that the whole bag must come to before the discount, minor units; 0: any.</summary>
    public long LeastTotalMinor { get; private set; }

    /// <summary>Categories it is given on, apart by commas; empty: all.</summary>
    public string Categories { get; private set; } = "";

    public DateTimeOffset MadeAt { get; private set; }

    public Guid PersonId { get; private set; }

    /// <summary>When a manager ended it.</summary>
    public DateTimeOffset? EndedAt { get; private set; }

    /// <summary>A voucher on its terms.</summary>
    /// <exception cref="ArgumentException">The terms give neither a percentage nor an amount, or both.</exception>
    public static Voucher Of(Guid id, Actor actor, DateTimeOffset madeAt, VoucherTerms terms)
    {
        ArgumentNullException.ThrowIfNull(terms);
        if (terms.PercentBasisPoints is null == terms.AmountMinor is null)
        {
            throw new ArgumentException("A voucher gives a percentage or an amount.", nameof(terms));
        }

        return new Voucher
        {
            Id = id,
            ShopId = actor.ShopId,
            Code = CodeOf(terms.Code),
            PercentBasisPoints = terms.PercentBasisPoints,
            AmountMinor = terms.AmountMinor,
            ValidFrom = terms.ValidFrom,
            ValidTo = terms.ValidTo,
            MostUses = terms.MostUses,
            LeastTotalMinor = terms.LeastTotalMinor,
            Categories = string.Join(',', terms.Categories),
            MadeAt = madeAt,
            PersonId = actor.PersonId,
        };
    }

    /// <summary>A code as it is looked for: typed small or large, with spaces or without, it is the same.</summary>
    public static string CodeOf(string typed) => string.Concat(typed.Where(sign => !char.IsWhiteSpace(sign))).ToUpperInvariant();

    /// <summary>Ends it; sales that used it stand.</summary>
    public void End(DateTimeOffset at) => EndedAt ??= at;

    /// <summary>Lets it go on, because ending it was a slip.</summary>
    public void Restore() => EndedAt = null;

    /// <summary>Whether it is given on things of a category.</summary>
    public bool IsGivenOn(string category) => Categories.Length == 0 || Categories.Split(',').Contains(category, StringComparer.Ordinal);
}

internal sealed class VoucherConfiguration : IEntityTypeConfiguration<Voucher>
{
    public void Configure(EntityTypeBuilder<Voucher> builder)
    {
        builder.ToTable("Vouchers", table =>
        {
            table.HasCheckConstraint("CK_Vouchers_Value", "(\"PercentBasisPoints\" BETWEEN 1 AND 10000 AND \"AmountMinor\" IS NULL) OR (\"PercentBasisPoints\" IS NULL AND \"AmountMinor\" > 0)");
            table.HasCheckConstraint("CK_Vouchers_Used", "\"Used\" >= 0 AND (\"MostUses\" IS NULL OR \"Used\" <= \"MostUses\")");
        });
        builder.Property(voucher => voucher.Code).HasMaxLength(AskedDiscount.LongestCode);
        builder.Property(voucher => voucher.Categories).HasMaxLength(400);
        builder.HasIndex(voucher => new { voucher.ShopId, voucher.Code }).IsUnique();
    }
}
