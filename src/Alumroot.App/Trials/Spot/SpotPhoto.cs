using System.Globalization;
using Alumroot.App.Colours;
using Alumroot.App.Photographs;
using Alumroot.Studio;

namespace Alumroot.App.Trials.Spot;

/// <summary>The photograph of a row of drops, read anew for page and form alike.</summary>
internal static class SpotPhoto
{
    /// <summary>The photograph that the fields name, and where it is measured; null when there is none.</summary>
    /// <param name="store">Where it is kept.</param>
    /// <param name="typed">Text by field name.</param>
    internal static (PhotoView? View, PhotoAddress Here) Of(StudioStore store, Func<string, string?> typed)
    {
        string hash = typed("photo") ?? "";
        PhotoMarks marks = PhotoMarks.Read(typed("corners"), typed("areas"));
        var here = new PhotoAddress(hash, typed("target"), typed("card"), marks);
        if (!store.Photos.Has(hash)) return (null, here);
        int? card = int.TryParse(here.Card, NumberStyles.None, CultureInfo.InvariantCulture, out int n) ? n : null;
        return (PhotoView.Of(store, hash, store.State().Targets.FirstOrDefault(t => t.Title == here.Target), card, marks), here);
    }
}
