using System.Diagnostics;
using System.Globalization;

namespace Alumroot.Studio.Tests;

/// <summary>A program that writes is killed at random moments. Everything it acknowledged is there, and the database is sound.</summary>
public sealed class KillTests
{
    private const int Together = 4;

    // A line that the kill cut short is no acknowledgement.
    private const int WholeNumber = 36;

    /// <summary>How many kills; the long run says 200 in ALUMROOT_KILL_ROUNDS.</summary>
    private static int Rounds => int.TryParse(Environment.GetEnvironmentVariable("ALUMROOT_KILL_ROUNDS"), NumberStyles.None, CultureInfo.InvariantCulture, out int n) ? n : 40;

    [Fact]
    public async Task Whatever_was_acknowledged_survives_a_kill()
    {
        int[] acknowledged = await Task.WhenAll(Enumerable.Range(0, Together).Select(seed => Series(seed, (Rounds + Together - 1) / Together)));
        // The kills met a program at work.
        Assert.True(acknowledged.Sum() > Rounds / 2, $"Only {acknowledged.Sum()} entries were written.");
        TestContext.Current.TestOutputHelper?.WriteLine($"{Rounds} kills, {acknowledged.Sum()} acknowledged entries, none lost");
    }

    private static async Task<int> Series(int seed, int rounds)
    {
        using var studio = new TempStudio();
        var chance = new Random(seed);
        var acknowledged = new List<string>();
        for (int round = 0; round < rounds; round++)
        {
            acknowledged.AddRange(await WriteUntilKilled(studio.Folder, round % 8 == 0 ? 1 : 2, TimeSpan.FromMilliseconds(chance.Next(0, 250))));
            using StudioStore store = StudioStore.Open(studio.Folder, StudioAccess.Write, TimeProvider.System, TimeSpan.FromSeconds(20));
            HashSet<string> there = [.. store.All().Select(e => e.Id.Text)];
            string[] lost = [.. acknowledged.Where(id => !there.Contains(id))];
            Assert.True(lost.Length == 0, $"Round {round}: {string.Join(", ", lost)} were acknowledged and are gone.");
            // At most the one entry that was committed and not yet printed, for each kill.
            Assert.InRange(there.Count - acknowledged.Count, 0, round + 1);
            Assert.DoesNotContain(store.Check(), f => f.Level != Integrity.FindingLevel.Note);
        }
        return acknowledged.Count;
    }

    private static async Task<List<string>> WriteUntilKilled(string folder, int afterLines, TimeSpan life)
    {
        string program = Path.Combine(AppContext.BaseDirectory, "Alumroot.Studio.Writer.dll");
        using Process writer = Process.Start(new ProcessStartInfo("dotnet", ["exec", program, folder]) { RedirectStandardOutput = true, UseShellExecute = false })!;
        var lines = new List<string>();
        int seen = 0;
        Task reading = Task.Run(async () =>
        {
            while (await writer.StandardOutput.ReadLineAsync() is { } line)
            {
                lines.Add(line);
                Interlocked.Increment(ref seen);
            }
        });
        long until = Environment.TickCount64 + 20_000;
        // After one line it is open and about to write; after two it is in the middle of its writing.
        while (Volatile.Read(ref seen) < afterLines && !writer.HasExited && Environment.TickCount64 < until) await Task.Delay(2);
        await Task.Delay(life);
        writer.Kill();
        await writer.WaitForExitAsync();
        await reading;
        return [.. lines.Where(l => l.Length == WholeNumber)];
    }
}
