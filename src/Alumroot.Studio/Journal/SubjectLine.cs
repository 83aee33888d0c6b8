using System.Text.Json;
using Alumroot.Studio.Documents;

namespace Alumroot.Studio.Journal;

/// <summary>A batch, a lot or the studio as one line of a list.</summary>
/// <param name="Subject">Which.</param>
/// <param name="Title">A few words to know it by; empty when there are none.</param>
/// <param name="Stage">For a batch the word of its <see cref="BatchStage"/>; for a lot what kind of thing it is; empty when not known.</param>
/// <param name="FirstAt">Time of its first entry.</param>
/// <param name="LastAt">Time of its latest entry.</param>
/// <param name="EntryCount">How many entries it has, those that no longer count too.</param>
public sealed record SubjectLine(SubjectKey Subject, string Title, string Stage, DateTimeOffset FirstAt, DateTimeOffset LastAt, int EntryCount)
{
    /// <summary>The dyestuff of a batch in plain words; empty when not told.</summary>
    public string Dyestuff { get; init; } = "";

    /// <summary>The salt of a batch in plain words; empty when not told.</summary>
    public string Salt { get; init; } = "";

    /// <summary>The pigment of a batch in kilograms as last weighed; null before.</summary>
    public double? PigmentKg { get; init; }

    /// <summary>When the maker is to look at a batch or a trial again; null when nothing is waited for.</summary>
    public DateTimeOffset? DueAt { get; init; }

    /// <summary>The maker's own words, with blanks between.</summary>
    public string Tags { get; init; } = "";

    /// <summary>How far a batch has come; null for a lot or the studio.</summary>
    public BatchStage? BatchStage => Subject.Class == SubjectClass.Batch && Stages.TryGetValue(Stage, out BatchStage stage) ? stage : null;

    private static readonly Dictionary<string, BatchStage> Stages = Enum.GetValues<BatchStage>().ToDictionary(Word);

    /// <summary>Projects the line of a subject.</summary>
    /// <param name="subject">Which.</param>
    /// <param name="entries">Its entries, one or more, in any order.</param>
    public static SubjectLine Of(SubjectKey subject, IReadOnlyCollection<Entry> entries)
    {
        ArgumentNullException.ThrowIfNull(entries);
        return subject.Class switch
        {
            SubjectClass.Batch => OfBatch(BatchState.Of(subject, entries)),
            SubjectClass.Lot => OfLot(LotState.Of(subject, entries)),
            SubjectClass.Paint => OfPaint(PaintState.Of(subject, entries)),
            SubjectClass.Exposure => OfExposure(ExposureState.Of(subject, entries)),
            SubjectClass.Trial => OfTrial(TrialState.Of(subject, entries)),
            _ => Line(subject, "", "", StudioState.Of(entries).Entries),
        };
    }

    /// <summary>The word of a step, stage or kind as it stands in lists, files and on the command line.</summary>
    public static string Word<T>(T value) where T : struct, Enum => JsonNamingPolicy.KebabCaseLower.ConvertName(value.ToString());

    private static SubjectLine OfBatch(BatchState batch) =>
        Line(batch.Key, batch.Plan?.Title ?? "", batch.Plan is null && batch.Steps.Count == 0 && batch.GivenUp is null ? "" : Word(batch.Stage), batch.Entries) with
        {
            Dyestuff = batch.Plan?.Dyestuff ?? "",
            Salt = batch.Plan?.Salt ?? "",
            PigmentKg = batch.PigmentKg,
            DueAt = batch.ReadyAt,
            Tags = string.Join(' ', batch.Tags),
        };

    private static SubjectLine OfLot(LotState lot) =>
        Line(lot.Key, lot.Bought?.Title ?? "", lot.Bought is { } bought ? Word(bought.Substance) : "", lot.Entries) with { Tags = string.Join(' ', lot.Tags) };

    private static SubjectLine OfPaint(PaintState paint) => Line(paint.Key, paint.Made?.Title ?? "", paint.Stage, paint.Entries);

    private static SubjectLine OfExposure(ExposureState exposure) => Line(exposure.Key, exposure.Begun?.Title ?? "", exposure.Stage, exposure.Entries) with { DueAt = exposure.ReadyAt };

    private static SubjectLine OfTrial(TrialState trial) => Line(trial.Key, trial.Begun?.Title ?? "", trial.Stage, trial.Entries) with { DueAt = trial.ReadyAt };

    private static SubjectLine Line(SubjectKey key, string title, string stage, IReadOnlyList<StandingEntry> all) =>
        new(key, title, stage, all[0].Entry.At, all[^1].Entry.At, all.Count);
}
