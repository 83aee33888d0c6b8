using System.Globalization;
using Alumroot.App.Recording;
using Alumroot.Studio;
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
        StudioEndpoints.Map(app.MapGroup("/studio"));
    }

    /// <summary>The end of a wait as a calendar file (RFC 5545).</summary>
    private static IResult Calendar(string key, StudioStore studio, TimeProvider clock)
    {
        if (SubjectKey.TryRead(key) is not { Class: SubjectClass.Batch } subject || studio.Batch(subject) is not { ReadyAt: { } ready } batch) return TypedResults.NotFound();
        string text = string.Join("\r\n",
            "BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Alumroot//Bench//EN", "BEGIN:VEVENT",
            string.Create(CultureInfo.InvariantCulture, $"UID:{batch.Entries[^1].Entry.Id}@alumroot"),
            $"DTSTAMP:{Utc(clock.GetUtcNow())}", $"DTSTART:{Utc(ready)}", $"DTEND:{Utc(ready.AddMinutes(15))}",
            $"SUMMARY:Alumroot {subject}: ready", "BEGIN:VALARM", "ACTION:DISPLAY", $"DESCRIPTION:{subject} is ready", "TRIGGER:PT0S", "END:VALARM", "END:VEVENT", "END:VCALENDAR", "");
        return TypedResults.Text(text, "text/calendar; charset=utf-8");
    }

    private static string Utc(DateTimeOffset at) => at.ToUniversalTime().ToString("yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture);
}
