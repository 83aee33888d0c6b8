using Alumroot.App.Colours;
using Alumroot.App.Photographs;
using Alumroot.App.Trials.Spot;
using Alumroot.Studio;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Recording;

/// <summary>What the forms of the trials do.</summary>
internal static class TrialEndpoints
{
    private const string Page = "/trials/spot";

    public static void Map(RouteGroupBuilder trials) => trials.MapPost("/spot", Spot);

    /// <summary>Keeps a row of drops with its lot. From a photograph it is read anew, so that what is kept is what the photograph tells.</summary>
    private static IResult Spot(IFormCollection form, StudioStore studio, TimeProvider clock)
    {
        var posted = new Posted(form, clock);
        (PhotoView? view, PhotoAddress here) = SpotPhoto.Of(studio, posted.Text);
        SpotForm read = SpotForm.Read(posted.Text, view, here.Hash);
        if (SubjectKey.TryRead(posted.Text(SpotForm.Lot)) is not { Class: SubjectClass.Lot } lot || studio.Lot(lot) is null || read.Document is not { } document)
            return Answers.Again(Page, [(SpotForm.Lot, posted.Text(SpotForm.Lot)), ("photo", view is null ? null : here.Hash), .. here.Fields().Select(f => (f.Name, (string?)f.Value)), ("why", read.AreasMissing ? "areas" : "nothing")]);
        return Answers.To(Answers.Page(lot), posted.Keep(studio, lot, document with { Note = posted.Text("note") }));
    }
}
