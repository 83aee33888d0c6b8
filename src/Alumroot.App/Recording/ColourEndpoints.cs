using System.Globalization;
using Alumroot.App.Colours;
using Alumroot.App.Photographs;
using Alumroot.App.Verbs.Colour;
using Alumroot.App.Words;
using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Interchange;
using Alumroot.Colour.Photograph;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Photos;

namespace Alumroot.App.Recording;

/// <summary>What the forms of the colour pages do.</summary>
internal static class ColourEndpoints
{
    private const int LongestTitle = 60, MostPatches = 1500;

    public static void Map(RouteGroupBuilder colours)
    {
        colours.MapPost("/photo", Photo);
        colours.MapPost("/target", Target);
        colours.MapPost("/keep", Keep);
        colours.MapPost("/typed", Typed);
    }

    private static IResult Photo(IFormCollection form, StudioStore studio, TimeProvider clock)
    {
        var posted = new Posted(form, clock);
        IFormFile? file = posted.Files.FirstOrDefault(f => f.Length > 0);
        if (file is null) return Answers.Again("/colours", [("photo", "none")]);
        using Stream content = file.OpenReadStream();
        return studio.Photos.Keep(content) switch
        {
            PhotoOutcome.Kept kept => Answers.Again($"/colours/photo/{kept.Hash}", [("target", posted.Text("target"))]),
            PhotoOutcome.Refused refused => Answers.Again("/colours", [("photo", refused.Why.ToString())]),
            _ => Answers.See("/colours"),
        };
    }

    private static IResult Target(IFormCollection form, StudioStore studio, TimeProvider clock)
    {
        var posted = new Posted(form, clock);
        IFormFile? file = posted.Files.FirstOrDefault(f => f.Length > 0);
        if (file is null || file.Length > ColourFile.MostBytes) return Again("none");
        using var bytes = new MemoryStream();
        using (Stream content = file.OpenReadStream()) content.CopyTo(bytes);
        if (ColourFile.Read(bytes.ToArray()) is not Import.Done { Document: var document }) return Again("unread");
        LabText[] patches = [.. document.Samples.Select(s => ColourCard.Of(s, file.FileName, ViewingCondition.Graphic)).OfType<ColourCard>().Select(c => new LabText(c.L, c.A, c.B))];
        if (patches.Length is < PhotoMeasurement.LeastPatches or > MostPatches) return Again("few");
        string title = posted.Text("title") ?? Path.GetFileNameWithoutExtension(file.FileName);
        return Answers.To("/colours", posted.Keep(studio, SubjectKey.Studio, new TargetKept(title[..Math.Min(title.Length, LongestTitle)], patches)));

        static IResult Again(string why) => Answers.Again("/colours", [("reference", why)]);
    }

    /// <summary>Keeps the colour of one area; it is read anew, so that what is kept is what the photograph tells and not what a form says.</summary>
    private static IResult Keep(IFormCollection form, StudioStore studio, TimeProvider clock)
    {
        var posted = new Posted(form, clock);
        string hash = posted.Text("hash") ?? "";
        if (!studio.Photos.Has(hash)) return Answers.See("/colours");
        string page = $"/colours/photo/{hash}";
        PhotoMarks marks = PhotoMarks.Read(posted.Text("corners"), posted.Text("areas"));
        string? target = posted.Text("target"), card = posted.Text("card");
        TargetKept? known = studio.State().Targets.FirstOrDefault(t => t.Title == target);
        if (Subject(posted.Text("lake"), studio) is not { } subject || State(subject, posted.Text("state")) is not { } state) return Answers.Again(page, Chosen("which"));
        var lie = SwatchLie.Read(posted.Text);
        if (lie.Troubles.Count > 0) return Answers.Again(page, [.. Chosen("ground"), .. lie.Typed]);
        PhotoView? view = PhotoView.Of(studio, hash, known, int.TryParse(card, CultureInfo.InvariantCulture, out int n) ? n : null, marks);
        if (view?.Answer.Colours.FirstOrDefault(c => c.Id == posted.Text("thing")) is not { } colour) return Answers.Again(page, Chosen("which"));
        var read = lie.On(new SwatchRead(state, Text(colour.Colour)) with
        {
            WithinDeltaE2000 = colour.IntervalDeltaE2000 is { } w ? Math.Round(w, 2) : null,
            How = $"photograph, area {colour.Id}{(view.Target is null ? "" : $", target {known!.Title}{(marks.Target is null ? "" : ", corners shown by hand")}")}; correction: {PhotoWords.Of(view.Answer.Kind, view.Answer.ToneStraightened)}{(colour.IsClipped ? "; a channel is clipped" : "")}",
            Photos = [hash],
            Note = posted.Text("note"),
        });
        return Answers.To(Answers.Page(subject), posted.Keep(studio, subject, read));

        (string, string?)[] Chosen(string why) => [("target", target), ("card", card), ("corners", marks.CornersText), ("areas", marks.AreasText), ("keep", why)];
    }

    /// <summary>Keeps a colour that an instrument told.</summary>
    private static IResult Typed(IFormCollection form, StudioStore studio, TimeProvider clock)
    {
        var posted = new Posted(form, clock);
        if (Subject(posted.Text("lake"), studio) is not { } subject) return Answers.See("/colours");
        string typed = posted.Text("lab") ?? "";
        var lie = SwatchLie.Read(posted.Text);
        if (LabReading.Of(typed) is not { } lab || State(subject, posted.Text("state")) is not { } state || lie.Troubles.Count > 0) return Answers.Again(Answers.Page(subject), [("lab", typed), ("state", posted.Text("state")), .. lie.Typed]);
        return Answers.To(Answers.Page(subject), posted.Keep(studio, subject, lie.On(new SwatchRead(state, Text(lab)) { WithinDeltaE2000 = LabReading.InstrumentUnits, How = "instrument, typed", Note = posted.Text("note") })));
    }

    private static LabText Text(Lab lab) => new(Math.Round(lab.L, 2), Math.Round(lab.A, 2), Math.Round(lab.B, 2));

    /// <summary>The lake or paint that a colour belongs to; null when it is not there.</summary>
    private static SubjectKey? Subject(string? typed, StudioStore studio) => SubjectKey.TryRead(typed) switch
    {
        { Class: SubjectClass.Batch } lake when studio.Batch(lake) is not null => lake,
        { Class: SubjectClass.Paint } paint when studio.Paint(paint) is { Made: not null } => paint,
        _ => null,
    };

    // A paint is always read as it was painted out.
    private static SwatchState? State(SubjectKey subject, string? word) => subject.Class == SubjectClass.Paint ? SwatchState.Painted : Enum.TryParse(word, ignoreCase: true, out SwatchState state) && Enum.IsDefined(state) ? state : null;
}
