using Alumroot.App.Print;
using Alumroot.App.Print.Pdf;
using Alumroot.App.Print.Sheets;
using Alumroot.App.Requests;
using Alumroot.Studio;

namespace Alumroot.App.Hosting;

/// <summary>Sheets and labels as PDF files.</summary>
internal static class PdfEndpoints
{
    private const string Pdf = "application/pdf";

    public static void MapPdf(this WebApplication app)
    {
        app.MapGet("/pdf/labels", (HttpRequest request, StudioStore store) =>
            new LabelRequest(name => request.Query[name].ToString(), store).Sheet is { } sheet ? Results.File(sheet.Pdf(), Pdf, $"labels-{sheet.Content.Code.Replace('/', '-')}.pdf") : Results.NotFound());
        app.MapGet("/pdf/{what}", (string what, HttpRequest request, SheetMaker sheets) =>
            sheets.Of(what, name => request.Query[name].ToString() is { Length: > 0 } typed ? typed : null) is { } sheet ? Results.File(PdfSheet.Of(sheet), Pdf, $"{what}{(sheet.Code is { } code ? $"-{code}" : "")}.pdf") : Results.NotFound());
    }
}
