using System.Globalization;
using System.Text.Json;
using System.Text.Unicode;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Measures;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.TryOns;

namespace ShopFit.Web.Features.Api;

/// <summary>Reads the body of a request for a shortlist strictly, and tells everything that is wrong with it.</summary>
/// <remarks>
/// Not left to the serializer: it stops at the first fault, and names it by type and path where a caller needs the
/// field, the value and what is allowed.
/// </remarks>
internal sealed class ShortlistRequestReader(ShortlistTerms terms, DateOnly today)
{
    public const int MostBytes = 64 * 1024;
    public const int MostReadings = 200;
    public const int MostTryOns = 20;
    public const int MostAnswers = 100;
    public const int MostPads = 20;
    public const int LongestText = 100;
    public const int LongestMethod = 40;
    public const int LargestLimit = 100;
    public const int UsualLimit = 10;
    public const string UsualKind = "pointe";
    public const int YoungestAge = 2;
    public const int OldestAge = 110;

    public static readonly DateOnly FirstAsOf = new(2000, 1, 1);
    public static readonly DateOnly LastAsOf = new(2100, 12, 31);

    public static readonly string[] Feet = ["left", "right"];
    public static readonly string[] Units = ["mm", "in", "deg", "points", "size", "word"];
    public static readonly string[] Sexes = ["female", "male"];
    public static readonly string[] Observers = ["fitter", "dancer"];
    public static readonly string[] Sources = ["shelf", "catalogue"];

    /// <summary>Reads a body; null, with problems, where it cannot be answered.</summary>
    public ShortlistAsked? Read(ReadOnlyMemory<byte> body, RequestProblems problems)
    {
        if (!Utf8.IsValid(body.Span))
        {
            problems.Add("", "The body is not UTF-8 text.");
            return null;
        }

        try
        {
            // Members given twice are let through here so that the reader can say which, and where.
            using var json = JsonDocument.Parse(body, new JsonDocumentOptions { AllowDuplicateProperties = true });
            var asked = Read(new JsonPlace(json.RootElement, "", problems));
            return problems.Any ? null : asked;
        }
        catch (JsonException notJson)
        {
            problems.Add("", string.Create(
                CultureInfo.InvariantCulture,
                $"The body is not JSON: something is wrong at line {notJson.LineNumber + 1}, byte {notJson.BytePositionInLine + 1}."));
            return null;
        }
    }

    private ShortlistAsked Read(JsonPlace root)
    {
        var members = root.Members("readings", "dancer", "tryOns", "from", "limit", "kind", "asOf");
        var asOf = AsOf(members.Find("asOf"));
        var (birthDate, sex, firstPair) = Dancer(members.Find("dancer"), asOf);
        return new ShortlistAsked
        {
            Readings = Read(members.Find("readings"), MostReadings, ReadingOf),
            BirthDate = birthDate,
            Sex = sex,
            FirstPair = firstPair,
            TryOns = Read(members.Find("tryOns"), MostTryOns, TryOnOf),
            From = members.Find("from")?.OneOf(Sources) == "catalogue" ? ShortlistFrom.Catalogue : ShortlistFrom.Shelf,
            Limit = members.Find("limit")?.WholeNumber(1, LargestLimit) ?? UsualLimit,
            Kind = members.Find("kind")?.OneOf(terms.Kinds) ?? UsualKind,
            AsOf = asOf,
        };
    }

    private DateOnly AsOf(JsonPlace? place)
    {
        if (place?.Date() is not { } date)
        {
            return today;
        }

        if (date < FirstAsOf || date > LastAsOf)
        {
            place.Value.Refuse(string.Create(CultureInfo.InvariantCulture, $"a date from {FirstAsOf:yyyy-MM-dd} to {LastAsOf:yyyy-MM-dd}"));
            return today;
        }

        return date;
    }

    private static (DateOnly? BirthDate, Sex? Sex, bool FirstPair) Dancer(JsonPlace? place, DateOnly asOf)
    {
        if (place is null)
        {
            return (null, null, false);
        }

        var members = place.Value.Members("birthDate", "sex", "firstPair");
        var birthPlace = members.Find("birthDate");
        var birthDate = birthPlace?.Date();
        if (birthDate is { } born && (born > asOf.AddYears(-YoungestAge) || born < asOf.AddYears(-OldestAge)))
        {
            birthPlace!.Value.Refuse(string.Create(
                CultureInfo.InvariantCulture,
                $"a date from {asOf.AddYears(-OldestAge):yyyy-MM-dd} to {asOf.AddYears(-YoungestAge):yyyy-MM-dd}, an age of {YoungestAge} to {OldestAge}"));
        }

        Sex? sex = members.Find("sex")?.OneOf(Sexes) switch
        {
            "female" => Fitting.Feet.Sex.Female,
            "male" => Fitting.Feet.Sex.Male,
            _ => null,
        };
        return (birthDate, sex, members.Find("firstPair")?.TrueOrFalse() ?? false);
    }

