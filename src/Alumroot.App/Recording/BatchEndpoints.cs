using Alumroot.App.Bench;
using Alumroot.App.Requests;
using Alumroot.App.Studio;
using Alumroot.Quantities;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Store;

namespace Alumroot.App.Recording;

/// <summary>What the forms of a batch do. Each is one plain post that makes one entry and leads back to a page.</summary>
internal static class BatchEndpoints
{
    private const int LongestNote = 4000, LongestReason = 400, MostTags = 20, LongestTag = 40;

    public static void Map(RouteGroupBuilder lakes)
    {
        lakes.MapPost("/", Begin);
        lakes.MapPost("/{key}/bench", AtTheBench);
        lakes.MapPost("/{key}/take-back", TakeBack);
        lakes.MapPost("/{key}/correct", Correct);
        lakes.MapPost("/{key}/note", Note);
        lakes.MapPost("/{key}/tags", Tags);
        lakes.MapPost("/{key}/give-up", GiveUp);
        lakes.MapPost("/{key}/used-up", (string key, IFormCollection form, StudioStore studio, TimeProvider clock) =>
            About(key, studio, subject => Answers.To(Answers.Page(subject), new Posted(form, clock).Keep(studio, subject, new BatchUsedUp()))));
        lakes.MapPost("/{key}/split", Split);
        lakes.MapPost("/{key}/plan", ChangePlan);
    }

    private static IResult Begin(IFormCollection form, StudioStore studio, PlanShelf plans, TimeProvider clock)
    {
        var posted = new Posted(form, clock);
        string address = posted.Text("plan") ?? PlanRequest.Path;
        PlanAnswer answer = plans.Of(address);
        // The page of the plan says why it cannot begin.
        if (BatchBeginning.WhyNot(answer) is not null) return Answers.See(answer.Request.Address);
        return studio.AppendNew(SubjectClass.Batch, posted.Id, BatchBeginning.Of(answer), posted.At) switch
        {
            AppendResult.Kept kept => Answers.See($"/lakes/{kept.Entry.Subject}/bench"),
            AppendResult.AlreadyThere there => Answers.See($"/lakes/{there.Entry.Subject}/bench"),
            var other => Answers.To("/lakes", other),
        };
    }

    private static IResult AtTheBench(string key, IFormCollection form, StudioStore studio, PlanShelf plans, TimeProvider clock) => About(key, studio, subject =>
    {
        var posted = new Posted(form, clock);
        string page = $"/lakes/{subject}/bench";
        // The same form again: whatever it led to stands already.
        if (studio.Find(posted.Id) is { } there) return Answers.To(page, new AppendResult.AlreadyThere(there));
        BatchState state = studio.Batch(subject)!;
        var lake = LakesInWork.Of(state, plans, studio.State());
        if (BenchForm.Read(posted.Text, lake, studio.State(), posted.At) is not { } read) return Answers.See(page);
        if (read.Document is { } document) return Answers.To(page, posted.Keep(studio, subject, document with { Note = Cut(posted.Text("note"), LongestNote) }));
        return Answers.Again(page, form.Where(f => !f.Key.StartsWith('_') && f.Key != BenchForm.After).Select(f => (f.Key, posted.Text(f.Key))));
    });

    private static IResult TakeBack(string key, IFormCollection form, StudioStore studio, TimeProvider clock) => About(key, studio, subject =>
    {
        var posted = new Posted(form, clock);
        string page = posted.Text("from") == "bench" ? $"/lakes/{subject}/bench" : Answers.Page(subject);
        return EntryId.TryRead(posted.Text("corrects")) is { } corrects ? Answers.To(page, posted.Keep(studio, subject, new Withdrawn(), corrects)) : Answers.See(page);
    });

    private static IResult Correct(string key, IFormCollection form, StudioStore studio, TimeProvider clock) => About(key, studio, subject =>
    {
        var posted = new Posted(form, clock);
        if (EntryId.TryRead(posted.Text("corrects")) is not { } corrects || studio.Find(corrects) is not { } entry) return Answers.See(Answers.Page(subject));
        Correction correction = Correction.Of(entry, posted.Text);
        return correction.Document is { } document
            ? Answers.To(Answers.Page(subject), posted.Keep(studio, subject, document, corrects))
            : Answers.Again($"/lakes/{subject}/correct", form.Where(f => !f.Key.StartsWith('_')).Select(f => (f.Key, posted.Text(f.Key))));
    });

