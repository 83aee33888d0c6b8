using System.Globalization;
using System.Text;
using Alumroot.App.Colours;
using Alumroot.App.Permanence;
using Alumroot.App.Photographs;
using Alumroot.App.Words;
using Alumroot.Colour.Photograph;
using Alumroot.Permanence.OtherTests;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Photos;
using Alumroot.Studio.Store;

namespace Alumroot.App.Recording;

/// <summary>What the forms of the permanence pages do.</summary>
internal static class PermanenceEndpoints
{
    private const string Path = "/permanence";

    public static void Map(RouteGroupBuilder permanence)
    {
        permanence.MapPost("/", Begin);
        permanence.MapPost("/tests/{test}", Test);
        permanence.MapPost("/{key}/level", (string key, IFormCollection form, StudioStore studio, TimeProvider clock) => About(key, studio, (exposure, page) =>
        {
            var posted = new Posted(form, clock);
            (LightRead? level, string? trouble) = LightForm.ReadLevel(posted.Text(LightForm.Level));
            return level is null ? Answers.Again(page, [(LightForm.Level, posted.Text(LightForm.Level) ?? ""), ("trouble", trouble)]) : Answers.To(page, posted.Keep(studio, exposure.Key, level));
        }));
        permanence.MapPost("/{key}/log", (string key, IFormCollection form, StudioStore studio, TimeProvider clock) => About(key, studio, (exposure, page) => Log(form, studio, clock, exposure, page)));
        permanence.MapPost("/{key}/read", (string key, IFormCollection form, StudioStore studio, TimeProvider clock) => About(key, studio, (exposure, page) =>
        {
            var posted = new Posted(form, clock);
            var read = StripForm.Read(exposure, posted.Text, posted.At);
            return read.Document is { } document ? Answers.To(page, posted.Keep(studio, exposure.Key, document)) : Answers.Again($"{page}/read", Typed(form));
        }));
        permanence.MapPost("/{key}/photo", (string key, IFormCollection form, StudioStore studio, TimeProvider clock) => About(key, studio, (_, page) => Photo(form, studio, clock, page)));
        permanence.MapPost("/{key}/read-photo", (string key, IFormCollection form, StudioStore studio, TimeProvider clock) => About(key, studio, (exposure, page) => ReadPhoto(form, studio, clock, exposure, page)));
        permanence.MapPost("/{key}/end", (string key, IFormCollection form, StudioStore studio, TimeProvider clock) => About(key, studio, (exposure, page) =>
            Answers.To(page, new Posted(form, clock).Keep(studio, exposure.Key, new ExposureEnded()))));
        permanence.MapPost("/{key}/note", (string key, IFormCollection form, StudioStore studio, TimeProvider clock) => About(key, studio, (exposure, page) =>
            NoteTaking.Keep(new Posted(form, clock), studio, exposure.Key, page)));
        permanence.MapPost("/{key}/take-back", (string key, IFormCollection form, StudioStore studio, TimeProvider clock) => About(key, studio, (exposure, page) =>
        {
            var posted = new Posted(form, clock);
            return EntryId.TryRead(posted.Text("corrects")) is { } corrects ? Answers.To(page, posted.Keep(studio, exposure.Key, new Withdrawn(), corrects)) : Answers.See(page);
        }));
    }

    private static IResult Begin(IFormCollection form, StudioStore studio, TimeProvider clock)
    {
        var posted = new Posted(form, clock);
        if (ExposureForm.Read(posted.Text, studio, posted.At).Document is not { } exposure) return Answers.Again($"{Path}/new", Typed(form));
        return studio.AppendNew(SubjectClass.Exposure, posted.Id, exposure, posted.At) switch
        {
            AppendResult.Kept kept => Answers.To(Answers.Page(kept.Entry.Subject), kept),
            AppendResult.AlreadyThere there => Answers.To(Answers.Page(there.Entry.Subject), there),
            var other => Answers.To(Path, other),
        };
    }

    private static IResult Test(string test, IFormCollection form, StudioStore studio, TimeProvider clock)
    {
        if (OtherTest.Find(test) is not { } which) return TypedResults.NotFound();
        var posted = new Posted(form, clock);
        var read = TestForm.Read(which, posted.Text, studio);
        return read is { Document: { } done, Subject: { } subject } ? Answers.To($"{Path}/of/{subject}", posted.Keep(studio, subject, done)) : Answers.Again($"{Path}/tests/{test}", Typed(form));
    }

