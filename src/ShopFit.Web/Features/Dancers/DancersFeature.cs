namespace ShopFit.Web.Features.Dancers;

/// <summary>Dancers and whoever answers for them.</summary>
public static class DancersFeature
{
    public static IServiceCollection AddDancers(this IServiceCollection services) => services
        .AddSingleton<DancersInMemory>()
        .AddScoped<RegisterDancer>()
        .AddScoped<DescribeDancer>()
        .AddScoped<SayAge>()
        .AddScoped<RecordConsent>()
        .AddScoped<WithdrawConsent>()
        .AddScoped<RestoreConsent>()
        .AddScoped<DancerQueries>()
        .AddScoped<HistoryQueries>();
}
