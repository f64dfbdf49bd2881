using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Scoring;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;

namespace ShopFit.Web.Features.Settings;

/// <summary>What a change of fit numbers would do to the shortlist of one foot, before it is saved. Reads only.</summary>
/// <remarks>
/// One foot cannot stand for all, so the page says which foot it was: a grown woman's of mean length and breadth
/// (ANSUR II 2012), both read with the gauge.
/// </remarks>
public sealed class FitPreview(ShopContexts contexts, CatalogueQueries catalogue)
{
    /// <summary>So many pairs are compared.</summary>
    public const int Pairs = 10;

    // Their forms were worked out with the numbers in force; to say more would be to guess.
    private static readonly string[] FormsFollow = ["labels", "allowances"];

    /// <summary>The two shortlists side by side; null where nothing honest can be said.</summary>
    /// <param name="kind">The kind of footwear.</param>
    /// <param name="changes">The numbers that would change.</param>
    /// <param name="cancellationToken">Gives up.</param>
    public async Task<SeenPreview?> SeeAsync(string kind, IReadOnlyList<FitNumberChange> changes, CancellationToken cancellationToken)
    {
        if (changes.Any(change => AdjustableNumbers.Find(change.Path) is not { } number || FormsFollow.Contains(number.Group, StringComparer.Ordinal)))
        {
            return null;
        }

        await using var db = await contexts.OpenAsync(cancellationToken);
        var own = OwnFitNumbers.Read(await db.Shops.Where(shop => shop.Id == db.ShopId).Select(shop => shop.FitOverridesJson).SingleAsync(cancellationToken))
            .Values.ToDictionary(StringComparer.Ordinal);
        foreach (var change in changes)
        {
            own[change.Path] = change.Value ?? AdjustableNumbers.Find(change.Path)!.Default;
        }

        var (then, problems) = AdjustableNumbers.Over(own);
        if (problems.Any(problem => problem.Paths.Intersect(changes.Select(change => change.Path), StringComparer.Ordinal).Any()))
        {
            return null;
        }

        var shoes = await catalogue.ShoesOnFileAsync(cancellationToken);
        var onShelf = shoes.OfKind(kind).Where(shoe => shoe.OnShelf).ToList();
        return onShelf.Count == 0 ? null : await Task.Run(
            () =>
            {
                var before = FirstPairs(kind, onShelf, shoes.Numbers, cancellationToken);
                var after = FirstPairs(kind, onShelf, then, cancellationToken);
                return new SeenPreview(
                    after.Count,
                    after.Count(pair => !before.Any(other => other.Shoe.Sku == pair.Shoe.Sku)),
                    before[0].ChanceOfFit,
                    after[0].ChanceOfFit,
                    LengthRead,
                    BreadthRead);
            },
            cancellationToken);
    }

    private static double LengthRead => Math.Round(SurveyedFeet.Women.Means[0]);

    private static double BreadthRead => Math.Round(SurveyedFeet.Women.Means[2]);

    private static IReadOnlyList<PairFit> FirstPairs(string kind, IReadOnlyList<ShoeOnFile> shoes, FitDefaults numbers, CancellationToken cancellationToken)
    {
        var readings = Enum.GetValues<Side>().SelectMany(side => new[] { Reading.Of(side, Trait.Length, LengthRead), Reading.Of(side, Trait.BallBreadth, BreadthRead) }).ToList();
        var feet = FeetBelief.Prior(Sex.Female, ageYears: null, numbers).After(readings, numbers).Belief;
        return Shortlist.Of(new ShortlistQuestion { Feet = feet, Shoes = shoes, Kind = kind, Limit = Pairs, Defaults = numbers }, cancellationToken).Pairs;
    }
}

/// <summary>How a shortlist of the shelf would change.</summary>
/// <param name="Pairs">How many pairs were compared.</param>
/// <param name="Others">How many of them would be others.</param>
/// <param name="ChanceNow">Chance that the first pair fits, with the numbers in force.</param>
/// <param name="ChanceThen">The same with the changed numbers.</param>
/// <param name="Length">Length of the foot, mm.</param>
/// <param name="Breadth">Breadth of the foot across the joints, mm.</param>
public sealed record SeenPreview(int Pairs, int Others, double ChanceNow, double ChanceThen, double Length, double Breadth);
