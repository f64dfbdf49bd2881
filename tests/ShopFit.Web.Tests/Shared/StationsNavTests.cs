using Bunit;

namespace ShopFit.Web.Shared;

public sealed class StationsNavTests : BunitContext
{
    private readonly Station[] _stations = [new("Feet", "/f/feet", false), new("Shortlist", "/f/shortlist", true), new("Decision", "/f/decision", false)];

    [Fact]
    public void Every_station_can_be_visited_in_its_order()
    {
        var links = Open().FindAll("a");

        Assert.Equal(_stations.Select(station => (station.Name, (string?)station.Address)), links.Select(link => (link.TextContent, link.GetAttribute("href"))));
    }

    [Fact]
    public void The_station_where_one_is_is_spoken_as_the_current_page_and_no_other_is()
    {
        Assert.Equal([null, "page", null], Open().FindAll("a").Select(link => link.GetAttribute("aria-current")));
    }

    [Fact]
    public void The_stations_are_a_landmark_with_a_name() => Assert.Equal("Stations of the fitting", Open().Find("nav").GetAttribute("aria-label"));

    private IRenderedComponent<StationsNav> Open() =>
        Render<StationsNav>(parameters => parameters.Add(it => it.Label, "Stations of the fitting").Add(it => it.Stations, _stations));
}
