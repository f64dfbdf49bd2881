using Bunit;
using Microsoft.Extensions.DependencyInjection;

namespace ShopFit.Web.Shared;

public sealed class ChanceMarksTests : BunitContext
{
    public ChanceMarksTests() => Services.AddLocalization();

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.04, 0)]
    [InlineData(0.25, 3)]
    [InlineData(0.7, 7)]
    [InlineData(0.96, 10)]
    [InlineData(1, 10)]
    public void There_are_ten_marks_and_as_many_tall_ones_as_chances_in_ten(double chance, int tall)
    {
        var marks = Open(chance);

        Assert.Equal((tall, 10 - tall), (marks.FindAll(".tall").Count, marks.FindAll(".short").Count));
    }

    [Fact]
    public void The_chance_is_said_in_words_and_in_tenths_and_the_marks_are_not_read_aloud()
    {
        var marks = Open(0.7);

        Assert.Contains("7 in 10", marks.Find("p").TextContent, StringComparison.Ordinal);
        Assert.NotEqual("", marks.Find("b").TextContent);
        Assert.Equal("true", marks.Find("svg").GetAttribute("aria-hidden"));
    }

    [Fact]
    public void Nothing_is_called_certain_or_impossible()
    {
        Assert.Contains("less than 1 in 10", Open(0.02).Find("p").TextContent, StringComparison.Ordinal);
        Assert.Contains("more than 9 in 10", Open(0.99).Find("p").TextContent, StringComparison.Ordinal);
    }

    private IRenderedComponent<ChanceMarks> Open(double chance) => Render<ChanceMarks>(parameters => parameters.Add(it => it.Chance, chance));
}