    private static IResult Note(string key, IFormCollection form, StudioStore studio, TimeProvider clock) => About(key, studio, subject =>
        NoteTaking.Keep(new Posted(form, clock), studio, subject, form["from"] == "bench" ? $"/lakes/{subject}/bench" : Answers.Page(subject)));

    private static IResult Tags(string key, IFormCollection form, StudioStore studio, TimeProvider clock) => About(key, studio, subject =>
    {
        var posted = new Posted(form, clock);
        string[] tags = [.. (posted.Text("tags") ?? "").Split([',', ';', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(t => Cut(t, LongestTag)!).Distinct(StringComparer.OrdinalIgnoreCase).Take(MostTags)];
        return Answers.To(Answers.Page(subject), posted.Keep(studio, subject, new Tagged(tags)));
    });

    private static IResult GiveUp(string key, IFormCollection form, StudioStore studio, TimeProvider clock) => About(key, studio, subject =>
    {
        var posted = new Posted(form, clock);
        return posted.Text("reason") is { } reason
            ? Answers.To(Answers.Page(subject), posted.Keep(studio, subject, new BatchGivenUp(Cut(reason, LongestReason)!)))
            : Answers.See($"{Answers.Page(subject)}?why=missing#give-up");
    });

    private static IResult Split(string key, IFormCollection form, StudioStore studio, TimeProvider clock) => About(key, studio, subject =>
    {
        var posted = new Posted(form, clock);
        TypedAmount share = TypedAmount.Amount(posted.Text("share") ?? "");
        if (studio.Batch(subject)?.Plan is not { } plan) return Answers.See(Answers.Page(subject));
        if (share.Value is not { SiUnit: Measured.Kilogram, SiValue: > 0 } mass) return Answers.Again($"{Answers.Page(subject)}", [("share", posted.Text("share") ?? "")]);
        BatchPlanned part = plan with { FromBatch = subject.ToString(), Origin = BatchOrigin.Split, WetCake = mass, Note = Cut(posted.Text("note"), LongestNote) };
        return studio.AppendNew(SubjectClass.Batch, posted.Id, part, posted.At) switch
        {
            AppendResult.Kept kept => Answers.See($"/lakes/{kept.Entry.Subject}"),
            AppendResult.AlreadyThere there => Answers.See($"/lakes/{there.Entry.Subject}"),
            var other => Answers.To(Answers.Page(subject), other),
        };
    });

    private static IResult ChangePlan(string key, IFormCollection form, StudioStore studio, PlanShelf plans, TimeProvider clock) => About(key, studio, subject =>
    {
        var posted = new Posted(form, clock);
        string page = $"/lakes/{subject}/bench";
        BatchState state = studio.Batch(subject)!;
        if (posted.Text("plan") is not { } address || state.Plan is not { } before) return Answers.See(page);
        PlanAnswer answer = plans.Of(address);
        if (answer.Plan is null) return Answers.See(page);
        BatchPlanned after = BatchBeginning.Of(answer) with { FromBatch = before.FromBatch, Origin = before.Origin, WetCake = before.WetCake, Lots = before.Lots, Note = Cut(posted.Text("note"), LongestNote) };
        EntryId first = state.Entries.First(e => e.Standing == Standing.Stands && e.Entry.Kind.Name == BatchPlanned.Name).Entry.Id;
        return Answers.To(page, posted.Keep(studio, subject, after, first));
    });

    private static IResult About(string key, StudioStore studio, Func<SubjectKey, IResult> then) =>
        SubjectKey.TryRead(key) is { Class: SubjectClass.Batch } subject && studio.EntriesOf(subject).Count > 0 ? then(subject) : TypedResults.NotFound();

    private static string? Cut(string? text, int longest) => text is null || text.Length <= longest ? text : text[..longest];
}
