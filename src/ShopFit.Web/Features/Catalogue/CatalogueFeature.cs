namespace ShopFit.Web.Features.Catalogue;

public static class CatalogueFeature
{
    /// <summary>What the shop can sell, and how it comes on file.</summary>
    public static IServiceCollection AddCatalogue(this IServiceCollection services) => services
        .AddSingleton<ShoesInMemory>()
        .AddScoped<CatalogueQueries>()
        .AddScoped<CheckCatalogue>()
        .AddScoped<DescribeModel>()
        .AddScoped<ImportCatalogue>()
        .AddScoped<LabelQueries>()
        .AddScoped<MapLabels>()
        .AddScoped<MeasureSample>()
        .AddScoped<ModelQueries>()
        .AddScoped<SampleQueries>()
        .AddScoped<SetPrice>()
        .AddScoped<SizeQueries>()
        .AddScoped<TakeBackPrice>()
        .AddScoped<RestoreLabelMapping>()
        .AddScoped<RestoreSample>()
        .AddScoped<WithdrawLabelMapping>()
        .AddScoped<WithdrawSample>();
}
