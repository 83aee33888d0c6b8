using System.CommandLine;
using Alumroot.App.Output;
using Alumroot.App.Studio;
using Alumroot.App.Words;
using Alumroot.Studio;

namespace Alumroot.App.Verbs;

/// <summary>What all verbs of the record have in common: the folder, and what is said when it does not open.</summary>
internal static class StudioVerb
{
    /// <summary>The option that names the folder.</summary>
    public static Option<string?> FolderOption() => new("--studio") { HelpName = "DIR", Description = "the folder of your studio; your usual one when left out" };

    /// <summary>The option for JSON.</summary>
    public static Option<bool> JsonOption() => new("--json") { Description = "one JSON document, units in the names" };

    /// <summary>The option for a table.</summary>
    public static Option<bool> TableOption() => new("--csv") { Description = "a table" };

    /// <summary>The option for times without a zone of their own.</summary>
    public static Option<bool> UtcOption() => new("--utc") { Description = "times in UTC instead of the zone they were kept in" };

    /// <summary>Opens the studio, does the work and lets go; trouble with the folder is said and ends with 3.</summary>
    public static int Run(string? folder, StudioAccess access, Channels channels, Func<StudioStore, int> work)
    {
        string place = StudioPlace.Of(folder);
        try
        {
            using StudioStore studio = StudioStore.Open(place, access, TimeProvider.System);
            return work(studio);
        }
        catch (StudioException e)
        {
            int code = e.Failure.Kind == TroubleKind.Missing ? ExitCode.CannotBeMet : ExitCode.RecordTrouble;
            return channels.End(code, StudioWords.Of(e.Failure, place));
        }
    }
}
