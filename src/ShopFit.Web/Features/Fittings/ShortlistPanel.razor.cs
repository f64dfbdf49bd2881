using System.Data.Common;
using Microsoft.AspNetCore.Components;
using ShopFit.Fitting.Scoring;
using ShopFit.Web.Features.Studios;

namespace ShopFit.Web.Features.Fittings;

/// <summary>Which pairs to fetch, and what else is likely to fit.</summary>
public sealed partial class ShortlistPanel
{
    private CancellationTokenSource _asked = new();
    private SeenShortlist? _list;
    private FittingBelief? _answered;
    private ShortlistWish? _answeredWish;
    private ShortlistWish _wish = new();
    private (SeenPair? First, SeenPair? Second) _marked;
    private bool _asking;
    private bool _failed;
    private bool _unkept;
    private bool _filtersShown;
    private bool _moreShown;

    [Parameter, EditorRequired] public SeenFitting Fitting { get; set; } = default!;

    [Parameter, EditorRequired] public FittingBelief Belief { get; set; } = default!;

    /// <summary>The pair that lies over the feet.</summary>
    [Parameter] public LaidPair? Laid { get; set; }

    /// <summary>Another pair is to be laid over the feet.</summary>
    [Parameter, EditorRequired] public EventCallback<LaidPair> OnLay { get; set; }

    /// <summary>A walk was written down or taken back.</summary>
    [Parameter] public EventCallback OnChanged { get; set; }

    // What is wanted stands in the address, so that a reload and another tablet show the same list. Read as text: an address may hold anything.
    [SupplyParameterFromQuery] public string? From { get; set; }

    [SupplyParameterFromQuery] public string? Maker { get; set; }

    [SupplyParameterFromQuery] public string? Model { get; set; }

    [SupplyParameterFromQuery(Name = "upto")] public string? UpTo { get; set; }

    [SupplyParameterFromQuery] public string? Teacher { get; set; }

    /// <summary>The two pairs that are compared.</summary>
    [SupplyParameterFromQuery(Name = "a")] public string? FirstMarked { get; set; }

    [SupplyParameterFromQuery(Name = "b")] public string? SecondMarked { get; set; }

    private string Title =>
        _list is { IsUnlikelyOnShelf: true, Fetch.Count: > 0 } or null || _list.Fetch.Count is 0 ? Words[(_list?.Wish ?? _wish).From is ShortlistFrom.Shelf ? "On the shelf" : "Of all that can be had"]
        : Words["Worth one walk"];

    // What stands on the shelf can be fetched; what has to be ordered cannot.
    private IReadOnlyList<SeenFetched> ToFetch => [.. (_list?.Fetch ?? []).Where(fetched => fetched.Place is not null)];

    private (SeenPair First, SeenPair Second)? Compared => _marked is ({ } first, { } second) ? (first, second) : null;

    private string? MarkedAlone => Compared is null ? (_marked.First ?? _marked.Second)?.Name : null;

    // Pairs that were fetched come first; another walk is for when they have been tried on.
    private bool IsWaiting => Fitting.Tries.Waiting.Count > 0;

    private IReadOnlyCollection<Guid> AtHand => [.. Fitting.Tries.Walks.SelectMany(walk => walk.SizeIds), .. Fitting.Tries.TryOns.Select(tryOn => tryOn.SizeId)];

    protected override async Task OnParametersSetAsync()
    {
        _wish = ShortlistWish.Of(From, Maker, Model, UpTo, Teacher);
        if (Fitting.IsForLater)
        {
            return;
        }

        if (!ReferenceEquals(_answered, Belief) || _answeredWish != _wish)
        {
            await AskAsync();
        }
        else if (_list is not null)
        {
            await FindMarkedAsync(_asked.Token);
        }
    }

    public void Dispose()
    {
        _asked.Cancel();
        _asked.Dispose();
    }

    private bool IsLaid(SeenPair pair) => Laid?.SizeId == pair.Shoe.SizeId;

    private string? LetterOf(SeenPair pair) =>
        pair.Shoe.SizeId == _marked.First?.Shoe.SizeId ? "A" : pair.Shoe.SizeId == _marked.Second?.Shoe.SizeId ? "B" : null;

    private string Said(ShortlistFilter filter, ShortlistWish wish) => ShortlistFilterWords.Said(filter, wish, _list!.Choices, _list.Currency, Words);

