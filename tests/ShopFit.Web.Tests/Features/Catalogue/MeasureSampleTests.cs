using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Shoes;
using ShopFit.Web.Features.People;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Catalogue;

public sealed class MeasureSampleTests : IAsyncLifetime
{
    // Label 38 of eu is a foot of 240 mm, one Paris point less inside: 233.33 mm.
    private const double LabelLength = 240 - (20.0 / 3);

    private readonly ShoesInMemory _shoes = new();
    private TestShop _shop = null!;
    private Guid _size;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        _shop = await TestShop.OpenAsync();
        await CatalogueShop.ImportAsync(_shop);
        _size = await CatalogueShop.IdOfAsync(_shop, "W38");
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task One_sample_gives_the_form_of_every_size_of_its_model()
    {
        var before = await CatalogueShop.FormAsync(_shop, _shoes, "W39");

        var outcome = await MeasureAsync(Sample(length: 236, girth: 212));

        Assert.Equal(4, Assert.IsType<MeasureSampleOutcome.Graded>(outcome).Sizes);
        var sample = await FormAsync("W38");
        Assert.Equal((236, 212, FormSource.Measured), (sample[FormPart.Length], sample[FormPart.BallGirth], sample.SourceOf(FormPart.Length)));
        var larger = await FormAsync("W39");
        Assert.Equal(236 + (20.0 / 3), larger[FormPart.Length], 1e-9);
        Assert.Equal(FormSource.Measured, larger.SourceOf(FormPart.Length));

        // What was not measured is what it was.
        Assert.Equal((before[FormPart.Vamp], FormSource.Label), (larger[FormPart.Vamp], larger.SourceOf(FormPart.Vamp)));
        Assert.Equal(240, (await FormAsync("R38"))[FormPart.Length]);
    }

    [Fact]
    public async Task What_is_measured_is_kept_with_who_and_when_and_the_catalogue_stays_as_it_came()
    {
        var outcome = Assert.IsType<MeasureSampleOutcome.Graded>(await MeasureAsync(Sample(length: 236)));

        await using var db = _shop.CreateDbContext();
        var row = await db.MeasuredSamples.SingleAsync(Stop);
        Assert.Equal((outcome.SampleId, _size, 236.0, null, "Ines", new DateOnly(2026, 3, 14), _shop.Manager.PersonId), (row.Id, row.SizeId, row.LengthMm, row.VampMm, row.MeasuredBy, row.MeasuredOn, row.PersonId));
        Assert.Null((await db.ShoeSizes.SingleAsync(size => size.Id == _size, Stop)).Form.LengthMm);
        Assert.Equal(new ImportOutcome.Imported(0, 0, Unchanged: 5, 0), await CatalogueShop.ImportAsync(_shop));
        Assert.Equal(236, (await FormAsync("W38"))[FormPart.Length]);
    }

    [Fact]
    public async Task A_sample_far_from_its_label_is_asked_again_and_taken_when_it_was_measured_twice()
    {
        var request = Sample(length: LabelLength + 12);

        var asked = Assert.IsType<MeasureSampleOutcome.AskedAgain>(await MeasureAsync(request));
        var doubt = Assert.Single(asked.Doubts);
        Assert.Equal((FormPart.Length, 12), (doubt.Part, Math.Round(doubt.Off, 9)));
        Assert.Equal(FormSource.Label, (await FormAsync("W38")).Source);

        Assert.IsType<MeasureSampleOutcome.Graded>(await MeasureAsync(request with { MeasuredTwice = true }));
        Assert.Equal(LabelLength + 12, (await FormAsync("W38"))[FormPart.Length], 1e-9);
    }

    [Fact]
    public async Task A_sample_that_cannot_be_says_what_is_wrong_and_changes_nothing()
    {
        Assert.Equal(new SampleProblem(SampleFault.OutOfRange, FormPart.Length, 23.6, 100, 350), await ProblemAsync(Sample(length: 23.6)));
        Assert.Equal(SampleFault.OutOfRange, (await ProblemAsync(Sample(length: double.NaN))).Fault);
        Assert.Equal(SampleFault.NothingMeasured, (await ProblemAsync(Sample())).Fault);
        Assert.Equal(SampleFault.NobodyMeasured, (await ProblemAsync(Sample(length: 236) with { MeasuredBy = " " })).Fault);
        Assert.Equal(SampleFault.NameTooLong, (await ProblemAsync(Sample(length: 236) with { MeasuredBy = new string('a', 101) })).Fault);
        Assert.Equal(SampleFault.NotYet, (await ProblemAsync(Sample(length: 236) with { MeasuredOn = new DateOnly(2026, 3, 15) })).Fault);
        Assert.IsType<MeasureSampleOutcome.Gone>(await MeasureAsync(Sample(length: 236) with { SizeId = Guid.CreateVersion7() }));
        await using var db = _shop.CreateDbContext();
        Assert.Empty(await db.MeasuredSamples.ToListAsync(Stop));
    }

