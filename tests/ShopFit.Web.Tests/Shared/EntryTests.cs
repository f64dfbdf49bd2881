using Bunit;
using Microsoft.AspNetCore.Components;

namespace ShopFit.Web.Shared;

public sealed class EntryTests : BunitContext
{
    private readonly List<string> _written = [];

    [Fact]
    public void The_label_names_the_field_to_a_screen_reader()
    {
        var entry = Open();

        Assert.Equal(entry.Find("input").Id, entry.Find("label").GetAttribute("for"));
    }

    [Fact]
    public void One_line_tells_every_letter_and_several_lines_tell_when_they_are_left()
    {
        Open().Find("input").Input("Larch");
        Open(lines: 3).Find("textarea").Change("Two\nlines");

        Assert.Equal(["Larch", "Two\nlines"], _written);
    }

    [Fact]
    public void What_is_wrong_stands_under_the_field_and_what_was_written_stays()
    {
        var entry = Open(value: "31.2.2015", problem: "There is no 31 February.");

        Assert.Equal("31.2.2015", entry.Find("input").GetAttribute("value"));
        Assert.Equal("true", entry.Find("input").GetAttribute("aria-invalid"));
        Assert.Equal(entry.Find("[role=alert]").Id, entry.Find("input").GetAttribute("aria-describedby"));
        Assert.Equal("There is no 31 February.", entry.Find("[role=alert]").TextContent);
    }

    [Fact]
    public void The_browser_is_told_what_was_heard_of_several_lines() =>
        Assert.Equal("Two\nlines", Open(lines: 2, value: "Two\nlines").Find("textarea").GetAttribute("data-heard"));

    [Fact]
    public void Two_fields_of_one_page_are_told_apart() => Assert.NotEqual(Open().Find("input").Id, Open().Find("input").Id);

    private IRenderedComponent<Entry> Open(int lines = 1, string value = "", string? problem = null) => Render<Entry>(parameters => parameters
        .Add(it => it.Label, "Studio")
        .Add(it => it.Lines, lines)
        .Add(it => it.Value, value)
        .Add(it => it.Problem, problem)
        .Add(it => it.ValueChanged, EventCallback.Factory.Create<string>(this, _written.Add)));
}
