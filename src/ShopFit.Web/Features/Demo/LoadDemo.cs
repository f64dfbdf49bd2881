using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Beliefs;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Features.Fittings;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Sales;
using ShopFit.Web.Features.Settings;
using ShopFit.Web.Features.Shelf;
using ShopFit.Web.Features.Studios;

namespace ShopFit.Web.Features.Demo;

/// <summary>Fills the demo shop from its files through the shop's own actions, moved so that its last day is today.</summary>
/// <remarks>Every step has a key of its own that is the same at every start: what was done is not done again.</remarks>
internal sealed class LoadDemo(ShopWrites writes, IDbContextFactory<ShopDbContext> contexts, CheckCatalogue check, ShoesInMemory shoes, TimeProvider clock)
{
    /// <summary>So much of the two years is lived again, days; the shop begins to count with what stood there then. All of it would take half a minute.</summary>
    public const int DaysLived = 100;

    private static readonly Guid Finished = DemoKeys.Of("finished");

    private readonly DemoFiles _files = new();
    private readonly HistoryClock _then = new();

    public async Task RunAsync(Guid shopId, CancellationToken cancellationToken)
    {
        await using (var db = await contexts.CreateDbContextAsync(cancellationToken))
        {
            db.ShopId = shopId;
            if (await db.Commands.AnyAsync(command => command.Id == Finished, cancellationToken))
            {
                return;
            }
        }

        var history = _files.History();
        var settings = _files.Shop();
        var today = new ShopTime(TimeZoneInfo.FindSystemTimeZoneById(settings.TimeZone)).Day(clock.GetUtcNow());
        var days = today.DayNumber - history.AsOf.DayNumber;
        var manager = await ActorAsync(shopId, DemoPeople.Manager, cancellationToken);
        var fitter = await ActorAsync(shopId, DemoPeople.Fitter, cancellationToken);

        var all = _files.Years();
        var counted = new DateTimeOffset(history.AsOf.AddDays(-DaysLived), TimeOnly.MinValue, TimeSpan.Zero);
        var years = all.From(counted);
        var lived = new LoadDemoYears(years, PlaceOfEverything(), days, clock.GetUtcNow(), manager, fitter);

        // The shop began to count before anybody was fitted.
        var openings = history.Fittings.Select(fitting => fitting.OpenedAt).Concat(years.Visits.Select(visit => visit.OpenedAt));
        _then.Now = openings.Min().AddDays(days - 1);
        await StepAsync(manager, "settings", (db, stop) => SettleAsync(db, settings, stop), cancellationToken);
        await ImportAsync(manager, cancellationToken);
        await StepAsync(manager, "shelf", (db, stop) => FillShelfAsync(db, manager, history, (all, counted), stop), cancellationToken);
        await StepAsync(manager, "dancers", (db, ct) => AddDancersAsync(db, fitter, history, days, ct), cancellationToken);
        await StepAsync(manager, "two years of dancers", (db, ct) => lived.AddPeopleAsync(db, _then.Now, ct), cancellationToken);
        await KeepShoesAsync(shopId, cancellationToken);
        var from = DateTimeOffset.MinValue;
        foreach (var fitting in history.Fittings)
        {
            await LiveUntilAsync(fitting.Key, fitting.ClosedAt.AddDays(days));
            await FitAsync(fitter, fitting, days, cancellationToken);
        }

        await LiveUntilAsync("today", DateTimeOffset.MaxValue);
        await StepAsync(manager, "finished", (_, _) => Task.CompletedTask, cancellationToken);

        async Task LiveUntilAsync(string name, DateTimeOffset until)
        {
            var began = from;
            await StepAsync(
                manager, $"two years until {name}", async (db, stop) => await lived.LiveAsync(db, await shoes.SeeAsync(db, stop), began, until, stop), cancellationToken);
            from = until;
        }
    }

    private Dictionary<string, string> PlaceOfEverything() => _files.Places()
        .Concat(_files.Haberdashery().Where(item => item.TracksStock).Select(item => KeyValuePair.Create(item.Code, item.Place)))
        .ToDictionary(StringComparer.Ordinal);

    private static async Task SettleAsync(ShopDbContext db, DemoShopSettings settings, CancellationToken cancellationToken)
    {
        var shop = await db.Shops.SingleAsync(row => row.Id == db.ShopId, cancellationToken);
        shop.Rename(settings.Name, settings.Address, settings.Contact);
        shop.Count(settings.TimeZone, settings.Currency, settings.Paper, settings.Units, settings.SizeSystemShown, settings.PricesIncludeTax, settings.ReturnDays);
        db.TaxRates.AddRange(settings.TaxRates.Select(rate => TaxRate.Of(Guid.CreateVersion7(), db.ShopId, rate.Category, rate.RateBasisPoints)));
    }

