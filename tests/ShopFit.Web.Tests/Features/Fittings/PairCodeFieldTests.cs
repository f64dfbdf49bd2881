using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Settings;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Fittings;

public sealed class PairCodeFieldTests : PageTest
{
    private readonly List<Guid> _found = [];

    public override async ValueTask InitializeAsync()
    {
        await base.InitializeAsync();
        Services.AddLocalization();
        Services.AddCatalogue().AddSettings().AddFittings();
    }

    [Fact]
    public void The_label_names_the_field_and_a_scan_finds_it()
    {
        var code = Open();

        Assert.Equal(code.Find("input").Id, code.Find("label").GetAttribute("for"));
        Assert.True(code.Find("input").HasAttribute("data-takes-scan"));
        Assert.Empty(code.FindAll("[role=alert]"));
    }

    [Fact]
    public async Task A_code_that_nobody_has_stays_as_typed_with_a_sentence_that_names_it()
    {
        var code = Open();

        await code.InvokeAsync(() => code.Find("input").Change(" X-99 "));

        code.WaitForAssertion(() => Assert.Contains("“X-99”", code.Find("[role=alert]").TextContent, StringComparison.Ordinal));
        Assert.Equal("X-99", code.Find("input").GetAttribute("value"));
        Assert.Equal("true", code.Find("input").GetAttribute("aria-invalid"));
        Assert.Equal(code.Find("[role=alert]").Id, code.Find("input").GetAttribute("aria-describedby"));
        Assert.Empty(_found);
    }

    // 6291041500213 is the worked example of the GS1 check digit calculator (from memory); its last digit is changed here.
    [Fact]
    public async Task A_barcode_with_a_digit_wrong_says_so_instead_of_that_nobody_has_it()
    {
        var code = Open();

        await code.InvokeAsync(() => code.Find("input").Change("6291041500214"));

        code.WaitForAssertion(() => Assert.Contains("“6291041500214” has a digit wrong", code.Find("[role=alert]").TextContent, StringComparison.Ordinal));
        Assert.Empty(_found);
    }

    [Fact]
    public async Task Emptying_the_field_takes_its_sentence_away_and_finds_nothing()
    {
        var code = Open();
        await code.InvokeAsync(() => code.Find("input").Change("X-99"));
        code.WaitForElement("[role=alert]");

        await code.InvokeAsync(() => code.Find("input").Change("  "));

        code.WaitForAssertion(() => Assert.Empty(code.FindAll("[role=alert]")));
        Assert.Equal("false", code.Find("input").GetAttribute("aria-invalid"));
        Assert.Empty(_found);
    }

    private IRenderedComponent<PairCodeField> Open() => Render<PairCodeField>(parameters => parameters
        .Add(it => it.Kind, "pointe")
        .Add(it => it.OnFound, EventCallback.Factory.Create<Guid>(this, _found.Add)));
}
