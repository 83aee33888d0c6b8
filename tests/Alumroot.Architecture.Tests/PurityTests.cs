using System.Reflection;

namespace Alumroot.Architecture.Tests;

/// <summary>Engines are pure: no clock, no chance without a seed, no files, no screen, no machine.</summary>
public class PurityTests
{
    private static readonly string[] ForbiddenTypes =
    [
        "System.Console", "System.Environment", "System.Guid", "System.TimeProvider", "System.Diagnostics.Stopwatch", "System.Diagnostics.Process",
        "System.IO.File", "System.IO.Directory", "System.IO.FileInfo", "System.IO.DirectoryInfo", "System.IO.FileStream", "System.IO.DriveInfo", "System.IO.FileSystemWatcher",
        "System.Threading.Thread", "System.Threading.Tasks.Task",
        // Parallel.For over independent seeded draws is allowed: a test of the plan holds that the result is the same to the last digit.
    ];

    private static readonly string[] ForbiddenSpaces = ["System.Net.", "System.Data.", "Microsoft."];

    private static readonly string[] ForbiddenMembers =
    [
        "System.DateTime.get_Now", "System.DateTime.get_UtcNow", "System.DateTime.get_Today", "System.DateTimeOffset.get_Now", "System.DateTimeOffset.get_UtcNow",
        "System.Random..ctor/0", "System.Random.get_Shared",
        "System.Globalization.CultureInfo.get_CurrentCulture", "System.Globalization.CultureInfo.set_CurrentCulture", "System.Globalization.CultureInfo.get_CurrentUICulture",
    ];

    // The compiler itself names these: the first in every iterator, the second for attributes of nullable analysis and analyzers.
    private static bool IsCompilers(string member) =>
        member == "System.Environment.get_CurrentManagedThreadId" || member.StartsWith("Microsoft.CodeAnalysis.", StringComparison.Ordinal);

    private static IEnumerable<string> Impure(Assembly assembly) =>
        MetadataScan.MembersUsed(assembly).Where(m => !IsCompilers(m)).Where(m =>
            ForbiddenMembers.Contains(m)
            || ForbiddenSpaces.Any(s => m.StartsWith(s, StringComparison.Ordinal))
            || ForbiddenTypes.Any(t => m.StartsWith(t + ".", StringComparison.Ordinal) && m.LastIndexOf('.') <= t.Length + 1));

    [Fact]
    public void Engines_name_nothing_of_the_world_outside()
    {
        string[] found = [.. Rooms.Engines.SelectMany(e => Impure(e).Select(m => $"{e.GetName().Name} uses {m}"))];
        Assert.True(found.Length == 0, string.Join("\n", found));
    }

    [Fact]
    public void The_scan_sees_what_it_should()
    {
        // This assembly reads files, which no engine may: the scan must say so.
        Assert.Contains("System.IO.File.Exists", Impure(typeof(PurityTests).Assembly));
        Assert.Contains("System.Random..ctor/0", Impure(typeof(PurityTests).Assembly));
        Assert.InRange(Unseeded(), 0, 9);
    }

    private static int Unseeded() => new Random().Next(10);
}
