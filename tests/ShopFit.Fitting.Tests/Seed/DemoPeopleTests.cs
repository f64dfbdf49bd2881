using System.Globalization;
using System.Text.Json;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;

namespace ShopFit.Fitting.Seed;

public class DemoPeopleTests
{
    private static readonly JsonElement People = JsonDocument.Parse(SeedFiles.Text("people.json")).RootElement;

    private static readonly Dictionary<string, IReadOnlyDictionary<string, string>> Catalogue =
        SeedFiles.Rows("catalogue.csv").ToDictionary(row => row["sku"]);

    private static readonly string[] Checks = [.. FitDefaults.Standard.Checks.Select(check => check.Id)];

    private static readonly string[] Pads = [.. FitDefaults.Standard.Pads.Select(pad => pad.Id)];

    [Fact]
    public void Dancers_are_nine_to_forty_five_and_one_is_a_man()
    {
        var asOf = Date(People, "asOf");
        var ages = Dancers().Select(dancer => AgeOn(asOf, Date(dancer, "birthDate"))).ToArray();

        Assert.InRange(ages.Length, 12, 15);
        Assert.Equal(9, ages.Min());
        Assert.Equal(45, ages.Max());
        Assert.Single(Dancers(), dancer => Text(dancer, "sex") == "male");
        Assert.Equal(12, AgeOn(asOf, Date(Dancers().Single(dancer => Text(dancer, "name") == "Tilly Fernsby-Quoin"), "birthDate")));
    }

    // Weiss, Rist and Grossman 2009, J Dance Med Sci 13(3): 90-92: not before the age of twelve.
    [Fact]
    public void Nobody_under_twelve_is_fitted_for_pointe() =>
        Assert.All(Fittings().Where(fitting => Text(fitting, "kind") == "pointe"), fitting =>
            Assert.True(AgeOn(DateOnly.FromDateTime(Time(fitting, "openedAt").UtcDateTime), Date(DancerOf(fitting), "birthDate")) >= 12));

    [Fact]
    public void A_minor_has_a_guardian_and_consent_comes_before_the_first_fitting()
    {
        var guardians = People.GetProperty("guardians").EnumerateArray().Select(guardian => Text(guardian, "key")).ToArray();

        Assert.All(Dancers(), dancer =>
        {
            var minor = AgeOn(Date(People, "asOf"), Date(dancer, "birthDate")) < 18;
            var consent = dancer.GetProperty("consent");

            Assert.Equal(minor, guardians.Contains(Text(dancer, "guardian")));
            Assert.Equal(minor ? "guardian" : "dancer", Text(consent, "givenBy"));
            Assert.All(
                Fittings().Where(fitting => Text(fitting, "dancer") == Text(dancer, "key")),
                fitting => Assert.True(Time(consent, "givenAt") <= Time(fitting, "openedAt")));
        });
    }

    [Fact]
    public void Studios_teachers_and_staff_are_all_known()
    {
        var studios = People.GetProperty("studios").EnumerateArray()
            .ToDictionary(studio => Text(studio, "name"), studio => studio.GetProperty("teachers").EnumerateArray().Select(teacher => teacher.GetString()).ToArray());
        var staff = People.GetProperty("staff").EnumerateArray().ToDictionary(person => Text(person, "key"), person => Text(person, "role"));

        Assert.All(Dancers(), dancer => Assert.Contains(Text(dancer, "teacher"), studios[Text(dancer, "studio")]));
        Assert.Equal(["fitter", "manager"], staff.Values.Order(StringComparer.Ordinal));
        Assert.All(Fittings(), fitting => Assert.Equal("fitter", staff[Text(fitting, "fitter")]));
    }

    [Fact]
    public void Fittings_are_closed_and_in_order_of_time()
    {
        var opened = Fittings().Select(fitting => Time(fitting, "openedAt")).ToArray();

        Assert.Equal(opened.Order(), opened);
        Assert.All(Fittings(), fitting => Assert.True(Time(fitting, "openedAt") < Time(fitting, "closedAt")));
    }

    [Fact]
    public void Every_reading_can_be_used() =>
        Assert.All(Fittings().SelectMany(fitting => fitting.GetProperty("readings").EnumerateArray()), entry =>
        {
            var trait = Traits.Find(Text(entry, "trait"));
            Assert.NotNull(trait);
            var value = entry.GetProperty("value").GetDouble();
            var reading = Text(entry, "unit") == "word"
                ? new Reading(Foot(entry), trait.Trait, value, ReadingUnit.Word)
                : Reading.Of(Foot(entry), trait.Trait, value);

            Assert.Contains(Text(entry, "unit"), (string[])["mm", "word"]);
            Assert.Null(reading.Check());
        });

