using Alumroot.Colour.Colorimetry;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Colours;

/// <summary>A colour that was read of a lake.</summary>
/// <param name="Id">The entry.</param>
/// <param name="Lake">Which lake.</param>
/// <param name="At">When.</param>
/// <param name="Read">What was read.</param>
/// <param name="Dyestuff">The lake's dyestuff in plain words.</param>
/// <param name="Salt">The lake's salt in plain words.</param>
public sealed record LakeColour(EntryId Id, SubjectKey Lake, DateTimeOffset At, SwatchRead Read, string Dyestuff, string Salt)
{
    private const int MostLakes = 400;

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
        return
        [
            .. lake.Entries.Where(e => e.Standing == Standing.Stands && e.Entry.Kind.Name == SwatchRead.Name)
                .Select(e => (e.Entry, Document: (DocumentText.Read(e.Entry) as DocumentReading.Known)?.Document as SwatchRead))
                .Where(e => e.Document is not null)
                .Select(e => new LakeColour(e.Entry.Id, lake.Key, e.Entry.At, e.Document!, lake.Plan?.Dyestuff ?? "", lake.Plan?.Salt ?? ""))
                .OrderBy(c => c.Read.State).ThenBy(c => c.At),
        ];
    }

    /// <summary>The colours of all lakes, of the lakes read last first.</summary>
    public static IReadOnlyList<LakeColour> All(StudioStore store)
    {
        ArgumentNullException.ThrowIfNull(store);
        return [.. store.WithColours(MostLakes).Select(store.Batch).OfType<BatchState>().SelectMany(Of)];
    }
}
