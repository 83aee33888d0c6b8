using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;
using Alumroot.App.Hosting;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Store;
using Microsoft.AspNetCore.Builder;

namespace Alumroot.Benchmarks;

/// <summary>A teaching studio: many people record and read at once over loopback, each with a batch and a browser of their own, and every entry that was told as kept is looked for afterwards.</summary>
internal static partial class LoadRun
{
    private const string Plan = "/lakes/plan?salt=potash-alum&salt-amount=50%20g&alkali=soda-ash&dyestuff=madder&dry=100%20g&water=3%20L&temp=60%20C&to-ph=6.5&vessel=20%20L";

    /// <summary>Runs it and writes the figures.</summary>
    /// <param name="folder">An empty folder for the studio.</param>
    /// <param name="people">How many at once.</param>
    /// <param name="seconds">For how long.</param>
    public static async Task RunAsync(string folder, int people, int seconds)
    {
        using StudioStore store = StudioStore.Open(folder, StudioAccess.Write, TimeProvider.System);
        await using WebApplication app = AppHost.Build(new AppOptions { Clock = TimeProvider.System }, store);
        await app.StartAsync();
        var address = new Uri(app.Urls.First());
        var times = new ConcurrentBag<(string What, double Milliseconds)>();
        var kept = new ConcurrentBag<string>();
        var wrongs = new ConcurrentBag<string>();
        var clock = Stopwatch.StartNew();
        await Task.WhenAll(Enumerable.Range(0, people).Select(n => Task.Run(() => PersonAsync(n, address, store, () => clock.Elapsed.TotalSeconds < seconds, times, kept, wrongs))));
        foreach (IGrouping<string, (string What, double Milliseconds)> kind in times.GroupBy(t => t.What).OrderBy(g => g.Key, StringComparer.Ordinal).Append(times.GroupBy(_ => "all").Single()))
        {
            double[] sorted = [.. kind.Select(t => t.Milliseconds).Order()];
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{kind.Key,-10} {sorted.Length,7} times, median {sorted[sorted.Length / 2]:0.0} ms, p95 {sorted[(int)(0.95 * sorted.Length)]:0.0} ms, longest {sorted[^1]:0} ms"));
        }
        HashSet<string> there = [.. store.List(kind: SubjectClass.Batch).SelectMany(l => store.EntriesOf(l.Subject)).Select(e => DocumentText.Read(e) is DocumentReading.Known { Document.Note: { } note } ? note : "")];
        Console.WriteLine($"{kept.Count} entries told as kept, {kept.Count(k => !there.Contains(k))} of them lost, {wrongs.Count} answers that were wrong, {store.Check().Count} findings of the check");
        foreach (string wrong in wrongs.Take(5)) Console.WriteLine(wrong);
        await app.StopAsync();
    }

    private static async Task PersonAsync(int number, Uri address, StudioStore store, Func<bool> goOn, ConcurrentBag<(string, double)> times, ConcurrentBag<string> kept, ConcurrentBag<string> wrongs)
    {
        var chance = new Random(number);
        using var handler = new HttpClientHandler { CookieContainer = new CookieContainer() };
        using var client = new HttpClient(handler) { BaseAddress = address };
        AppendResult begun = store.AppendNew(SubjectClass.Batch, EntryId.New(DateTimeOffset.Now), new BatchPlanned($"Madder of person {number}", Plan, 1, "0.1.0") { Dyestuff = "madder", Salt = "potash alum" }, DateTimeOffset.Now);
        SubjectKey key = ((AppendResult.Kept)begun).Entry.Subject;
        for (int turn = 0; goOn(); turn++)
        {
            await GetAsync("bench", $"/lakes/{key}/bench");
            await GetAsync("lists", turn % 2 == 0 ? "/lakes" : "/");
            string page = await GetAsync("lake", $"/lakes/{key}");
            string form = page[Math.Max(0, page.IndexOf($"action=\"/lakes/{key}/note\"", StringComparison.Ordinal))..];
            form = form[..Math.Max(0, form.IndexOf("</form>", StringComparison.Ordinal))];
            string note = $"person {number} turn {turn}";
            using var content = new MultipartFormDataContent();
            foreach (Match hidden in Hidden().Matches(form)) content.Add(new StringContent(WebUtility.HtmlDecode(hidden.Groups[2].Value)), WebUtility.HtmlDecode(hidden.Groups[1].Value));
            content.Add(new StringContent(note), "note");
            long from = Stopwatch.GetTimestamp();
            using HttpResponseMessage answer = await client.PostAsync(new Uri($"/lakes/{key}/note", UriKind.Relative), content);
            string said = await answer.Content.ReadAsStringAsync();
            times.Add(("record", Stopwatch.GetElapsedTime(from).TotalMilliseconds));
            if (answer.IsSuccessStatusCode && said.Contains("Kept ", StringComparison.Ordinal)) kept.Add(note);
            else wrongs.Add($"{(int)answer.StatusCode} after a note of {key}");
            await Task.Delay(chance.Next(4000, 10_000));
        }

        async Task<string> GetAsync(string what, string path)
        {
            long from = Stopwatch.GetTimestamp();
            using HttpResponseMessage answer = await client.GetAsync(new Uri(path, UriKind.Relative));
            string said = await answer.Content.ReadAsStringAsync();
            times.Add((what, Stopwatch.GetElapsedTime(from).TotalMilliseconds));
            if (!answer.IsSuccessStatusCode) wrongs.Add($"{(int)answer.StatusCode} for {path}");
            return said;
        }
    }

    [GeneratedRegex("<input type=\"hidden\" name=\"([^\"]+)\" value=\"([^\"]*)\"")]
    private static partial Regex Hidden();
}
