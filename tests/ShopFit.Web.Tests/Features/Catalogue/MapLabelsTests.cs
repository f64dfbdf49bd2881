using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Shoes;
using ShopFit.Web.Features.People;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Catalogue;

public sealed class MapLabelsTests : IAsyncLifetime
{
    private static readonly LabelMeanings Meanings = new()
    {
        Widths = new Dictionary<string, double>(StringComparer.Ordinal) { ["wide"] = 1, ["slender"] = -1 },
        Shanks = new Dictionary<string, double>(StringComparer.Ordinal) { ["oak"] = 8 },
    };

    private readonly ShoesInMemory _shoes = new();
    private TestShop _shop = null!;
    private Guid _maker;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        _shop = await TestShop.OpenAsync();
        await CatalogueShop.ImportAsync(_shop);
        _maker = await CatalogueShop.MakerAsync(_shop, "Aldergate");
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    // Common practice, no source: a width step is 7 mm of girth, 2.5 mm of box and 1.5 mm of heel.
    [Fact]
    public async Task What_the_label_alone_says_follows_from_what_its_words_mean()
    {
        var before = await FormAsync("W38B");

        Assert.IsType<MapLabelsOutcome.Mapped>(await MapAsync(Meanings));

        var after = await FormAsync("W38B");
        Assert.Equal(before[FormPart.BallGirth] + 7, after[FormPart.BallGirth], 1e-9);
        Assert.Equal(before[FormPart.BoxBreadth] + 2.5, after[FormPart.BoxBreadth], 1e-9);
        Assert.Equal(before[FormPart.HeelBreadth] + 1.5, after[FormPart.HeelBreadth], 1e-9);
        Assert.Equal((8, FormSource.Label), (after[FormPart.Shank], after.Source));
        Assert.Equal(before[FormPart.Length], after[FormPart.Length]);
    }

    [Fact]
    public async Task Importing_the_same_file_again_changes_nothing_and_the_meanings_stay()
    {
        await MapAsync(Meanings);
        var before = await FormAsync("W38B");

        Assert.Equal(new ImportOutcome.Imported(0, 0, Unchanged: 5, 0), await CatalogueShop.ImportAsync(_shop));

        Assert.Equal(before[FormPart.BallGirth], (await FormAsync("W38B"))[FormPart.BallGirth]);
    }

    [Fact]
    public async Task A_size_that_comes_later_is_read_by_the_same_meanings()
    {
        await MapAsync(Meanings);

        await CatalogueShop.ImportAsync(_shop, "sku,maker,model,kind,sizeSystem,size,width\nW40B,Aldergate,Wren,pointe,eu,40,wide\nW40,Aldergate,Wren,pointe,eu,40,even\n");

        Assert.Equal((await FormAsync("W40"))[FormPart.BallGirth] + 7, (await FormAsync("W40B"))[FormPart.BallGirth], 1e-9);
    }

    [Fact]
    public async Task The_preview_says_how_many_sizes_change_and_by_how_much()
    {
        var preview = await new LabelQueries(_shop.Reads).PreviewAsync(_maker, Meanings, Stop);

        Assert.Equal((4, 4), (preview.Sizes, preview.Changed));
        var girth = Assert.Single(preview.Parts, part => part.Part is FormPart.BallGirth);
        Assert.Equal((4, -7, 7), (girth.Sizes, Math.Round(girth.Least, 9), Math.Round(girth.Most, 9)));
        Assert.Equal(1, Assert.Single(preview.Parts, part => part.Part is FormPart.Shank).Sizes);
        Assert.DoesNotContain(preview.Parts, part => part.Part is FormPart.Length);
        Assert.Equal(FormSource.Label, (await FormAsync("W38B")).Source);
    }

    [Fact]
    public async Task Taking_it_back_lets_what_was_said_before_hold_again()
    {
        await MapAsync(Meanings);
        var first = (await FormAsync("W38B"))[FormPart.BallGirth];
        _shop.Clock.Advance(TimeSpan.FromMinutes(1));
        var mapped = Assert.IsType<MapLabelsOutcome.Mapped>(await MapAsync(Meanings with { Widths = new Dictionary<string, double>(StringComparer.Ordinal) { ["wide"] = 2 } }));
        Assert.Equal(first + 7, (await FormAsync("W38B"))[FormPart.BallGirth], 1e-9);

        var withdraw = new WithdrawLabelMapping(_shop.Writes, _shop.Clock);
        Assert.IsType<WithdrawLabelMappingOutcome.Withdrawn>(await withdraw.RunAsync(_shop.Manager, Guid.CreateVersion7(), mapped.MappingId, Stop));

        Assert.Equal(first, (await FormAsync("W38B"))[FormPart.BallGirth], 1e-9);
        Assert.IsType<WithdrawLabelMappingOutcome.NotInForce>(await withdraw.RunAsync(_shop.Manager, Guid.CreateVersion7(), mapped.MappingId, Stop));
        await using var db = _shop.CreateDbContext();
        Assert.Equal(2, await db.LabelMappings.CountAsync(Stop));
    }