    private static IResult Log(IFormCollection form, StudioStore studio, TimeProvider clock, ExposureState exposure, string page)
    {
        var posted = new Posted(form, clock);
        IFormFile? file = posted.Files.FirstOrDefault(f => f.Length > 0);
        if (file is null) return Answers.Again(page, [("trouble", "The logger's file: none was sent. Choose the file that the logger wrote.")]);
        if (file.Length > LightForm.MostBytes) return Answers.Again(page, [("trouble", $"{file.FileName} holds {file.Length >> 20} MiB; at most {LightForm.MostBytes >> 20} MiB are read. Set the logger to a longer step, or split the file.")]);
        using var reader = new StreamReader(file.OpenReadStream(), Encoding.UTF8);
        bool? dayFirst = posted.Text(LightForm.DayFirst) switch { "day" => true, "month" => false, _ => null };
        (LightLogged? log, string? trouble) = LightForm.ReadLog(reader.ReadToEnd(), System.IO.Path.GetFileName(file.FileName), dayFirst, exposure.At);
        return log is null ? Answers.Again(page, [("trouble", trouble)]) : Answers.To(page, posted.Keep(studio, exposure.Key, log));
    }

    private static IResult Photo(IFormCollection form, StudioStore studio, TimeProvider clock, string page)
    {
        var posted = new Posted(form, clock);
        IFormFile? file = posted.Files.FirstOrDefault(f => f.Length > 0);
        if (file is null) return Answers.Again(page, [("trouble", "The photograph: none was sent. Choose one, or type the colours.")]);
        using Stream content = file.OpenReadStream();
        return studio.Photos.Keep(content) switch
        {
            PhotoOutcome.Kept kept => Answers.Again($"{page}/photo/{kept.Hash}", [("target", posted.Text("target"))]),
            PhotoOutcome.Refused refused => Answers.Again(page, [(Answers.Refused, refused.Why.ToString())]),
            _ => Answers.See(page),
        };
    }

    /// <summary>Keeps the colours of the areas that were named; they are read anew, so that what is kept is what the photograph tells.</summary>
    private static IResult ReadPhoto(IFormCollection form, StudioStore studio, TimeProvider clock, ExposureState exposure, string page)
    {
        var posted = new Posted(form, clock);
        string hash = posted.Text("hash") ?? "";
        if (!studio.Photos.Has(hash)) return Answers.See(page);
        string back = $"{page}/photo/{hash}";
        TargetKept? known = studio.State().Targets.FirstOrDefault(t => t.Title == posted.Text("target"));
        PhotoMarks marks = PhotoMarks.Read(posted.Text("corners"), posted.Text("areas"));
        int? card = int.TryParse(posted.Text("card"), CultureInfo.InvariantCulture, out int n) ? n : null;
        (DateTimeOffset? next, string? trouble) = StripForm.NextLookOf(posted.Text(StripForm.Next), posted.At);
        if (trouble is not null) return Answers.Again(back, [.. Typed(form), ("trouble", trouble)]);
        if (PhotoView.Of(studio, hash, known, card, marks) is not { } view) return Answers.Again(back, Typed(form));
        var strips = new List<StripRead>();
        foreach (StripPlace place in StripPlace.Of(exposure))
        {
            PhotoColour? covered = Area(view, posted.Text(place.CoveredField)), exposed = Area(view, posted.Text(place.ExposedField));
            if (exposed is null) continue;
            strips.Add(new StripRead(place.Sample.Name, place.Strip, StripForm.Text(exposed.Colour))
            {
                Covered = covered is null ? null : StripForm.Text(covered.Colour),
                WithinDeltaE2000 = exposed.IntervalDeltaE2000 is { } w ? Math.Round(Math.Max(w, covered?.IntervalDeltaE2000 ?? w), 2) : null,
                Areas = [Number(posted.Text(place.CoveredField)), Number(posted.Text(place.ExposedField))],
            });
        }
        if (strips.Count == 0) return Answers.Again(back, [.. Typed(form), ("trouble", "No strip was named. Choose the area of one half in the light at least.")]);
        var read = new ExposureRead(strips)
        {
            How = $"photograph{(view.Target is null ? "" : $", target {known!.Title}")}; correction: {PhotoWords.Of(view.Answer.Kind, view.Answer.ToneStraightened)}",
            ReadyAt = next,
            Photos = [hash],
            Note = posted.Text(StripForm.Note),
        };
        return Answers.To(page, posted.Keep(studio, exposure.Key, read));
    }

    private static int Number(string? typed) => int.TryParse(typed, CultureInfo.InvariantCulture, out int n) ? n : 0;

    private static PhotoColour? Area(PhotoView view, string? number) => number is null ? null : view.Answer.Colours.FirstOrDefault(c => c.Id == number);

    private static IEnumerable<(string, string?)> Typed(IFormCollection form) => form.Where(f => !f.Key.StartsWith('_') && f.Key is not ("hash" or Bench.BenchForm.Entry)).Select(f => (f.Key, (string?)f.Value.ToString()));

    private static IResult About(string key, StudioStore studio, Func<ExposureState, string, IResult> then) =>
        SubjectKey.TryRead(key) is { Class: SubjectClass.Exposure } subject && studio.Exposure(subject) is { } exposure ? then(exposure, Answers.Page(subject)) : TypedResults.NotFound();
}
