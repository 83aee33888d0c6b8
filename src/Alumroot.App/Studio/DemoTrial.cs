using System.Globalization;
using System.Text.Json;
using Alumroot.App.Trials;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Studio;

/// <summary>The demo studio's trials: laid out by the program, with invented readings. Amounts stand in the file, so that nothing is planned while the studio opens.</summary>
internal static class DemoTrial
{
    /// <summary>Adds the entries of all of them.</summary>
    public static void Add(JsonElement trials, DateTimeOffset now, List<Entry> entries)
    {
        int number = 0;
        foreach (JsonElement trial in trials.EnumerateArray()) Add(trial, SubjectKey.Trial(++number), now - TimeSpan.FromDays(trial.GetProperty("days").GetDouble()), entries);
    }

    private static void Add(JsonElement trial, SubjectKey key, DateTimeOffset begun, List<Entry> entries)
    {
        JsonElement design = trial.GetProperty("design");
        DesignRequest row = DesignRequest.From(field => Text(design, field));
        string title = Text(trial, "title")!;
        TrialForm form = TrialForm.Read(row, field => field == TrialForm.Title ? title : field == TrialForm.Results ? Text(trial, "results") : null, posted: true, begun);
        double salt = trial.GetProperty("salt_g").GetDouble();
        double[][] alkali = [.. trial.GetProperty("alkali_g").EnumerateArray().Select(a => a.EnumerateArray().Select(v => v.GetDouble()).ToArray())];
        // The plan stands in the address only: laying the row out with it would reckon every jar.
        TrialBegun laid = form.Document! with { DesignAddress = $"{row.Address}&{DesignRequest.PlanField}={Uri.EscapeDataString(Text(trial, "plan")!)}", ReadyAt = begun.AddDays(trial.GetProperty("wait_days").GetDouble()) };
        laid = laid with { Jars = [.. laid.Jars.Select((j, i) => j with { Amounts = [Of("salt", salt, salt, salt), Of("alkali", alkali[i][0], alkali[i][1], alkali[i][2])] })] };
        entries.Add(laid.ToEntry(DemoRecord.Id($"{key}-000"), key, begun));
        TrialState state = TrialState.Of(key, [entries[^1]]);
        int number = 0;
        foreach (JsonElement read in trial.GetProperty("reads").EnumerateArray())
        {
            DateTimeOffset at = begun.AddDays(read.GetProperty("days").GetDouble()).AddMinutes(number);
            JarForm jar = JarForm.Read(state, field => field == JarForm.Jar ? read.GetProperty("jar").GetInt32().ToString(CultureInfo.InvariantCulture) : field == JarForm.ColourField ? Text(read, "lab") : field == JarForm.Within ? "1.5" : field == JarForm.ResultField(0) ? Text(read, "yield") : null, at);
            entries.Add(jar.Document!.ToEntry(DemoRecord.Id($"{key}-{++number:000}"), key, at));
        }
    }

    private static TrialAmount Of(string what, double value, double low, double high) => new(what, Math.Round(value / 1000, 9), Math.Round(low / 1000, 9), Math.Round(high / 1000, 9), Measured.Kilogram);

    private static string? Text(JsonElement element, string name) => element.TryGetProperty(name, out JsonElement text) ? text.GetString() : null;
}
