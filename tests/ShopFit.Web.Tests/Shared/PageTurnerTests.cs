using AngleSharp.Dom;
using Bunit;
using Microsoft.Extensions.DependencyInjection;

namespace ShopFit.Web.Shared;

public sealed class PageTurnerTests : BunitContext
{
    private readonly List<int> _turnedTo = [];

    public PageTurnerTests() => Services.AddLocalization();

    [Theory]
    [InlineData(0, "1 to 50 of 120", false, true)]
    [InlineData(1, "51 to 100 of 120", true, true)]
    [InlineData(2, "101 to 120 of 120", true, false)]
    public void It_says_which_rows_are_shown_and_turns_only_where_there_are_others(int page, string says, bool back, bool on)
    {
        var turner = Open(page, count: 120);

        Assert.Equal(says, turner.Find("[role=status]").TextContent);
        Assert.Equal([back, on], turner.FindAll("button").Select(key => !key.HasAttribute("disabled")));
    }

    [Fact]
    public void It_asks_for_the_page_before_and_the_page_after()
    {
        var turner = Open(page: 1, count: 120);

        turner.FindAll("button")[0].Click();
        turner.FindAll("button")[1].Click();

        Assert.Equal([0, 2], _turnedTo);
    }

    [Fact]
    public void Of_nothing_it_shows_nothing_and_turns_nowhere()
    {
        var turner = Open(page: 0, count: 0);

        Assert.Equal("0 to 0 of 0", turner.Find("[role=status]").TextContent);
        Assert.All(turner.FindAll("button"), key => Assert.True(key.HasAttribute("disabled")));
    }

    private IRenderedComponent<PageTurner> Open(int page, int count) => Render<PageTurner>(parameters => parameters
        .Add(it => it.Count, count)
        .Add(it => it.Page, page)
        .Add(it => it.PageRows, 50)
        .Add(it => it.PageChanged, _turnedTo.Add));
}