    private void Wish(ShortlistWish wish) => Navigation.NavigateTo(Navigation.GetUriWithQueryParameters(wish.InAddress()), replace: true);

    // Every question is given up when a newer one is put or the page is left; the list from before stays in sight meanwhile.
    private async Task AskAsync()
    {
        (_answered, _answeredWish, _asking, _failed) = (Belief, _wish, true, false);
        await _asked.CancelAsync();
        _asked.Dispose();
        _asked = new CancellationTokenSource();
        var asked = _asked.Token;
        try
        {
            var list = await Shortlists.AskAsync(Fitting.Id, _wish, Fitting.Asked, AtHand, asked);
            if (asked.IsCancellationRequested)
            {
                return;
            }

            (_list, _asking) = (list, false);
            await FindMarkedAsync(asked);
            await LayAsync();
        }
        catch (OperationCanceledException) when (asked.IsCancellationRequested)
        {
            // A newer question is on its way.
        }
        catch (DbException problem)
        {
            LogFailed(Logger, Fitting.Id, problem);
            (_asking, _failed) = (false, true);
        }
    }

    // Two that are compared lie over the feet together; otherwise what lay there stays while the answer has it, and then the likeliest to fetch.
    private async Task LayAsync()
    {
        if (Compared is var (first, second))
        {
            await OnLay.InvokeAsync(first.Laid() with { Beside = second.Laid() });
        }
        else if (Laid is not null && _list?.Find(Laid.SizeId) is { } same)
        {
            await OnLay.InvokeAsync(same.Laid());
        }
        else if ((_list?.Fetch.Select(fetched => fetched.Pair) ?? []).Concat(_list?.Pairs ?? []).MaxBy(pair => pair.Fit.ChanceOfFit) is { } best)
        {
            await OnLay.InvokeAsync(best.Laid());
        }
    }

    private async Task FindMarkedAsync(CancellationToken cancellationToken) =>
        _marked = (await PairAsync(FirstMarked, cancellationToken), await PairAsync(SecondMarked, cancellationToken));

    private async Task<SeenPair?> PairAsync(string? marked, CancellationToken cancellationToken) =>
        Guid.TryParse(marked, out var sizeId) ? _list?.Find(sizeId) ?? await Shortlists.JudgeAsync(Fitting.Id, sizeId, pads: null, cancellationToken) : null;

    // The first mark is A, the second B; a third takes the place of B.
    private Task MarkAsync(SeenPair pair)
    {
        var (first, second) = (_marked.First?.Shoe.SizeId, _marked.Second?.Shoe.SizeId);
        var size = pair.Shoe.SizeId;
        return size == first ? MarkAsync(second, null)
            : size == second ? MarkAsync(first, null)
            : first is null ? MarkAsync(size, null)
            : MarkAsync(first, size);
    }

    private async Task MarkAsync(Guid? first, Guid? second)
    {
        Navigation.NavigateTo(
            Navigation.GetUriWithQueryParameters(new Dictionary<string, object?>(StringComparer.Ordinal) { ["a"] = first?.ToString(), ["b"] = second?.ToString() }),
            replace: true);
        (FirstMarked, SecondMarked) = (first?.ToString(), second?.ToString());
        await FindMarkedAsync(_asked.Token);
        await LayAsync();
    }

    private async Task FetchedAsync()
    {
        var walk = Guid.CreateVersion7();
        var sizes = ToFetch.Select(fetched => fetched.Pair.Shoe.SizeId).ToList();
        var actor = await CurrentActor.GetAsync();
        _unkept = await RecordWalk.RunAsync(actor, walk, Fitting.Id, sizes, CancellationToken.None) is not RecordWalkOutcome.Recorded;
        if (!_unkept)
        {
            Undo.Offer(Words["One walk, {0} pairs fetched.", sizes.Count], async () =>
            {
                var undone = await WithdrawWalk.RunAsync(actor, Guid.CreateVersion7(), walk, countsAgain: false, CancellationToken.None) is WithdrawWalkOutcome.Done;
                await OnChanged.InvokeAsync();
                return undone;
            });
        }

        await OnChanged.InvokeAsync();
    }

    [LoggerMessage(LogLevel.Error, "The shortlist of fitting {FittingId} could not be made.")]
    private static partial void LogFailed(ILogger logger, Guid fittingId, Exception problem);
}
