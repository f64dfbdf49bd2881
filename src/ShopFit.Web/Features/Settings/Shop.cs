using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Fitting.Defaults;

namespace ShopFit.Web.Features.Settings;

/// <summary>A shop: its name and address on the papers, and how it counts money, time and lengths.</summary>
public sealed class Shop
{
    private const char BetweenKinds = ' ';

    private Shop()
    {
    }

    public Guid Id { get; private set; }

    public string Name { get; private set; } = "";

    public string Address { get; private set; } = "";

    /// <summary>How a family reaches the shop, as printed: telephone, mail or both.</summary>
    public string Contact { get; private set; } = "";

    /// <summary>IANA name of its time zone.</summary>
    public string TimeZone { get; private set; } = "Etc/UTC";

    /// <summary>ISO 4217 code of its currency.</summary>
    public string Currency { get; private set; } = "EUR";

    /// <summary>"A4" or "Letter".</summary>
    public string Paper { get; private set; } = "A4";

    /// <summary>"mm" or "in".</summary>
    public string Units { get; private set; } = "mm";

    /// <summary>Id of the size system that is offered first.</summary>
    public string SizeSystemShown { get; private set; } = "eu";

    public bool PricesIncludeTax { get; private set; } = true;

    /// <summary>Days in which unworn goods may come back.</summary>
    public int ReturnDays { get; private set; } = 14;

    /// <summary>Most that a fitter may take off a bag without a manager, hundredths of a per cent of it. 10 % at first (common practice, no source).</summary>
    public int FitterDiscountLimitBasisPoints { get; private set; } = 1_000;

    /// <summary>The fit numbers that the shop has changed, as a JSON object of values by path; null where it has changed none.</summary>
    public string? FitOverridesJson { get; private set; }

    /// <summary>Goes up with every change of the settings, so that two managers who change them at once are told of each other.</summary>
    public long Version { get; private set; }

    /// <summary>The kinds of footwear that the shop fits, in the order in which they are offered: all that the fit numbers know, until some are left out.</summary>
    public IReadOnlyList<string> Kinds => [.. AllKinds.Except(KindsLeftOut.Split(BetweenKinds), StringComparer.Ordinal)];

    /// <summary>Ids of the kinds that the shop does not fit, parted by spaces. Kept this way round, so that a new kind is on until somebody leaves it out.</summary>
    internal string KindsLeftOut { get; private set; } = "";

    private static IEnumerable<string> AllKinds => FitDefaults.Standard.Kinds.Select(kind => kind.Id);

    /// <summary>Goes up with every change of catalogue or stock, so that what was read of them may be kept until then; the catalogue has its upper half.</summary>
    public long ShelfVersion { get; private set; }

    /// <summary>Goes up with every change of a dancer, a guardian or a studio, so that what was read of them may be kept until then.</summary>
    public long DancersVersion { get; private set; }

    /// <summary>A new shop with settings that do no harm until somebody looks at them.</summary>
    public static Shop Of(Guid id, string name)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        return new Shop { Id = id, Name = name.Trim() };
    }

    /// <summary>Changes what stands on its papers.</summary>
    public void Rename(string name, string address, string contact)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        Name = name.Trim();
        Address = address.Trim();
        Contact = contact.Trim();
    }

    /// <summary>Changes how it counts.</summary>
    public void Count(string timeZone, string currency, string paper, string units, string sizeSystemShown, bool pricesIncludeTax, int returnDays)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(returnDays);
        TimeZone = TimeZoneInfo.FindSystemTimeZoneById(timeZone).Id;
        Currency = currency;
        Paper = paper is "A4" or "Letter" ? paper : throw new ArgumentException("Paper is A4 or Letter.", nameof(paper));
        Units = units is "mm" or "in" ? units : throw new ArgumentException("Units are mm or in.", nameof(units));
        SizeSystemShown = sizeSystemShown;
        PricesIncludeTax = pricesIncludeTax;
        ReturnDays = returnDays;
    }

    /// <summary>Changes which kinds of footwear it fits.</summary>
    /// <exception cref="ArgumentException">None of them is a kind that the fit numbers know.</exception>
    public void FitKinds(IReadOnlyCollection<string> kinds)
    {
        var leftOut = AllKinds.Except(kinds, StringComparer.Ordinal).ToList();
        KindsLeftOut = leftOut.Count < AllKinds.Count()
            ? string.Join(BetweenKinds, leftOut)
            : throw new ArgumentException("A shop fits at least one kind of footwear.", nameof(kinds));
    }

    /// <summary>Notes that a manager has changed the settings.</summary>
    public void NoteChange() => Version++;

    /// <summary>Changes how much of a bag a fitter may take off without a manager.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is negative or above 100 %.</exception>
    public void LimitFitterDiscount(int basisPoints)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(basisPoints);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(basisPoints, 10_000);
        FitterDiscountLimitBasisPoints = basisPoints;
    }

    /// <summary>Changes the fit numbers; null goes back to the standard ones.</summary>
    public void OverrideFit(string? fitOverridesJson) => FitOverridesJson = fitOverridesJson;
}

internal sealed class ShopConfiguration : IEntityTypeConfiguration<Shop>
{
    public void Configure(EntityTypeBuilder<Shop> builder)
    {
        builder.ToTable("Shops", table =>
        {
            table.HasCheckConstraint("CK_Shops_Paper", "\"Paper\" IN ('A4', 'Letter')");
            table.HasCheckConstraint("CK_Shops_Units", "\"Units\" IN ('mm', 'in')");
            table.HasCheckConstraint("CK_Shops_ReturnDays", "\"ReturnDays\" >= 0");
            table.HasCheckConstraint("CK_Shops_FitterDiscountLimit", "\"FitterDiscountLimitBasisPoints\" BETWEEN 0 AND 10000");
        });
        builder.Property(shop => shop.Id).ValueGeneratedNever();
        builder.Property(shop => shop.Name).HasMaxLength(200);
        builder.Property(shop => shop.Address).HasMaxLength(500);
        builder.Property(shop => shop.Contact).HasMaxLength(200);
        builder.Property(shop => shop.TimeZone).HasMaxLength(60);
        builder.Property(shop => shop.Currency).HasMaxLength(3);
        builder.Property(shop => shop.Paper).HasMaxLength(10);
        builder.Property(shop => shop.Units).HasMaxLength(2);
        builder.Property(shop => shop.FitterDiscountLimitBasisPoints).HasDefaultValue(1_000);
        builder.Property(shop => shop.SizeSystemShown).HasMaxLength(20);
        builder.Property(shop => shop.KindsLeftOut).HasMaxLength(200);
    }
}
