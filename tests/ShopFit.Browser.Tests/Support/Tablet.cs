using Microsoft.Playwright;

namespace ShopFit.Browser.Support;

/// <summary>A tablet in the fitter's hand: Debian's Chromium with a touch screen, held flat or upright.</summary>
public sealed class Tablet : IAsyncDisposable
{
    public static readonly ViewportSize Flat = new() { Width = 1024, Height = 768 };
    public static readonly ViewportSize Upright = new() { Width = 768, Height = 1024 };
    private readonly IPlaywright _playwright;
    private readonly IBrowser _browser;

    private Tablet(IPlaywright playwright, IBrowser browser)
    {
        _playwright = playwright;
        _browser = browser;
    }

    public static async Task<Tablet> TakeAsync()
    {
        // A machine that builds beside the tests is slow; what is expected comes all the same.
        Assertions.SetDefaultExpectTimeout(20_000);
        var playwright = await Playwright.CreateAsync();
        var browser = await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = "/usr/bin/chromium",
            // Everything that would call home is off: the tests may reach this machine only.
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
        return new Tablet(playwright, browser);
    }

    public Task<IPage> OpenAsync(RunningShop shop, ViewportSize screen, ColorScheme colours = ColorScheme.Light) => OpenAsync(shop.Address, screen, colours);

    public async Task<IPage> OpenAsync(string address, ViewportSize screen, ColorScheme colours = ColorScheme.Light)
    {
        var context = await _browser.NewContextAsync(new()
        {
            BaseURL = address,
            ViewportSize = screen,
            HasTouch = true,
            ColorScheme = colours,
            Locale = "en-GB",
            TimezoneId = "Europe/London",
            AcceptDownloads = true,
            ReducedMotion = ReducedMotion.Reduce,
        });
        context.SetDefaultTimeout(20_000);
        return await context.NewPageAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await _browser.DisposeAsync();
        _playwright.Dispose();
    }
}