    /// <summary>The catalogue without its stock, which goes to places that a catalogue file does not know.</summary>
    private async Task ImportAsync(Actor manager, CancellationToken cancellationToken)
    {
        var file = await ReadCatalogueAsync(manager.ShopId, cancellationToken);
        var outcome = await new ImportCatalogue(writes, _then).RunAsync(
            manager, DemoKeys.Of("catalogue"), file with { Rows = [.. file.Rows.Select(row => row with { OnHand = 0 })] }, skipBad: false, cancellationToken);
        if (outcome is ImportOutcome.Refused refused)
        {
            throw new InvalidOperationException($"The demo catalogue is not good: {refused.Report.Problems[0]}");
        }
    }

    private async Task<CatalogueFile> ReadCatalogueAsync(Guid shopId, CancellationToken cancellationToken)
    {
        await using var stream = _files.Catalogue();
        return await check.ReadAsync(shopId, stream, cancellationToken);
    }

    /// <summary>What stood on the shelf when the shop began to count, and what the thirteen bought beside it.</summary>
    private async Task FillShelfAsync(
        ShopDbContext db, Actor manager, DemoHistory history, (DemoYears Years, DateTimeOffset Counted) past, CancellationToken cancellationToken)
    {
        var goods = _files.Haberdashery();
        foreach (var item in goods)
        {
            db.Items.Add(Item.Of(DemoKeys.Of(item.Code), db.ShopId, item.Code, item.Name, item.Category, item.PriceMinor, item.Gtin, item.TracksStock, item.PadId));
        }

        var makers = await db.Makers.ToDictionaryAsync(maker => maker.Name, maker => maker.Id, StringComparer.Ordinal, cancellationToken);
        var models = await db.ShoeModels.ToDictionaryAsync(model => (model.MakerId, model.Name), cancellationToken);
        foreach (var (maker, model, construction) in _files.Models())
        {
            models[(makers[maker], model)].MadeOf(construction);
        }

        var sales = history.Fittings.Where(fitting => fitting.Decision.Kind == DecisionKinds.Sold).Select(fitting => fitting.Decision).ToList();
        var places = _files.Places();
        var rows = (await ReadCatalogueAsync(db.ShopId, cancellationToken)).Rows;
        var onHand = rows.Select(row => (row.Sku, Place: places[row.Sku], Pieces: row.OnHand + past.Years.MoreBy(past.Counted, row.Sku) + sales.Count(sale => sale.Sku == row.Sku)))
            .Concat(goods.Where(item => item.TracksStock).Select(item =>
                (Sku: item.Code, item.Place, Pieces: item.OnHand + past.Years.MoreBy(past.Counted, item.Code, item.PadId) + sales.Count(sale => sale.Pads.Any(pad => pad.Pad == item.PadId)))))
            .Where(row => row.Pieces > 0)
            .ToList();
        var placeIds = places.Values.Concat(onHand.Select(row => row.Place)).Distinct(StringComparer.Ordinal)
            .ToDictionary(code => code, code => DemoKeys.Of($"place {code}"), StringComparer.Ordinal);
        db.ShelfPlaces.AddRange(placeIds.Select(place => ShelfPlace.Of(place.Value, db.ShopId, place.Key)));
        await db.SaveChangesAsync(cancellationToken);

        var itemIds = await db.Items.ToDictionaryAsync(item => item.Code, item => item.Id, StringComparer.Ordinal, cancellationToken);
        var opening = new StockMove(manager, DemoKeys.Of("shelf"), _then.Now, LedgerReasons.Opening);
        foreach (var place in onHand.GroupBy(row => row.Place, StringComparer.Ordinal))
        {
            await StockMoves.AddNewAsync(db, opening, placeIds[place.Key], [.. place.Select(row => (itemIds[row.Sku], row.Pieces))], cancellationToken);
        }

        await CatalogueVersion.RaiseAsync(db, cancellationToken);
    }

