using System.Globalization;
using Alumroot.App.Output;
using Alumroot.App.Trials;
using Alumroot.App.Words;
using Alumroot.Colour.Colorimetry;
using Alumroot.Studio.Exchange;
using Alumroot.Trials.Ladder;

namespace Alumroot.App.Verbs.Ladder;

/// <summary>The answers of <c>ladder</c>.</summary>
internal static class LadderOutput
{
    private const string Caution = "This is the colour of the liquor. On the lake it is another: the metal holds one form, and the solid scatters.";

    internal static void Write(IReadOnlyList<LadderAnswer> answers, LadderTable table, Form form, TextWriter to)
    {
        if (form == Form.Json) WriteJson(answers, table, to);
        else if (form == Form.Csv) WriteCsv(answers, to);
        else WriteText(answers, table, to);
    }

    private static void WriteJson(IReadOnlyList<LadderAnswer> answers, LadderTable table, TextWriter to) => to.WriteLine(Json.Text(new
    {
        Series = answers.Select(a => new
        {
            Series = a.Row.Name.Length > 0 ? a.Row.Name : null,
            JarCount = a.Row.Ph.Count,
            FormCount = a.Found.Forms.Count,
            Pka = a.Found.Steps.Select(s => s.Pka),
            PkaInside = a.Found.Steps.Select(s => s.IsInside),
            Forms = a.Found.Forms.Select(f => Of(table.ColourOf(f))),
            Tried = a.Found.Tried.Select(t => new { t.Forms, LeftOutRmsAbsorbance = Finite(t.LeftOutRms), FitRmsAbsorbance = t.FitRms }),
            Colours = a.Colours.Select(c => new { c.Ph, Colour = Of(c.Colour), IntervalDe00 = c.Within, Inside = c.IsInside }),
            Aim = a.Toward is var (nearest, deltaE, asWell) ? new { nearest.Ph, Colour = Of(nearest.Colour), De00 = deltaE, PhFrom = asWell.Least, PhTo = asWell.Most } : null,
        }),
        Note = Caution,
    }));

    private static void WriteCsv(IReadOnlyList<LadderAnswer> answers, TextWriter to)
    {
        to.Write(Csv.Line("series", "ph", "l", "a", "b", "within_de00", "inside", "srgb_hex", "name"));
        foreach (LadderAnswer a in answers)
            foreach (LadderColour c in a.Colours)
                to.Write(Csv.Line(a.Row.Name, c.Ph, R(c.Colour.L), R(c.Colour.A), R(c.Colour.B), R(c.Within), c.IsInside ? "yes" : "no", Hex(c.Colour), ColourNames.Nearest(c.Colour).Colour.Name));
    }

    private static void WriteText(IReadOnlyList<LadderAnswer> answers, LadderTable table, TextWriter to)
    {
        foreach (LadderAnswer a in answers)
        {
            to.WriteLine($"{(a.Row.Name.Length > 0 ? a.Row.Name + ": " : "")}{a.Row.Ph.Count} jars, {a.Found.Forms.Count} {(a.Found.Forms.Count == 1 ? "form: the colour does not turn with the pH" : "forms")}");
            foreach (LadderStep s in a.Found.Steps)
                to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  pKa {s.Pka.Value:0.00} ({s.Pka.Low:0.0} to {s.Pka.High:0.0}){(s.IsInside ? "" : ", beyond the row: a direction only")}"));
            for (int f = 0; f < a.Found.Forms.Count; f++) to.WriteLine(Columns.Beside($"  form {f + 1}", Said(table.ColourOf(a.Found.Forms[f])), 12));
            foreach (LadderColour c in a.Colours)
                to.WriteLine(Columns.Beside(string.Create(CultureInfo.InvariantCulture, $"  pH {c.Ph:0.0#}"), $"{Said(c.Colour)}; {SwatchWords.Within(c.Within)}{(c.IsInside ? "" : "; beyond the row")}", 12));
            if (a.Toward is var (nearest, deltaE, asWell))
                to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  Nearest to the aim at pH {nearest.Ph:0.0#} ({asWell.Least:0.0} to {asWell.Most:0.0} do as well), off by {deltaE:0.0}: {Said(nearest.Colour)}"));
            to.WriteLine();
        }
        foreach (string line in Columns.Wrapped("Spans hold nine times in ten. " + Caution, Columns.Width)) to.WriteLine(line);
    }

    private static string Said(Lab lab) => $"{ColourNames.Nearest(lab).Colour.Name}, {SwatchWords.Numbers(lab)}";

    private static object Of(Lab lab) => new { LabD50 = new[] { R(lab.L), R(lab.A), R(lab.B) }, SrgbHex = Hex(lab), ColourNames.Nearest(lab).Colour.Name };

    private static string Hex(Lab lab) => Srgb.From(lab.ToXyz(ColourNames.White), ColourNames.White).Hex;

    private static double? Finite(double x) => double.IsFinite(x) ? x : null;

    private static double R(double x) => Math.Round(x, 2);
}
