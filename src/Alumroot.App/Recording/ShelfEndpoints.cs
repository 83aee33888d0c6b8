using Alumroot.App.Studio;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Store;

namespace Alumroot.App.Recording;

/// <summary>What the forms of the shelf do.</summary>
internal static class ShelfEndpoints
{
    public static void Map(RouteGroupBuilder shelf)
    {
        shelf.MapPost("/", Add);
        shelf.MapPost("/{key}/count", Count);
        shelf.MapPost("/{key}/note", (string key, IFormCollection form, StudioStore studio, TimeProvider clock) =>
            About(key, studio, lot => NoteTaking.Keep(new Posted(form, clock), studio, lot, Answers.Page(lot))));
        shelf.MapPost("/{key}/take-back", (string key, IFormCollection form, StudioStore studio, TimeProvider clock) => About(key, studio, lot =>
        {
            var posted = new Posted(form, clock);
            return EntryId.TryRead(posted.Text("corrects")) is { } corrects ? Answers.To(Answers.Page(lot), posted.Keep(studio, lot, new Withdrawn(), corrects)) : Answers.See(Answers.Page(lot));
        }));
    }

    private static IResult Add(IFormCollection form, StudioStore studio, TimeProvider clock)
    {
        var posted = new Posted(form, clock);
        ShelfForm read = ShelfForm.Read(posted.Text);
        if (read.Document is not { } lot) return Answers.Again("/shelf/new", form.Where(f => !f.Key.StartsWith('_')).Select(f => (f.Key, posted.Text(f.Key))));
        return studio.AppendNew(SubjectClass.Lot, posted.Id, lot, posted.At) switch
        {
            AppendResult.Kept kept => Answers.See($"/shelf/{kept.Entry.Subject}"),
            AppendResult.AlreadyThere there => Answers.See($"/shelf/{there.Entry.Subject}"),
            var other => Answers.To("/shelf", other),
        };
    }

    private static IResult Count(string key, IFormCollection form, StudioStore studio, TimeProvider clock) => About(key, studio, lot =>
    {
        var posted = new Posted(form, clock);
        string? unit = studio.Lot(lot)?.Bought?.Amount.SiUnit;
        return TypedAmount.Amount(posted.Text("left") ?? "").Value is { } left && left.SiUnit == unit
            ? Answers.To(Answers.Page(lot), posted.Keep(studio, lot, new LotCounted(left)))
            : Answers.Again(Answers.Page(lot), [("left", posted.Text("left") ?? "")]);
    });

    private static IResult About(string key, StudioStore studio, Func<SubjectKey, IResult> then) =>
        SubjectKey.TryRead(key) is { Class: SubjectClass.Lot } lot && studio.EntriesOf(lot).Count > 0 ? then(lot) : TypedResults.NotFound();
}
