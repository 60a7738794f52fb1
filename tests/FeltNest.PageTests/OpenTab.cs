using Microsoft.Playwright;

namespace FeltNest.PageTests;

/// <summary>A tab with the page in it.</summary>
public sealed class OpenTab(IPage tab, IReadOnlyList<string> errors) : IAsyncDisposable
{
    /// <summary>The tab.</summary>
    public IPage Tab => tab;

    /// <summary>What its console called an error.</summary>
    public IReadOnlyList<string> Errors => errors;

    /// <summary>What the page says of its answer.</summary>
    public Task<string> Stage => tab.Locator("#stage").InnerTextAsync();

    /// <summary>Waits until the last search is done.</summary>
    public Task Answered() =>
        tab.Locator("#stage", new PageLocatorOptions { HasTextString = "Searched to the effort asked." }).WaitForAsync();

    /// <summary>Types into a field and waits for the answer.</summary>
    public async Task Set(string field, string value)
    {
        await tab.Locator("#stage").EvaluateAsync("stage => stage.textContent = 'Asked.'");
        await tab.Locator("#" + field).FillAsync(value);
        await Answered();
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync() => await tab.Context.DisposeAsync();
}
