using System.Text.Json;
using Alumroot.App.Bench;
using Alumroot.App.Permanence;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Studio;

/// <summary>The invented exposures of the demo studio and the other tests of its lakes, from <c>data/demo/light.json</c>, counted back from now.</summary>
internal static class DemoLight
{
    private const string Resource = "demo/light.json";

    /// <summary>The entries, by exposure.</summary>
    /// <param name="now">The time to count back from.</param>
    /// <param name="lakes">The demo's lakes by their names in the file.</param>
    public static IEnumerable<Entry> At(DateTimeOffset now, IReadOnlyDictionary<string, SubjectKey> lakes)
    {
        using Stream stream = typeof(DemoLight).Assembly.GetManifestResourceStream(Resource) ?? throw new InvalidOperationException($"{Resource} was not built into the program");
        using JsonDocument document = JsonDocument.Parse(stream);
        var entries = new List<Entry>();
        int count = 0, tests = 0;
        foreach (JsonElement exposure in document.RootElement.GetProperty("exposures").EnumerateArray()) Exposure(exposure, SubjectKey.Exposure(++count), now, lakes, entries);
        foreach (JsonElement test in document.RootElement.GetProperty("tests").EnumerateArray())
            entries.Add(new TestDone(test.GetProperty("test").GetString()!, test.GetProperty("result").GetDouble(), test.GetProperty("unit").GetString()!)
                .ToEntry(DemoRecord.Id($"test-{++tests:000}"), lakes[test.GetProperty("of").GetString()!], now.AddDays(-test.GetProperty("days").GetDouble())));
        return entries;
    }

    private static void Exposure(JsonElement exposure, SubjectKey key, DateTimeOffset now, IReadOnlyDictionary<string, SubjectKey> lakes, List<Entry> entries)
    {
        DateTimeOffset begun = now.AddDays(-exposure.GetProperty("days").GetDouble());
        int number = 0;
        entries.Add(new ExposureBegun(exposure.GetProperty("title").GetString()!, new ExposureLight(LightWay.Readings) { HoursADay = exposure.GetProperty("hours").GetDouble() },
            [.. exposure.GetProperty("samples").EnumerateArray().Select(s => Sample(s, lakes))])
        { Where = exposure.GetProperty("where").GetString() }.ToEntry(Next(), key, begun));
        foreach (JsonElement level in exposure.GetProperty("levels").EnumerateArray())
            entries.Add(LightForm.ReadLevel(level.GetProperty("lux").GetString()).Document!.ToEntry(Next(), key, begun.AddDays(level.GetProperty("day").GetDouble())));
        JsonElement[] readings = [.. exposure.GetProperty("readings").EnumerateArray()];
        foreach (JsonElement reading in readings)
        {
            DateTimeOffset at = begun.AddDays(reading.GetProperty("day").GetDouble());
            StripRead[] strips =
            [
                .. reading.GetProperty("strips").EnumerateArray().Select(s => new StripRead(s.GetProperty("sample").GetString()!, s.GetProperty("strip").GetInt32(), Lab(s.GetProperty("exposed"))) { Covered = Lab(s.GetProperty("covered")), WithinDeltaE2000 = 1 }),
            ];
            TimeSpan wait = WaitText.Read(exposure.GetProperty("next").GetString()!)!.Value;
            entries.Add(new ExposureRead(strips) { How = "instrument, typed", ReadyAt = at + wait }.ToEntry(Next(), key, at));
        }

        EntryId Next() => DemoRecord.Id($"{key}-{++number:000}");
    }

    private static ExposedSample Sample(JsonElement sample, IReadOnlyDictionary<string, SubjectKey> lakes)
    {
        int strips = sample.TryGetProperty("strips", out JsonElement s) ? s.GetInt32() : 1;
        string name = sample.GetProperty("name").GetString()!;
        return new ExposedSample(name, strips) { Of = sample.TryGetProperty("of", out JsonElement of) ? lakes[of.GetString()!].ToString() : null };
    }

    private static LabText Lab(JsonElement lab) => new(lab[0].GetDouble(), lab[1].GetDouble(), lab[2].GetDouble());
}
