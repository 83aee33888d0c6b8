using System.Text.Json;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Studio;

/// <summary>The paints of the demo studio.</summary>
internal static class DemoPaint
{
    /// <summary>The entries of one paint.</summary>
    /// <param name="paint">As it stands in the file.</param>
    /// <param name="key">Its number.</param>
    /// <param name="lake">The lake it was made from.</param>
    /// <param name="lots">Numbers of the lots, by their titles.</param>
    /// <param name="now">The time to count back from.</param>
    /// <param name="entries">Where they go.</param>
    internal static void Add(JsonElement paint, SubjectKey key, SubjectKey lake, Dictionary<string, string> lots, DateTimeOffset now, List<Entry> entries)
    {
        DateTimeOffset made = now - TimeSpan.FromDays(paint.GetProperty("days").GetDouble());
        int number = 0;
        Measured[] parts = [.. paint.GetProperty("parts").EnumerateObject().Select(p => DemoRecord.Value(p.Value.GetString()!) with { Name = p.Name, Instrument = "scale" })];
        entries.Add(new PaintMade(DemoRecord.Text(paint, "title")!, DemoRecord.Text(paint, "medium")!)
        {
            Lakes = [new LakeUse(lake.ToString(), parts[0] with { Name = "amount" })],
            Parts = parts,
            Filled = [new PaintFilled(DemoRecord.Text(paint, "filled")!, paint.GetProperty("count").GetInt32()) { Where = DemoRecord.Text(paint, "where") }],
            Preservative = DemoRecord.Text(paint, "preservative"),
            PreservativeAmount = DemoRecord.Text(paint, "preservative_amount") is { } weighed ? DemoRecord.Value(weighed) : null,
            CameOff = DemoRecord.Text(paint, "came_off") is { } off ? DemoRecord.Value(off) : null,
            Uses = [.. parts.Where(p => lots.ContainsKey(p.Name)).Select(p => new LotUse(lots[p.Name], p))],
            RecipeAddress = $"/paints/recipe?lake={lake}&{DemoRecord.Text(paint, "recipe")}",
        }.ToEntry(Next(), key, made));
        if (paint.TryGetProperty("colours", out JsonElement colours))
            foreach (JsonElement colour in colours.EnumerateArray()) entries.Add(DemoRecord.Colour(colour).ToEntry(Next(), key, made.AddMinutes(colour.GetProperty("minutes").GetDouble())));
        if (paint.TryGetProperty("used_up", out JsonElement days)) entries.Add(new PaintUsedUp().ToEntry(Next(), key, now - TimeSpan.FromDays(days.GetDouble())));

        EntryId Next() => DemoRecord.Id($"{key}-{++number:000}");
    }
}
