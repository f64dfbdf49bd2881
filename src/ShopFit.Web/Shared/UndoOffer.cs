using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Routing;

namespace ShopFit.Web.Shared;

/// <summary>The last deed that hurt, and for ten seconds the way back. One for each open tablet; a second deed takes the place of the first.</summary>
/// <remarks>
/// The deed is done when it is offered: letting the time pass or leaving the page leaves it done. The way back is an action of its own,
/// which may refuse. An <see cref="UndoLine"/> shows it.
/// </remarks>
public sealed class UndoOffer : IDisposable
{
    /// <summary>How long the way back stands open.</summary>
    public static readonly TimeSpan Stands = TimeSpan.FromSeconds(10);

    // How long the answer to an undo is said.
    private static readonly TimeSpan Answers = TimeSpan.FromSeconds(4);

    private readonly TimeProvider _clock;
    private readonly NavigationManager _navigation;
    private readonly ITimer _timer;
    private SaidDeed? _said;
    private DateTimeOffset _until;
    private string _page;

    public UndoOffer(TimeProvider clock, NavigationManager navigation)
    {
        (_clock, _navigation) = (clock, navigation);
        _timer = clock.CreateTimer(_ => Changed?.Invoke(this, EventArgs.Empty), null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        _page = PathOf(navigation.Uri);
        navigation.LocationChanged += Elsewhere;
    }

    /// <summary>What is said has changed, or its time is over. Raised on any thread.</summary>
    public event EventHandler? Changed;

    /// <summary>What is to be said now; null while nothing is.</summary>
    public SaidDeed? Said => _said is not null && _clock.GetUtcNow() < _until ? _said : null;

    /// <summary>Says what was done, and offers the way back.</summary>
    /// <param name="said">What was done, as one sentence.</param>
    /// <param name="undo">The way back; false where it can no longer be gone.</param>
    public void Offer(string said, Func<Task<bool>> undo) => Say(new OfferedDeed(said, undo), Stands);

    /// <summary>Goes the way back that stands open, once.</summary>
    public async Task TakeAsync()
    {
        if (Said is not OfferedDeed offered)
        {
            return;
        }

        Say(null, TimeSpan.Zero);
        var undone = await offered.Undo();
        // Undoing may have offered something of its own.
        if (Said is null)
        {
            Say(undone ? new UndoneDeed(offered.Sentence) : new LastingDeed(offered.Sentence), Answers);
        }
    }

    /// <summary>Lets an offer stand for as long as somebody is at its key.</summary>
    public void Hold()
    {
        if (Said is OfferedDeed)
        {
            _until = DateTimeOffset.MaxValue;
            _timer.Change(Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        }
    }

    /// <summary>Lets the time of an offer run again, from its start.</summary>
    public void Release()
    {
        if (Said is OfferedDeed offered && _until == DateTimeOffset.MaxValue)
        {
            Say(offered, Stands);
        }
    }

    public void Dispose()
    {
        _navigation.LocationChanged -= Elsewhere;
        _timer.Dispose();
    }

    private static string PathOf(string address) => new Uri(address).AbsolutePath;

    private void Elsewhere(object? sender, LocationChangedEventArgs change)
    {
        if (PathOf(change.Location) is var path && path != _page)
        {
            _page = path;
            Say(null, TimeSpan.Zero);
        }
    }

    private void Say(SaidDeed? said, TimeSpan time)
    {
        (_said, _until) = (said, _clock.GetUtcNow() + time);
        _timer.Change(said is null ? Timeout.InfiniteTimeSpan : time, Timeout.InfiniteTimeSpan);
        Changed?.Invoke(this, EventArgs.Empty);
    }
}
