using Alumroot.Studio;
using Alumroot.Studio.Exchange;

namespace Alumroot.App.Studio;

/// <summary>The invented demo studio, opened in a folder of its own that goes away with it: everything works, nothing stays.</summary>
public sealed class DemoStudio : IDisposable
{
    /// <summary>What it is called.</summary>
    public const string Name = "Tarnwick Workroom";

    private const string Resource = "demo/studio.zip";

    private DemoStudio(StudioStore store) => Store = store;

    /// <summary>The open studio.</summary>
    public StudioStore Store { get; }

    /// <summary>Unpacks and opens it.</summary>
    /// <param name="clock">The clock of the program.</param>
    /// <exception cref="StudioException">The folder for passing things cannot be written.</exception>
    public static DemoStudio Open(TimeProvider clock)
    {
        string folder = Path.Combine(Path.GetTempPath(), $"alumroot-demo-{Guid.NewGuid():N}");
        StudioStore store = StudioStore.Open(folder, StudioAccess.Write, clock);
        using Stream? packed = typeof(DemoStudio).Assembly.GetManifestResourceStream(Resource);
        if (packed is not null)
        {
            string zip = Path.Combine(folder, "demo.zip");
            using (FileStream file = File.Create(zip)) packed.CopyTo(file);
            if (store.Import(zip) is not ImportOutcome.Merged) throw new InvalidOperationException("The demo studio that was built into the program does not open.");
            File.Delete(zip);
        }
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
