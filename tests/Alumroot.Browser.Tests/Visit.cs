using Microsoft.Playwright;

namespace Alumroot.Browser.Tests;

/// <summary>One visit to the program: a page, and what went wrong meanwhile.</summary>
public sealed class Visit : IAsyncDisposable
{
    private readonly IBrowserContext _context;
    private readonly string _address;
    private readonly List<string> _wrongs = [];

    internal Visit(IBrowserContext context, IPage page, string address)
    {
        (_context, Page, _address) = (context, page, address);
        page.Request += (_, request) =>
        {
            if (!request.Url.StartsWith(address + "/", StringComparison.Ordinal) && !request.Url.StartsWith("data:", StringComparison.Ordinal))
                _wrongs.Add($"a request left the studio: {request.Url}");
        };
        page.Console += (_, message) =>
        {
            if (message.Type == "error" && !message.Text.Contains("status of 404", StringComparison.Ordinal)) _wrongs.Add($"the browser complained: {message.Text}");
        };
        page.PageError += (_, message) => _wrongs.Add($"a script failed: {message}");
    }

    /// <summary>The page.</summary>
    public IPage Page { get; }

    /// <summary>Requests elsewhere, broken content policy, script failures. Empty when all is well.</summary>
    public IReadOnlyList<string> Wrongs => _wrongs;

    /// <summary>What went wrong since this was last asked.</summary>
    public IReadOnlyList<string> TakeWrongs()
    {
        string[] taken = [.. _wrongs];
        _wrongs.Clear();
        return taken;
    }

    /// <summary>The path that a row of the list of pages leads to.</summary>
    /// <param name="row">A path, or one with words of the links to follow from there.</param>
    public async Task<string> FollowAsync(string row)
    {
        string[] steps = row.Split(Pages.Follow);
        string path = steps[0];
        foreach (string words in steps[1..])
        {
            await GoAsync(path);
            path = await Page.Locator("main a", new() { HasText = words }).First.GetAttributeAsync("href", new() { Timeout = 5000 }) ?? "";
        }
        return path;
    }

    /// <summary>Goes to a path and waits until everything has loaded.</summary>
    public async Task GoAsync(string path) =>
        await Page.GotoAsync(_address + path, new PageGotoOptions { WaitUntil = WaitUntilState.Load });

    public async ValueTask DisposeAsync() => await _context.DisposeAsync();
}
