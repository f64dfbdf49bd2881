using System.Globalization;
using ShopFit.Fitting.Measures;
using ShopFit.Seed;

namespace ShopFit.Fitting.Seed;

public class DemoCatalogueTests
{
    private static readonly IReadOnlyList<IReadOnlyDictionary<string, string>> Rows = SeedFiles.Rows("catalogue.csv");

    [Fact]
    public void The_generator_writes_the_shipped_files_again_byte_for_byte()
    {
        var sizes = DemoCatalogue.Sizes();

        Assert.Equal(SeedFiles.Text("catalogue.csv"), DemoCatalogue.CatalogueCsv(sizes));
        Assert.Equal(SeedFiles.Text("shelf.csv"), DemoCatalogue.ShelfCsv(sizes));
        Assert.Equal(SeedFiles.Text("models.csv"), DemoCatalogue.ModelsCsv());
    }

    [Fact]
    public void There_are_2855_sizes_of_twenty_one_models_by_five_makers()
    {
        Assert.Equal(2_855, Rows.Select(row => row["sku"]).Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(2_855, Rows.Count);
        Assert.Equal(21, Rows.Select(row => (row["maker"], row["model"])).Distinct().Count());
        Assert.Equal(5, Rows.Select(row => row["maker"]).Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void The_columns_are_those_of_the_catalogue_file()
    {
        string[] columns =
        [
            "sku", "maker", "model", "kind", "sizeSystem", "size", "width", "option", "shankName", "lengthMm", "boxBreadthMm", "ballGirthMm", "heelBreadthMm",
            "crownDepthMm", "toeSlopeMm", "vampMm", "shankPoints", "formSource", "widthStep", "boxStep", "vampStep", "priceMinor", "currency", "gtin",
            "leadTimeDays", "onHand",
        ];

        Assert.Equal(columns, SeedFiles.Text("catalogue.csv").Split('\n')[0].Split(','));
    }

    // GS1's check digit: weights 3 and 1 from the right; 20 to 29 are for use inside a shop (GS1 prefixes, from memory).
    [Fact]
    public void Every_article_number_stays_inside_the_shop_and_checks()
    {
        var numbers = Rows.Select(row => row["gtin"]).ToArray();

        Assert.Equal(numbers.Length, numbers.Distinct(StringComparer.Ordinal).Count());
        Assert.All(numbers, AssertGtin);
    }

    [Fact]
    public void Every_size_is_a_label_of_its_system() =>
        Assert.All(Rows, row =>
        {
            var system = SizeSystem.Find(row["sizeSystem"]);
            var size = Number(row["size"]);

            Assert.NotNull(system);
            Assert.True(system.Covers(size));
            Assert.Equal(size, system.NearestLabel(size));
        });

    [Fact]
    public void No_two_makers_offer_the_same_choices()
    {
        string[] choices = ["width", "option", "shankName"];
        var makers = Rows.Where(row => row["kind"] == "pointe").GroupBy(row => row["maker"]).ToArray();

        // How many words a maker has for each choice is its set of options; a word is used by one maker only.
        var offers = makers.Select(maker => string.Join('/', choices.Select(choice => maker.Select(row => row[choice]).Distinct(StringComparer.Ordinal).Count()))).ToArray();
        var words = makers.SelectMany(maker => choices.SelectMany(choice => maker.Select(row => row[choice])).Where(word => word.Length > 0).Distinct(StringComparer.Ordinal)).ToArray();

        Assert.Equal(offers.Length, offers.Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(words.Length, words.Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void The_box_goes_with_the_model() =>
        Assert.All(Rows.GroupBy(row => row["model"]), model => Assert.Single(model.Select(row => row["boxStep"]).Distinct(StringComparer.Ordinal)));

    [Fact]
    public void Eleven_hundred_pairs_stand_on_the_shelf_and_most_sizes_have_none()
    {
        var onHand = Rows.Select(row => int.Parse(row["onHand"], CultureInfo.InvariantCulture)).ToArray();

        Assert.Equal(1_100, onHand.Sum());
        Assert.True(onHand.Count(pairs => pairs <= 1) > 2_250);
        Assert.InRange(onHand.Max(), 2, 4);
    }

    [Fact]
    public void Every_code_has_its_place() =>
        Assert.Equal(Rows.Select(row => row["sku"]), SeedFiles.Rows("shelf.csv").Where(row => row["place"].Length > 0).Select(row => row["sku"]));

    [Fact]
    public void Millimetres_come_with_their_source_and_labels_without()
    {
        Assert.All(Rows.Where(row => row["formSource"] == "label"), row => Assert.Equal("", row["lengthMm"] + row["ballGirthMm"] + row["vampMm"]));
        Assert.All(Rows.Where(row => row["formSource"] != "label"), row =>
        {
            Assert.InRange(Number(row["lengthMm"]), 190, 290);
            Assert.InRange(Number(row["ballGirthMm"]), 180, 250);
            Assert.InRange(Number(row["vampMm"]), 45, 80);
        });
        Assert.Equal(["label", "maker", "measured"], Rows.Select(row => row["formSource"]).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
    }

    // Common practice, no source: a maker that sizes on the gauge's own scale labels about three quarters of a size above the
    // gauge, standard deviation a quarter.
    [Fact]
    public void A_maker_on_the_gauges_scale_labels_three_quarters_of_a_size_above_it()
    {
        var gauge = SizeSystem.Find("us-women")!;
        var above = Rows
            .Where(row => row["sizeSystem"] == gauge.Id && row["lengthMm"].Length > 0)
            .Select(row => Number(row["size"]) - gauge.SizeOfFoot(Millimetres.From(Number(row["lengthMm"]))))
            .ToArray();

        Assert.NotEmpty(above);
        Assert.All(above, size => Assert.InRange(size, 0.5, 1));
        Assert.InRange(above.Average(), 0.6, 0.9);
    }

    internal static void AssertGtin(string gtin)
    {
        Assert.Matches("^2[0-9]{12}$", gtin);
        Assert.Equal(0, gtin.Reverse().Select((digit, index) => (digit - '0') * (index % 2 == 0 ? 1 : 3)).Sum() % 10);
    }

    private static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);
}
