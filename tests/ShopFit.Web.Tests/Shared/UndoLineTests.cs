using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;

namespace ShopFit.Web.Shared;

public sealed class UndoLineTests : BunitContext
{
    private static readonly TimeSpan Moment = TimeSpan.FromMilliseconds(1);

    private readonly FakeTimeProvider _clock = new();
    private int _undone;

    public UndoLineTests() => Services.AddLocalization().AddSingleton<TimeProvider>(_clock).AddScoped<UndoOffer>();

    private UndoOffer Offer => Services.GetRequiredService<UndoOffer>();

    [Fact]
    public void Nothing_is_said_before_anything_was_done()
    {
        var line = Render<UndoLine>();

        Assert.Equal("", line.Find("[role=status]").TextContent.Trim());
        Assert.Empty(line.FindAll("button"));
    }

    [Fact]
    public void A_deed_is_said_with_a_big_key_to_undo_it_for_ten_seconds_and_then_it_stays_done()
    {
        var line = Render<UndoLine>();

        Do("Taken back: length.");
        _clock.Advance(UndoOffer.Stands - Moment);
        line.WaitForAssertion(() => Assert.Contains("Taken back: length.", line.Find("[role=status]").TextContent, StringComparison.Ordinal));
        Assert.Contains("tall", line.Find("button").ClassList);

        _clock.Advance(Moment);
        line.WaitForAssertion(() => Assert.Empty(line.FindAll("button")));
        Assert.Equal((10, 0), (UndoOffer.Stands.TotalSeconds, _undone));
    }

    [Fact]
    public async Task Undoing_happens_once_and_is_said()
    {
        var line = Render<UndoLine>();
        Do("Taken back: length.");
        line.WaitForElement("button");

        await line.InvokeAsync(() => line.Find("button").ClickAsync(new()));
        await Offer.TakeAsync();

        Assert.Equal(1, _undone);
        line.WaitForAssertion(() => Assert.Equal("Undone.", line.Find("[role=status]").TextContent.Trim()));
        _clock.Advance(UndoOffer.Stands);
        line.WaitForAssertion(() => Assert.Equal("", line.Find("[role=status]").TextContent.Trim()));
    }

    [Fact]
    public async Task What_can_no_longer_be_undone_says_so()
    {
        var line = Render<UndoLine>();
        Offer.Offer("Closed: not today.", () => Task.FromResult(false));
        line.WaitForElement("button");

        await line.InvokeAsync(() => line.Find("button").ClickAsync(new()));

        line.WaitForAssertion(() => Assert.Equal("This can no longer be undone: Closed: not today.", line.Find("[role=status]").TextContent.Trim()));
    }

    [Fact]
    public async Task A_second_deed_takes_the_place_of_the_first_and_has_its_own_ten_seconds()
    {
        var line = Render<UndoLine>();
        var first = 0;
        Offer.Offer("First.", () => Task.FromResult(++first > 0));
        _clock.Advance(UndoOffer.Stands - Moment);

        Do("Second.");
        _clock.Advance(UndoOffer.Stands - Moment);
        line.WaitForAssertion(() => Assert.Contains("Second.", line.Markup, StringComparison.Ordinal));
        await line.InvokeAsync(() => line.Find("button").ClickAsync(new()));

        Assert.Equal((0, 1), (first, _undone));
    }

    [Fact]
    public async Task Leaving_the_page_leaves_it_done()
    {
        var line = Render<UndoLine>();
        Do("Taken back: length.");
        line.WaitForElement("button");

        Services.GetRequiredService<NavigationManager>().NavigateTo("/dancers");
        await Offer.TakeAsync();

        line.WaitForAssertion(() => Assert.Empty(line.FindAll("button")));
        Assert.Equal(0, _undone);
    }

    [Fact]
    public void Another_question_in_the_address_of_the_same_page_leaves_the_offer_standing()
    {
        var line = Render<UndoLine>();
        Do("Taken back: length.");

        Services.GetRequiredService<NavigationManager>().NavigateTo("?command=1");

        line.WaitForElement("button");
    }

    [Fact]
    public async Task The_time_does_not_run_while_somebody_is_at_the_key()
    {
        var line = Render<UndoLine>();
        Do("Taken back: length.");
        line.WaitForElement("button");

        await line.InvokeAsync(() => line.Find(".undo").FocusInAsync(new()));
        _clock.Advance(UndoOffer.Stands * 3);
        line.Render();
        Assert.Single(line.FindAll("button"));

        await line.InvokeAsync(() => line.Find(".undo").FocusOutAsync(new()));
        _clock.Advance(UndoOffer.Stands);
        line.WaitForAssertion(() => Assert.Empty(line.FindAll("button")));
    }

    private void Do(string said) => Offer.Offer(said, () =>
    {
        _undone++;
        return Task.FromResult(true);
    });
}
