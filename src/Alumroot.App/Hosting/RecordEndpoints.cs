using System.Globalization;
using Alumroot.App.Permanence;
using Alumroot.App.Recording;
using Alumroot.Studio;
using Alumroot.Studio.Exchange;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Hosting;

/// <summary>Every address that writes to the record. The framework checks the antiforgery token of each form before it comes here.</summary>
internal static class RecordEndpoints
{
    public static void MapRecord(this WebApplication app)
    {
        RouteGroupBuilder lakes = app.MapGroup("/lakes");
        BatchEndpoints.Map(lakes);
        lakes.MapGet("/{key}/ready.ics", Calendar);
        ShelfEndpoints.Map(app.MapGroup("/shelf"));
        ColourEndpoints.Map(app.MapGroup("/colours"));
        TrialEndpoints.Map(app.MapGroup("/trials"));
        PaintEndpoints.Map(app.MapGroup("/paints"));
        RouteGroupBuilder permanence = app.MapGroup("/permanence");
        PermanenceEndpoints.Map(permanence);
        permanence.MapGet("/{key}/ready.ics", Calendar);
        permanence.MapGet("/{key}/series.csv", Series);
        KeptTrialEndpoints.Map(app.MapGroup("/trials"));
        StudioEndpoints.Map(app.MapGroup("/studio"));
    }

    /// <summary>The changes of an exposure against dose, as the verb <c>fade</c> reads them.</summary>
    private static IResult Series(string key, StudioStore studio, TimeProvider clock)
    {
        if (SubjectKey.TryRead(key) is not { Class: SubjectClass.Exposure } subject || studio.Exposure(subject) is not { } exposure) return TypedResults.NotFound();
        IEnumerable<string> lines = ExposureFound.Of(exposure, clock.GetLocalNow()).Series
            .SelectMany(s => s.Strips.SelectMany(r => r.Points.Select(p => Csv.Line(s.Name, r.Replicate, Math.Round(p.DoseMegaluxHours, 5), Math.Round(p.DeltaE, 3))))).Prepend(Csv.Line("series", "replicate", "dose_mlxh", "de"));
        return TypedResults.Text(string.Concat(lines), "text/csv; charset=utf-8");
    }

    /// <summary>The end of a wait as a calendar file (RFC 5545).</summary>
    private static IResult Calendar(string key, StudioStore studio, TimeProvider clock)
    {
        (DateTimeOffset? at, IReadOnlyList<StandingEntry>? entries) = SubjectKey.TryRead(key) switch
        {
            { Class: SubjectClass.Batch } lake when studio.Batch(lake) is { } batch => (batch.ReadyAt, batch.Entries),
            { Class: SubjectClass.Exposure } strips when studio.Exposure(strips) is { } exposure => (exposure.ReadyAt, exposure.Entries),
            _ => (null, null),
        };
        if (at is not { } ready || entries is null) return TypedResults.NotFound();
        string text = string.Join("\r\n",
            "BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Alumroot//Bench//EN", "BEGIN:VEVENT",
            string.Create(CultureInfo.InvariantCulture, $"UID:{entries[^1].Entry.Id}@alumroot"),
            $"DTSTAMP:{Utc(clock.GetUtcNow())}", $"DTSTART:{Utc(ready)}", $"DTEND:{Utc(ready.AddMinutes(15))}",
            $"SUMMARY:Alumroot {key}: ready", "BEGIN:VALARM", "ACTION:DISPLAY", $"DESCRIPTION:{key} is ready", "TRIGGER:PT0S", "END:VALARM", "END:VEVENT", "END:VCALENDAR", "");
        return TypedResults.Text(text, "text/calendar; charset=utf-8");
    }

    private static string Utc(DateTimeOffset at) => at.ToUniversalTime().ToString("yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture);
}
