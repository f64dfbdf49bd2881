using System.Text.Json;
using System.Text.Json.Serialization;
using ShopFit.Fitting.Scoring;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Sales;

namespace ShopFit.Web.Features.Fittings;

/// <summary>What was shown of a pair when its fitting was closed, kept so that it can be compared with what became of it.</summary>
internal static class FitAtClosing
{
    private static readonly JsonSerializerOptions Format = new(JsonSerializerDefaults.Web)
    {
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
    };

    /// <summary>Judges the pair with the pads that the fitter chose.</summary>
    /// <param name="question">The question of the fitting.</param>
    /// <param name="shoes">The sizes on file.</param>
    /// <param name="pair">The pair.</param>
    /// <param name="pads">The fitter's pads; null: those that do best.</param>
    public static PairFit Judge(FittingQuestion question, ShoesOnFile shoes, ShoeDetails pair, IReadOnlyList<PadUnderFoot>? pads)
    {
        // Only this pair is judged, and what was tried with it; the rest of the catalogue would be prepared for nothing.
        var tried = question.Question.TryOns.Select(tryOn => shoes.Find(tryOn.Sku)!.OnFile);
        var asked = question.Question with { Shoes = [.. tried.Append(pair.OnFile).DistinctBy(shoe => shoe.Sku)] };
        var best = Shortlist.Judge(asked, pair.OnFile);
        return pads is null ? best : ChosenFit.Of(best, pads, shoes.Numbers);
    }

    /// <summary>The pair that was proposed first when the fitter chose, judged as it is at closing; null where there was none.</summary>
    public static PairFit? Suggested(FittingQuestion question, ShoesOnFile shoes, FittingChoice? choice) =>
        choice?.SuggestedSizeId is { } first && shoes.Find(first) is { } pair && pair.Kind == question.Question.Kind ? Judge(question, shoes, pair, pads: null) : null;

    public static FittingSnapshot Snapshot(Actor actor, Guid fittingId, DateTimeOffset now, ShoesOnFile shoes, PairFit fit, PairFit? suggested) => FittingSnapshot.Of(
        Guid.CreateVersion7(now),
        actor.ShopId,
        fittingId,
        shoes.Numbers.Fingerprint(),
        offsetsVersion: 0,
        fit.ChanceOfFit,
        fit.Score,
        PadsAsJson.Write(fit.Pads),
        JsonSerializer.Serialize(
            fit.Criteria.Select(place => new { place.Foot, Criterion = place.Criterion.Id, place.Ease, place.Low, place.High, place.Desirability }),
            Format)).Beside(suggested is null ? null : shoes.Find(suggested.Shoe.Sku)?.SizeId, suggested?.ChanceOfFit);
}
