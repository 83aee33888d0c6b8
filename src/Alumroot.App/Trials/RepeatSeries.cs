using Alumroot.Colour.Colorimetry;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Trials.Repeats;

namespace Alumroot.App.Trials;

/// <summary>A repeat beside its standard.</summary>
/// <param name="Batch">The repeat.</param>
/// <param name="DeltaE2000">How far its colour lies from the standard's; null when one of them was not read in the same state.</param>
/// <param name="Within">The doubt of that difference; null when it is not known.</param>
/// <param name="Changes">What was otherwise than in the standard.</param>
public sealed record Repeat(BatchFacts Batch, double? DeltaE2000, double? Within, IReadOnlyList<BatchChange> Changes);

/// <summary>A value of a chart and the batch that it belongs to.</summary>
/// <param name="Key">The batch.</param>
/// <param name="Point">Its place.</param>
public sealed record RepeatPoint(SubjectKey Key, ControlPoint Point);

/// <summary>The limits of one thing and its values with their batches.</summary>
/// <param name="Found">The limits.</param>
/// <param name="Points">The values.</param>
public sealed record RepeatChart(ControlFound Found, IReadOnlyList<RepeatPoint> Points);

/// <summary>A standard batch and its repeats, in the order of making.</summary>
/// <param name="Standard">The batch that is repeated.</param>
/// <param name="State">The state in which colours are compared; null when the standard has none.</param>
/// <param name="Repeats">The repeats.</param>
public sealed record RepeatSeries(BatchFacts Standard, SwatchState? State, IReadOnlyList<Repeat> Repeats)
{
    // A page must not read a whole studio.
    private const int Latest = 400, Few = 5, MostSteps = 50;

    // The state in which colours are compared, the steadiest first.
    private static readonly SwatchState[] Steadiest = [SwatchState.Dry, SwatchState.Ground, SwatchState.Painted, SwatchState.Wet];

    /// <summary>Colour differences from the standard; null with too few.</summary>
    public RepeatChart? Colours => Chart([.. Repeats.Where(r => r.DeltaE2000 is not null).Select(r => (r.Batch.Key, r.DeltaE2000!.Value))]);

    /// <summary>Pigment for each gram of dyestuff, the standard's first; null with too few.</summary>
    public RepeatChart? Yields => Chart([.. Repeats.Select(r => r.Batch).Prepend(Standard).Where(b => b.YieldPerGram is not null).Select(b => (b.Key, b.YieldPerGram!.Value))]);

    /// <summary>Every batch of the studio that was repeated, the one with most repeats first.</summary>
    public static IReadOnlyList<RepeatSeries> All(StudioStore store)
    {
        ArgumentNullException.ThrowIfNull(store);
        var batches = new Dictionary<SubjectKey, BatchState?>();
        BatchState? Batch(SubjectKey key) => batches.TryGetValue(key, out BatchState? known) ? known : batches[key] = store.Batch(key);
        // The word stands in the entry of every repeat, so the search finds them.
        BatchState[] repeats = [.. store.List("repeat", Latest, SubjectClass.Batch).Select(l => Batch(l.Subject)).OfType<BatchState>().Where(b => b.Plan?.Origin == BatchOrigin.Repeat)];
        return [.. repeats.GroupBy(b => Root(b, Batch)).Where(g => g.Key is not null).Select(g => Of(Batch(g.Key!.Value)!, g)).OfType<RepeatSeries>().OrderByDescending(s => s.Repeats.Count).ThenBy(s => s.Standard.Key)];
    }

    /// <summary>Whether a batch was repeated.</summary>
    public static bool IsRepeated(StudioStore store, SubjectKey batch)
    {
        ArgumentNullException.ThrowIfNull(store);
        return store.List($"repeat {batch}", Few, SubjectClass.Batch).Where(l => l.Subject != batch).Any(l => store.Batch(l.Subject)?.Plan is { Origin: BatchOrigin.Repeat, FromBatch: { } from } && from == batch.ToString());
    }

    // A repeat of a repeat belongs to the first of them.
    private static SubjectKey? Root(BatchState batch, Func<SubjectKey, BatchState?> find)
    {
        BatchState at = batch;
        for (int steps = 0; steps < MostSteps; steps++)
        {
            if (at.Plan is not { Origin: BatchOrigin.Repeat, FromBatch: { } from }) return at.Key == batch.Key ? null : at.Key;
            if (SubjectKey.TryRead(from) is not { Class: SubjectClass.Batch } key || find(key) is not { } before) return at.Key == batch.Key ? null : at.Key;
            at = before;
        }
        return null;
    }

    private static RepeatSeries? Of(BatchState standard, IEnumerable<BatchState> repeats)
    {
        if (BatchFacts.Of(standard) is not { } first) return null;
        BatchFacts[] others = [.. repeats.Where(r => r.Key != standard.Key && r.GivenUp is null).Select(BatchFacts.Of).OfType<BatchFacts>().OrderBy(b => b.At).ThenBy(b => b.Key)];
        SwatchState? state = Steadiest.Where(first.Colours.ContainsKey).Select(s => (SwatchState?)s).OrderByDescending(s => others.Count(o => o.Colours.ContainsKey(s!.Value))).FirstOrDefault();
        return others.Length == 0 ? null : new RepeatSeries(first, state, [.. others.Select(o => Beside(first, o, state))]);
    }

    private static Repeat Beside(BatchFacts standard, BatchFacts other, SwatchState? state)
    {
        bool both = state is { } s && other.Colours.ContainsKey(s);
        (SwatchRead? one, SwatchRead? two) = both ? (standard.Colours[state!.Value], other.Colours[state.Value]) : (null, null);
        return new Repeat(
            other, both ? Ciede2000.Of(BatchFacts.Of(one!.Colour), BatchFacts.Of(two!.Colour)).DeltaE : null,
            both ? Words.SwatchWords.Both(one!.WithinDeltaE2000, two!.WithinDeltaE2000) : null, BatchChange.Between(standard, other));
    }

    private static RepeatChart? Chart((SubjectKey Key, double Value)[] values) =>
        IndividualsChart.Of([.. values.Select(v => v.Value)], neverBelowNothing: true) is { } found ? new RepeatChart(found, [.. values.Zip(found.Points, (v, p) => new RepeatPoint(v.Key, p))]) : null;
}
