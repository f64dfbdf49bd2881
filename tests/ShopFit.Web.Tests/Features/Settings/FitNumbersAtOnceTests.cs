using System.Net;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Features.Api;
using ShopFit.Web.Features.Catalogue;

namespace ShopFit.Web.Features.Settings;

public sealed class FitNumbersAtOnceTests(ApiSite site) : IClassFixture<ApiSite>
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_changed_number_is_in_the_next_answer_and_its_default_brings_the_first_answer_back()
    {
        string key = await site.KeyAsync();
        string first = await AnswerAsync(key);
        Assert.Equal(first, await AnswerAsync(key));

        await ChangeAsync("bands.pointe.length.weight", null, 9);
        string changed = await AnswerAsync(key);
        Assert.NotEqual(first, changed);
        Assert.Equal(changed, await AnswerAsync(key));

        await ChangeAsync("bands.pointe.length.weight", 9, null);
        Assert.Equal(first, await AnswerAsync(key));
    }

    [Fact]
    public async Task Numbers_that_are_kept_badly_leave_the_answers_as_they_were()
    {
        string key = await site.KeyAsync();
        string first = await AnswerAsync(key);
        await KeepAsync("""{"bands.pointe.length.weight":"heavy","kinds":[]}""");
        try
        {
            Assert.Equal(first, await AnswerAsync(key));
        }
        finally
        {
            await KeepAsync(null);
        }
    }

    [Fact]
    public async Task Before_a_number_is_saved_it_is_said_how_the_first_pairs_of_one_foot_would_change()
    {
        var same = await PreviewAsync(new FitNumberChange("sentences.likely.value", null, 0.7));
        Assert.Equal((10, 0, same!.ChanceNow), (same.Pairs, same.Others, same.ChanceThen));

        var stricter = await PreviewAsync(new FitNumberChange("score.fits-from.value", null, 0.9));
        Assert.InRange(stricter!.ChanceThen, 0, stricter.ChanceNow - 0.01);

        await using var db = site.Shop.CreateDbContext();
        Assert.Null((await db.Shops.SingleAsync(Stop)).FitOverridesJson);
    }

    [Fact]
    public async Task What_cannot_be_said_honestly_is_not_said()
    {
        Assert.Null(await PreviewAsync(new FitNumberChange("allowances.eu.value", null, 2)));
        Assert.Null(await PreviewAsync(new FitNumberChange("bands.pointe.length.ideal-from", null, 9)));
        Assert.Null(await PreviewAsync(new FitNumberChange("boots", null, 9)));
    }

    private Task<SeenPreview?> PreviewAsync(FitNumberChange change)
    {
        var reads = site.Shop.ReadsOf(site.Shop.Manager);
        return new FitPreview(reads, new CatalogueQueries(reads, new ShoesInMemory())).SeeAsync("pointe", [change], Stop);
    }

    private async Task<string> AnswerAsync(string key)
    {
        using var answer = await site.AskAsync(key, MalformedBodies.Good);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await answer.Content.ReadAsStringAsync(Stop);
    }

    private async Task ChangeAsync(string path, double? seen, double? value) =>
        Assert.IsType<ChangeFitNumbersOutcome.Changed>(await new ChangeFitNumbers(site.Shop.Writes, site.Shop.Clock)
            .RunAsync(site.Shop.Manager, Guid.CreateVersion7(), [new FitNumberChange(path, seen, value)], "to see it", Stop));

    private async Task KeepAsync(string? kept)
    {
        await using var db = site.Shop.CreateDbContext();
        (await db.Shops.SingleAsync(Stop)).OverrideFit(kept);
        await db.SaveChangesAsync(Stop);
    }
}
