using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Beliefs;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Features.Fittings;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Sales;
using ShopFit.Web.Features.Shelf;
using ShopFit.Web.Features.Studios;

namespace ShopFit.Web.Features.Demo;

/// <summary>Lives the two years of the demo shop again, in order of time and by the rules of the shop's own actions.</summary>
/// <remarks>Called from inside an action, a stretch of time each: hundreds of visits in transactions of their own would take too long.</remarks>
internal sealed class LoadDemoYears(DemoYears years, IReadOnlyDictionary<string, string> places, int days, DateTimeOffset now, Actor manager, Actor fitter)
{
    /// <summary>Whoever sat down last did so this long ago.</summary>
    private static readonly TimeSpan JustNow = TimeSpan.FromMinutes(4);

    private readonly TimeSpan _back = TodayBack(years, days, now);

    /// <summary>Studios with what their teachers ask for, guardians and dancers.</summary>
    public async Task AddPeopleAsync(ShopDbContext db, DateTimeOffset at, CancellationToken cancellationToken)
    {
        var models = await db.ShoeModels.ToDictionaryAsync(model => model.Name, model => model.Id, StringComparer.Ordinal, cancellationToken);
        foreach (var known in years.Studios)
        {
            var id = (await StudiosByName.FindOrAddAsync(db, known.Name, at, cancellationToken))!.Value;
            await db.SaveChangesAsync(cancellationToken);
            var studio = await db.Studios.SingleAsync(row => row.Id == id, cancellationToken);
            studio.Describe(known.Name, known.Teachers.Replace(";", ",", StringComparison.Ordinal), known.Colour, known.Ribbon, known.Wishes);
            db.StudioModelWishes.AddRange(known.Asked.Select(model => Wish(model, isAsked: true)).Concat(known.NotWanted.Select(model => Wish(model, isAsked: false))));

            StudioModelWish Wish(string model, bool isAsked) => StudioModelWish.Of(DemoKeys.Of($"{known.Name} wish {model}"), db.ShopId, id, models[model], isAsked);
        }

        db.Guardians.AddRange(years.Guardians.Select(guardian => Guardian.Of(DemoKeys.Of(guardian.Key), db.ShopId, guardian.Name, guardian.Contact)));
        foreach (var known in years.Dancers)
        {
            var dancer = Dancer.Of(DemoKeys.Of(known.Key), db.ShopId, known.Name);
            dancer.Describe(known.Name, known.KnownAs, known.BirthDate.AddDays(days), known.Sex, known.Teacher);
            dancer.DancesAt(await StudiosByName.FindOrAddAsync(db, known.Studio, at, cancellationToken));
            if (known.Guardian is not null)
            {
                dancer.AnsweredForBy(DemoKeys.Of(known.Guardian));
            }

            db.Dancers.Add(dancer);
            db.Consents.Add(Consent.Of(DemoKeys.Of($"{known.Key} consent"), fitter, dancer.Id, known.Consent.GivenBy, known.Consent.GivenAt.AddDays(days)));
        }

        await DancersInMemory.RaiseVersionAsync(db, cancellationToken);
    }

    /// <summary>Everything from a moment up to another.</summary>
    /// <param name="db">The context of the action.</param>
    /// <param name="shoes">The sizes on file; stock need not be of the day.</param>
    /// <param name="from">The first moment of the stretch.</param>
    /// <param name="until">The first moment after it.</param>
    /// <param name="cancellationToken">Gives up.</param>
    public async Task LiveAsync(ShopDbContext db, ShoesOnFile shoes, DateTimeOffset from, DateTimeOffset until, CancellationToken cancellationToken)
    {
        var itemIds = await db.Items.ToDictionaryAsync(item => item.Code, item => item.Id, StringComparer.Ordinal, cancellationToken);
        var deliveries = new Queue<DemoDelivery>(years.Deliveries.Where(delivery => delivery.At.AddDays(days) >= from && delivery.At.AddDays(days) < until));
        foreach (var visit in years.Visits.Where(visit => Kept(visit) >= from && Kept(visit) < until).OrderBy(Kept))
        {
            await DeliverAsync(Kept(visit));
            await VisitAsync(db, shoes, visit, itemIds, cancellationToken);
            await db.SaveChangesAsync(cancellationToken);
            db.ChangeTracker.Clear();
        }

        await DeliverAsync(until);

        async Task DeliverAsync(DateTimeOffset before)
        {
            while (deliveries.TryPeek(out var delivery) && delivery.At.AddDays(days) < before)
            {
                deliveries.Dequeue();
                var itemId = itemIds[delivery.Code];
                var move = new StockMove(manager, DemoKeys.Of($"delivery {delivery.At:yyyy-MM-dd}"), delivery.At.AddDays(days), LedgerReasons.Delivered);
                await StockMoves.AddAsync(db, move, itemId, DemoKeys.Of($"place {places[delivery.Code]}"), delivery.Pieces, cancellationToken);
            }
        }
    }

