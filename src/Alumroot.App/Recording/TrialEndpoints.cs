using Alumroot.App.Bench;
using Alumroot.App.Trials;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Store;

namespace Alumroot.App.Recording;

/// <summary>What the forms of the trials do.</summary>
internal static class TrialEndpoints
{
    private const int LongestNote = 4000;

    public static void Map(RouteGroupBuilder trials)
    {
        trials.MapPost("/", Keep);
        trials.MapPost("/{key}/read", Read);
        trials.MapPost("/{key}/note", (string key, IFormCollection form, StudioStore studio, TimeProvider clock) =>
            About(key, studio, trial => NoteTaking.Keep(new Posted(form, clock), studio, trial, Answers.Page(trial))));
        trials.MapPost("/{key}/end", (string key, IFormCollection form, StudioStore studio, TimeProvider clock) => About(key, studio, trial =>
        {
            var posted = new Posted(form, clock);
            string? taught = posted.Text("note");
            return Answers.To(Answers.Page(trial), posted.Keep(studio, trial, new TrialEnded { Note = taught?[..Math.Min(taught.Length, LongestNote)] }));
        }));
        trials.MapPost("/{key}/take-back", (string key, IFormCollection form, StudioStore studio, TimeProvider clock) => About(key, studio, trial =>
        {
            var posted = new Posted(form, clock);
            return EntryId.TryRead(posted.Text("corrects")) is { } corrects ? Answers.To(Answers.Page(trial), posted.Keep(studio, trial, new Withdrawn(), corrects)) : Answers.See(Answers.Page(trial));
        }));
    }

    /// <summary>The row is laid out anew from its address, so that what is kept is what the program laid out and not what a form says.</summary>
    private static IResult Keep(IFormCollection form, StudioStore studio, TimeProvider clock)
    {
        var posted = new Posted(form, clock);
        if (DesignRequest.FromAddress(posted.Text(TrialForm.DesignAddress) ?? "") is not { Design: not null } request) return Answers.See(DesignRequest.Path);
        if (TrialForm.Read(request, posted.Text, posted: true, posted.At).Document is not { } begun)
            return Answers.Again(request.Address, [.. ((string[])[TrialForm.Title, TrialForm.Results, TrialForm.Again]).Select(f => (f, (string?)(posted.Text(f) ?? "")))]);
        return studio.AppendNew(SubjectClass.Trial, posted.Id, begun, posted.At) switch
        {
            AppendResult.Kept kept => Answers.To(Answers.Page(kept.Entry.Subject), kept),
            AppendResult.AlreadyThere there => Answers.To(Answers.Page(there.Entry.Subject), there),
            var other => Answers.To("/trials", other),
        };
    }

    private static IResult Read(string key, IFormCollection form, StudioStore studio, TimeProvider clock) => About(key, studio, subject =>
    {
        var posted = new Posted(form, clock);
        TrialState trial = studio.Trial(subject)!;
        string page = Answers.Page(subject);
        var read = JarForm.Read(trial, posted.Text, posted.At);
        if (read.Document is { } document) return Answers.To(page, posted.Keep(studio, subject, document));
        if (read.Troubles.Count == 0) return Answers.Again(page, [(JarForm.Jar, read.Typed(JarForm.Jar)), (Answers.NotKept, "empty")]);
        string[] fields = [JarForm.Jar, JarForm.ColourField, JarForm.Within, JarForm.Again, JarForm.Note, .. Enumerable.Range(0, trial.ResultNames.Count).Select(JarForm.ResultField)];
        return Answers.Again(page, fields.Select(f => (f, (string?)(read.Typed(f) ?? (f == JarForm.Again ? "" : null)))));
    });

    private static IResult About(string key, StudioStore studio, Func<SubjectKey, IResult> then) =>
        SubjectKey.TryRead(key) is { Class: SubjectClass.Trial } trial && studio.EntriesOf(trial).Count > 0 ? then(trial) : TypedResults.NotFound();
}
