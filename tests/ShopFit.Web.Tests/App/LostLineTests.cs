using Bunit;

namespace ShopFit.Web.App;

public sealed class LostLineTests : BunitContext
{
    [Fact]
    public void Both_states_of_a_lost_line_say_that_what_was_entered_is_kept()
    {
        var lost = Render<LostLine>();

        Assert.All(["trying", "given-up"], state => Assert.Contains("Everything you entered before is kept.", lost.Find($".{state}").TextContent, StringComparison.Ordinal));
        Assert.Equal("Try again", lost.Find("button[data-again]").TextContent);
    }

    [Fact]
    public void Its_elements_carry_the_ids_that_the_framework_looks_for()
    {
        var lost = Render<LostLine>();

        Assert.NotNull(lost.Find("#components-reconnect-modal[role=alertdialog]"));
        Assert.NotNull(lost.Find("#blazor-error-ui"));
    }
}