    [Fact]
    public async Task Taking_a_sample_back_brings_back_what_was_there_and_keeps_its_row()
    {
        await MeasureAsync(Sample(length: 236));
        _shop.Clock.Advance(TimeSpan.FromMinutes(1));
        var second = Assert.IsType<MeasureSampleOutcome.Graded>(await MeasureAsync(Sample(length: 238)));
        Assert.Equal(238, (await FormAsync("W38"))[FormPart.Length]);

        var withdraw = new WithdrawSample(_shop.Writes, _shop.Clock);
        Assert.IsType<WithdrawSampleOutcome.Withdrawn>(await withdraw.RunAsync(_shop.Manager, Guid.CreateVersion7(), second.SampleId, Stop));

        Assert.Equal(236, (await FormAsync("W38"))[FormPart.Length]);
        Assert.IsType<WithdrawSampleOutcome.NotInForce>(await withdraw.RunAsync(_shop.Manager, Guid.CreateVersion7(), second.SampleId, Stop));
        await using var db = _shop.CreateDbContext();
        Assert.Equal(2, await db.MeasuredSamples.CountAsync(Stop));
    }

    [Fact]
    public async Task Each_size_that_was_itself_measured_keeps_its_own_numbers()
    {
        await MeasureAsync(Sample(length: 236));
        await MeasureAsync(Sample(length: 248) with { SizeId = await CatalogueShop.IdOfAsync(_shop, "W39") });

        Assert.Equal((236, 248), ((await FormAsync("W38"))[FormPart.Length], (await FormAsync("W39"))[FormPart.Length]));
        var seen = await new SizeQueries(_shop.Reads, _shoes, _shop.Clock).SeeAsync(await CatalogueShop.IdOfAsync(_shop, "W37"), Stop);
        Assert.Equal((PartOrigin.Graded, "38 slender reed"), (seen!.Parts[0].Origin, seen.Parts[0].SampleLabel));
    }

    [Fact]
    public async Task The_preview_is_what_the_grading_gives()
    {
        var parts = Sample(length: 236, girth: 212).Parts;
        var preview = await new SampleQueries(_shop.Reads, _shoes, _shop.Clock).PreviewAsync(_size, parts, Stop);
        await MeasureAsync(Sample(length: 236, girth: 212));

        Assert.Equal(["37 slender", "38 slender", "38 wide", "39 slender"], preview.Sizes.Select(size => size.Label));
        Assert.Equal("38 slender", Assert.Single(preview.Sizes, size => size.Measured).Label);
        foreach (var (size, code) in preview.Sizes.Zip(["W37", "W38", "W38B", "W39"]))
        {
            var form = await FormAsync(code);
            Assert.All(Enum.GetValues<FormPart>(), part => Assert.Equal(form[part], size.Then[part], 1e-9));
        }
    }

    [Fact]
    public async Task Fitters_measure_no_samples() =>
        await Assert.ThrowsAsync<NotPermittedException>(() =>
            new MeasureSample(_shop.Writes, _shop.Clock).RunAsync(_shop.Fitter, Guid.CreateVersion7(), Sample(length: 236), Stop));

    private async Task<SampleProblem> ProblemAsync(MeasureSampleRequest request) =>
        Assert.IsType<MeasureSampleOutcome.Invalid>(await MeasureAsync(request)).Problem;

    private Task<MeasureSampleOutcome> MeasureAsync(MeasureSampleRequest request) =>
        new MeasureSample(_shop.Writes, _shop.Clock).RunAsync(_shop.Manager, Guid.CreateVersion7(), request, Stop);

    private Task<ShoeForm> FormAsync(string code) => CatalogueShop.FormAsync(_shop, _shoes, code);

    private MeasureSampleRequest Sample(double? length = null, double? girth = null) =>
        new(_size, [length, null, girth, null, null, null, null, null], new DateOnly(2026, 3, 14), "Ines");
}
