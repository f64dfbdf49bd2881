using Bunit;
using Microsoft.AspNetCore.Components;

namespace ShopFit.Web.Shared;

public sealed class DayFieldTests : BunitContext
{
    private readonly List<string> _typed = [];
    private readonly List<string> _done = [];

    [Fact]
    public void The_label_names_the_field_to_a_screen_reader()
    {
        var day = Open();

        Assert.Equal(day.Find("input").Id, day.Find("label").GetAttribute("for"));
        Assert.Contains("Born", day.Find("label").TextContent, StringComparison.Ordinal);
        Assert.Equal("false", day.Find("input").GetAttribute("aria-invalid"));
        Assert.Empty(day.FindAll("p"));
    }

    [Fact]
    public void Each_letter_is_told_and_leaving_the_field_is_told_apart()
    {
        var day = Open();

        day.Find("input").Input("12.3");
        Assert.Empty(_done);
        day.Find("input").Change("12.3.2014");

        Assert.Equal("12.3", _typed[0]);
        Assert.Equal(["12.3.2014"], _done);
    }

    [Fact]
    public void What_was_understood_is_said_in_words_that_belong_to_the_field()
    {
        var day = Open("3/12/2014", understood: "12 March 2014");

        Assert.Equal("12 March 2014", day.Find("[role=status]").TextContent);
        Assert.Equal(day.Find("[role=status]").Id, day.Find("input").GetAttribute("aria-describedby"));
    }

    [Fact]
    public void What_is_no_day_stays_as_typed_with_its_sentence_alone()
    {
        var day = Open("31.2.2014", understood: "31 February 2014", problem: "There is no 31 February.");

        Assert.Equal("31.2.2014", day.Find("input").GetAttribute("value"));
        Assert.Equal("true", day.Find("input").GetAttribute("aria-invalid"));
        Assert.Equal("There is no 31 February.", day.Find("[role=alert]").TextContent);
        Assert.Equal(day.Find("[role=alert]").Id, day.Find("input").GetAttribute("aria-describedby"));
        Assert.Empty(day.FindAll("[role=status]"));
    }

    private IRenderedComponent<DayField> Open(string value = "", string? understood = null, string? problem = null) => Render<DayField>(parameters => parameters
        .Add(it => it.Label, "Born")
        .Add(it => it.Value, value)
        .Add(it => it.Understood, understood)
        .Add(it => it.Problem, problem)
        .Add(it => it.ValueChanged, EventCallback.Factory.Create<string>(this, _typed.Add))
        .Add(it => it.OnDone, EventCallback.Factory.Create<string>(this, _done.Add)));
}
