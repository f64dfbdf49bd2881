using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.Sentences;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Features.Fittings;

namespace ShopFit.Web.Features.Api;

/// <summary>Answers a request for a shortlist, or for the next pair, that was read and found good.</summary>
/// <remarks>The same request, shoes and numbers give the same answer, byte for byte: nothing here asks a clock or a culture.</remarks>
internal static class ShortlistAnswer
{
    // Far below what is known of a foot or a chance, and short enough to read.
    private const int DecimalsOfChance = 4;
    private const int DecimalsOfEase = 2;

    /// <summary>Reports pairs that were tried on and are not on file, or of another kind.</summary>
    public static void CheckTryOns(ShortlistAsked asked, ShoesOnFile shoes, RequestProblems problems)
    {
        for (var index = 0; index < asked.TryOns.Count; index++)
        {
            var sku = asked.TryOns[index].Sku;
            if (shoes.Find(sku) is not { } shoe)
            {
                problems.Add($"/tryOns/{index}/sku", $"No pair with the code \"{sku}\" is on file.");
            }
            else if (shoe.Kind != asked.Kind)
            {
                problems.Add($"/tryOns/{index}/sku", $"The pair \"{sku}\" is of the kind {shoe.Kind}. Allowed: pairs of the kind {asked.Kind}.");
            }
        }
    }

    /// <summary>The pairs most likely to fit.</summary>
    public static ShortlistResponse Of(ShortlistAsked asked, ShoesOnFile shoes, CancellationToken cancellationToken) =>
        Of(asked, shoes, question =>
        {
            var list = Shortlist.Of(question, cancellationToken);
            return (list, [.. list.Pairs.Select(pair => FitSentences.Reason(pair, question.Defaults))]);
        });

    /// <summary>The pairs to try next, of those that were not tried yet.</summary>
    public static ShortlistResponse NextOf(ShortlistAsked asked, ShoesOnFile shoes, CancellationToken cancellationToken) =>
        Of(asked, shoes, question =>
        {
            var next = NextPair.Of(question, cancellationToken);
            return (next.List, [.. next.List.Pairs.Zip(next.Steps, (pair, step) => FitSentences.NextReason(pair, step, question.Defaults))]);
        });

    private static ShortlistResponse Of(ShortlistAsked asked, ShoesOnFile shoes, Func<ShortlistQuestion, (Shortlist List, IReadOnlyList<string> Reasons)> answer)
    {
        double? age = asked.BirthDate is { } born ? Age.InYears(born, asked.AsOf) : null;
        if (PointeAge.IsForLater(asked.Kind, age))
        {
            return new ShortlistResponse { Pairs = [], ChanceOnShelf = 0, Notices = [NoticeOf(ShortlistNotices.TooYoung())] };
        }

        var read = FeetBelief.Prior(asked.Sex, age, shoes.Numbers).After(asked.Readings, shoes.Numbers);
        var question = new ShortlistQuestion
        {
            Feet = read.Belief,
            Shoes = shoes.OfKind(asked.Kind, asked.TryOns.Select(tryOn => tryOn.Sku)),
            Kind = asked.Kind,
            From = asked.From,
            Limit = asked.Limit,
            TryOns = asked.TryOns,
            FirstPair = asked.FirstPair,
            Defaults = shoes.Numbers.ForKind(asked.Kind),
        };
        var (list, reasons) = answer(question);
        var notices = ShortlistNotices.Of(new ShortlistFacts(
            asked.Kind, age, asked.Sex, asked.FirstPair, asked.Readings, read.Doubts, question.Shoes.Count, list.ChanceOnShelf));
        return new ShortlistResponse
        {
            Pairs = [.. list.Pairs.Zip(reasons, PairOf)],
            ChanceOnShelf = Math.Round(list.ChanceOnShelf, DecimalsOfChance),
            Notices = [.. notices.Select(NoticeOf)],
        };
    }

    private static AnsweredPair PairOf(PairFit pair, string reason) => new()
    {
        Sku = pair.Shoe.Sku,
        ChanceOfFit = Math.Round(pair.ChanceOfFit, DecimalsOfChance),
        Score = Math.Round(pair.Score, DecimalsOfChance),
        OnShelf = pair.Shoe.OnShelf,
        Pads = [.. pair.Pads.Select(pad => new PadOfFoot { Foot = IdOf(pad.Foot), Pad = pad.Pad })],
        Criteria = [.. pair.Criteria.Select(place => new AnsweredCriterion
        {
            Foot = IdOf(place.Foot),
            Criterion = place.Criterion.Id,
            Ease = Math.Round(place.Ease, DecimalsOfEase),
            Low = Math.Round(place.Low, DecimalsOfEase),
            High = Math.Round(place.High, DecimalsOfEase),
            Desirability = Math.Round(place.Desirability, DecimalsOfChance),
        })],
        Reason = reason,
    };

    private static AnsweredNotice NoticeOf(ShortlistNotice notice) => new() { Code = notice.Code, Text = notice.Text };

    private static string IdOf(Side foot) => foot == Side.Left ? "left" : "right";
}
