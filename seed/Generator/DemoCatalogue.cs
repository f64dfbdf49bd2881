using System.Globalization;
using System.Text;
using ShopFit.Fitting.Measures;

namespace ShopFit.Seed;

/// <summary>The catalogue and the shelf of the demo shop: the same bytes at every run.</summary>
internal static class DemoCatalogue
{
    /// <summary>Pairs on the shelf when the shop began to count, of the first models.</summary>
    internal const int PairsOnShelf = 830;

    /// <summary>Pairs of the models that came later: jazz, tap, character and more soft shoes.</summary>
    internal const int LaterPairsOnShelf = 270;

    /// <summary>No code has more than so many pairs.</summary>
    private const int MostOfOneSize = 4;

    /// <summary>Any number would do; it is the same at every run.</summary>
    private const int ShelfSeed = 830_2500;
    private const int LaterShelfSeed = 270_0300;

    /// <summary>A sample is graded along its length: girth as JIS S 5037 does (3 mm in 5), the rest as surveyed feet do (ANSUR II) *(cp)*.</summary>
    private const double GirthPerLength = 3.0 / 5;
    private const double BoxPerLength = 0.86 * 0.2134;
    private const double HeelPerLength = 0.2137;
    private const double CrownPerLength = 0.155;
    private const double VampPerLength = 0.2714;

    /// <summary>A width step is 7 mm of girth and what goes with it, a vamp step 5 mm *(cp)*.</summary>
    private const double GirthPerWidth = 7;
    private const double BoxPerWidth = 2.5;
    private const double HeelPerWidth = 1.5;
    private const double VampPerStep = 5;

    private const string CatalogueHeader =
        "sku,maker,model,kind,sizeSystem,size,width,option,shankName,lengthMm,boxBreadthMm,ballGirthMm,heelBreadthMm,crownDepthMm,"
        + "toeSlopeMm,vampMm,shankPoints,formSource,widthStep,boxStep,vampStep,priceMinor,currency,gtin,leadTimeDays,onHand";

    /// <summary>Every size of every model, in the order of the file.</summary>
    internal static IReadOnlyList<DemoSize> Sizes()
    {
        var sizes = DemoMakers.All.SelectMany(SizesOf).ToArray();
        DemoSize[] first = [.. sizes.Where(size => !size.Model.CameLater)];
        DemoSize[] later = [.. sizes.Where(size => size.Model.CameLater)];
        var onHand = first.Zip(Shelve(first, PairsOnShelf, ShelfSeed))
            .Concat(later.Zip(Shelve(later, LaterPairsOnShelf, LaterShelfSeed)))
            .ToDictionary(pair => pair.First.Sku, pair => pair.Second, StringComparer.Ordinal);
        return [.. sizes.Select(size => size with { OnHand = onHand[size.Sku] })];
    }

    /// <summary>The catalogue file.</summary>
    internal static string CatalogueCsv(IReadOnlyList<DemoSize> sizes) => Lines(CatalogueHeader, sizes.Select(CatalogueLine));

    /// <summary>Where each code stands.</summary>
    internal static string ShelfCsv(IReadOnlyList<DemoSize> sizes) => Lines("sku,place", sizes.Select(size => $"{size.Sku},{size.Place}"));

    /// <summary>What each model is made of.</summary>
    internal static string ModelsCsv() => Lines(
        "maker,model,construction",
        from maker in DemoMakers.All from model in maker.Models select $"{maker.Name},{model.Name},{model.Construction}");

    private static IEnumerable<DemoSize> SizesOf(DemoMaker maker)
    {
        var step = SystemOf(maker).LabelStep;
        var number = 0;
        foreach (var model in maker.Models)
        {
            var labels = Enumerable.Range(0, 1 + (int)Math.Round((model.To - model.From) / step)).Select(label => model.From + (label * step));
            foreach (var (size, width, vamp, shank) in
                from size in labels
                from width in model.Widths ?? maker.Widths
                from vamp in model.Vamps ?? maker.Vamps
                from shank in model.Shanks ?? maker.Shanks
                select (size, width, vamp, shank))
            {
                number++;
                string[] parts = [maker.Code, model.Code, Number(size), CodeOf(width), CodeOf(vamp), CodeOf(shank)];
                yield return new DemoSize(
                    string.Join('-', parts.Where(part => part.Length > 0)),
                    maker, model, size, width, vamp, shank,
                    Gtin(maker.InStorePrefix, number),
                    OnHand: 0);
            }
        }
    }

    /// <summary>Puts one pair after the other where somebody is likely to ask for it, so that the shelf has holes as every shelf has.</summary>
    private static int[] Shelve(DemoSize[] sizes, int pairs, int seed)
    {
        var weights = sizes.Select(Wanted).ToArray();
        var onHand = new int[sizes.Length];
        var random = new Random(seed);
        for (var pair = 0; pair < pairs; pair++)
        {
            var at = Pick(weights, random.NextDouble() * weights.Sum());
            onHand[at]++;

            // Nobody orders a second pair of a rare size as readily as the first.
            weights[at] = onHand[at] == MostOfOneSize ? 0 : weights[at] * 0.6;
        }

        return onHand;
    }

