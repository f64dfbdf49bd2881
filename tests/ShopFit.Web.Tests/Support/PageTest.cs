using Bunit;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor.Services;
using ShopFit.Web.Features.People;
using ShopFit.Web.Shared;

namespace ShopFit.Web.Support;

/// <summary>Renders pages against a <see cref="TestShop"/>. A test adds the features that its page needs.</summary>
public abstract class PageTest : BunitContext, IAsyncLifetime
{
    // A page waits for its database and its shortlist; on a busy machine that takes longer than the usual second.
    static PageTest() => DefaultWaitTimeout = TimeSpan.FromSeconds(20);

    protected TestShop Shop { get; private set; } = null!;

    /// <summary>Who has signed in; null is the fitter.</summary>
    protected virtual Actor? SignedIn => null;

    public virtual async ValueTask InitializeAsync()
    {
        Shop = await TestShop.OpenAsync();
        JSInterop.Mode = JSRuntimeMode.Loose;
        Services.AddMudServices(options => options.PopoverOptions.CheckForPopoverProvider = false);
        Services.AddScoped<UndoOffer>();
        Shop.AddTo(Services, SignedIn);
    }

    // MudBlazor's services can only be disposed asynchronously, so this must not fall back to Dispose.
    public new async ValueTask DisposeAsync()
    {
        await base.DisposeAsync();
        await Shop.DisposeAsync();
    }
}