    // An action keeps nothing in memory that is not committed: read once outside, the catalogue need not be read in each.
    private async Task KeepShoesAsync(Guid shopId, CancellationToken cancellationToken)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellationToken);
        db.ShopId = shopId;
        await shoes.SeeAsync(db, cancellationToken);
    }

    private async Task AddDancersAsync(ShopDbContext db, Actor fitter, DemoHistory history, int days, CancellationToken cancellationToken)
    {
        db.Guardians.AddRange(history.Guardians.Select(guardian => Guardian.Of(DemoKeys.Of(guardian.Key), db.ShopId, guardian.Name, guardian.Contact)));
        foreach (var known in history.Dancers)
        {
            var dancer = Dancer.Of(DemoKeys.Of(known.Key), db.ShopId, known.Name);
            dancer.Describe(known.Name, known.KnownAs, known.BirthDate.AddDays(days), known.Sex, known.Teacher);
            dancer.DancesAt(await StudiosByName.FindOrAddAsync(db, known.Studio, _then.Now, cancellationToken));
            if (known.Guardian is not null)
            {
                dancer.AnsweredForBy(DemoKeys.Of(known.Guardian));
            }

            db.Dancers.Add(dancer);
            db.Consents.Add(Consent.Of(Guid.CreateVersion7(), fitter, dancer.Id, known.Consent.GivenBy, known.Consent.GivenAt.AddDays(days)));
        }
    }

    private async Task FitAsync(Actor fitter, DemoFitting fitting, int days, CancellationToken cancellationToken)
    {
        _then.Now = fitting.OpenedAt.AddDays(days);
        var opened = Expect<OpenFittingOutcome.Opened>(await new OpenFitting(writes, _then).RunAsync(fitter, Key("open"), DemoKeys.Of(fitting.Dancer), fitting.Kind, cancellationToken));
        Expect<SetFittingStartOutcome.Kept>(await new SetFittingStart(writes).RunAsync(
            fitter,
            Key("start"),
            new SetFittingStartRequest(
                opened.FittingId,
                Version: 1,
                fitting.FirstPair,
                fitting.Sore.Contains(Fitting.Feet.Side.Left),
                fitting.Sore.Contains(Fitting.Feet.Side.Right),
                SkinBroken: false,
                fitting.TeacherAgreedOn?.AddDays(days)),
            cancellationToken));

        for (var index = 0; index < fitting.Readings.Count; index++)
        {
            var reading = fitting.Readings[index];
            var unit = reading.Unit == "word" ? ReadingUnit.Word : ReadingUnit.Millimetres;
            Expect<RecordReadingOutcome.Recorded>(await new RecordReading(writes, _then).RunAsync(
                fitter, Key($"reading {index}"), new RecordReadingRequest(opened.FittingId, [reading.Foot], reading.Trait, reading.Value, unit, null, reading.Method), cancellationToken));
        }

        for (var index = 0; index < fitting.TryOns.Count; index++)
        {
            var tryOn = fitting.TryOns[index];
            Expect<RecordTryOnOutcome.Recorded>(await new RecordTryOn(writes, shoes, _then).RunAsync(
                fitter, Key($"try-on {index}"), new RecordTryOnRequest(opened.FittingId, await SizeIdAsync(fitter.ShopId, tryOn.Sku, cancellationToken), tryOn.Fits, tryOn.Pads ?? []), cancellationToken));
        }

        _then.Now = fitting.ClosedAt.AddDays(days);
        var decision = fitting.Decision;
        Guid? sizeId = decision.Sku is null ? null : await SizeIdAsync(fitter.ShopId, decision.Sku, cancellationToken);
        if (decision.Kind == DecisionKinds.Sold)
        {
            Expect<SellFittingOutcome.Sold>(await new SellFitting(writes, shoes, _then).RunAsync(
                fitter, Key("sell"), new SellFittingRequest(opened.FittingId, sizeId!.Value, decision.Pads, [], Why: decision.Why), cancellationToken));
        }
        else
        {
            Expect<DecideFittingOutcome.Decided>(await new DecideFitting(writes, shoes, _then).RunAsync(
                fitter, Key("decide"), new DecideFittingRequest(opened.FittingId, decision.Kind, decision.Reason, decision.Why, sizeId), cancellationToken));
        }

        Guid Key(string step) => DemoKeys.Of($"{fitting.Key} {step}");
    }

    private async Task<Guid> SizeIdAsync(Guid shopId, string sku, CancellationToken cancellationToken)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellationToken);
        db.ShopId = shopId;
        return await db.Items.Where(item => item.Code == sku).Select(item => item.Id).SingleAsync(cancellationToken);
    }

    private async Task<Actor> ActorAsync(Guid shopId, DemoPerson person, CancellationToken cancellationToken)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellationToken);
        var known = await db.Users.Where(user => user.ShopId == shopId && user.UserName == person.UserName).Select(user => new { user.Id, user.DisplayName }).SingleAsync(cancellationToken);
        return new Actor(known.Id, shopId, known.DisplayName, person.Role == Roles.Manager, Tablet: "");
    }

    private Task<StepDone> StepAsync(Actor manager, string name, Func<ShopDbContext, CancellationToken, Task> work, CancellationToken cancellationToken) =>
        writes.RunAsManagerAsync(
            manager,
            DemoKeys.Of(name),
            nameof(LoadDemo),
            async (db, stop) =>
            {
                await work(db, stop);
                return new StepDone();
            },
            cancellationToken);

    private static TOutcome Expect<TOutcome>(object outcome) =>
        outcome is TOutcome expected ? expected : throw new InvalidOperationException($"The demo's history was refused: {outcome}");

    private sealed record StepDone;
}