    [Fact]
    public async Task Labels_that_run_ahead_make_shoes_shorter_for_that_maker_alone()
    {
        var jazz = (await FormAsync("R38"))[FormPart.BallGirth];

        await MapAsync(LabelMeanings.None with { Systems = new Dictionary<string, SystemMeaning>(StringComparer.Ordinal) { ["eu"] = new("eu", 2) } });

        // Label 38 less two sizes is 36: a foot of 226.67 mm.
        Assert.Equal((36 - 2) / 0.15, (await FormAsync("W38"))[FormPart.Length], 1e-9);
        Assert.Equal(jazz, (await FormAsync("R38"))[FormPart.BallGirth]);
    }

    [Fact]
    public async Task What_was_measured_stays_and_is_graded_by_the_meanings()
    {
        var size = await CatalogueShop.IdOfAsync(_shop, "W38");
        await new MeasureSample(_shop.Writes, _shop.Clock).RunAsync(
            _shop.Manager, Guid.CreateVersion7(), new MeasureSampleRequest(size, [236, null, 212, null, null, null, null, null], new DateOnly(2026, 3, 14), "Ines"), Stop);

        await MapAsync(Meanings);

        // From slender to wide are two width steps.
        Assert.Equal((212, 226), ((await FormAsync("W38"))[FormPart.BallGirth], (await FormAsync("W38B"))[FormPart.BallGirth]));
    }

    [Fact]
    public async Task What_a_word_cannot_mean_is_refused()
    {
        Assert.Equal(new MapLabelsOutcome.Invalid("wide", LabelFault.Step), await MapAsync(Widths(3)));
        Assert.Equal(new MapLabelsOutcome.Invalid("wide", LabelFault.Step), await MapAsync(Widths(double.NaN)));
        Assert.Equal(new MapLabelsOutcome.Invalid("oak", LabelFault.ShankPoints), await MapAsync(LabelMeanings.None with { Shanks = new Dictionary<string, double>(StringComparer.Ordinal) { ["oak"] = 11 } }));
        Assert.Equal(new MapLabelsOutcome.Invalid("eu", LabelFault.System), await MapAsync(System("none", null)));
        Assert.Equal(new MapLabelsOutcome.Invalid("eu", LabelFault.Ahead), await MapAsync(System("eu", 9)));
        Assert.IsType<MapLabelsOutcome.Unchanged>(await MapAsync(LabelMeanings.None));
        Assert.IsType<MapLabelsOutcome.Gone>(await new MapLabels(_shop.Writes, _shop.Clock).RunAsync(_shop.Manager, Guid.CreateVersion7(), Guid.CreateVersion7(), Meanings, Stop));
        await Assert.ThrowsAsync<NotPermittedException>(() => new MapLabels(_shop.Writes, _shop.Clock).RunAsync(_shop.Fitter, Guid.CreateVersion7(), _maker, Meanings, Stop));
        await using var db = _shop.CreateDbContext();
        Assert.Empty(await db.LabelMappings.ToListAsync(Stop));
    }

    [Fact]
    public async Task The_words_of_a_maker_come_with_how_many_sizes_bear_them()
    {
        await MapAsync(Meanings);

        var labels = await new LabelQueries(_shop.Reads).SeeAsync(_maker, Stop);

        Assert.Equal([("slender", 3), ("wide", 1)], labels!.Widths.Select(word => (word.Word, word.Sizes)));
        Assert.Equal([("oak", 1), ("reed", 3)], labels.Shanks.Select(word => (word.Word, word.Sizes)));
        Assert.Empty(labels.Options);
        Assert.Equal(("eu", 4, 1.0), Assert.Single(labels.Systems) is var system ? (system.Id, system.Sizes, Math.Round(system.UsualLabelLessGauge, 9)) : default);
        Assert.Equal(1, labels.Meanings.Widths["wide"]);
        Assert.True(Assert.Single(labels.History).InForce);
    }

    private static LabelMeanings Widths(double step) => LabelMeanings.None with { Widths = new Dictionary<string, double>(StringComparer.Ordinal) { ["wide"] = step } };

    private static LabelMeanings System(string id, double? ahead) => LabelMeanings.None with { Systems = new Dictionary<string, SystemMeaning>(StringComparer.Ordinal) { ["eu"] = new(id, ahead) } };

    private Task<MapLabelsOutcome> MapAsync(LabelMeanings meanings) =>
        new MapLabels(_shop.Writes, _shop.Clock).RunAsync(_shop.Manager, Guid.CreateVersion7(), _maker, meanings, Stop);

    private Task<ShoeForm> FormAsync(string code) => CatalogueShop.FormAsync(_shop, _shoes, code);
}
