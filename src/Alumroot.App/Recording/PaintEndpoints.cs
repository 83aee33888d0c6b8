using Alumroot.App.Paints;
using Alumroot.App.Requests;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Store;

namespace Alumroot.App.Recording;

/// <summary>What the forms of the paints do.</summary>
internal static class PaintEndpoints
{
    public static void Map(RouteGroupBuilder paints)
    {
        paints.MapPost("/", Make);
        paints.MapPost("/{key}/note", (string key, IFormCollection form, StudioStore studio, TimeProvider clock) =>
            About(key, studio, paint => NoteTaking.Keep(new Posted(form, clock), studio, paint, Answers.Page(paint))));
        paints.MapPost("/{key}/used-up", (string key, IFormCollection form, StudioStore studio, TimeProvider clock) =>
            About(key, studio, paint => Answers.To(Answers.Page(paint), new Posted(form, clock).Keep(studio, paint, new PaintUsedUp()))));
        paints.MapPost("/{key}/take-back", (string key, IFormCollection form, StudioStore studio, TimeProvider clock) => About(key, studio, paint =>
        {
            var posted = new Posted(form, clock);
            return EntryId.TryRead(posted.Text("corrects")) is { } corrects ? Answers.To(Answers.Page(paint), posted.Keep(studio, paint, new Withdrawn(), corrects)) : Answers.See(Answers.Page(paint));
        }));
    }

    private static IResult Make(IFormCollection form, StudioStore studio, TimeProvider clock)
    {
        var posted = new Posted(form, clock);
        if (PaintAddress.Read(posted.Text(PaintForm.Recipe) ?? "", studio) is not { Answer: not null } request) return Answers.See(PaintRequest.Path);
        var read = PaintForm.Read(request, posted.Text, PaintShelf.Of(studio), posted: true);
        if (read.Document is not { } paint) return Answers.Again(request.Address, form.Where(f => !f.Key.StartsWith('_') && f.Key is not (PaintForm.Recipe or BenchFormEntry)).Select(f => (f.Key, (string?)f.Value.ToString())));
        return studio.AppendNew(SubjectClass.Paint, posted.Id, paint, posted.At) switch
        {
            AppendResult.Kept kept => Answers.To(Answers.Page(kept.Entry.Subject), kept),
            AppendResult.AlreadyThere there => Answers.To(Answers.Page(there.Entry.Subject), there),
            var other => Answers.To("/paints", other),
        };
    }

    private const string BenchFormEntry = Bench.BenchForm.Entry;

    private static IResult About(string key, StudioStore studio, Func<SubjectKey, IResult> then) =>
        SubjectKey.TryRead(key) is { Class: SubjectClass.Paint } paint && studio.EntriesOf(paint).Count > 0 ? then(paint) : TypedResults.NotFound();
}
