using System.Collections.Concurrent;

namespace Alumroot.Browser.Tests;

/// <summary>The one visit to each page that all house rules share. Two pages are looked at beside each other: the one that is asked for, and the next.</summary>
internal sealed class Tour(Func<Task<Looker>> open, IReadOnlyList<string> pages) : IAsyncDisposable
{
    private const int AtOnce = 2;

    private readonly ConcurrentDictionary<string, Lazy<Task<PageReport>>> _reports = new();
    private readonly ConcurrentBag<Looker> _lookers = [];
    private readonly SemaphoreSlim _free = new(AtOnce);

    /// <summary>What was found on a page; the visit is made when it is first asked for.</summary>
    /// <param name="path">Its row in the list of pages.</param>
    public Task<PageReport> OfAsync(string path)
    {
        Task<PageReport> asked = Begin(path);
        if (!asked.IsCompleted && pages.FirstOrDefault(p => !_reports.ContainsKey(p)) is { } next) _ = Begin(next);
        return asked;
    }

    public async ValueTask DisposeAsync()
    {
        foreach (Lazy<Task<PageReport>> begun in _reports.Values) await begun.Value.ContinueWith(_ => { }, TaskScheduler.Default);
        foreach (Looker looker in _lookers) await looker.DisposeAsync();
        _free.Dispose();
    }

    private Task<PageReport> Begin(string path) => _reports.GetOrAdd(path, p => new Lazy<Task<PageReport>>(() => VisitAsync(p))).Value;

    private async Task<PageReport> VisitAsync(string path)
    {
        await _free.WaitAsync();
        try
        {
            Looker looker = _lookers.TryTake(out Looker? idle) ? idle : await open();
            try
            {
                return await looker.LookAsync(path);
            }
            finally
            {
                _lookers.Add(looker);
            }
        }
        finally
        {
            _free.Release();
        }
    }
}
