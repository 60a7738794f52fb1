using FeltNest.Page;
using Microsoft.Playwright;
using Xunit;

namespace FeltNest.PageTests;

/// <summary>A server and a headless browser for the tests of one class; without the browser they are skipped.</summary>
public sealed class BrowserPage : IAsyncLifetime
{
    private const string Chromium = "/usr/bin/chromium";

    // How long a step may take before it has failed, ms: other tests may hold the cores.
    private const float Patience = 150_000;

    private IPlaywright? driver;
    private IBrowser? browser;

    /// <summary>The server.</summary>
    public PageServer Server { get; private set; } = null!;

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        Server = await PageServer.Start(0, [], CancellationToken.None);
        if (File.Exists(Chromium))
        {
            driver = await Playwright.CreateAsync();
            browser = await driver.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
            {
                ExecutablePath = Chromium,
                Headless = true,
                Args =
                [
                    "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
                    "--disable-component-update", "--disable-sync",
                ],
            });
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.DisposeAsync();
        }

        driver?.Dispose();
        await Server.DisposeAsync();
    }

    /// <summary>The page in a tab of its own, waited for until its first answer is drawn. Errors of its console fail the test that asks for
    /// them.</summary>
    public async Task<OpenTab> Open(string query = "?effort=1", int width = 1440, int height = 900, string? address = null)
    {
        Assert.SkipWhen(browser is null, "chromium is not installed");
        IBrowserContext context = await browser!.NewContextAsync(
            new BrowserNewContextOptions { ViewportSize = new ViewportSize { Width = width, Height = height }, AcceptDownloads = true });
        context.SetDefaultTimeout(Patience);
        IPage tab = await context.NewPageAsync();
        List<string> errors = [];
        tab.Console += (_, message) =>
        {
            if (message.Type == "error")
            {
                errors.Add(message.Text);
            }
        };
        tab.PageError += (_, error) => errors.Add(error);
        await tab.GotoAsync((address ?? Server.Address) + query);
        OpenTab opened = new(tab, errors);
        await opened.Answered();
        return opened;
    }
}
