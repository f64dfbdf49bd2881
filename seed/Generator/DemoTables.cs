using System.Globalization;
using System.Text;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Scoring;

namespace ShopFit.Seed;

/// <summary>The history as tables. No cell has a comma or a quote, so none needs quotes.</summary>
internal static class DemoTables
{
    internal static string Studios() => Table(
        "name,teachers,colour,ribbon,wishes,asked,notWanted",
        DemoStudios.All.Select(studio => Line(studio.Name, Listed(studio.Teachers), studio.Colour, studio.Ribbon, studio.Wishes, Listed(studio.Asked), Listed(studio.NotWanted))));

    internal static string Guardians(DemoPeople people) => Table(
        "key,name,contact",
        people.Guardians.Select(guardian => Line(guardian.Key, guardian.Name, guardian.Contact)));

    /// <summary>Consent is heard some minutes before the first fitting.</summary>
    internal static string Dancers(DemoPeople people, IReadOnlyList<DemoFitting> fittings)
    {
        var first = fittings.GroupBy(fitting => fitting.Dancer.Key).ToDictionary(group => group.Key, group => group.Min(fitting => fitting.OpenedAt), StringComparer.Ordinal);
        return Table(
            "key,name,knownAs,birthDate,sex,studio,teacher,guardian,consentAt",
            people.Dancers.Where(dancer => first.ContainsKey(dancer.Key)).Select(dancer => Line(
                dancer.Key,
                dancer.Name,
                dancer.KnownAs,
                Day(dancer.Born),
                dancer.Sex == Sex.Female ? "female" : "male",
                dancer.Studio.Name,
                dancer.Teacher,
                dancer.Guardian,
                Time(first[dancer.Key].AddMinutes(-4)))));
    }

    internal static string Fittings(IEnumerable<DemoFitting> fittings) => Table(
        "key,dancer,kind,firstPair,teacherAgreedOn,openedAt,closedAt,fitter,sore,ending,reason,why,sku,pads,extras",
        fittings.Select(fitting => Line(
            fitting.Key,
            fitting.Dancer.Key,
            fitting.Kind,
            fitting.FirstPair ? "yes" : "",
            fitting.TeacherAgreedOn is { } agreed ? Day(agreed) : "",
            Time(fitting.OpenedAt),
            fitting.ClosedAt is { } closed ? Time(closed) : "",
            fitting.Fitter,
            fitting.Sore,
            fitting.Ending?.Kind ?? "",
            fitting.Ending?.Reason ?? "",
            fitting.Ending?.Why ?? "",
            fitting.Ending?.Sku ?? "",
            Pads(fitting.Ending?.Pads ?? []),
            Listed(fitting.Ending?.Extras ?? []))));

    internal static string Readings(IEnumerable<DemoFitting> fittings) => Table(
        "fitting,trait,left,right,method",
        from fitting in fittings
        from reading in fitting.Readings
        select Line(fitting.Key, Traits.Of(reading.Trait).Id, Number(reading.Left), Number(reading.Right), reading.Method));

    internal static string TryOns(IEnumerable<DemoFitting> fittings) => Table(
        "fitting,sku,fits,pads",
        from fitting in fittings
        from tryOn in fitting.TryOns
        select Line(fitting.Key, tryOn.Sku, tryOn.Fits ? "yes" : "no", Pads(tryOn.Pads)));

    internal static string Deliveries(IEnumerable<(DateOnly Day, string Code, int Pieces)> deliveries) => Table(
        "day,code,pieces",
        deliveries.OrderBy(line => line.Day).ThenBy(line => line.Code, StringComparer.Ordinal)
            .Select(line => Line(Day(line.Day), line.Code, line.Pieces.ToString(CultureInfo.InvariantCulture))));

    private static string Pads(IReadOnlyList<PadUnderFoot> pads) => Listed([.. pads.Select(pad => $"{(pad.Foot == Side.Left ? "left" : "right")} {pad.Pad}")]);

    private static string Listed(IReadOnlyList<string> words) => string.Join("; ", words);

    private static string Number(double? value) => value?.ToString("0.#", CultureInfo.InvariantCulture) ?? "";

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Time(DateTime time) => time.ToString("yyyy-MM-dd'T'HH:mm'Z'", CultureInfo.InvariantCulture);

    private static string Line(params string[] cells) => cells.FirstOrDefault(cell => cell.AsSpan().IndexOfAny(",\"\n") >= 0) is { } bad
        ? throw new InvalidOperationException($"A cell of the demo needs quotes: {bad}")
        : string.Join(',', cells);

    private static string Table(string header, IEnumerable<string> lines)
    {
        var text = new StringBuilder(header).Append('\n');
        foreach (var line in lines)
        {
            text.Append(line).Append('\n');
        }

        return text.ToString();
    }
}
