using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Scoring;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Sales;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Fittings;

public sealed class RecordTryOnTests : IAsyncLifetime
{
    private static readonly PadUnderFoot Cushion = new(Side.Left, "heel-cushion");

    private SellingShop _selling = null!;
    private Guid _wren;

    private TestShop Shop => _selling.Shop;

    private RecordTryOnRequest Said => new(_selling.FittingId, _wren);

    public async ValueTask InitializeAsync()
    {
        _selling = await SellingShop.OpenAsync();
        _wren = (await _selling.RequestAsync("W-38")).SizeId;
    }

    public ValueTask DisposeAsync() => _selling.DisposeAsync();

    [Fact]
    public async Task Each_thing_said_appends_a_row_and_adds_to_what_was_said_before()
    {
        await SayAsync(Said);
        await SayAsync(Said with { Pads = [Cushion] });
        await SayAsync(Said with { Tags = ["too-long"] });
        await SayAsync(Said with { Tags = ["sinks"] });
        await SayAsync(Said with { Fits = true, Note = " held, at last " });
        await SayAsync(Said with { Fits = false, TagsTakenBack = ["too-long"] });

        var seen = Assert.Single((await TriesAsync()).TryOns);
        Assert.Equal((false, "held, at last"), (seen.Fits, seen.Note));
        Assert.Equal([Cushion], seen.Pads);
        Assert.Equal(["sinks"], seen.Tags);
        await using var db = Shop.CreateDbContext();
        var rows = await db.FittingTryOns.ToListAsync(TestContext.Current.CancellationToken);
        Assert.Equal((6, 5), (rows.Count, rows.Count(row => row.WithdrawnAt is not null)));
    }

    [Fact]
    public async Task Taking_a_pair_again_changes_nothing_that_was_said_of_it()
    {
        await SayAsync(Said with { Fits = true, Pads = [Cushion] });

        await SayAsync(Said);

        Assert.True(Assert.Single((await TriesAsync()).TryOns).Fits);
    }

    [Fact]
    public async Task A_pair_that_did_not_fit_moves_the_next_shortlist()
    {
        var before = await ChancesAsync();

        await SayAsync(Said with { Fits = false });

        Assert.NotEqual(before, await ChancesAsync());
    }

    [Fact]
    public async Task Taking_a_try_on_back_gives_exactly_the_belief_without_it_and_undoing_that_gives_it_back()
    {
        var without = await ChancesAsync();
        await SayAsync(Said with { Fits = false, Tags = ["too-long"] });
        var with = await ChancesAsync();

        var withdrawn = Assert.IsType<WithdrawTryOnOutcome.Withdrawn>(await new WithdrawTryOn(Shop.Writes, Shop.Clock)
            .RunAsync(Shop.Fitter, Guid.CreateVersion7(), _selling.FittingId, _wren, TestContext.Current.CancellationToken));
        Assert.Equal(without, await ChancesAsync());
        Assert.Empty((await TriesAsync()).TryOns);

        Assert.IsType<RestoreTryOnOutcome.Restored>(await RestoreAsync(withdrawn.TryOnIds));
        Assert.Equal(with, await ChancesAsync());
    }

    [Fact]
    public async Task An_answer_to_a_check_moves_the_belief_and_taking_it_back_gives_exactly_the_belief_without_it()
    {
        await SayAsync(Said with { Answers = [new(Side.Left, "toes-flat", 2), new(Side.Right, "toes-flat", 2)] });
        var without = await ChancesAsync();
        await SayAsync(Said with { Answers = [new(Side.Left, "drop", 0, ByDancer: true)] });
        Assert.NotEqual(without, await ChancesAsync());

        await SayAsync(Said with { AnswersTakenBack = [new(Side.Left, "drop")] });

        Assert.Equal(without, await ChancesAsync());
        Assert.Equal([new(Side.Left, "toes-flat", 2), new(Side.Right, "toes-flat", 2)], Assert.Single((await TriesAsync()).TryOns).Answers);
    }

    [Fact]
    public async Task A_later_answer_takes_the_place_of_the_earlier_and_the_other_foot_keeps_its_own()
    {
        await SayAsync(Said with { Answers = [new(Side.Left, "arch", 1), new(Side.Right, "arch", 1)] });

        await SayAsync(Said with { Answers = [new(Side.Right, "arch", 2)] });

        Assert.Equal([new(Side.Left, "arch", 1), new(Side.Right, "arch", 2)], Assert.Single((await TriesAsync()).TryOns).Answers);
    }

