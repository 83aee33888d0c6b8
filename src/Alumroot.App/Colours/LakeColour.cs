using Alumroot.Colour.Colorimetry;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Colours;

/// <summary>A colour that was read of a lake, or of a paint made from it.</summary>
/// <param name="Id">The entry.</param>
/// <param name="Lake">Which lake; of a paint that was made from none, the paint itself.</param>
/// <param name="At">When.</param>
/// <param name="Read">What was read.</param>
/// <param name="Dyestuff">The lake's dyestuff in plain words; of a paint of several lakes, all of them.</param>
/// <param name="Salt">The lake's salt in plain words.</param>
public sealed record LakeColour(EntryId Id, SubjectKey Lake, DateTimeOffset At, SwatchRead Read, string Dyestuff, string Salt)
{
    private const int MostLakes = 400;

    /// <summary>The pH at which the lake came down; null when it is not told.</summary>
    public LakePh? Ph { get; init; }

    /// <summary>The medium of the paint by its key; null when it was read of the lake itself.</summary>
    public string? Medium { get; init; }

    /// <summary>The paint it was read of; null for the lake itself.</summary>
    public SubjectKey? Paint { get; init; }

    /// <summary>What it was read of.</summary>
    public SubjectKey Subject => Paint ?? Lake;

    /// <summary>The colour, D50 and 2 degrees.</summary>
    public Lab Lab => new(Read.Colour.LabL, Read.Colour.LabA, Read.Colour.LabB);

    /// <summary>As a screen shows it.</summary>
    public Srgb Screen => Srgb.From(Lab.ToXyz(ColourNames.White), ColourNames.White);

    /// <summary>The nearest plain name.</summary>
    public string Name => ColourNames.Nearest(Lab).Colour.Name;

    /// <summary>The last word of that name, which is its hue: "yellow" of "strong greenish yellow".</summary>
    public string HueWord => Name[(Name.LastIndexOf(' ') + 1)..];

    /// <summary>The colours of a lake that stand, in the order of the making: wet, dry, ground, painted, each by time.</summary>
    public static IReadOnlyList<LakeColour> Of(BatchState lake)
    {
        ArgumentNullException.ThrowIfNull(lake);
        return Ordered(Reads(lake.Entries).Select(e => new LakeColour(e.Entry.Id, lake.Key, e.Entry.At, e.Read, lake.Plan?.Dyestuff ?? "", lake.Plan?.Salt ?? "") { Ph = LakePh.Of(lake) }));
    }

    /// <summary>The colours of a paint that stand, by time.</summary>
    /// <param name="paint">The paint.</param>
    /// <param name="lake">The lake it is shown with; null when it was made from none.</param>
    public static IReadOnlyList<LakeColour> Of(PaintState paint, BatchState? lake)
    {
        ArgumentNullException.ThrowIfNull(paint);
        return Ordered(Reads(paint.Entries).Select(e => new LakeColour(e.Entry.Id, lake?.Key ?? paint.Key, e.Entry.At, e.Read, lake?.Plan?.Dyestuff ?? paint.Made?.Title ?? "", lake?.Plan?.Salt ?? "") { Paint = paint.Key, Medium = paint.Made?.Medium, Ph = lake is null ? null : LakePh.Of(lake) }));
    }

    /// <summary>The way of a lake: its own colours and those of the paints made from it.</summary>
    public static IReadOnlyList<LakeColour> Way(BatchState lake, StudioStore store)
    {
        ArgumentNullException.ThrowIfNull(lake);
        ArgumentNullException.ThrowIfNull(store);
        return Ordered(Of(lake).Concat(store.Paints(lake.Key).Where(p => p.Made is not null).SelectMany(p => Of(p, lake))));
    }

    /// <summary>The colours of all lakes and paints, of those read last first.</summary>
    public static IReadOnlyList<LakeColour> All(StudioStore store)
    {
        ArgumentNullException.ThrowIfNull(store);
        return [.. store.WithColours(MostLakes).SelectMany(key => OfSubject(key, store))];
    }

    /// <summary>The colour of an entry; null when it is none or does not stand.</summary>
    public static LakeColour? Find(StudioStore store, string? id)
    {
        ArgumentNullException.ThrowIfNull(store);
        return EntryId.TryRead(id) is { } entry && store.Find(entry) is { } found ? OfSubject(found.Subject, store).FirstOrDefault(c => c.Id == entry) : null;
    }

    private static IReadOnlyList<LakeColour> OfSubject(SubjectKey key, StudioStore store) => key.Class switch
    {
        SubjectClass.Batch when store.Batch(key) is { } lake => Of(lake),
        SubjectClass.Paint when store.Paint(key) is { Made: not null } paint => OfPaint(paint, store),
        _ => [],
    };

    /// <summary>The colours of a paint with the dyestuffs and salts of all its lakes.</summary>
    private static IReadOnlyList<LakeColour> OfPaint(PaintState paint, StudioStore store)
    {
        BatchState[] lakes = [.. paint.Made!.Lakes.Select(l => SubjectKey.TryRead(l.Lake)).OfType<SubjectKey>().Select(store.Batch).OfType<BatchState>()];
        IReadOnlyList<LakeColour> colours = Of(paint, lakes.Length > 0 ? lakes[0] : null);
        return lakes.Length < 2 ? colours : [.. colours.Select(c => c with { Dyestuff = All(l => l.Plan?.Dyestuff), Salt = All(l => l.Plan?.Salt), Ph = null })];

        string All(Func<BatchState, string?> told) => string.Join(", ", lakes.Select(told).Where(t => !string.IsNullOrEmpty(t)).Distinct());
    }

    private static IReadOnlyList<LakeColour> Ordered(IEnumerable<LakeColour> colours) => [.. colours.OrderBy(c => c.Read.State).ThenBy(c => c.At)];

    private static IEnumerable<(Entry Entry, SwatchRead Read)> Reads(IEnumerable<StandingEntry> entries) =>
        entries.Where(e => e.Standing == Standing.Stands && e.Entry.Kind.Name == SwatchRead.Name)
            .Select(e => (e.Entry, Read: (DocumentText.Read(e.Entry) as DocumentReading.Known)?.Document as SwatchRead)).Where(e => e.Read is not null).Select(e => (e.Entry, e.Read!));
}
