using System.Globalization;
using Alumroot.App.Words;
using Alumroot.Permanence.Dose;
using Alumroot.Quantities.Reading;
using Alumroot.Studio.Documents;

namespace Alumroot.App.Permanence;

/// <summary>What was told of the light on an exposure that goes on.</summary>
internal static class LightForm
{
    /// <summary>Names of the fields.</summary>
    internal const string Level = "level", File = "log", DayFirst = "day-first";

    internal const long MostBytes = 16 << 20;

    private const int MostSteps = 200;
    private static readonly FieldRule<double> LuxRule = new(0, 1, 200_000, 500_000) { ZeroAllowed = true };

    /// <summary>A level as typed, or why it is none.</summary>
    internal static (LightRead? Document, string? Trouble) ReadLevel(string? typed)
    {
        if (typed is null) return (null, "Level: nothing is typed. Write what the meter shows at the strips, such as 2400 lx.");
        (double? lux, string? trouble) = NumberField.Read(typed, "Level", LuxRule, " lux", " lx", "lx");
        return lux is { } value ? (new LightRead(new Measured("level", typed, value, "lx", "meter")), null) : (null, trouble);
    }

    /// <summary>A logger's file, or why it is none.</summary>
    /// <param name="text">The text of the file.</param>
    /// <param name="name">Its name.</param>
    /// <param name="dayFirst">Whether dates begin with the day; null to let the file tell.</param>
    /// <param name="begun">When the exposure began: its zone is the file's, and a file that counts hours starts then.</param>
    internal static (LightLogged? Document, string? Trouble) ReadLog(string text, string name, bool? dayFirst, DateTimeOffset begun)
    {
        LoggerReadings log = LoggerFile.Read(text, dayFirst);
        if (!log.IsUsable) return (null, $"{name}: {(log.Faults.Count > 0 ? LoggerWords.Of(log.Faults[0]) : "it holds no readings.")}");
        LightDose dose = LuxIntegral.OfLog(log.Readings);
        double first = log.Readings[0].Hours, length = log.Readings[^1].Hours - first;
        var steps = new List<DoseStep>();
        double sum = 0, whole = dose.MegaluxHours.Value, plain = Sum(log.Readings, log.Readings.Count - 1);
        int stride = Math.Max(1, log.Readings.Count / MostSteps);
        for (int i = 1; i < log.Readings.Count; i++)
        {
            sum += Area(log.Readings, i);
            // The gaps that were filled in are spread like the rest.
            if (i % stride == 0 || i == log.Readings.Count - 1) steps.Add(new DoseStep(Round(log.Readings[i].Hours - first), Round(plain > 0 ? whole * sum / plain : whole * (log.Readings[i].Hours - first) / length)));
        }
        DateTimeOffset from = log.StartsAt is { } clock ? new DateTimeOffset(DateTime.SpecifyKind(clock, DateTimeKind.Unspecified), begun.Offset) : begun.AddHours(first);
        return (new LightLogged(from, new DoseSpan(Round(whole), Round(dose.MegaluxHours.Low), Round(dose.MegaluxHours.High)), steps)
        {
            File = name[..Math.Min(name.Length, 100)],
            Readings = log.Readings.Count,
            Note = log.Faults.Count > 0 ? string.Create(CultureInfo.InvariantCulture, $"{log.Faults.Count} lines could not be read and are left out; the first: {LoggerWords.Of(log.Faults[0])}") : null,
        }, null);
    }

    private static double Sum(IReadOnlyList<LuxReading> readings, int upto) => Enumerable.Range(1, upto).Sum(i => Area(readings, i));

    private static double Area(IReadOnlyList<LuxReading> r, int i) => 0.5 * (r[i].Lux + r[i - 1].Lux) * (r[i].Hours - r[i - 1].Hours);

    private static double Round(double x) => Math.Round(x, 6);
}
