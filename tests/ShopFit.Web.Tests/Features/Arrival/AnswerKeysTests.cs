using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Fitting.Feet;

namespace ShopFit.Web.Features.Arrival;

public sealed class AnswerKeysTests : BunitContext
{
    private readonly List<ArrivalTap> _taps = [];

    public AnswerKeysTests() => Services.AddLocalization();

    [Fact]
    public void Before_anything_is_said_no_answer_is_pressed_and_the_question_names_the_keys()
    {
        var keys = Open();

        Assert.Empty(keys.FindAll("[aria-pressed=true]"));
        Assert.Equal(ArrivalQuestions.Sore.Answers.Count, keys.FindAll("button").Count);
        Assert.Equal("With what?", keys.Find("[role=group]").GetAttribute("aria-label"));
    }

    [Fact]
    public void What_was_said_of_this_foot_is_pressed_and_of_the_other_is_not()
    {
        var keys = Open(new("sore", Side.Left, "blister"), new("sore", Side.Right, "nail"));

        Assert.Equal("blister", Assert.Single(keys.FindAll("[aria-pressed=true]")).TextContent);
    }

    [Fact]
    public void A_tap_says_an_answer_of_this_foot()
    {
        Open().FindAll("button").Single(key => key.TextContent is "blister").Click();

        Assert.Equal([new ArrivalTap("sore", Side.Left, "blister", true)], _taps);
    }

    [Fact]
    public void A_tap_on_what_stands_takes_it_back()
    {
        Open(new SeenAnswer("sore", Side.Left, "blister")).Find("[aria-pressed=true]").Click();

        Assert.Equal([new ArrivalTap("sore", Side.Left, "blister", false)], _taps);
    }

    [Fact]
    public void An_answer_that_has_a_key_elsewhere_has_none_here()
    {
        var keys = Render<AnswerKeys>(parameters => parameters
            .Add(it => it.Question, ArrivalQuestions.Sore)
            .Add(it => it.Arrival, SeenArrival.Empty)
            .Add(it => it.Label, "With what?")
            .Add(it => it.Without, ["blister"])
            .Add(it => it.OnTap, EventCallback.Factory.Create<ArrivalTap>(this, _taps.Add)));

        Assert.DoesNotContain(keys.FindAll("button"), key => key.TextContent is "blister");
        Assert.Equal(ArrivalQuestions.Sore.Answers.Count - 1, keys.FindAll("button").Count);
    }

    private IRenderedComponent<AnswerKeys> Open(params SeenAnswer[] said) => Render<AnswerKeys>(parameters => parameters
        .Add(it => it.Question, ArrivalQuestions.Sore)
        .Add(it => it.Arrival, SeenArrival.Empty with { Answers = said })
        .Add(it => it.Label, "With what?")
        .Add(it => it.Foot, Side.Left)
        .Add(it => it.OnTap, EventCallback.Factory.Create<ArrivalTap>(this, _taps.Add)));
}
