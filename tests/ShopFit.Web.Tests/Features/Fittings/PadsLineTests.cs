using Bunit;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Scoring;

namespace ShopFit.Web.Features.Fittings;

public sealed class PadsLineTests : BunitContext
{
    public PadsLineTests() => Services.AddLocalization();

    [Fact]
    public void No_pad_is_said_and_not_left_blank() => Assert.Equal("no pads", Open().Find("p").TextContent.Trim());

    [Fact]
    public void Two_shoes_with_the_same_pad_are_said_once()
    {
        var line = Open(new(Side.Left, "toe-cap"), new(Side.Right, "toe-cap"));

        Assert.EndsWith(" in both", Assert.Single(line.FindAll("p > span")).TextContent, StringComparison.Ordinal);
        Assert.Empty(line.FindAll(".attention"));
    }

    [Theory]
    [InlineData(Side.Left, " in the left")]
    [InlineData(Side.Right, " in the right")]
    public void A_pad_in_one_shoe_is_said_with_its_foot(Side foot, string said) =>
        Assert.EndsWith(said, Assert.Single(Open(new PadUnderFoot(foot, "toe-cap")).FindAll("p > span")).TextContent, StringComparison.Ordinal);

    [Fact]
    public void Two_pads_in_one_shoe_advise_another_pair_first() =>
        Assert.Equal("two in one shoe: try another pair first", Open(new(Side.Left, "toe-cap"), new(Side.Left, "heel-cushion")).Find(".attention").TextContent);

    private IRenderedComponent<PadsLine> Open(params PadUnderFoot[] pads) => Render<PadsLine>(parameters => parameters.Add(it => it.Pads, pads));
}
