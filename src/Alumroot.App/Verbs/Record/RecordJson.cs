using System.Text.Json;
using Alumroot.App.Output;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Verbs.Record;

/// <summary>A batch or lot with its entries as JSON: what was kept, word for word, and each value once more under a name with its unit.</summary>
internal static class RecordJson
{
    public static string Of(SubjectKey key, SubjectLine line, LotState? lot, IReadOnlyList<StandingEntry> entries, bool utc)
    {
        double? left = lot?.LeftSi;
        string? unit = lot?.Bought?.Amount.SiUnit;
        return Json.Text(new
        {
            Subject = key.ToString(),
            line.Title,
            line.Stage,
            LeftG = unit == Measured.Kilogram ? 1000 * left : null,
            LeftMl = unit == Measured.CubicMetre ? 1e6 * left : null,
            LeftSi = left,
            SiUnit = unit,
            Entries = entries.Select(e => new
            {
                Entry = e.Entry.Id.Text,
                At = utc ? e.Entry.At.ToUniversalTime() : e.Entry.At,
                Document = e.Entry.Kind.Name,
                DocumentVersion = e.Entry.Kind.Version,
                e.Standing,
                By = e.By?.Text,
                Corrects = e.Entry.Corrects?.Text,
                Values = Values(e.Entry).ToDictionary(v => v.Name, v => v.Value),
                Payload = JsonSerializer.Deserialize<JsonElement>(e.Entry.Payload.Text),
            }),
        });
    }

    private static IEnumerable<(string Name, double Value)> Values(Entry entry) => (DocumentText.Read(entry) as DocumentReading.Known)?.Document switch
    {
        BatchStep step => step.Values.Select(Named).Concat(step.Uses.Select(u => Named(u.Amount with { Name = $"of_{u.Lot.Replace('-', '_')}" }))).DistinctBy(v => v.Name),
        LotBought bought => [Named(bought.Amount)],
        LotCounted counted => [Named(counted.Left with { Name = "left" })],
        BowlWeighed bowl => [Named(bowl.Empty with { Name = "empty" })],
        _ => [],
    };

    private static (string Name, double Value) Named(Measured value)
    {
        string name = value.Name.Replace('-', '_');
        return value.SiUnit switch
        {
            Measured.Kilogram => ($"{name}_g", Rounded(1000 * value.SiValue)),
            Measured.CubicMetre => ($"{name}_ml", Rounded(1e6 * value.SiValue)),
            "K" => ($"{name}_c", Rounded(value.SiValue - 273.15)),
            "S/m" => ($"{name}_us_cm", Rounded(1e4 * value.SiValue)),
            _ => (name, value.SiValue),
        };
    }

    // A factor of ten must not turn 3 into 2.9999999999999996.
    private static double Rounded(double value) => Math.Round(value, 9);
}
