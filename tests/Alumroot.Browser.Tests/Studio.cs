using Alumroot.App.Hosting;
using Alumroot.App.Studio;
using Microsoft.AspNetCore.Builder;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Alumroot.Browser.Tests.Studio))]

namespace Alumroot.Browser.Tests;

/// <summary>The program itself on a free port, and a real Chromium beside it. Started once for all tests.</summary>
public sealed class Studio : IAsyncLifetime
{
    private static readonly string[] Arguments =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
        "--disable-component-update", "--disable-sync", "--disable-default-apps", "--hide-scrollbars",
        // Without a screen the browser's own surfaces would still be made ready, one process each, for every new window.
        "--disable-features=PreloadTopChromeWebUI,PaintHolding,Translate,MediaRouter,OptimizationHints,HttpsUpgrades,DestroyProfileOnBrowserClose,GlobalMediaControls",
    ];

    private DemoStudio? _demo;
    private WebApplication? _app;
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    /// <summary>Where the program listens, without a slash at the end.</summary>
    public string Address { get; private set; } = "";

    /// <summary>The shared visits for checks that only read.</summary>
    internal Tour Tour { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        _demo = DemoStudio.Open(TimeProvider.System);
        _app = AppHost.Build(new AppOptions { Demo = true }, _demo.Store);
        await _app.StartAsync();
        Address = _app.Urls.First();
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions { ExecutablePath = ChromiumPath(), Args = Arguments });
        Tour = new Tour(async () => new Looker(await OpenAsync("blank"), await OpenAsync("blank", View.Phone with { Script = false })), [.. Pages.All.Select(row => row.Data)]);
    }

    public async ValueTask DisposeAsync()
    {
        if (Tour is not null) await Tour.DisposeAsync();
        if (_browser is not null) await _browser.DisposeAsync();
        _playwright?.Dispose();
        if (_app is not null) await _app.DisposeAsync();
        _demo?.Dispose();
    }

    /// <summary>Opens a page of the program in a fresh visit that notes requests elsewhere, broken policies and script trouble.</summary>
    /// <param name="path">The path with its query; anything else leaves the page blank.</param>
    /// <param name="view">Width, scheme, script.</param>
    /// <param name="address">Where another studio listens; the demo studio when left out.</param>
    public async Task<Visit> OpenAsync(string path, View? view = null, string? address = null)
    {
        IBrowserContext context = await _browser!.NewContextAsync((view ?? View.Phone).Options);
        IPage page = await context.NewPageAsync();
        var visit = new Visit(context, page, address ?? Address);
        if (path.StartsWith('/')) await visit.GoAsync(path);
        return visit;
    }

    private static string ChromiumPath() =>
        new[] { Environment.GetEnvironmentVariable("CHROMIUM"), "/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome" }
            .FirstOrDefault(File.Exists)
        ?? throw new FileNotFoundException("Chromium was not found. On Debian: apt-get install chromium. Elsewhere: set CHROMIUM to its path.");
}
