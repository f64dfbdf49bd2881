using AngleSharp.Dom;
using Bunit;
using Microsoft.Extensions.DependencyInjection;

namespace ShopFit.Web.Shared;

public sealed class ThreeWordsTests : BunitContext
{
    private readonly List<int> _both = [];
    private readonly List<int> _asked = [];

    public ThreeWordsTests() => Services.AddLocalization();

    [Fact]
    public void The_first_tap_answers_for_both_feet()
    {
        var words = Open(left: null, right: null);

        words.FindAll("button")[1].Click();

        Assert.Equal([1], _both);
        Assert.Empty(_asked);
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(1, null)]
    [InlineData(null, 1)]
    public void A_tap_where_a_word_stands_already_asks_for_which_foot(int? left, int? right)
    {
        var words = Open(left, right);

        words.FindAll("button")[2].Click();

        Assert.Equal([2], _asked);
        Assert.Empty(_both);
    }

    [Fact]
    public void A_word_for_one_foot_carries_its_letter_and_is_spoken_with_its_foot()
    {
        var words = Open(left: 2, right: 1);

        Assert.Equal(["square", "medium, right foot", "tapered, left foot"], words.FindAll("button").Select(key => key.GetAttribute("aria-label")));
        Assert.Equal(["R", "L"], words.FindAll(".side").Select(letter => letter.TextContent));
    }

    [Fact]
    public void A_word_for_both_feet_is_pressed_and_carries_no_letter()
    {
        var words = Open(left: 0, right: 0);

        Assert.Equal(["true", "false", "false"], words.FindAll("button").Select(key => key.GetAttribute("aria-pressed")));
        Assert.Empty(words.FindAll(".side"));
    }

    [Fact]
    public void Facing_the_dancer_the_letters_stand_on_the_side_of_their_foot()
    {
        var words = Open(left: 2, right: 1);
        Assert.Equal("L", words.FindAll("button")[2].QuerySelector(".said")!.FirstElementChild!.TextContent);
        Assert.StartsWith("L", words.FindAll("button")[2].TextContent.Trim(), StringComparison.Ordinal);

        words.Render(parameters => parameters.Add(it => it.Facing, true));

        Assert.EndsWith("L", words.FindAll("button")[2].TextContent.Trim(), StringComparison.Ordinal);
        Assert.StartsWith("R", words.FindAll("button")[1].TextContent.Trim(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_word_that_was_said_earlier_says_when_without_changing_its_name()
    {
        var words = Open(left: null, right: null);
        words.Render(parameters => parameters.Add(it => it.Earlier, word => word == 1 ? "May 2026" : null));

        Assert.Equal([null, "May 2026", null], words.FindAll("button").Select(key => key.GetAttribute("aria-description")));
        Assert.Equal("medium", words.FindAll("button")[1].GetAttribute("aria-label"));
        Assert.Equal("May 2026", words.Find(".earlier").TextContent);
    }

    private IRenderedComponent<ThreeWords> Open(int? left, int? right) => Render<ThreeWords>(parameters => parameters
        .Add(it => it.Label, "Toes, longest to fourth")
        .Add(it => it.Choices, ["square", "medium", "tapered"])
        .Add(it => it.Left, left)
        .Add(it => it.Right, right)
        .Add(it => it.OnBoth, word => _both.Add(word))
        .Add(it => it.OnAsk, word => _asked.Add(word)));
}