    private static Reading? ReadingOf(JsonPlace place)
    {
        var members = place.Members("foot", "trait", "value", "unit", "sizeSystem", "method");
        var foot = members.Need("foot")?.OneOf(Feet);
        var trait = members.Need("trait")?.OneOf([.. Traits.All.Select(row => row.Id)]);
        var valuePlace = members.Need("value");
        var value = valuePlace?.Number();
        var unitPlace = members.Need("unit");
        var unit = unitPlace?.OneOf(Units);
        var systemPlace = members.Find("sizeSystem");
        var system = systemPlace?.OneOf([.. SizeSystem.All.Select(known => known.Id)]);

        // Kept out of the mathematics until readings carry their method there; checked all the same.
        members.Find("method")?.Text(LongestMethod);

        if (foot is null || trait is null || value is not { } number || unit is null || (systemPlace is not null && system is null))
        {
            return null;
        }

        var reading = new Reading(SideOf(foot), Traits.Find(trait)!.Trait, number, UnitOf(unit), system is null ? null : SizeSystem.Find(system));
        if (reading.Check() is not { } problem)
        {
            return reading;
        }

        switch (problem.Code)
        {
            case ReadingProblemCode.WrongUnit:
                unitPlace!.Value.Refuse($"for {trait}: {string.Join(", ", UnitsOf(reading.Trait))}");
                break;
            case ReadingProblemCode.SizeSystemMissing:
                place.Problems.Add(place.PointerTo("sizeSystem"), $"\"sizeSystem\" is missing. A size needs one of {string.Join(", ", SizeSystem.All)}.");
                break;
            case ReadingProblemCode.SizeSystemUnexpected:
                systemPlace!.Value.Refuse("only with the unit \"size\"");
                break;
            case ReadingProblemCode.NotAWord:
                valuePlace!.Value.Refuse("for a word: 0, 1 or 2");
                break;
            default:
                valuePlace!.Value.Refuse(string.Create(CultureInfo.InvariantCulture, $"for {trait} in {unit}: {problem.Lowest} to {problem.Highest}"));
                break;
        }

        return null;
    }

    private TryOn? TryOnOf(JsonPlace place)
    {
        var members = place.Members("sku", "fits", "answers", "pads");
        var sku = members.Need("sku")?.Text(LongestText);
        var fits = members.Need("fits")?.TrueOrFalse();
        var answers = Read(members.Find("answers"), MostAnswers, AnswerOf);
        var pads = Read(members.Find("pads"), MostPads, PadOf);
        if (answers.GroupBy(answer => (answer.Foot, answer.Check)).FirstOrDefault(group => group.Count() > 1) is { } twice)
        {
            place.Problems.Add(place.PointerTo("answers"), $"The check {twice.Key.Check} is answered twice for the {WordFor(twice.Key.Foot)} foot. Answer it once.");
        }

        if (pads.GroupBy(pad => pad).FirstOrDefault(group => group.Count() > 1) is { } repeated)
        {
            place.Problems.Add(place.PointerTo("pads"), $"The pad {repeated.Key.Pad} is twice under the {WordFor(repeated.Key.Foot)} foot. A pad goes once under a foot.");
        }

        return sku is null || fits is null ? null : new TryOn(sku, fits, answers, pads);
    }

    private CheckAnswer? AnswerOf(JsonPlace place)
    {
        var members = place.Members("foot", "check", "answer", "by");
        var foot = members.Need("foot")?.OneOf(Feet);
        var check = members.Need("check")?.OneOf(terms.Checks);
        var answer = members.Need("answer")?.WholeNumber(0, 2);
        var byDancer = members.Find("by")?.OneOf(Observers) == "dancer";
        return foot is null || check is null || answer is not { } given ? null : new CheckAnswer(SideOf(foot), check, given, byDancer);
    }

    private PadUnderFoot? PadOf(JsonPlace place)
    {
        var members = place.Members("foot", "pad");
        var foot = members.Need("foot")?.OneOf(Feet);
        var pad = members.Need("pad")?.OneOf(terms.Pads);
        return foot is null || pad is null ? null : new PadUnderFoot(SideOf(foot), pad);
    }

    private static List<T> Read<T>(JsonPlace? array, int atMost, Func<JsonPlace, T?> read)
        where T : class =>
        [.. (array?.Elements(atMost) ?? []).Select(read).OfType<T>()];

    private static Side SideOf(string foot) => foot == "left" ? Side.Left : Side.Right;

    private static string WordFor(Side foot) => foot == Side.Left ? "left" : "right";

    private static ReadingUnit UnitOf(string unit) => unit switch
    {
        "mm" => ReadingUnit.Millimetres,
        "in" => ReadingUnit.Inches,
        "deg" => ReadingUnit.Degrees,
        "points" => ReadingUnit.Points,
        "size" => ReadingUnit.Size,
        _ => ReadingUnit.Word,
    };

    /// <summary>The units in which a trait may be read, as the library judges them.</summary>
    private static IEnumerable<string> UnitsOf(Trait trait) =>
        Units.Where(unit => new Reading(Side.Left, trait, 0, UnitOf(unit)).Check()?.Code != ReadingProblemCode.WrongUnit);
}
