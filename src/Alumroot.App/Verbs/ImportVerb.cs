using System.CommandLine;
using System.Globalization;
using Alumroot.App.Output;
using Alumroot.App.Words;
using Alumroot.Studio;
using Alumroot.Studio.Exchange;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Verbs;

/// <summary><c>alumroot import FILE.zip</c>: merges an exported studio.</summary>
public static class ImportVerb
{
    /// <summary>The verb with its options.</summary>
    public static Verb Build(Channels channels)
    {
        ArgumentNullException.ThrowIfNull(channels);
        var file = new Argument<string>("file") { HelpName = "FILE.zip", Description = "an export of this or another studio" };
        Option<string?> folder = StudioVerb.FolderOption();
        var verb = new Verb(
            "import",
            "Merges an exported studio into yours.",
            "alumroot import studio.zip",
            "alumroot import march.zip --studio ~/my-studio",
            "alumroot import /media/stick/studio.zip");
        verb.Add(file);
        verb.Add(folder);
        verb.SetAction(parsed =>
        {
            string path = parsed.GetRequiredValue(file);
            return StudioVerb.Run(parsed.GetValue(folder), StudioAccess.Write, channels, studio => studio.Import(path) switch
            {
                ImportOutcome.Refused refused => channels.End(ExitCode.InputWrong, StudioWords.Of(refused, path)),
                ImportOutcome.Merged merged => Merged(merged, channels),
                _ => ExitCode.InputWrong,
            });
        });
        return verb;
    }

    private static int Merged(ImportOutcome.Merged merged, Channels channels)
    {
        channels.Data.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Added {merged.AddedCount} entries and {merged.PhotosAdded} photographs; {merged.AlreadyThereCount} entries were there."));
        foreach (EntryId id in merged.Conflicts) channels.Messages.WriteLine($"Under the number {id} another entry stands here. Yours stays; the imported one is kept aside.");
        foreach (string photo in merged.PhotosMissing) channels.Messages.WriteLine($"The photograph {photo} is neither in the file nor here. Its entry was added without it.");
        return merged.Conflicts.Count > 0 ? ExitCode.CannotBeMet : ExitCode.Done;
    }
}
