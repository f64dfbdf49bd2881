using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace ShopFit.Web.Features.Fittings;

public sealed class TagKeysTests : BunitContext
{
    private readonly List<string> _tapped = [];

    public TagKeysTests() => Services.AddLocalization();

    [Fact]
    public void Only_the_tags_that_are_set_are_pressed()
    {
        Assert.Empty(Open().FindAll("[aria-pressed=true]"));
        Assert.Single(Open(TryOnTags.Hurts).FindAll("[aria-pressed=true]"));
    }

    [Fact]
    public void A_tap_tells_its_own_tag()
    {
        var keys = Open();

        keys.Find("button.harm").Click();

        Assert.Equal([TryOnTags.Hurts], _tapped);
    }

    [Fact]
    public void Every_group_of_keys_has_a_name_of_its_own()
    {
        var names = Open().FindAll("[role=group]").Select(group => group.GetAttribute("aria-label")).ToList();

        Assert.True(names.Count > 1);
        Assert.All(names, name => Assert.False(string.IsNullOrWhiteSpace(name)));
        Assert.Equal(names.Count, names.Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void Places_that_the_checks_ask_about_come_when_they_are_wanted()
    {
        var keys = Open(fewer: true);
        var few = keys.FindAll("[role=group]").Count;
        Assert.Equal(("Other words", "false"), (keys.Find("button.bare").TextContent, keys.Find("button.bare").GetAttribute("aria-expanded")));

        keys.Find("button.bare").Click();

        Assert.True(keys.FindAll("[role=group]").Count > few);
        Assert.Equal(("Fewer words", "true"), (keys.Find("button.bare").TextContent, keys.Find("button.bare").GetAttribute("aria-expanded")));
    }

    private IRenderedComponent<TagKeys> Open(params string[] set) => Open(fewer: false, set);

    private IRenderedComponent<TagKeys> Open(bool fewer, params string[] set) => Render<TagKeys>(parameters => parameters
        .Add(it => it.Fewer, fewer)
        .Add(it => it.Kind, "pointe")
        .Add(it => it.Set, set)
        .Add(it => it.OnToggle, EventCallback.Factory.Create<string>(this, _tapped.Add)));
}
