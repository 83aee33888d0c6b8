using Alumroot.Quantities;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Photos;
using Alumroot.Studio.Store;
using SkiaSharp;

namespace Alumroot.Studio.Tests;

/// <summary>A studio in a folder of its own that goes away with the test, and short ways to fill it.</summary>
internal sealed class TempStudio : IDisposable
{
    public static readonly DateTimeOffset Noon = new(2026, 3, 14, 12, 0, 0, TimeSpan.FromHours(1));

    public static readonly SubjectKey First = SubjectKey.Batch(2026, 1);

    private StudioStore? _store;

    public string Folder { get; } = Path.Combine(Path.GetTempPath(), "alumroot-" + Guid.NewGuid().ToString("N"));

    public string File => Path.Combine(Folder, StudioStore.DatabaseName);

    public StudioStore Store => _store ??= StudioStore.Open(Folder, StudioAccess.Write, TimeProvider.System);

    public static EntryId Id(int n) => EntryId.TryRead($"entry-{n:000000}")!.Value;

    public static BatchPlanned Plan(string title) => new(title, "/lakes/plan?dyestuff=weld&dry=100%20g&salt=potash-alum&to-ph=6.5", 1, "0.1.0");

    public static BatchStep Added(double grams, string? note = null) =>
        new(StepKind.Alkali) { Values = [Measured.Of("amount", $"{grams} g", Mass.FromGrams(grams), "scale")], Note = note };

    public static Entry Step(int n, SubjectKey? subject = null, string? note = null, EntryId? corrects = null, double grams = 3) =>
        Added(grams, note).ToEntry(Id(n), subject ?? First, Noon.AddSeconds(n), corrects);

    public static Stream Picture(int n) => new MemoryStream([.. Pictures.Quarters(16, 12, SKEncodedImageFormat.Jpeg), .. BitConverter.GetBytes(n)]);

    public string KeepPicture(int n) => Assert.IsType<PhotoOutcome.Kept>(Store.Photos.Keep(Picture(n))).Hash;

    public Entry Keep(Entry entry) => Assert.IsType<AppendResult.Kept>(Store.Append(entry)).Entry;

    public Entry Start(int n, StudioDocument document) =>
        Assert.IsType<AppendResult.Kept>(Store.AppendNew(document is LotBought ? SubjectClass.Lot : SubjectClass.Batch, Id(n), document, Noon.AddSeconds(n))).Entry;

    public void Close()
    {
        _store?.Dispose();
        _store = null;
    }

    public void Dispose()
    {
        Close();
        if (Directory.Exists(Folder)) Directory.Delete(Folder, recursive: true);
    }
}
