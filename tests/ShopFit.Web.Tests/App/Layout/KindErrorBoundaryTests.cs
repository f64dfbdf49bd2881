using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace ShopFit.Web.App.Layout;

public sealed class KindErrorBoundaryTests : BunitContext
{
    public KindErrorBoundaryTests() => Services.AddLocalization();

    [Fact]
    public void What_goes_well_is_shown() => Assert.Equal("well", Open<GoesWell>().Markup);

    [Fact]
    public void What_breaks_is_said_kindly_and_without_what_it_said()
    {
        var text = Open<Breaks>().Find("[role=alert]").TextContent;

        Assert.Contains("Everything that was saved is kept.", text, StringComparison.Ordinal);
        Assert.DoesNotContain(Breaks.Secret, text, StringComparison.Ordinal);
    }

    [Fact]
    public void Going_elsewhere_leaves_it_behind()
    {
        Breaks.NextTime = true;
        try
        {
            var boundary = Open<Breaks>();
            Breaks.NextTime = false;

            Services.GetRequiredService<NavigationManager>().NavigateTo("/dancers");

            boundary.WaitForAssertion(() => Assert.Equal("mended", boundary.Markup));
        }
        finally
        {
            Breaks.NextTime = true;
        }
    }

    private IRenderedComponent<KindErrorBoundary> Open<TInside>()
        where TInside : IComponent => Render<KindErrorBoundary>(parameters => parameters.AddChildContent<TInside>());

    private sealed class GoesWell : ComponentBase
    {
        protected override void BuildRenderTree(Microsoft.AspNetCore.Components.Rendering.RenderTreeBuilder builder) => builder.AddContent(0, "well");
    }

    private sealed class Breaks : ComponentBase
    {
        public const string Secret = "row 17 of Tilly";

        public static bool NextTime { get; set; } = true;

        protected override void BuildRenderTree(Microsoft.AspNetCore.Components.Rendering.RenderTreeBuilder builder)
        {
            if (NextTime)
            {
                throw new InvalidOperationException(Secret);
            }

            builder.AddContent(0, "mended");
        }
    }
}
