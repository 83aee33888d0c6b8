using Alumroot.Colour.Colorimetry;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Colours;

/// <summary>A colour that was read of a lake, or of a paint that a lake went into.</summary>
/// <param name="Id">The entry.</param>
/// <param name="Subject">The lake or paint it was read of.</param>
/// <param name="At">When.</param>
/// <param name="Read">What was read.</param>
/// <param name="Dyestuff">The lake's dyestuff in plain words; of a paint of several lakes, all of them.</param>
/// <param name="Salt">The lake's salt in plain words.</param>
public sealed record LakeColour(EntryId Id, SubjectKey Subject, DateTimeOffset At, SwatchRead Read, string Dyestuff, string Salt)
{
    private const int MostSubjects = 400;

    /// <summary>The pH at which the lake came down; null when it is not told.</summary>
    public LakePh? Ph { get; init; }

    /// <summary>The medium of the paint by its key; null when it was read of the lake itself.</summary>
    public string? Medium { get; init; }

    /// <summary>The colour, D50 and 2 degrees.</summary>
    public Lab Lab => new(Read.Colour.LabL, Read.Colour.LabA, Read.Colour.LabB);

    /// <summary>As a screen shows it.</summary>
    public Srgb Screen => Srgb.From(Lab.ToXyz(ColourNames.White), ColourNames.White);

    /// <summary>The nearest plain name.</summary>
    public string Name => ColourNames.Nearest(Lab).Colour.Name;

    /// <summary>The colours of a lake that stand, in the order of the making: wet, dry, ground, painted, each by time.</summary>
    public static IReadOnlyList<LakeColour> Of(BatchState lake)
    {
        ArgumentNullException.ThrowIfNull(lake);
        return Of(lake.Key, lake.Entries, lake.Plan?.Dyestuff ?? "", lake.Plan?.Salt ?? "", LakePh.Of(lake), null);
    }

    /// <summary>The colours of a paint that stand, by time.</summary>
    /// <param name="paint">The paint.</param>
    /// <param name="store">Where its lakes are kept.</param>
    public static IReadOnlyList<LakeColour> Of(PaintState paint, StudioStore store)
    {
        ArgumentNullException.ThrowIfNull(paint);
        ArgumentNullException.ThrowIfNull(store);
        if (paint.Made is not { } made) return [];
        BatchState[] lakes = [.. made.Lakes.Select(l => SubjectKey.TryRead(l.Lake)).OfType<SubjectKey>().Select(store.Batch).OfType<BatchState>()];
        return Of(paint.Key, paint.Entries, All(l => l.Plan?.Dyestuff), All(l => l.Plan?.Salt), lakes is [var only] ? LakePh.Of(only) : null, made.Medium);

        string All(Func<BatchState, string?> told) => string.Join(", ", lakes.Select(told).Where(t => !string.IsNullOrEmpty(t)).Distinct());
    }

    /// <summary>The colours of a lake and of the paints it went into.</summary>
    public static IReadOnlyList<LakeColour> Journey(BatchState lake, StudioStore store)
    {
        ArgumentNullException.ThrowIfNull(lake);
        ArgumentNullException.ThrowIfNull(store);
        return [.. Of(lake), .. store.Paints(lake.Key).SelectMany(p => Of(p, store))];
    }

    /// <summary>The colours of all lakes and paints, of those read last first.</summary>
    public static IReadOnlyList<LakeColour> All(StudioStore store)
    {
        ArgumentNullException.ThrowIfNull(store);
        return [.. store.WithColours(MostSubjects).SelectMany(k => Of(store, k))];
    }

    /// <summary>A colour by its entry; null when there is none that stands.</summary>
    public static LakeColour? Find(StudioStore store, string? id)
    {
        ArgumentNullException.ThrowIfNull(store);
        return EntryId.TryRead(id) is { } entry && store.Find(entry) is { } found ? Of(store, found.Subject).FirstOrDefault(c => c.Id == entry) : null;
    }

    private static IReadOnlyList<LakeColour> Of(StudioStore store, SubjectKey key) => key.Class switch
    {
        SubjectClass.Batch => store.Batch(key) is { } lake ? Of(lake) : [],
        SubjectClass.Paint => store.Paint(key) is { } paint ? Of(paint, store) : [],
        _ => [],
    };

    private static IReadOnlyList<LakeColour> Of(SubjectKey key, IReadOnlyList<StandingEntry> entries, string dyestuff, string salt, LakePh? ph, string? medium) =>
    [
        .. entries.Where(e => e.Standing == Standing.Stands && e.Entry.Kind.Name == SwatchRead.Name)
            .Select(e => (e.Entry, Document: (DocumentText.Read(e.Entry) as DocumentReading.Known)?.Document as SwatchRead))
            .Where(e => e.Document is not null)
            .Select(e => new LakeColour(e.Entry.Id, key, e.Entry.At, e.Document!, dyestuff, salt) { Ph = ph, Medium = medium })
            .OrderBy(c => c.Read.State).ThenBy(c => c.At),
    ];
}
