using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.Studio.Exchange;

/// <summary>The tables of an export that people read in a spreadsheet. The entries beside them are what is imported.</summary>
internal static class Tables
{
    public static IEnumerable<string> Batches(IEnumerable<SubjectLine> lines) =>
        lines.Where(l => l.Subject.Class == SubjectClass.Batch)
            .Select(l => Csv.Line(l.Subject.ToString(), l.Title, l.Stage, Time(l.FirstAt), Time(l.LastAt), l.EntryCount, l.Dyestuff, l.Salt, l.PigmentKg, l.Tags))
            .Prepend(Csv.Line("batch", "title", "stage", "first_at", "last_at", "entries", "dyestuff", "salt", "pigment_kg", "tags"));

    public static IEnumerable<string> Lots(IEnumerable<LotState> lots) =>
        lots.Select(l => Csv.Line(l.Key.ToString(), l.Bought?.Title, l.Bought is { } b ? SubjectLine.Word(b.Substance) : null, l.Bought?.Amount.Typed, l.Bought?.Amount.SiValue, l.LeftSi, l.Bought?.Amount.SiUnit, l.Bought?.Cost, l.Bought?.CameOn?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture), l.Bought?.Source))
            .Prepend(Csv.Line("lot", "title", "kind", "amount_typed", "amount_si", "left_si", "si_unit", "cost", "came_on", "source"));

    /// <summary>A line for each part of each paint, its preservative and what came off the slab among them.</summary>
    public static IEnumerable<string> Paints(IEnumerable<PaintState> paints) =>
        paints.SelectMany(p => Weighed(p.Made).Select(v => Csv.Line(
                p.Key.ToString(), p.Made!.Title, p.Made.Medium, p.Stage, Time(p.At), string.Join(' ', p.Made.Lakes.Select(l => l.Lake)), v.Name, v.Typed, v.SiValue, v.SiUnit, string.Join(' ', p.Made.Filled.Select(f => $"{f.Count} {f.What}")), p.Made.Uses.FirstOrDefault(u => v.Name == u.Amount.Name || v.Name.StartsWith(u.Amount.Name + ":", StringComparison.Ordinal))?.Lot)))
            .Prepend(Csv.Line("paint", "title", "medium", "state", "made_at", "lakes", "part", "typed", "si_value", "si_unit", "filled", "lot"));

    /// <summary>A line for each strip at each reading.</summary>
    public static IEnumerable<string> Exposures(IEnumerable<ExposureState> exposures) =>
        exposures.SelectMany(e => e.Readings.SelectMany(r => r.Said.Strips.Select(s => Csv.Line(
                e.Key.ToString(), e.Begun?.Title, Time(e.At), Time(r.At), s.Sample, s.Strip, e.Begun?.Samples.FirstOrDefault(x => x.Name == s.Sample)?.Of,
                s.Covered?.LabL, s.Covered?.LabA, s.Covered?.LabB, s.Exposed.LabL, s.Exposed.LabA, s.Exposed.LabB))))
            .Prepend(Csv.Line("exposure", "title", "begun_at", "read_at", "sample", "strip", "of", "covered_l", "covered_a", "covered_b", "exposed_l", "exposed_a", "exposed_b"));

    private static IEnumerable<Measured> Weighed(PaintMade? made) =>
    [
        .. made?.Parts ?? [],
        .. made?.PreservativeAmount is { } keeps ? (Measured[])[keeps with { Name = $"preservative: {made.Preservative}" }] : [],
        .. made?.CameOff is { } off ? (Measured[])[off with { Name = "came off the slab" }] : [],
    ];

    /// <summary>A line for each result of each jar, and one for its colour.</summary>
    public static IEnumerable<string> Trials(IEnumerable<TrialState> trials) =>
        trials.SelectMany(t => t.Jars.SelectMany(j => Results(j).Select(r => Csv.Line(
                [t.Key.ToString(), t.Begun!.Title, t.Stage, Time(t.At), j.Jar.Order, j.Jar.Block, string.Join("; ", t.Begun.Factors.Select((f, i) => $"{f.Name} {f.Settings[j.Jar.Levels[i]]}{(f.Unit.Length > 0 ? " " + f.Unit : "")}")), .. r]))))
            .Prepend(Csv.Line("trial", "title", "state", "begun_at", "jar", "block", "settings", "result", "typed", "si_value", "si_unit", "within_si"));

    private static IEnumerable<object?[]> Results(JarState jar) =>
    [
        .. jar.Results.Values.Select(r => (object?[])[r.Value.Name, r.Value.Typed, r.Value.SiValue, r.Value.SiUnit, r.WithinSi]),
        .. jar.Colour is { Colour: { } lab } read ? (object?[][])[["lab_l", null, lab.LabL, "1", read.WithinDeltaE2000], ["lab_a", null, lab.LabA, "1", read.WithinDeltaE2000], ["lab_b", null, lab.LabB, "1", read.WithinDeltaE2000]] : [],
        .. jar.IsRead ? [] : (object?[][])[["not read", null, null, null, null]],
    ];

    /// <summary>Every value of every step, with whether it counts.</summary>
    public static IEnumerable<string> Readings(IEnumerable<StandingEntry> entries) =>
        entries.SelectMany(Rows).Prepend(Csv.Line("batch", "at", "step", "name", "typed", "si_value", "si_unit", "instrument", "resolution_si", "standing", "entry"));

    private static IEnumerable<string> Rows(StandingEntry e) => DocumentText.Read(e.Entry) is DocumentReading.Known { Document: BatchStep step }
        ? step.Values.Select(v => Csv.Line(
            e.Entry.Subject.ToString(), Time(e.Entry.At), SubjectLine.Word(step.Step), v.Name, v.Typed, v.SiValue, v.SiUnit, v.Instrument, v.ResolutionSi, SubjectLine.Word(e.Standing), e.Entry.Id.Text))
        : [];

    private static string Time(DateTimeOffset at) => at.ToString("yyyy-MM-dd'T'HH:mm:sszzz", System.Globalization.CultureInfo.InvariantCulture);
}
