using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Fittings;

public sealed class DueDayTests : BunitContext
{
    private readonly List<string> _texts = [];

    public DueDayTests()
    {
        Services.AddLocalization();
        Services.AddSingleton<TimeProvider>(new FakeTimeProvider(new DateTimeOffset(2026, 3, 14, 15, 9, 0, TimeSpan.Zero)));
    }

    [Theory]
    [InlineData("In 2 weeks", false, "28.3.2026")]
    [InlineData("In 4 weeks", false, "11.4.2026")]
    [InlineData("In 3 months", false, "14.6.2026")]
    [InlineData("In 3 months", true, "6/14/2026")]
    public void One_tap_writes_a_usual_day_as_people_here_write_it(string key, bool monthFirst, string written)
    {
        Open("", monthFirst: monthFirst).FindAll("button").Single(each => each.TextContent == key).Click();

        Assert.Equal([written], _texts);
    }

    [Theory]
    [InlineData(DecisionKinds.ComeBack, "Come back when?")]
    [InlineData(DecisionKinds.Order, "Until when? It may stay open.")]
    public void The_question_is_that_of_the_ending_and_names_the_keys(string kind, string asked)
    {
        var due = Open("", kind);

        var named = due.Find("[role=group]").GetAttribute("aria-labelledby");
        Assert.Equal(asked, due.Find($"p[id='{named}']").TextContent);
    }

    [Fact]
    public void A_day_that_is_typed_is_said_back_in_words() =>
        Assert.Contains("April", Open("11.4.2026").Find("[role=status]").TextContent, StringComparison.Ordinal);

    [Fact]
    public void What_is_no_day_stays_as_typed_and_is_told_once_it_was_refused()
    {
        Assert.Empty(Open("soon").FindAll("[role=alert]"));

        var due = Open("soon", refused: true);

        Assert.Equal("soon", due.Find("input").GetAttribute("value"));
        Assert.Equal("Day: “soon” is no day. Write it like 11.4.2026.", due.Find("[role=alert]").TextContent);
    }

    [Fact]
    public void A_day_that_is_over_stays_as_typed_with_what_is_allowed()
    {
        var due = Open("1.3.2026", refused: true);

        Assert.Equal("1.3.2026", due.Find("input").GetAttribute("value"));
        Assert.Contains("is not between today and", due.Find("[role=alert]").TextContent, StringComparison.Ordinal);
    }

    private IRenderedComponent<DueDay> Open(string text, string kind = DecisionKinds.ComeBack, bool refused = false, bool monthFirst = false) => Render<DueDay>(parameters => parameters
        .Add(it => it.Kind, kind)
        .Add(it => it.Time, new ShopTime(TimeZoneInfo.Utc) { MonthFirst = monthFirst })
        .Add(it => it.Text, text)
        .Add(it => it.Refused, refused)
        .Add(it => it.TextChanged, EventCallback.Factory.Create<string>(this, _texts.Add)));
}
