using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace ShopFit.Browser.Support;

/// <summary>Says of what a tablet shows just now whether anybody could use it: every dress, every width, every thumb.</summary>
internal sealed class PageJudge
{
    // WCAG 2.2, 1.4.10, asks for 320 pixels; 512 is a tablet at twice its letters (1.4.4); the others are the tablets and laptops of a shop.
    private static readonly int[] Widths = [320, 512, 768, 1024, 1280];

    // Pixels: WCAG 2.2, 2.5.5 (AAA).
    private const int SmallestTarget = 44;

    // Pixels: what a fitter taps while she kneels. Common practice, no source.
    private const int SmallestKeyOfAFitting = 56;

    // Pixels: nothing on a screen of ours is smaller.
    private const int SmallestLetter = 14;

    // Sizes of targets are measured below, and more strictly: axe counts a key that lies half under the sticky line as small.
    private static readonly AxeRunOptions Rules = new()
    {
        Rules = new Dictionary<string, RuleOptions> { ["target-size"] = new() { Enabled = false } },
        RunOnly = new RunOnlyOptions { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] },
    };

    private static readonly (string Name, PageEmulateMediaOptions Media)[] Dresses =
    [
        ("dark", new() { ColorScheme = ColorScheme.Dark, Contrast = Contrast.NoPreference }),
        ("high contrast", new() { ColorScheme = ColorScheme.Light, Contrast = Contrast.More }),
        ("light", new() { ColorScheme = ColorScheme.Light, Contrast = Contrast.NoPreference }),
    ];

    private readonly IPage _page;
    private readonly List<string> _faults = [];

    public PageJudge(IPage page)
    {
        _page = page;
        page.Console += (_, message) => Fault(message.Type is "error" && !IsExpected(message.Text), $"console at {page.Url}: {message.Text}");
        page.PageError += (_, error) => Fault(true, $"script at {page.Url}: {error}");
    }

    /// <summary>Fails with every fault found so far, each said once.</summary>
    public void FindNoFault() => Assert.True(_faults.Count is 0, string.Join('\n', _faults.Distinct(StringComparer.Ordinal)));

    /// <summary>A page that is not there, or not for this person, answers so; the browser notes that in its console, and it is no fault.</summary>
    public int? ExpectedStatus { get; set; }

    public async Task JudgeAsync(string name)
    {
        var screen = _page.ViewportSize!;
        foreach (var (dress, media) in Dresses)
        {
            await _page.EmulateMediaAsync(media);
            var result = await _page.RunAxe(Rules);
            _faults.AddRange(result.Violations.SelectMany(rule => rule.Nodes.Select(node => $"{name}, {dress}: {rule.Id}: {node.Html}")));
        }

        await FindAsync(name, SmallLetters, SmallestLetter);
        foreach (var width in Widths)
        {
            await _page.SetViewportSizeAsync(width, screen.Height);
            await FindAsync($"{name} at {width}", TooWide, 0);
            if (width >= Tablet.Upright.Width)
            {
                await FindAsync($"{name} at {width}", SmallTargets, SmallestTarget);
                await FindAsync($"{name} at {width}", SmallKeys, SmallestKeyOfAFitting);
            }
        }

        await _page.SetViewportSizeAsync(screen.Width, screen.Height);
        await FindAsync($"{name}, letters spaced", CutWhenSpaced, 0);
    }

    private async Task FindAsync(string name, string script, int limit) =>
        _faults.AddRange((await _page.EvaluateAsync<string[]>(script, limit)).Select(found => $"{name}: {found}"));

    private void Fault(bool isOne, string what)
    {
        if (isOne)
        {
            _faults.Add(what);
        }
    }

    private bool IsExpected(string message) =>
        ExpectedStatus is { } status && message.Contains($"status of {status}", StringComparison.Ordinal);

    private const string TooWide =
        """
        () => {
            const wide = document.documentElement.scrollWidth - document.documentElement.clientWidth;
            return wide > 0 ? [`${wide} pixels too wide`] : [];
        }
        """;

    // A link within a sentence is as high as its line (WCAG 2.5.5 excepts it), and what is hidden is tapped by nobody. The
    // skip link is for keyboards: it shows itself to them only. A box inside its label is tapped by the label.
    private const string SmallTargets =
        """
        least => [...document.querySelectorAll('a[href], button, input, select, textarea, summary')]
            .filter(e => e.checkVisibility({ opacityProperty: true, visibilityProperty: true }) && !e.closest('.unseen, .skip, p, td') && !(e.type === 'hidden'))
            .map(e => ({ e, box: (e.closest('label') ?? e).getBoundingClientRect() }))
            .filter(({ box }) => box.width > 1 && (box.width < least - 0.5 || box.height < least - 0.5))
            .map(({ e, box }) => `${Math.round(box.width)} x ${Math.round(box.height)}: ${e.outerHTML.slice(0, 120)}`)
        """;

    private const string SmallKeys =
        """
        least => [...document.querySelectorAll('main.fitting button, main.fitting a.key, main.child button')]
            .filter(e => e.checkVisibility({ opacityProperty: true, visibilityProperty: true }) && !e.closest('.unseen'))
            .map(e => ({ e, box: e.getBoundingClientRect() }))
            .filter(({ box }) => box.width > 1 && box.height < least - 0.5)
            .map(({ e, box }) => `a key of ${Math.round(box.height)}: ${e.outerHTML.slice(0, 120)}`)
        """;

    private const string SmallLetters =
        """
        least => {
            const small = new Set();
            const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
            for (let text = walk.nextNode(); text; text = walk.nextNode()) {
                const e = text.parentElement;
                if (text.data.trim() && !e.closest('svg, script, style, noscript') && e.checkVisibility({ visibilityProperty: true }) && parseFloat(getComputedStyle(e).fontSize) < least - 0.05)
                    small.add(`letters of ${getComputedStyle(e).fontSize}: ${e.outerHTML.slice(0, 120)}`);
            }
            return [...small];
        }
        """;

    // WCAG 2.2, 1.4.12: with these spaces nothing is cut and nothing hides.
    private const string CutWhenSpaced =
        """
        () => {
            const spaced = document.createElement('style');
            spaced.textContent = '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; } p { margin-bottom: 2em !important; }';
            document.head.append(spaced);
            const cut = [...document.body.querySelectorAll('*')]
                .filter(e => !e.closest('svg, .unseen') && e.checkVisibility() && ['hidden', 'clip'].includes(getComputedStyle(e).overflowX) && e.textContent.trim())
                .filter(e => e.scrollWidth > e.clientWidth + 1 || e.scrollHeight > e.clientHeight + 1)
                .map(e => `cut: ${e.outerHTML.slice(0, 120)}`);
            const wide = document.documentElement.scrollWidth - document.documentElement.clientWidth;
            spaced.remove();
            return wide > 0 ? [...cut, `${wide} pixels too wide`] : cut;
        }
        """;
}
