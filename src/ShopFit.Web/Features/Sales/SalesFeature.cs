namespace ShopFit.Web.Features.Sales;

public static class SalesFeature
{
    /// <summary>Selling, and what was sold.</summary>
    public static IServiceCollection AddSales(this IServiceCollection services) => services
        .AddScoped<BagQueries>()
        .AddScoped<SaleQueries>()
        .AddScoped<SaleRefusals>()
        .AddScoped<EndVoucher>()
        .AddScoped<KeepBag>()
        .AddScoped<LimitFitterDiscount>()
        .AddScoped<MakeVoucher>()
        .AddScoped<RestoreSale>()
        .AddScoped<RestoreVoucher>()
        .AddScoped<ReturnGoods>()
        .AddScoped<SellFitting>()
        .AddScoped<SellGoods>()
        .AddScoped<VoidSale>()
        .AddScoped<VoucherQueries>()
        .AddScoped<WithdrawReturn>();
}