    // What is open today may have begun later in the day than it is now: then it begins earlier.
    private static TimeSpan TodayBack(DemoYears years, int days, DateTimeOffset now)
    {
        var ahead = years.Visits[^1].OpenedAt.AddDays(days) + JustNow - now;
        return ahead > TimeSpan.Zero ? ahead : TimeSpan.Zero;
    }

    private DateTimeOffset When(DemoVisit visit) => visit.OpenedAt.AddDays(days) - (visit.Decision is null ? _back : TimeSpan.Zero);

    // In the order in which they ended, since receipts are numbered in it; what is open comes when it began.
    private DateTimeOffset Kept(DemoVisit visit) => visit.ClosedAt?.AddDays(days) ?? When(visit);

    private async Task VisitAsync(ShopDbContext db, ShoesOnFile shoes, DemoVisit visit, Dictionary<string, Guid> itemIds, CancellationToken cancellationToken)
    {
        var actor = visit.Fitter == "corin" ? manager : fitter;
        var opened = When(visit);
        var id = Expect<OpenFittingOutcome.Opened>(visit, await OpenFitting.ApplyAsync(
            db, actor, DemoKeys.Of(visit.Key), DemoKeys.Of(visit.Dancer), visit.Kind, opened, cancellationToken)).FittingId;
        await db.SaveChangesAsync(cancellationToken);
        (await db.Fittings.SingleAsync(row => row.Id == id, cancellationToken))
            .Start(visit.FirstPair, visit.Sore == "left", visit.Sore == "right", skinBroken: false, visit.TeacherAgreedOn?.AddDays(days));
        foreach (var reading in visit.Readings)
        {
            foreach (var (feet, value) in reading.Entries())
            {
                var unit = reading.Method is null ? ReadingUnit.Word : ReadingUnit.Millimetres;
                Expect<RecordReadingOutcome.Recorded>(visit, await RecordReading.ApplyAsync(
                    db, actor, new RecordReadingRequest(id, feet, reading.Trait, value, unit, null, reading.Method), opened, cancellationToken));
            }
        }

        for (var index = 0; index < visit.TryOns.Count; index++)
        {
            var tryOn = visit.TryOns[index];
            Expect<RecordTryOnOutcome.Recorded>(visit, await RecordTryOn.ApplyAsync(
                db,
                actor,
                DemoKeys.Of($"{visit.Key} try-on {index}"),
                new RecordTryOnRequest(id, itemIds[tryOn.Sku], tryOn.Fits, tryOn.Pads),
                shoes,
                opened.AddSeconds(index + 1),
                cancellationToken));
        }

        await db.SaveChangesAsync(cancellationToken);
        if (visit is { Decision: { } decision, ClosedAt: { } closed })
        {
            await EndAsync(db, shoes, visit, (actor, id, closed.AddDays(days)), decision, itemIds, cancellationToken);
        }
    }

    private static async Task EndAsync(
        ShopDbContext db,
        ShoesOnFile shoes,
        DemoVisit visit,
        (Actor Actor, Guid FittingId, DateTimeOffset At) end,
        DemoDecision decision,
        Dictionary<string, Guid> itemIds,
        CancellationToken cancellationToken)
    {
        Guid? sizeId = decision.Sku is null ? null : itemIds[decision.Sku];
        if (decision.Kind == DecisionKinds.Sold)
        {
            var request = new SellFittingRequest(end.FittingId, sizeId!.Value, decision.Pads, [.. visit.Extras.Select(code => new SaleExtra(itemIds[code], 1))], Why: decision.Why);
            Expect<SellFittingOutcome.Sold>(visit, await SellFitting.ApplyAsync(
                db, end.Actor, DemoKeys.Of($"{visit.Key} sell"), request, shoes, end.At, cancellationToken));
        }
        else
        {
            Expect<DecideFittingOutcome.Decided>(visit, await DecideFitting.ApplyAsync(
                db,
                end.Actor,
                DemoKeys.Of($"{visit.Key} decide"),
                new DecideFittingRequest(end.FittingId, decision.Kind, decision.Reason, decision.Why, sizeId),
                shoes,
                end.At,
                cancellationToken));
        }
    }

    private static TOutcome Expect<TOutcome>(DemoVisit visit, object outcome) =>
        outcome is TOutcome expected ? expected : throw new InvalidOperationException($"Visit {visit.Key} of the demo was refused: {outcome}");
}
