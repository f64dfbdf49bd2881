using System.Globalization;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.Sentences;
using ShopFit.Fitting.Shoes;
using ShopFit.Sheets.TakeHome;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Features.Settings;
using ShopFit.Web.Shared;

namespace ShopFit.Web.Features.Papers;

/// <summary>Turns a fitting that was sold into the facts of its take-home sheet.</summary>
internal static class TakeHomeSheetFacts
{
    /// <summary>Rows of the sheet's "how they sit": five read best.</summary>
    private const int MostCriteria = 5;

    /// <summary>A look after about three weeks of class tells whether the fit held (common practice, no source).</summary>
    private const int DaysToLook = 21;

    /// <summary>The teacher looks at a first pair by day 10, while it can still come back (common practice, no source).</summary>
    private const int DaysToTeacher = 10;

    /// <summary>Growing feet are measured again after three months (common practice, no source).</summary>
    private const int MonthsToMeasure = 3;

    /// <summary>Gathered girth over the breadth that is drawn inside the shoe, as the outlines take it.</summary>
    private const double GirthToBreadth = 2.46;

    /// <summary>The facts, in the dancer's language as far as the shop speaks it.</summary>
    public static TakeHomeSheet Of(SoldFitting sold) => PaperLanguage.In(sold.Dancer, sold.Shop, language => Write(sold, language));

    private static TakeHomeSheet Write(SoldFitting sold, CultureInfo language)
    {
        var day = ShopTime.Of(sold.Shop).Day(sold.At);
        var fullName = sold.Dancer?.Name ?? PaperWords.Say("Dancer");
        var growing = sold.Fitting.AgeYears < Age.Grown;
        var pointe = sold.Pair.Kind == FootwearKinds.Pointe;
        return new TakeHomeSheet
        {
            Language = language.Name,
            Paper = sold.Shop.Paper == "Letter" ? PaperSize.Letter : PaperSize.A4,
            Units = sold.Shop.Units == "in" ? ShownUnit.Inches : ShownUnit.Millimetres,
            Date = day,
            Fitter = sold.Fitter,
            Dancer = new SheetDancer
            {
                FullName = fullName,
                FirstName = sold.Dancer is null ? fullName : sold.Dancer.KnownAs is { Length: > 0 } knownAs ? knownAs : fullName.Split(' ')[0],
                Teacher = NullIfEmpty(sold.Dancer?.Teacher),
                Studio = NullIfEmpty(sold.Studio),
                FirstPair = pointe && sold.Fitting.FirstPair,
            },
            Shop = new SheetShop { Name = sold.Shop.Name, Address = NullIfEmpty(sold.Shop.Address), Contact = NullIfEmpty(sold.Shop.Contact) },
            Pair = new SheetPair
            {
                Kind = sold.Pair.Kind,
                Maker = sold.Pair.Maker,
                Model = sold.Pair.Model,
                Size = sold.Pair.LabelWithoutShank,
                Shank = NullIfEmpty(sold.Pair.ShankName),
                Construction = ConstructionOf(sold.Pair),
                Inside = InsideOf(sold.Pair.OnFile.Form),
            },
            Left = FootOf(sold, Side.Left),
            Right = FootOf(sold, Side.Right),
            Pads = [.. sold.Pads.OrderBy(pad => pad.Foot).Select((pad, index) => PadOf(pad, index + 1))],
            Criteria = CriteriaOf(sold),
            Because = NullIfEmpty(sold.Why) ?? BecauseOf(sold),
            PairsTried = sold.PairsTried,
            Sewing = !pointe && sold.Pair.Kind != FootwearKinds.DemiPointe ? SheetSewing.Nothing : sold.SewnByShop ? SheetSewing.ByShop : SheetSewing.AtHome,
            ReturnUntil = sold.Shop.ReturnDays > 0 ? day.AddDays(sold.Shop.ReturnDays) : null,
            TeacherLookBy = pointe && sold.Fitting.FirstPair ? day.AddDays(Math.Min(DaysToTeacher, Math.Max(1, sold.Shop.ReturnDays))) : null,
            LookOn = day.AddDays(DaysToLook),
            MeasureAgainOn = growing ? day.AddMonths(MonthsToMeasure) : null,
            FitterDecided = NullIfEmpty(sold.FitterDecided),
        };
    }

