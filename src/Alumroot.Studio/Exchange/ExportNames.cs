using Alumroot.Studio.Photos;

namespace Alumroot.Studio.Exchange;

/// <summary>The names that the files of an export may have. Any other name is refused, and none ever becomes a path.</summary>
internal static class ExportNames
{
    public const string Manifest = "manifest.json";
    public const string Entries = "entries.jsonl";

    private static readonly string[] Known = [Manifest, Entries, "tables/batches.csv", "tables/readings.csv", "tables/lots.csv", "tables/paints.csv", "tables/exposures.csv", "tables/trials.csv"];

    public static string Photo(string hash) => $"photos/{hash[..2]}/{hash}";

    public static string? HashOf(string name) => name.Split('/') is ["photos", var two, var hash] && PhotoFolder.IsHash(hash) && hash.StartsWith(two, StringComparison.Ordinal) && two.Length == 2 ? hash : null;

    public static bool IsKnown(string name) => Known.Contains(name, StringComparer.Ordinal) || HashOf(name) is not null;
}
