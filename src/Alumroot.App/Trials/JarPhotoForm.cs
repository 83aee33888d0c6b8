using System.Globalization;
using Alumroot.App.Colours;
using Alumroot.App.Words;
using Alumroot.Colour.Photograph;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Trials;

/// <summary>The jars of a trial that the areas of one photograph show.</summary>
internal static class JarPhotoForm
{
    /// <summary>Names of the fields; the field of an area ends with its number.</summary>
    public const string Trial = "trial", Jar = "jar-", Wrong = "jars-wrong";

    /// <summary>The readings, one for each area that names a jar; a sentence that says what is wrong instead.</summary>
    /// <param name="trial">The trial.</param>
    /// <param name="view">The photograph with its areas.</param>
    /// <param name="target">The target's title, when one was found.</param>
    /// <param name="hash">The photograph.</param>
    /// <param name="typed">Text by field name; null for nothing.</param>
    public static (IReadOnlyList<TrialJarRead> Read, string? Trouble) Read(TrialState trial, PhotoView view, string? target, string hash, Func<string, string?> typed)
    {
        var read = new List<TrialJarRead>();
        foreach (PhotoColour area in view.Answer.Colours)
        {
            if (typed(Jar + area.Id) is not { } text) continue;
            if (!int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int n) || trial.Jars.All(j => j.Jar.Order != n)) return ([], $"Area {area.Id}: '{text}' is no jar of {trial.Key}. Write its number, or leave it empty.");
            if (read.Exists(r => r.Jar == n)) return ([], $"Jar {n} stands at two areas. Leave one of them empty.");
            read.Add(new TrialJarRead(n)
            {
                Colour = new LabText(Math.Round(area.Colour.L, 2), Math.Round(area.Colour.A, 2), Math.Round(area.Colour.B, 2)),
                WithinDeltaE2000 = area.IntervalDeltaE2000 is { } w ? Math.Round(w, 2) : null,
                How = $"photograph, area {area.Id}{(view.Target is null ? "" : $", target {target}")}; correction: {PhotoWords.Of(view.Answer.Kind, view.Answer.ToneStraightened)}{(area.IsClipped ? "; a channel is clipped" : "")}",
                Photos = [hash],
            });
        }
        return read.Count == 0 ? ([], "No area names a jar. Write the number of the jar beside each area that shows one.") : (read, null);
    }
}
