using System.CommandLine;
using System.Globalization;
using Alumroot.App.Output;
using Alumroot.Studio;
using Alumroot.Studio.Exchange;

namespace Alumroot.App.Verbs;

/// <summary><c>alumroot export FILE.zip</c>: the whole studio in one file of open formats.</summary>
public static class ExportVerb
{
    /// <summary>The verb with its options.</summary>
    public static Verb Build(Channels channels)
    {
        ArgumentNullException.ThrowIfNull(channels);
        var file = new Argument<string>("file") { HelpName = "FILE.zip", Description = "the file to make; there must be none of that name" };
        Option<string?> folder = StudioVerb.FolderOption();
        var verb = new Verb(
            "export",
            "Writes the whole studio to one zip of open formats.",
            "alumroot export studio.zip",
            "alumroot export march.zip --studio ~/my-studio",
            "alumroot export /media/stick/studio.zip");
        verb.Add(file);
        verb.Add(folder);
        verb.SetAction(parsed =>
        {
            string path = Path.GetFullPath(parsed.GetRequiredValue(file));
            if (File.Exists(path)) return channels.End(ExitCode.InputWrong, $"'{path}' is there already and is not written over. Give another name.");
            return StudioVerb.Run(parsed.GetValue(folder), StudioAccess.Read, channels, studio =>
            {
                ExportReport report = studio.Export(path, CommandLine.Version);
                foreach (string missing in report.PhotosMissing) channels.Messages.WriteLine($"The photograph {missing} is missing in the studio and so in the export. Put it back from a copy.");
                channels.Data.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Exported {report.EntryCount} entries and {report.PhotoCount} photographs to {report.File}."));
                return ExitCode.Done;
            });
        });
        return verb;
    }
}
