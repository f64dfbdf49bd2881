using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>Anything that can be sold: one size of a shoe, a pad, a length of ribbon, sewing.</summary>
public sealed class Item : IShopRow
{
    private Item()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    /// <summary>The shop's own code of it; unique in the shop.</summary>
    public string Code { get; private set; } = "";

    public string Name { get; private set; } = "";

    /// <summary>One of <see cref="ItemCategories"/>, or another word of the shop's own.</summary>
    public string Category { get; private set; } = "";

    /// <summary>Price in minor units of the shop's currency; null where it has none yet, and then it cannot be sold.</summary>
    public long? PriceMinor { get; private set; }

    /// <summary>Whether somebody set the price by hand. A file that still says what it said before leaves it alone.</summary>
    public bool PricedByHand { get; private set; }

    /// <summary>The price that the catalogue gave, in minor units, while another was set by hand.</summary>
    public long? CataloguePriceMinor { get; private set; }

    /// <summary>Global trade item number, 8 to 14 digits, where it has one.</summary>
    public string? Gtin { get; private set; }

    /// <summary>Whether pieces of it are counted. A service is not.</summary>
    public bool TracksStock { get; private set; }

    /// <summary>Id of the pad in the fit model, where it is one.</summary>
    public string? PadId { get; private set; }

    /// <exception cref="ArgumentOutOfRangeException"><paramref name="priceMinor"/> is negative.</exception>
    public static Item Of(
        Guid id,
        Guid shopId,
        string code,
        string name,
        string category,
        long? priceMinor = null,
        string? gtin = null,
        bool tracksStock = true,
        string? padId = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(code);
        ArgumentException.ThrowIfNullOrWhiteSpace(category);
        var item = new Item { Id = id, ShopId = shopId, Code = code.Trim(), Category = category, TracksStock = tracksStock, PadId = padId };
        item.Change(name, priceMinor, gtin);
        return item;
    }

    /// <summary>Sets a price by hand.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="priceMinor"/> is negative.</exception>
    public void PriceByHand(long priceMinor)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(priceMinor);
        CataloguePriceMinor = PriceInCatalogue;
        PricedByHand = true;
        PriceMinor = priceMinor;
    }

    /// <summary>Goes back to a price that was in force before; by hand or as the catalogue has it.</summary>
    public void PriceAsBefore(long? priceMinor)
    {
        var inCatalogue = PriceInCatalogue;
        PricedByHand = priceMinor != inCatalogue;
        CataloguePriceMinor = PricedByHand ? inCatalogue : null;
        PriceMinor = priceMinor;
    }

    /// <summary>What the last catalogue file said of its price, in minor units.</summary>
    public long? PriceInCatalogue => PricedByHand ? CataloguePriceMinor : PriceMinor;

    /// <summary>Changes what may change while the code stays.</summary>
    /// <remarks>The price is the catalogue's: one that was set by hand is kept as long as the catalogue says what it said before.</remarks>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="priceMinor"/> is negative.</exception>
    public void Change(string name, long? priceMinor, string? gtin)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentOutOfRangeException.ThrowIfNegative(priceMinor ?? 0);
        Name = name.Trim();
        if (!PricedByHand || priceMinor != CataloguePriceMinor)
        {
            (PriceMinor, PricedByHand, CataloguePriceMinor) = (priceMinor, false, null);
        }

        Gtin = gtin;
    }
}

internal sealed class ItemConfiguration : IEntityTypeConfiguration<Item>
{
    public void Configure(EntityTypeBuilder<Item> builder)
    {
        builder.ToTable("Items", table => table.HasCheckConstraint("CK_Items_Price", "\"PriceMinor\" >= 0"));
        builder.Ignore(item => item.PriceInCatalogue);
        builder.Property(item => item.Code).HasMaxLength(100);
        builder.Property(item => item.Name).HasMaxLength(300);
        builder.Property(item => item.Category).HasMaxLength(40);
        builder.Property(item => item.Gtin).HasMaxLength(14);
        builder.Property(item => item.PadId).HasMaxLength(40);
        builder.HasIndex(item => new { item.ShopId, item.Code }).IsUnique();
        builder.HasIndex(item => new { item.ShopId, item.Gtin });
        builder.HasIndex(item => new { item.ShopId, item.Category });
    }
}
