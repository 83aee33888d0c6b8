using System.Globalization;
using Alumroot.App.Bench;
using Alumroot.App.Paints;
using Alumroot.Colour.Colorimetry;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Words;

/// <summary>An entry in a few words.</summary>
public static class EntryWords
{
    /// <summary>"alkali: amount 3.0 g, pH 5.5 (strip); froth rose".</summary>
    public static string Of(Entry entry) => DocumentText.Read(entry) switch
    {
        DocumentReading.Known known => Of(known.Document),
        _ => $"{entry.Kind}",
    };

    private static string Of(StudioDocument document)
    {
        string said = document switch
        {
            BatchPlanned plan => $"planned: {plan.Title}",
            BatchStep step => Of(step),
            BatchGivenUp given => $"given up: {given.Reason}",
            LotBought lot => $"came: {lot.Title}, {SubjectLine.Word(lot.Substance)}, {lot.Amount.Typed}",
            LotCounted counted => $"counted: {counted.Left.Typed} left",
            BowlWeighed bowl => $"bowl {bowl.Bowl}: {bowl.Empty.Typed} empty",
            Tagged tagged => tagged.Tags.Count == 0 ? "no tags" : $"tags: {string.Join(", ", tagged.Tags)}",
            BatchUsedUp => "used up",
            StudioSet set => $"the studio's ways{(set.Maker is { } maker ? $", labels by {maker}" : "")}",
            SwatchRead swatch => $"colour, {SwatchWords.Of(swatch.State)}: {SwatchWords.Numbers(new Lab(swatch.Colour.LabL, swatch.Colour.LabA, swatch.Colour.LabB))}, {SwatchWords.Within(swatch.WithinDeltaE2000)}{(DrawdownWords.Lies(swatch) is { Length: > 0 } lies ? $", {lies}" : "")}",
            TargetKept target => $"target {target.Title}: {target.Patches.Count} colours",
            PaintMade paint => $"made: {paint.Title}, {string.Join(", ", paint.Parts.Select(p => $"{p.Name} {p.Typed}"))}{(paint.Filled.Count > 0 ? $"; filled {string.Join(", ", paint.Filled.Select(f => $"{PaintFill.Counted(f.Count.ToString(CultureInfo.InvariantCulture), f.What)}{(f.Where is { } where ? $" ({where})" : "")}"))}" : "")}{(paint.Uses.Count > 0 ? $"; of the shelf {string.Join(", ", paint.Uses.Select(u => $"{u.Amount.Name} of {u.Lot}"))}" : "")}",
            PaintUsedUp => "used up",
            ExposureBegun exposure => $"laid in the light: {exposure.Title}, {string.Join(", ", exposure.Samples.Select(s => s.Strips == 1 ? s.Name : $"{s.Name} x {s.Strips}"))}",
            LightRead light => $"light: {light.Level.Typed}{(light.Level.Typed.Any(char.IsLetter) ? "" : " lx")}",
            LightLogged log => string.Create(CultureInfo.InvariantCulture, $"light by a logger{(log.File is { } file ? $" ({file})" : "")}: {log.Dose.MegaluxHours:0.###} Mlx h ({log.Dose.Low:0.###} to {log.Dose.High:0.###}), {log.Readings} readings"),
            ExposureRead read => $"strips read: {string.Join(", ", read.Strips.Select(s => s.Sample).Distinct())}",
            ExposureEnded => "taken out of the light",
            TestDone test => string.Create(CultureInfo.InvariantCulture, $"{OtherTestWords.Name(test.Test)}: {test.Result:0.###} {test.Unit}"),
            TrialBegun trial => $"trial: {trial.Title}, {trial.Jars.Count} jars, {string.Join(", ", trial.Factors.Select(f => f.Name))}",
            TrialJarRead read => KeptTrialWords.Read(read),
            TrialEnded => "trial ended",
            SpotTested spot => $"spot test: {string.Join("; ", spot.Drops.Select(SpotWords.Of))}",
            Withdrawn => "undone",
            _ => "note",
        };
        string note = document.Note is { } words ? $"; {words}" : "";
        return said + note + (document.Photos.Count > 0 ? $" [{document.Photos.Count} photo]" : "");
    }

    private static string Of(BatchStep step)
    {
        string name = Acts.Find(step.Act) is { } act ? ActWords.Of(act) : SubjectLine.Word(step.Step);
        IEnumerable<string> said = step.Values.Select(Of).Concat(step.Uses.Select(u => $"{u.Amount.Typed} of {u.Lot}"));
        if (step.ReadyAt is { } ready) said = said.Append($"until {ready.ToString("d MMM HH:mm", CultureInfo.InvariantCulture)}");
        if (Acts.Find(step.Act) is { Value: ActValue.Ph } && step.Values.Count == 0) said = said.Append("not read");
        string what = string.Join(", ", said);
        return what.Length > 0 ? $"{name}: {what}" : name;
    }

    private static string Of(Measured value) => value.Name.StartsWith(PlantWords.PartName, StringComparison.Ordinal) ? $"glass of {value.Typed}"
        : value.Name.StartsWith(PlantWords.AbsorbanceName, StringComparison.Ordinal) ? $"absorbs {value.Typed}"
        : value.Name.StartsWith(BenchForm.Sieve, StringComparison.Ordinal)
        ? $"{(value.Name[BenchForm.Sieve.Length..] is var opening && opening == "pan" ? "pan" : opening + " µm")} {value.Typed}"
        : value.Instrument == "sum" ? $"{value.Typed} in all" : $"{(value.Name == "ph" ? "pH " : value.Name == "amount" ? "" : value.Name + " ")}{value.Typed}{(value.Instrument is { } i ? $" ({i})" : "")}";
}
