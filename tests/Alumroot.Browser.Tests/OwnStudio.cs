using Alumroot.App.Hosting;
using Alumroot.Studio;
using Alumroot.Studio.Journal;
using Microsoft.AspNetCore.Builder;

namespace Alumroot.Browser.Tests;

/// <summary>An empty studio in a folder of its own and the program before it, for tests that write.</summary>
internal sealed class OwnStudio : IAsyncDisposable
{
    private readonly WebApplication _app;

    private OwnStudio(StudioStore store, WebApplication app) => (Store, _app) = (store, app);

    /// <summary>The record.</summary>
    public StudioStore Store { get; }

    /// <summary>Where the program listens.</summary>
    public string Address => _app.Urls.First();

    /// <summary>The first batch that is begun.</summary>
    public SubjectKey First => Store.List().Single(line => line.Subject.Class == SubjectClass.Batch).Subject;

    /// <summary>What has been kept of the first batch, without the plan.</summary>
    public IReadOnlyList<string?> Acts => [.. Store.Batch(First)!.Steps.Select(s => s.Act)];

    /// <summary>Opens it.</summary>
    /// <param name="clock">The clock of the program; the real one when left out.</param>
    public static async Task<OwnStudio> StartAsync(TimeProvider? clock = null)
    {
        string folder = Path.Combine(Path.GetTempPath(), $"alumroot-own-{Guid.NewGuid():N}");
        StudioStore store = StudioStore.Open(folder, StudioAccess.Write, TimeProvider.System);
        WebApplication app = AppHost.Build(new AppOptions { Clock = clock ?? TimeProvider.System }, store);
        await app.StartAsync();
        return new OwnStudio(store, app);
    }

    public async ValueTask DisposeAsync()
    {
        await _app.DisposeAsync();
        Store.Dispose();
        Directory.Delete(Store.Folder, recursive: true);
    }
}