    [Fact]
    public async Task What_is_seen_of_a_sore_foot_teaches_nothing_and_of_the_other_it_does()
    {
        await using (var db = Shop.CreateDbContext())
        {
            (await db.Fittings.SingleAsync(TestContext.Current.CancellationToken)).Start(firstPair: true, soreLeft: true, soreRight: false);
            await db.SaveChangesAsync(TestContext.Current.CancellationToken);
        }

        var before = await ChancesAsync();
        await SayAsync(Said with { Answers = [new(Side.Left, "toes-flat", 2)] });
        Assert.Equal(before, await ChancesAsync());

        await SayAsync(Said with { Answers = [new(Side.Right, "toes-flat", 2)] });

        Assert.NotEqual(before, await ChancesAsync());
        Assert.Equal(2, Assert.Single((await TriesAsync()).TryOns).Answers.Count);
    }

    [Fact]
    public async Task Nothing_comes_back_over_a_pair_that_was_put_on_again()
    {
        await SayAsync(Said with { Fits = false });
        var withdrawn = Assert.IsType<WithdrawTryOnOutcome.Withdrawn>(await new WithdrawTryOn(Shop.Writes, Shop.Clock)
            .RunAsync(Shop.Fitter, Guid.CreateVersion7(), _selling.FittingId, _wren, TestContext.Current.CancellationToken));
        await SayAsync(Said with { Fits = true });

        Assert.IsType<RestoreTryOnOutcome.TooLate>(await RestoreAsync(withdrawn.TryOnIds));

        Assert.True(Assert.Single((await TriesAsync()).TryOns).Fits);
    }

    [Fact]
    public async Task What_is_said_of_a_fit_on_a_sore_foot_is_kept_and_teaches_nothing()
    {
        await using (var db = Shop.CreateDbContext())
        {
            (await db.Fittings.SingleAsync(TestContext.Current.CancellationToken)).Start(firstPair: true, soreLeft: true, soreRight: false);
            await db.SaveChangesAsync(TestContext.Current.CancellationToken);
        }

        var before = await ChancesAsync();

        await SayAsync(Said with { Fits = false });

        Assert.Equal(before, await ChancesAsync());
        Assert.False(Assert.Single((await TriesAsync()).TryOns).Fits);
    }

    [Fact]
    public async Task Nothing_is_put_on_with_broken_skin_or_under_twelve_but_what_is_on_may_still_be_told()
    {
        var broken = await _selling.OpenFittingAsync(ageYears: 13, skinBroken: true);
        var young = await _selling.OpenFittingAsync(ageYears: 11.9);
        await SayAsync(Said);
        await using (var db = Shop.CreateDbContext())
        {
            (await db.Fittings.SingleAsync(row => row.Id == _selling.FittingId, TestContext.Current.CancellationToken)).Start(firstPair: true, soreLeft: false, soreRight: false, skinBroken: true);
            await db.SaveChangesAsync(TestContext.Current.CancellationToken);
        }

        Assert.Equal(NoTryOn.SkinBroken, Assert.IsType<RecordTryOnOutcome.NotToday>(await SayAsync(Said with { FittingId = broken })).Why);
        Assert.Equal(NoTryOn.ForLater, Assert.IsType<RecordTryOnOutcome.NotToday>(await SayAsync(Said with { FittingId = young })).Why);
        Assert.IsType<RecordTryOnOutcome.Recorded>(await SayAsync(Said with { Tags = [TryOnTags.Hurts] }));
    }

