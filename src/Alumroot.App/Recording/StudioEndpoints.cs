using System.Globalization;
using Alumroot.App.Requests;
using Alumroot.App.Studio;
using Alumroot.App.Verbs;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Exchange;
using Alumroot.Studio.Integrity;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Recording;

/// <summary>What the forms of the studio's own page do: its ways, its bowls, copies, export and import.</summary>
internal static class StudioEndpoints
{
    /// <summary>The plan's fields that a studio sets once for all.</summary>
    public static IReadOnlyList<string> Ways { get; } = [PlanFields.Scale, PlanFields.Strips, PlanFields.Vessel, PlanFields.Hardness, PlanFields.WashWater];

    /// <summary>The fields of who makes the paint.</summary>
    public const string Maker = "maker", MakerAddress = "maker-address";

    private const int LongestName = 60, LongestMaker = 80, LongestAddress = 160;

    public static void Map(RouteGroupBuilder group)
    {
        group.MapPost("/ways", Set);
        group.MapPost("/bowls", Bowl);
        group.MapPost("/take-back", TakeBack);
        group.MapPost("/backup", Backup);
        group.MapPost("/import", Import);
        group.MapGet("/export", Export);
    }

    private static IResult Set(IFormCollection form, StudioStore studio, TimeProvider clock)
    {
        var posted = new Posted(form, clock);
        PlanRequest request = PlanRequest.From(name => Ways.Contains(name) ? posted.Text(name) : null);
        PlanAnswer read = PlanMaker.Answer(request);
        if (Ways.Any(w => read.Fields.TryGetValue(w, out FieldReading? field) && field.Trouble is not null))
            return Answers.Again("/studio", Ways.Select(w => (w, request[w])).Concat([(Maker, posted.Text(Maker)), (MakerAddress, posted.Text(MakerAddress))]));
        var ways = new StudioSet { Units = posted.Text(PlanFields.Units), PlanFields = Ways.Where(w => request[w] is not null).ToDictionary(w => w, w => request[w]!), Maker = Short(Maker, LongestMaker), MakerAddress = Short(MakerAddress, LongestAddress) };
        return Answers.To("/studio", posted.Keep(studio, SubjectKey.Studio, ways));

        // On one line, whatever was pasted.
        string? Short(string field, int most) => posted.Text(field) is { } text && string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)) is var line ? line[..Math.Min(line.Length, most)] : null;
    }

    private static IResult Bowl(IFormCollection form, StudioStore studio, TimeProvider clock)
    {
        var posted = new Posted(form, clock);
        string? name = posted.Text("bowl");
        return name is not null && TypedAmount.Amount(posted.Text("empty") ?? "").Value is { SiUnit: Measured.Kilogram, SiValue: > 0 } empty
            ? Answers.To("/studio", posted.Keep(studio, SubjectKey.Studio, new BowlWeighed(name[..Math.Min(name.Length, LongestName)], empty)))
            : Answers.Again("/studio", [("bowl", name ?? ""), ("empty", posted.Text("empty") ?? "")]);
    }

    private static IResult TakeBack(IFormCollection form, StudioStore studio, TimeProvider clock)
    {
        var posted = new Posted(form, clock);
        return EntryId.TryRead(posted.Text("corrects")) is { } corrects ? Answers.To("/studio", posted.Keep(studio, SubjectKey.Studio, new Withdrawn(), corrects)) : Answers.See("/studio");
    }

    private static IResult Backup(IFormCollection form, StudioStore studio)
    {
        BackupReport report = studio.Backup();
        return Answers.Again("/studio", [("backup", Path.GetFileName(report.File))]);
    }

    private static async Task<IResult> Import(IFormCollection form, StudioStore studio)
    {
        if (form.Files.GetFile("zip") is not { Length: > 0 } file) return Answers.Again("/studio", [("import", "none")]);
        string path = Path.Combine(Path.GetTempPath(), $"alumroot-import-{Guid.NewGuid():N}.zip");
        try
        {
            await using (FileStream stream = File.Create(path)) await file.CopyToAsync(stream).ConfigureAwait(false);
            return studio.Import(path) switch
            {
                ImportOutcome.Merged merged => Answers.Again("/studio", [("import", "merged"), ("added", merged.AddedCount.ToString(CultureInfo.InvariantCulture)), ("there", merged.AlreadyThereCount.ToString(CultureInfo.InvariantCulture)), ("aside", merged.Conflicts.Count.ToString(CultureInfo.InvariantCulture))]),
                ImportOutcome.Refused refused => Answers.Again("/studio", [("import", "refused"), ("why", refused.Why.ToString())]),
                _ => Answers.See("/studio"),
            };
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static IResult Export(StudioStore studio, TimeProvider clock)
    {
        string path = Path.Combine(Path.GetTempPath(), $"alumroot-export-{Guid.NewGuid():N}.zip");
        studio.Export(path, CommandLine.Version);
        // The copy goes away with the stream that sends it.
        var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.None, 1 << 16, FileOptions.DeleteOnClose | FileOptions.Asynchronous);
        return TypedResults.Stream(stream, "application/zip", $"alumroot-studio-{clock.GetLocalNow():yyyy-MM-dd}.zip");
    }
}
