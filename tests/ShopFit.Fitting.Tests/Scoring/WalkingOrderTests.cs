namespace ShopFit.Fitting.Scoring;

public class WalkingOrderTests
{
    [Fact]
    public void Places_are_walked_in_the_order_of_the_shelf_with_ten_after_nine() =>
        Assert.Equal(["B2", "B9", "B10", "D1"], Walk(["D1"], ["B10"], ["B2"], ["B9"]));

    [Fact]
    public void A_pair_that_stands_in_two_places_is_taken_where_the_others_stand() =>
        Assert.Equal(["D1", "D1", "D4"], Walk(["A1", "D1"], ["D1"], ["B2", "D4"]));

    [Fact]
    public void Of_two_ways_with_as_many_stops_the_nearest_places_are_taken() =>
        Assert.Equal(["A1"], Walk(["A1", "D1"]));

    [Fact]
    public void What_stands_nowhere_comes_last_as_it_was_given()
    {
        var stops = WalkingOrder.Of([[], ["C3"], []]);

        Assert.Equal([(1, "C3"), (0, null), (2, null)], stops.Select(stop => (stop.Index, stop.Place)));
    }

    [Fact]
    public void Places_need_not_be_numbered() =>
        Assert.Equal(["Back room", "Window", "7"], Walk(["Window"], ["7"], ["Back room"]).OrderBy(place => place == "7"));

    [Fact]
    public void Many_places_of_a_pair_do_not_make_the_walk_long_to_plan() =>
        Assert.Equal(3, Walk([.. Many("A")], [.. Many("B")], [.. Many("C")]).Count());

    private static IEnumerable<string> Many(string bay) => Enumerable.Range(1, 2_000).Select(number => $"{bay}{number}");

    private static IEnumerable<string?> Walk(params IReadOnlyList<string>[] places) => WalkingOrder.Of(places).Select(stop => stop.Place);
}