    [Fact]
    public async Task What_cannot_be_is_refused_and_changes_nothing()
    {
        var jazz = (await _selling.RequestAsync("J-38")).SizeId;

        Assert.IsType<RecordTryOnOutcome.NoSuchPair>(await SayAsync(Said with { SizeId = jazz }));
        Assert.IsType<RecordTryOnOutcome.NoSuchPair>(await SayAsync(Said with { SizeId = Guid.CreateVersion7() }));
        Assert.Equal(TryOnProblem.Pads, await ProblemAsync(Said with { Pads = [Cushion, Cushion] }));
        Assert.Equal(TryOnProblem.Pads, await ProblemAsync(Said with { Pads = [new(Side.Left, "a-feather")] }));
        Assert.Equal(TryOnProblem.Tag, await ProblemAsync(Said with { Tags = ["a-word"] }));
        Assert.Equal(TryOnProblem.Answer, await ProblemAsync(Said with { Answers = [new(Side.Left, "wiggle", 1)] }));
        Assert.Equal(TryOnProblem.Answer, await ProblemAsync(Said with { Answers = [new(Side.Left, "drop", 3)] }));
        Assert.Equal(TryOnProblem.Answer, await ProblemAsync(Said with { Answers = [new(Side.Left, "drop", 1), new(Side.Left, "drop", 2)] }));
        Assert.Equal(TryOnProblem.NoteTooLong, await ProblemAsync(Said with { Note = new string('x', RecordTryOn.LongestNote + 1) }));
        await using var db = Shop.CreateDbContext();
        Assert.False(await db.FittingTryOns.AnyAsync(TestContext.Current.CancellationToken));
    }

    [Theory]
    [InlineData("W-38")]
    [InlineData(" w-38 ")]
    // GS1's own example of a check digit, 629104150021 with 3, as EAN-13 and with the zero of a GTIN-14.
    [InlineData("6291041500213")]
    [InlineData("06291041500213")]
    public async Task A_pair_is_found_by_our_code_and_by_the_digits_under_its_barcode(string typed)
    {
        await using (var db = Shop.CreateDbContext())
        {
            var item = await db.Items.SingleAsync(row => row.Id == _wren, TestContext.Current.CancellationToken);
            item.Change(item.Name, item.PriceMinor, "6291041500213");
            await db.SaveChangesAsync(TestContext.Current.CancellationToken);
        }

        Assert.Equal(_wren, Assert.IsType<PairByCode.Found>(await FindAsync(typed)).Shoe.SizeId);
    }

    [Fact]
    public async Task A_code_that_is_no_pair_of_this_kind_says_what_it_is()
    {
        Assert.IsType<PairByCode.Other>(await FindAsync("R-1"));
        Assert.IsType<PairByCode.Other>(await FindAsync("J-38"));
        Assert.IsType<PairByCode.Misread>(await FindAsync("6291041500214"));
        Assert.IsType<PairByCode.Unknown>(await FindAsync("W_38"));
        Assert.IsType<PairByCode.Unknown>(await FindAsync("6291041500213"));
    }

    private Task<PairByCode> FindAsync(string typed) =>
        new TryOnQueries(Shop.Reads, new CatalogueQueries(Shop.Reads, _selling.Shoes)).FindAsync("pointe", typed, TestContext.Current.CancellationToken);

    private Task<RecordTryOnOutcome> SayAsync(RecordTryOnRequest said) =>
        new RecordTryOn(Shop.Writes, _selling.Shoes, Shop.Clock).RunAsync(Shop.Fitter, Guid.CreateVersion7(), said, TestContext.Current.CancellationToken);

    private async Task<TryOnProblem> ProblemAsync(RecordTryOnRequest said) => Assert.IsType<RecordTryOnOutcome.Invalid>(await SayAsync(said)).Problem;

    private Task<RestoreTryOnOutcome> RestoreAsync(IReadOnlyList<Guid> tryOns) =>
        new RestoreTryOn(Shop.Writes).RunAsync(Shop.Fitter, Guid.CreateVersion7(), _selling.FittingId, tryOns, TestContext.Current.CancellationToken);

    private async Task<SeenTries> TriesAsync() => (await new FittingQueries(Shop.Reads).SeeAsync(_selling.FittingId, TestContext.Current.CancellationToken))!.Tries;

    // Every chance and score, to the last bit.
    private async Task<IReadOnlyList<(string Sku, double Chance, double Score)>> ChancesAsync()
    {
        await using var db = Shop.CreateDbContext();
        var shoes = await _selling.Shoes.SeeAsync(db, TestContext.Current.CancellationToken);
        var question = (await FittingQuestion.LoadAsync(db, shoes, _selling.FittingId, TestContext.Current.CancellationToken))!.Question;
        return [.. Shortlist.Of(question with { From = ShortlistFrom.Catalogue }, TestContext.Current.CancellationToken).Pairs.Select(pair => (pair.Shoe.Sku, pair.ChanceOfFit, pair.Score))];
    }
}