    private static int Pick(double[] weights, double target)
    {
        var at = 0;
        while (at < weights.Length - 1 && target >= weights[at])
        {
            target -= weights[at];
            at++;
        }

        return at;
    }

    private static double Wanted(DemoSize size)
    {
        var away = (LengthOf(size) - size.Model.UsualFoot) / size.Model.FootDeviation;
        var inModel = size.Width.Wanted * size.Vamp.Wanted * size.Shank.Wanted * Math.Exp(-away * away / 2);
        var choices = Sum(size.Model.Widths ?? size.Maker.Widths) * Sum(size.Model.Vamps ?? size.Maker.Vamps) * Sum(size.Model.Shanks ?? size.Maker.Shanks);
        return size.Model.Wanted * inModel / choices;

        static double Sum(IEnumerable<DemoChoice> among) => among.Sum(choice => choice.Wanted);
    }

    /// <summary>Inner length: graded from the sample, else the foot that the label less its allowance names.</summary>
    private static double LengthOf(DemoSize size)
    {
        var system = SystemOf(size.Maker);
        if (size.Model.Sample is { } sample)
        {
            return sample.Length + (system.FootLengthOf(size.Size) - system.FootLengthOf(sample.Size)).Value;
        }

        // Three quarters of a size below the label, a point of Paris, 5 mm *(cp)*.
        var allowance = system.Id switch
        {
            "eu" => 1,
            "mondopoint" => 5,
            "jp" => 0.5,
            _ => 0.75,
        };
        return system.FootLengthOf(size.Size - allowance).Value;
    }

    private static string CatalogueLine(DemoSize size)
    {
        var (maker, model) = (size.Maker, size.Model);
        string[] cells =
        [
            size.Sku, maker.Name, model.Name, model.Kind, maker.SizeSystem, Number(size.Size), size.Width.Word, size.Vamp.Word, size.Shank.Word,
            .. FormCells(size),
            size.Shank.Word.Length > 0 ? Number(size.Shank.Step) : "",
            size.HasSample ? model.Sample!.Source : "label",
            Number(size.Width.Step), Number(model.BoxStep), Number(size.Vamp.Step),
            model.PriceMinor.ToString(CultureInfo.InvariantCulture), "GBP", size.Gtin,
            maker.LeadTimeDays.ToString(CultureInfo.InvariantCulture), size.OnHand.ToString(CultureInfo.InvariantCulture),
        ];
        return string.Join(',', cells);
    }

    private static IEnumerable<string> FormCells(DemoSize size) => FormOf(size).Select(part => part is { } known ? Number(known) : "");

    /// <summary>Length to vamp in mm, to a half; null where only the label is known.</summary>
    internal static IReadOnlyList<double?> FormOf(DemoSize size)
    {
        if (!size.HasSample)
        {
            return [null, null, null, null, null, null, null];
        }

        var sample = size.Model.Sample!;
        var length = LengthOf(size);
        var longer = length - sample.Length;
        double?[] parts =
        [
            length,
            sample.BoxBreadth + (BoxPerLength * longer) + (BoxPerWidth * size.Width.Step),
            sample.BallGirth + (GirthPerLength * longer) + (GirthPerWidth * size.Width.Step),
            sample.HeelBreadth + (HeelPerLength * longer) + (HeelPerWidth * size.Width.Step),
            sample.CrownDepth + (CrownPerLength * longer),
            sample.ToeSlope,
            sample.Vamp + (VampPerLength * longer) + (VampPerStep * size.Vamp.Step),
        ];
        return [.. parts.Select(part => part is { } known ? Math.Round(known * 2, MidpointRounding.AwayFromZero) / 2 : part)];
    }

    internal static SizeSystem SystemOf(DemoMaker maker) =>
        SizeSystem.Find(maker.SizeSystem) ?? throw new InvalidOperationException($"No size system is called {maker.SizeSystem}.");

    private static string CodeOf(DemoChoice choice) =>
        string.Concat(choice.Word.Split([' ', '-'], StringSplitOptions.RemoveEmptyEntries).Select(word => word[..Math.Min(3, word.Length)].ToUpperInvariant()));

    /// <summary>An article number for use inside the shop, with the check digit of GS1: weights 3 and 1 from the right.</summary>
    private static string Gtin(string prefix, int number)
    {
        var digits = prefix + number.ToString("D10", CultureInfo.InvariantCulture);
        var sum = digits.Select((digit, index) => (digit - '0') * (index % 2 == 0 ? 1 : 3)).Sum();
        return digits + ((10 - (sum % 10)) % 10).ToString(CultureInfo.InvariantCulture);
    }

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private static string Lines(string header, IEnumerable<string> lines)
    {
        var text = new StringBuilder(header).Append('\n');
        foreach (var line in lines)
        {
            text.Append(line).Append('\n');
        }

        return text.ToString();
    }
}
