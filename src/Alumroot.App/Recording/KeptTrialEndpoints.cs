using System.Globalization;
using Alumroot.App.Colours;
using Alumroot.App.Photographs;
using Alumroot.App.Trials;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Store;

namespace Alumroot.App.Recording;

/// <summary>What the forms of kept trials do.</summary>
internal static class KeptTrialEndpoints
{
    private const int LongestNote = 4000;

    public static void Map(RouteGroupBuilder trials)
    {
        trials.MapPost("/", Keep);
        trials.MapPost("/{key}/read", Read);
        trials.MapPost("/photo", Photo);
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

    /// <summary>Keeps the colours of a row of jars from one photograph; they are read anew, so that what is kept is what the photograph tells and not what a form says.</summary>
    private static IResult Photo(IFormCollection form, StudioStore studio, TimeProvider clock)
    {
        var posted = new Posted(form, clock);
        string hash = posted.Text("hash") ?? "", key = posted.Text(JarPhotoForm.Trial) ?? "";
        if (!studio.Photos.Has(hash)) return Answers.See("/trials");
        return About(key, studio, subject =>
        {
            TrialState trial = studio.Trial(subject)!;
            PhotoMarks marks = PhotoMarks.Read(posted.Text("corners"), posted.Text("areas"));
            string? target = posted.Text("target"), card = posted.Text("card");
            string photo = new PhotoAddress(hash, target, card, marks).ToString();
            TargetKept? known = studio.State().Targets.FirstOrDefault(t => t.Title == target);
            if (PhotoView.Of(studio, hash, known, int.TryParse(card, CultureInfo.InvariantCulture, out int n) ? n : null, marks) is not { } view) return Answers.See(photo);
            (IReadOnlyList<TrialJarRead> read, string? trouble) = JarPhotoForm.Read(trial, view, known?.Title, hash, posted.Text);
            if (trouble is not null) return Answers.Again(photo, [(JarPhotoForm.Wrong, trouble)]);
            AppendResult? first = null;
            foreach (TrialJarRead jar in read)
            {
                // Each jar has a number of its own that follows from that of the form, so that the same form sent twice is the same readings.
                AppendResult result = studio.Append(jar.ToEntry(EntryId.TryRead($"{posted.Id}-{jar.Jar}") ?? EntryId.New(posted.At), subject, posted.At));
                first ??= result;
            }
            return Answers.To(Answers.Page(subject), first!);
        });
    }

    private static IResult About(string key, StudioStore studio, Func<SubjectKey, IResult> then) =>
        SubjectKey.TryRead(key) is { Class: SubjectClass.Trial } trial && studio.EntriesOf(trial).Count > 0 ? then(trial) : TypedResults.NotFound();
}