    [Fact]
    public void Every_pair_tried_is_in_the_catalogue_and_of_the_right_kind() =>
        Assert.All(Fittings(), fitting =>
        {
            var tried = fitting.GetProperty("tryOns").EnumerateArray().Select(tryOn => Text(tryOn, "sku"));

            Assert.All(tried, sku => Assert.Equal(Text(fitting, "kind"), Catalogue[sku]["kind"]));
        });

    [Fact]
    public void Every_answer_and_pad_is_one_the_library_knows() =>
        Assert.All(Fittings().SelectMany(fitting => fitting.GetProperty("tryOns").EnumerateArray()), tryOn =>
        {
            var answers = tryOn.GetProperty("answers").EnumerateArray().ToArray();

            Assert.All(answers, answer =>
            {
                Assert.Contains(Text(answer, "check"), Checks);
                Assert.InRange(answer.GetProperty("answer").GetInt32(), 0, 2);
            });
            Assert.Equal(answers.Length, answers.Select(answer => (Text(answer, "foot"), Text(answer, "check"))).Distinct().Count());
            Assert.All(tryOn.GetProperty("pads").EnumerateArray(), pad => Assert.Contains(Text(pad, "pad"), Pads));
        });

    [Fact]
    public void What_was_sold_had_been_found_to_fit() =>
        Assert.All(Fittings().Where(fitting => Text(fitting.GetProperty("decision"), "kind") == "sold"), fitting =>
        {
            var last = fitting.GetProperty("tryOns").EnumerateArray().Last();

            Assert.True(last.GetProperty("fits").GetBoolean());
            Assert.Equal(Text(last, "sku"), Text(fitting.GetProperty("decision"), "sku"));
            Assert.True(JsonElement.DeepEquals(last.GetProperty("pads"), fitting.GetProperty("decision").GetProperty("pads")));
        });

    [Fact]
    public void A_reading_of_237_on_Tillys_right_foot_is_nine_off_her_last_visit()
    {
        var last = Fittings().Last(fitting => Text(fitting, "dancer") == "tilly").GetProperty("readings").EnumerateArray()
            .Single(reading => Text(reading, "foot") == "right" && Text(reading, "trait") == "length");

        Assert.Equal(9, 237 - last.GetProperty("value").GetDouble());
    }

    [Fact]
    public void The_haberdashery_has_every_pad_of_the_library()
    {
        var rows = SeedFiles.Text("haberdashery.csv").Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(1).ToArray();

        Assert.All(Pads, pad => Assert.Single(rows, row => row.Contains($",pads,{pad},", StringComparison.Ordinal)));
        Assert.All(["ribbon", "elastic", "thread", "service"], category => Assert.Contains(rows, row => row.Contains($",{category},", StringComparison.Ordinal)));
        Assert.All(
            rows.Where(row => !row.Contains(",service,", StringComparison.Ordinal)),
            row => DemoCatalogueTests.AssertGtin(row.Split(",GBP,")[1].Split(',')[0]));
    }

    private static JsonElement[] Dancers() => [.. People.GetProperty("dancers").EnumerateArray()];

    private static JsonElement[] Fittings() => [.. People.GetProperty("fittings").EnumerateArray()];

    private static JsonElement DancerOf(JsonElement fitting) => Dancers().Single(dancer => Text(dancer, "key") == Text(fitting, "dancer"));

    private static string Text(JsonElement element, string name) => element.GetProperty(name).GetString() ?? "";

    private static Side Foot(JsonElement element) => Text(element, "foot") switch
    {
        "left" => Side.Left,
        "right" => Side.Right,
        var other => throw new FormatException($"No foot is called {other}."),
    };

    private static DateOnly Date(JsonElement element, string name) => DateOnly.ParseExact(Text(element, name), "yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static DateTimeOffset Time(JsonElement element, string name) => element.GetProperty(name).GetDateTimeOffset();

    private static int AgeOn(DateOnly day, DateOnly birth) => day.Year - birth.Year - (day < birth.AddYears(day.Year - birth.Year) ? 1 : 0);
}
