using Alumroot.Studio;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Studio;

/// <summary>The invented demo studio, opened in a folder of its own that goes away with it: everything works, nothing stays.</summary>
public sealed class DemoStudio : IDisposable
{
    /// <summary>What it is called.</summary>
    public const string Name = "Tarnwick Workroom";

    private DemoStudio(StudioStore store) => Store = store;

    /// <summary>The open studio.</summary>
    public StudioStore Store { get; }

    /// <summary>Fills and opens it.</summary>
    /// <param name="clock">The clock of the program.</param>
    /// <exception cref="StudioException">The folder for passing things cannot be written.</exception>
    public static DemoStudio Open(TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(clock);
        string folder = Path.Combine(Path.GetTempPath(), $"alumroot-demo-{Guid.NewGuid():N}");
        // The plans of its lakes are reckoned while the database is made.
        DateTimeOffset now = clock.GetLocalNow();
        Task<IReadOnlyList<Entry>> record = Task.Run(() => DemoRecord.At(now));
        StudioStore store = StudioStore.Open(folder, StudioAccess.Write, clock);
        store.AppendAll(record.GetAwaiter().GetResult());
        return new DemoStudio(store);
    }

    /// <summary>Closes it and takes its folder away.</summary>
    public void Dispose()
    {
        Store.Dispose();
        try
        {
            Directory.Delete(Store.Folder, recursive: true);
        }
        catch (IOException)
        {
            // A file that something else still holds stays in the folder for passing things, which the system clears.
        }
    }
}