    private static BoxConstruction ConstructionOf(ShoeDetails pair) => pair.Construction switch
    {
        "moulded" => BoxConstruction.Moulded,
        "paste" => BoxConstruction.Paste,
        "soft" => BoxConstruction.None,
        _ => pair.Kind == FootwearKinds.Pointe ? BoxConstruction.Paste : BoxConstruction.None,
    };

    private static SheetShoe InsideOf(ShoeForm form) => new()
    {
        Length = form[FormPart.Length],
        BoxBreadth = form[FormPart.BoxBreadth],
        BallGirth = form[FormPart.BallGirth],
        HeelBreadth = form[FormPart.HeelBreadth],
        ToeSlope = form[FormPart.ToeSlope],
    };

    private static SheetFoot FootOf(SoldFitting sold, Side side)
    {
        double Of(Trait trait) => sold.Feet.Mean(side, trait);
        return new SheetFoot
        {
            Length = Of(Trait.Length),
            BallBreadth = (Of(Trait.BallGirth) - Of(Trait.Squeeze)) / GirthToBreadth,
            ToeBreadth = Of(Trait.ToeBreadth),
            HeelBreadth = Of(Trait.HeelBreadth),
            HeelToBall = Of(Trait.HeelToBall),
            SecondToeLead = Of(Trait.SecondToeLead),
            ToeSlope = Of(Trait.ToeSlope),
        };
    }

    private static SheetPad PadOf(PadUnderFoot pad, int number) => new()
    {
        Number = number,
        Foot = pad.Foot,
        Id = pad.Pad,
        Name = FitSentences.Pad(pad.Pad),
        Where = PaperWords.Find($"PadWhere.{pad.Pad}") ?? PaperWords.Say("PadWhere.other"),
    };

    /// <summary>The criteria that tell most: furthest from right first, then the heaviest.</summary>
    private static List<SheetCriterion> CriteriaOf(SoldFitting sold) =>
        [.. sold.Fit.Criteria
            .GroupBy(place => place.Criterion.Id, StringComparer.Ordinal)
            .OrderBy(places => places.Min(place => place.Desirability))
            .ThenByDescending(places => places.First().Criterion.Weight)
            .Take(MostCriteria)
            .Select(places => new SheetCriterion
            {
                Id = places.Key,
                Name = FitSentences.Criterion(places.Key),
                Left = EaseOf(places.FirstOrDefault(place => place.Foot == Side.Left), sold),
                Right = EaseOf(places.FirstOrDefault(place => place.Foot == Side.Right), sold),
                OpenAbove = double.IsPositiveInfinity(places.First().Criterion.IdealTo),
            })];

    private static SheetEase? EaseOf(CriterionFit? place, SoldFitting sold)
    {
        if (place is null)
        {
            return null;
        }

        var strip = StripPlace.Of(place);
        return new SheetEase
        {
            Ease = place.Ease,
            Low = place.Low,
            High = place.High,
            OnStrip = strip.At,
            LowOnStrip = strip.Low,
            HighOnStrip = strip.High,
            Sentence = FitSentences.Ease(place, sold.Numbers),
        };
    }

    private static string BecauseOf(SoldFitting sold)
    {
        var places = sold.Fit.Criteria.GroupBy(place => place.Criterion.Id, StringComparer.Ordinal).ToList();
        var right = places.Count(feet => feet.All(place => place.Desirability >= sold.Numbers.FitsFrom));

        // When most places look wrong in numbers, the fitter saw what the numbers did not: say that, not a poor count.
        if (right * 2 < places.Count)
        {
            return PaperWords.Say("Because.Fitter");
        }

        var with = sold.Pads.Count > 0 ? "Pads" : "";
        return right == places.Count
            ? PaperWords.Say($"Because.{with}All")
            : PaperWords.Say(with.Length > 0 ? "Because.Pads" : "Because.Some", right, places.Count);
    }

    private static string? NullIfEmpty(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
