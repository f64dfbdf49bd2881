using System.Globalization;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Scoring;

namespace ShopFit.Web.Features.Demo;

/// <summary>Reads the two years from their files.</summary>
internal static class DemoYearFiles
{
    /// <summary>Deliveries come in the morning, before anybody is fitted.</summary>
    private static readonly TimeOnly DeliveredAt = new(8, 0);

    /// <param name="rows">The rows of a file by its name, each by its columns.</param>
    public static DemoYears Read(Func<string, IEnumerable<IReadOnlyDictionary<string, string>>> rows)
    {
        var readings = rows("readings.csv").ToLookup(
            row => row["fitting"],
            row => new DemoBothFeet(row["trait"], Number(row["left"]), Number(row["right"]), OrNull(row["method"])),
            StringComparer.Ordinal);
        var tryOns = rows("try-ons.csv").ToLookup(
            row => row["fitting"],
            row => new DemoTryOn(row["sku"], row["fits"] == "yes", Pads(row["pads"])),
            StringComparer.Ordinal);
        return new DemoYears(
            [.. rows("studios.csv").Select(row => new DemoStudio(
                row["name"], row["teachers"], row["colour"], row["ribbon"], row["wishes"], List(row["asked"]), List(row["notWanted"])))],
            [.. rows("guardians.csv").Select(row => new DemoGuardian(row["key"], row["name"], row["contact"]))],
            [.. rows("dancers.csv").Select(DancerOf)],
            [.. rows("deliveries.csv").Select(row => new DemoDelivery(
                new DateTimeOffset(Day(row["day"]), DeliveredAt, TimeSpan.Zero), row["code"], int.Parse(row["pieces"], CultureInfo.InvariantCulture)))],
            [.. rows("fittings.csv").Select(row => VisitOf(row, [.. readings[row["key"]]], [.. tryOns[row["key"]]]))]);
    }

    private static DemoDancer DancerOf(IReadOnlyDictionary<string, string> row)
    {
        var guardian = OrNull(row["guardian"]);
        return new DemoDancer(
            row["key"],
            row["name"],
            row["knownAs"],
            Day(row["birthDate"]),
            Enum.Parse<Sex>(row["sex"], ignoreCase: true),
            row["studio"],
            row["teacher"],
            guardian,
            new DemoConsent(guardian is null ? "dancer" : "guardian", Time(row["consentAt"])));
    }

    private static DemoVisit VisitOf(IReadOnlyDictionary<string, string> row, IReadOnlyList<DemoBothFeet> readings, IReadOnlyList<DemoTryOn> tryOns) => new(
        row["key"],
        row["dancer"],
        row["kind"],
        row["firstPair"] == "yes",
        OrNull(row["teacherAgreedOn"]) is { } agreed ? Day(agreed) : null,
        Time(row["openedAt"]),
        OrNull(row["closedAt"]) is { } closed ? Time(closed) : null,
        row["fitter"],
        row["sore"],
        readings,
        tryOns,
        OrNull(row["ending"]) is { } ending ? new DemoDecision(ending, OrNull(row["reason"]), row["why"], OrNull(row["sku"]), Pads(row["pads"])) : null,
        List(row["extras"]));

    private static List<PadUnderFoot> Pads(string cell) =>
        [.. List(cell).Select(pad => pad.Split(' ')).Select(pad => new PadUnderFoot(Enum.Parse<Side>(pad[0], ignoreCase: true), pad[1]))];

    private static string[] List(string cell) => cell.Split("; ", StringSplitOptions.RemoveEmptyEntries);

    private static string? OrNull(string cell) => cell.Length > 0 ? cell : null;

    private static double? Number(string cell) => cell.Length > 0 ? double.Parse(cell, CultureInfo.InvariantCulture) : null;

    private static DateOnly Day(string cell) => DateOnly.Parse(cell, CultureInfo.InvariantCulture);

    private static DateTimeOffset Time(string cell) => DateTimeOffset.Parse(cell, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal);
}
