using System.Globalization;
using Bunit;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;

namespace ShopFit.Web.Shared;

public sealed class PadPictureTests : BunitContext
{
    public static TheoryData<string> Pads => [.. FitDefaults.Standard.Pads.Select(pad => pad.Id)];

    [Theory]
    [MemberData(nameof(Pads))]
    public void Every_pad_of_the_standard_has_its_place_drawn_and_leaves_the_name_to_the_words(string pad)
    {
        var picture = Open(pad, Side.Left);

        Assert.NotEqual("", picture.Find("path.place").GetAttribute("d"));
        Assert.Equal("true", picture.Find("svg").GetAttribute("aria-hidden"));
    }

    [Fact]
    public void A_pad_at_the_heel_shows_the_heel_and_a_pad_at_the_toes_the_front()
    {
        Assert.True(TopOf(Open("heel-cushion", Side.Left)) > TopOf(Open("toe-cap", Side.Left)));
    }

    [Fact]
    public void A_pad_under_the_other_foot_is_drawn_the_other_way_round()
    {
        Assert.NotEqual(
            Open("joint-cushion", Side.Left).Find("path.place").GetAttribute("d"),
            Open("joint-cushion", Side.Right).Find("path.place").GetAttribute("d"));
    }

    [Fact]
    public void A_pad_that_is_not_known_has_no_picture() => Assert.Equal("", Open("felt-hat", Side.Left).Markup.Trim());

    // The page grows downwards and the toes are up: the heel's part of the shoe begins lower.
    private static double TopOf(IRenderedComponent<PadPicture> picture) =>
        double.Parse(picture.Find("svg").GetAttribute("viewBox")!.Split(' ')[1], CultureInfo.InvariantCulture);

    private IRenderedComponent<PadPicture> Open(string pad, Side foot) =>
        Render<PadPicture>(parameters => parameters.Add(it => it.Pad, pad).Add(it => it.Foot, foot));
}
