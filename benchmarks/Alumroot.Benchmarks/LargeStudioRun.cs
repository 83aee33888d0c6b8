using System.Diagnostics;
using System.Globalization;
using Alumroot.App.Hosting;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Microsoft.AspNetCore.Builder;

namespace Alumroot.Benchmarks;

/// <summary>Times what lists, search, a batch and writing take in a large studio, one after the other in one process, as a page asks for them.</summary>
internal static class LargeStudioRun
{
    private const int Page = 50, Warm = 20, Runs = 200;

    /// <summary>Measures, and makes the studio first when the folder has none.</summary>
    /// <param name="folder">Where it is or shall be; what is measured writes some entries to it.</param>
    /// <param name="batches">How many batches to make.</param>
    public static void Run(string folder, int batches)
    {
        var watch = Stopwatch.StartNew();
        using StudioStore studio = StudioStore.Open(folder, StudioAccess.Write, TimeProvider.System);
        if (studio.Count() == 0)
        {
            LargeStudio.Fill(studio, batches);
            Say($"made in {watch.Elapsed.TotalSeconds:0} s");
        }
        else Say($"opened in {watch.ElapsedMilliseconds} ms");
        Say($"{studio.Count()} entries, {new FileInfo(Path.Combine(folder, StudioStore.DatabaseName)).Length >> 20} MiB");

        var chance = new Random(1);
        Time("latest 50, all", () => studio.List(most: Page).Count);
        Time("latest 50 batches", () => studio.List(null, Page, SubjectClass.Batch).Count);
        foreach (string stage in new[] { "dry-cake", "given-up", "washing" }) Time($"latest 50, {stage}", () => studio.List(null, Page, SubjectClass.Batch, [stage]).Count);
        Time("latest 50, five stages", () => studio.List(null, Page, SubjectClass.Batch, ["extracting", "salted", "thrown-down", "washing", "drying"]).Count);
        foreach (string words in new[] { LargeStudio.RareWord, LargeStudio.CommonWord, "alkali", "weld " + LargeStudio.CommonWord, "weld " + LargeStudio.RareWord, "clou", "mad", "a", "weld given", "26-042", "3.1 g" })
            Time($"search '{words}'", () => studio.List(words, Page).Count);
        Time($"search '{LargeStudio.CommonWord}' given up", () => studio.List(LargeStudio.CommonWord, Page, SubjectClass.Batch, ["given-up"]).Count);
        Time("one batch as it stands", () => studio.Batch(SubjectKey.Batch(2017 + chance.Next(10), chance.Next(1, 10_001)))?.Entries.Count ?? 0);
        Time("latest 50 entries", () => studio.Latest(Page).Count);
        Time("count of entries", () => (int)studio.Count());
        Time("what is due", () => studio.Due(Page).Count);
        Pages(studio, chance);
        Time("an entry more", () => studio.Append(new Noted { Note = "cloudy again" }.ToEntry(EntryId.New(TimeProvider.System.GetUtcNow()), SubjectKey.Batch(2017 + chance.Next(10), chance.Next(1, 10_001)), TimeProvider.System.GetLocalNow())) is null ? 0 : 1);
        Time("a new batch with the next number", () => studio.AppendNew(SubjectClass.Batch, EntryId.New(TimeProvider.System.GetUtcNow()), new BatchPlanned("Weld", "/lakes/plan?dyestuff=weld", 1, "0.1.0"), TimeProvider.System.GetLocalNow()) is null ? 0 : 1);
    }

    private static void Pages(StudioStore studio, Random chance)
    {
        using WebApplication app = AppHost.Build(new AppOptions(), studio);
        app.StartAsync().GetAwaiter().GetResult();
        using var client = new HttpClient { BaseAddress = new Uri(app.Urls.First()) };
        foreach (string path in new[] { "/", "/lakes", "/lakes?stage=washing", "/lakes?q=" + LargeStudio.CommonWord, "/lakes?q=weld+" + LargeStudio.RareWord, "/find?q=" + LargeStudio.CommonWord, "/kept", "/shelf", "/studio" })
            Time($"page {path}", () => Length(path));
        Time("page of one batch", () => Length(FormattableString.Invariant($"/lakes/{SubjectKey.Batch(2017 + chance.Next(10), chance.Next(1, 10_001))}")));

        int Length(string path) => client.GetByteArrayAsync(new Uri(path, UriKind.Relative)).GetAwaiter().GetResult().Length;
    }

    private static void Time(string what, Func<int> work)
    {
        for (int i = 0; i < Warm; i++) work();
        double[] took = new double[Runs];
        int found = 0;
        for (int i = 0; i < Runs; i++)
        {
            var watch = Stopwatch.StartNew();
            found = work();
            took[i] = watch.Elapsed.TotalMilliseconds;
        }
        Array.Sort(took);
        Say($"{what,-36} p50 {took[Runs / 2],7:0.00}  p95 {took[Runs * 95 / 100],7:0.00}  worst {took[^1],7:0.00} ms  ({found})");
    }

    private static void Say(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
