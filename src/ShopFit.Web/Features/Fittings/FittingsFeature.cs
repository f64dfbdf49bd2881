using ShopFit.Web.Features.Arrival;

namespace ShopFit.Web.Features.Fittings;

/// <summary>Fittings: arrival, feet, shortlist, decision.</summary>
public static class FittingsFeature
{
    public static IServiceCollection AddFittings(this IServiceCollection services) => services
        .AddScoped<OpenFitting>()
        .AddScoped<RecordReading>()
        .AddScoped<WithdrawReading>()
        .AddScoped<RestoreReading>()
        .AddScoped<RecordWalk>()
        .AddScoped<WithdrawWalk>()
        .AddScoped<RecordTryOn>()
        .AddScoped<RestoreTryOn>()
        .AddScoped<WithdrawTryOn>()
        .AddScoped<TryOnQueries>()
        .AddScoped<SetFittingStart>()
        .AddScoped<AnswerAtArrival>()
        .AddScoped<ChooseInFitting>()
        .AddScoped<DecideFitting>()
        .AddScoped<KeepHabits>()
        .AddScoped<HabitQueries>()
        .AddScoped<EarlierSentences>()
        .AddScoped<ReopenFitting>()
        .AddScoped<FeetQueries>()
        .AddScoped<ShortlistQueries>()
        .AddScoped<DecisionQueries>()
        .AddScoped<FittingQueries>();
}
