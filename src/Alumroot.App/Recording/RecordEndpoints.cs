using Alumroot.App.Recording;

namespace Alumroot.App.Hosting;

/// <summary>Every address that writes to the record. The framework checks the antiforgery token of each form before it comes here.</summary>
internal static class RecordEndpoints
{
    public static void MapRecord(this WebApplication app)
    {
        BatchEndpoints.Map(app.MapGroup("/lakes"));
    }
}
