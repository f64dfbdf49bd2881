using Bunit;
using Microsoft.Extensions.DependencyInjection;

namespace ShopFit.Web.Shared;

public sealed class TalkLineTests : BunitContext
{
    public TalkLineTests() => Services.AddLocalization().AddSingleton(TimeProvider.System).AddScoped<UndoOffer>();

    [Fact]
    public void What_is_said_is_announced_and_the_keys_are_not_part_of_it()
    {
        var line = Render<TalkLine>(parameters => parameters
            .Add(it => it.Says, "<p>For which foot?</p>")
            .Add(it => it.Keys, "<button>Left</button><button class=\"main\">Right</button>"));

        var announced = line.Find(".says[role=status]");
        Assert.Equal("For which foot?", announced.TextContent.Trim());
        Assert.Empty(announced.QuerySelectorAll("button"));
        Assert.Equal(["Left", "Right"], line.FindAll(".keys button").Select(key => key.TextContent));
    }

    [Fact]
    public void Another_sentence_takes_the_place_of_the_last_in_the_same_announcement()
    {
        var line = Render<TalkLine>(parameters => parameters.Add(it => it.Says, "<p>One</p>"));

        line.Render(parameters => parameters.Add(it => it.Says, "<p>Two</p>"));

        Assert.Equal("Two", Assert.Single(line.FindAll(".says[role=status]")).TextContent.Trim());
        Assert.Empty(line.FindAll(".keys button"));
    }
}
