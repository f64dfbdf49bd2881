using System.Reflection;
using Microsoft.AspNetCore.DataProtection.EntityFrameworkCore;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Identity.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Features.Arrival;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Features.Fittings;
using ShopFit.Web.Features.Papers;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Sales;
using ShopFit.Web.Features.Settings;
using ShopFit.Web.Features.Shelf;
using ShopFit.Web.Features.Studios;

namespace ShopFit.Web.Data;

/// <summary>The whole database. Each table is configured beside its feature.</summary>
/// <remarks>
/// Rows of a shop are seen only by a context that has been told its <see cref="ShopId"/>; until then there are none.
/// Open one through <see cref="ShopContexts"/> to read and <see cref="ShopWrites"/> to change.
/// </remarks>
public class ShopDbContext : IdentityDbContext<Person, IdentityRole<Guid>, Guid>, IDataProtectionKeyContext
{
    /// <summary>Name of the filter that keeps shops apart.</summary>
    public const string ShopFilter = "shop";

    public ShopDbContext(DbContextOptions<ShopDbContext> options)
        : base(options)
    {
    }

    protected ShopDbContext(DbContextOptions options)
        : base(options)
    {
    }

    /// <summary>The shop whose rows are seen.</summary>
    public Guid ShopId { get; set; }

    public DbSet<Shop> Shops => Set<Shop>();

    public DbSet<SettingChange> SettingChanges => Set<SettingChange>();

    public DbSet<TaxRate> TaxRates => Set<TaxRate>();

    public DbSet<ApiKey> ApiKeys => Set<ApiKey>();

    public DbSet<LabelMapping> LabelMappings => Set<LabelMapping>();

    public DbSet<Maker> Makers => Set<Maker>();

    public DbSet<MeasuredSample> MeasuredSamples => Set<MeasuredSample>();

    public DbSet<ShoeModel> ShoeModels => Set<ShoeModel>();

    public DbSet<Item> Items => Set<Item>();

    public DbSet<PriceChange> PriceChanges => Set<PriceChange>();

    public DbSet<ShoeSize> ShoeSizes => Set<ShoeSize>();

    public DbSet<ShelfPlace> ShelfPlaces => Set<ShelfPlace>();

    public DbSet<StockLevel> StockLevels => Set<StockLevel>();

    public DbSet<LedgerLine> LedgerLines => Set<LedgerLine>();

    public DbSet<Guardian> Guardians => Set<Guardian>();

    public DbSet<Dancer> Dancers => Set<Dancer>();

    public DbSet<Consent> Consents => Set<Consent>();

    public DbSet<ArrivalAnswer> ArrivalAnswers => Set<ArrivalAnswer>();

    public DbSet<FitterHabits> FitterHabits => Set<FitterHabits>();

    public DbSet<FittingRecord> Fittings => Set<FittingRecord>();

    public DbSet<FittingReading> FittingReadings => Set<FittingReading>();

    public DbSet<FittingTryOn> FittingTryOns => Set<FittingTryOn>();

    public DbSet<FittingWalk> FittingWalks => Set<FittingWalk>();

    public DbSet<FittingChoice> FittingChoices => Set<FittingChoice>();

    public DbSet<FittingDecision> FittingDecisions => Set<FittingDecision>();

    public DbSet<FittingSnapshot> FittingSnapshots => Set<FittingSnapshot>();

    public DbSet<Sale> Sales => Set<Sale>();

    public DbSet<SaleDraft> SaleDrafts => Set<SaleDraft>();

    public DbSet<SaleDraftBag> SaleDraftBags => Set<SaleDraftBag>();

    public DbSet<SaleLine> SaleLines => Set<SaleLine>();

    public DbSet<SaleReceipt> SaleReceipts => Set<SaleReceipt>();

    public DbSet<SaleReturnLine> SaleReturnLines => Set<SaleReturnLine>();

    public DbSet<SaleReturn> SaleReturns => Set<SaleReturn>();

    public DbSet<Voucher> Vouchers => Set<Voucher>();

    public DbSet<Paper> Papers => Set<Paper>();

    public DbSet<Studio> Studios => Set<Studio>();

    public DbSet<StudioModelWish> StudioModelWishes => Set<StudioModelWish>();

    public DbSet<CommandRecord> Commands => Set<CommandRecord>();

    public DbSet<DataProtectionKey> DataProtectionKeys => Set<DataProtectionKey>();

    protected override void OnModelCreating(ModelBuilder builder)
    {
        base.OnModelCreating(builder);
        builder.ApplyConfigurationsFromAssembly(typeof(ShopDbContext).Assembly);

        var keepShopsApart = typeof(ShopDbContext).GetMethod(nameof(KeepShopsApart), BindingFlags.Instance | BindingFlags.NonPublic)!;
        foreach (var type in builder.Model.GetEntityTypes().Select(entity => entity.ClrType).Where(type => type.IsAssignableTo(typeof(IShopRow))).ToList())
        {
            keepShopsApart.MakeGenericMethod(type).Invoke(this, [builder]);
        }
    }

    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder) =>
        configurationBuilder.Properties<DateTimeOffset>().HaveConversion<UtcConverter>();

    private void KeepShopsApart<TRow>(ModelBuilder builder)
        where TRow : class, IShopRow
    {
        builder.Entity<TRow>().Property(row => row.Id).ValueGeneratedNever();
        builder.Entity<TRow>().HasQueryFilter(ShopFilter, row => row.ShopId == ShopId);
    }
}
