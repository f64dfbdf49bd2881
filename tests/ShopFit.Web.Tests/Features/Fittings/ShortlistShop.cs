using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Measures;
using ShopFit.Fitting.Shoes;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Features.Shelf;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Fittings;

/// <summary>A small shop for the shortlist: two makers, three models in some sizes, on two shelves, and a dancer of 13 whose feet were read.</summary>
internal sealed class ShortlistShop(TestShop shop)
{
    /// <summary>Sizes in EU that are made of each model.</summary>
    public static readonly double[] Sizes = [36, 36.5, 37, 37.5, 38, 38.5];

    /// <summary>The model's key, by its name.</summary>
    public Dictionary<string, Guid> Models { get; } = new(StringComparer.Ordinal);

    /// <summary>The size's key, by model and size: "Moorlace 37".</summary>
    public Dictionary<string, Guid> Pairs { get; } = new(StringComparer.Ordinal);

    public async Task StockAsync(string kind = "pointe", int onHand = 1)
    {
        var bays = new Dictionary<string, ShelfPlace>(StringComparer.Ordinal);
        foreach (var code in new[] { "B3", "B10", "D1" })
        {
            bays[code] = await shop.HasAsync(ShelfPlace.Of(Guid.CreateVersion7(), shop.ShopId, code));
        }

        var thistlefen = await shop.HasAsync(Maker.Of(Guid.CreateVersion7(), shop.ShopId, "Thistlefen Lastworks"));
        var pellworth = await shop.HasAsync(Maker.Of(Guid.CreateVersion7(), shop.ShopId, "Pellworth Bench"));
        foreach (var (maker, name, price, bay) in new[] { (thistlefen, "Moorlace", 5950, "B10"), (thistlefen, "Fenwhistle", 7200, "B3"), (pellworth, "Harrowfen", 6400, "D1") })
        {
            var model = await shop.HasAsync(ShoeModel.Of(Guid.CreateVersion7(), shop.ShopId, maker.Id, name, kind, kind is "pointe" ? "paste" : "soft"));
            Models[name] = model.Id;
            foreach (var size in Sizes)
            {
                var label = FormattableString.Invariant($"{name} {size}");
                var item = await shop.HasAsync(Item.Of(Guid.CreateVersion7(), shop.ShopId, label.Replace(' ', '-'), $"{maker.Name} {label}", ItemCategories.Shoes, price));
                await shop.HasAsync(ShoeSize.Of(item.Id, shop.ShopId, model.Id, "eu", size, "", "", "", Measured(size), leadTimeDays: 28));
                Pairs[label] = item.Id;

                // Half sizes of the dearest are not on the shelf.
                if (onHand > 0 && (name != "Fenwhistle" || size % 1 == 0))
                {
                    await shop.HasAsync(StockLevel.Of(Guid.CreateVersion7(), shop.ShopId, item.Id, bays[bay].Id, onHand));
                }
            }
        }
    }

    public async Task<Guid> DraftAsync(string kind = "pointe", double age = 13, bool read = true)
    {
        var dancer = Dancer.Of(Guid.CreateVersion7(), shop.ShopId, "Tilly Fernsby-Quoin");
        dancer.Describe("Tilly Fernsby-Quoin", "Tilly", new DateOnly(2013, 3, 1), Sex.Female, "");
        await shop.HasAsync(dancer);
        var fitting = await shop.HasAsync(FittingRecord.Of(Guid.CreateVersion7(), shop.Fitter, dancer.Id, kind, shop.Clock.GetUtcNow(), age, Sex.Female));
        if (read)
        {
            foreach (var (trait, value) in new[] { ("length", 232.0), ("ball-breadth", 88.0) })
            {
                await new RecordReading(shop.Writes, shop.Clock).RunAsync(
                    shop.Fitter,
                    Guid.CreateVersion7(),
                    new RecordReadingRequest(fitting.Id, [Side.Left, Side.Right], trait, value, ShopFit.Fitting.Beliefs.ReadingUnit.Millimetres),
                    CancellationToken.None);
            }
        }

        return fitting.Id;
    }

    /// <summary>Reads all of two feet that a 37 fits well, so that its chance is fair.</summary>
    public async Task ReadAllAsync(Guid fittingId)
    {
        var form = Measured(37);
        (string Trait, double? Value)[] foot =
        [
            ("length", form.LengthMm - 0.5), ("toe-breadth", form.BoxBreadthMm + 0.5), ("ball-girth", form.BallGirthMm + 10.5), ("squeeze", 8),
            ("heel-breadth", form.HeelBreadthMm + 2.5), ("forefoot-depth", form.CrownDepthMm), ("toe-slope", form.ToeSlopeMm),
            ("heel-to-ball", form.LengthMm - 0.5 - form.VampMm + 1.5), ("second-toe-lead", -3),
        ];
        foreach (var (trait, value) in foot)
        {
            await new RecordReading(shop.Writes, shop.Clock).RunAsync(
                shop.Fitter,
                Guid.CreateVersion7(),
                new RecordReadingRequest(fittingId, [Side.Left, Side.Right], trait, value!.Value, ShopFit.Fitting.Beliefs.ReadingUnit.Millimetres),
                CancellationToken.None);
        }
    }

    // As the label says, but measured, so that the chances of these few pairs are worth a walk.
    private static FormAsGiven Measured(double size)
    {
        var form = ShoeForm.FromLabel(new SizeLabel(SizeSystem.Find("eu")!, size), FitDefaults.Standard);
        return new FormAsGiven
        {
            LengthMm = form[FormPart.Length],
            BoxBreadthMm = form[FormPart.BoxBreadth],
            BallGirthMm = form[FormPart.BallGirth],
            HeelBreadthMm = form[FormPart.HeelBreadth],
            CrownDepthMm = form[FormPart.CrownDepth],
            ToeSlopeMm = form[FormPart.ToeSlope],
            VampMm = form[FormPart.Vamp],
            ShankPoints = form[FormPart.Shank],
            Source = "measured",
        };
    }
}
