using System.CommandLine;
using System.Globalization;
using Alumroot.App.Output;
using Alumroot.App.Words;
using Alumroot.Studio;
using Alumroot.Studio.Integrity;

namespace Alumroot.App.Verbs;

/// <summary><c>alumroot backup [DIR]</c>: a verified copy while the studio is in use.</summary>
public static class BackupVerb
{
    /// <summary>The verb with its options.</summary>
    public static Verb Build(Channels channels)
    {
        ArgumentNullException.ThrowIfNull(channels);
        var target = new Argument<string?>("dir") { HelpName = "DIR", Arity = ArgumentArity.ZeroOrOne, Description = "where to; the studio's own folder 'backups' when left out" };
        Option<string?> folder = StudioVerb.FolderOption();
        var verb = new Verb(
            "backup",
            "Copies the record while in use, verifies the copy.",
            "alumroot backup",
            "alumroot backup /media/stick/studio",
            "alumroot backup --studio ~/my-studio");
        verb.Add(target);
        verb.Add(folder);
        verb.SetAction(parsed => StudioVerb.Run(parsed.GetValue(folder), StudioAccess.Read, channels, studio =>
        {
            BackupReport report = studio.Backup(parsed.GetValue(target) is { } named ? Path.GetFullPath(named) : null);
            foreach (StudioFinding finding in report.Findings) channels.Messages.WriteLine(StudioWords.Of(finding));
            if (report.Findings.Count > 0) return channels.End(ExitCode.RecordTrouble, $"The copy '{report.File}' is not whole. Run 'alumroot check' on the studio.");
            channels.Data.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Copied {report.EntryCount} entries and {report.PhotoCount} photographs ({report.PhotosCopied} new) to {report.File}, and verified them."));
            return ExitCode.Done;
        }));
        return verb;
    }
}
