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

    private IRenderedComponent<TagKeys> Open(params string[] set) => Render<TagKeys>(parameters => parameters
        .Add(it => it.Kind, "pointe")
        .Add(it => it.Set, set)
        .Add(it => it.OnToggle, EventCallback.Factory.Create<string>(this, _tapped.Add)));
}
