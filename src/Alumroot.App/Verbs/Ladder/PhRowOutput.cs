using Alumroot.App.Output;
using Alumroot.App.Requests;
using Alumroot.App.Words;
using Alumroot.Chemistry.PhRow;
using Alumroot.Studio.Exchange;

namespace Alumroot.App.Verbs.Ladder;

/// <summary>A planned row as text, JSON or CSV.</summary>
internal static class PhRowOutput
{
    private static readonly int[] Widths = [6, 28, 8, 16, 20, 10];

    internal static void Write(PhRowRequest asked, PhRowPlan plan, Form form, Channels channels)
    {
        if (form == Form.Json) WriteJson(asked, plan, channels.Data);
        else if (form == Form.Csv) WriteCsv(asked, plan, channels.Data);
        else WriteText(asked, plan, channels.Data);
        if (form != Form.Text) channels.Messages.WriteLine(PhRowWords.Mind);
    }

    private static void WriteText(PhRowRequest asked, PhRowPlan plan, TextWriter to)
    {
        Lines(PhRowWords.Sentence(asked, plan));
        to.WriteLine();
        to.WriteLine("Do");
        Row(PhRowWords.Heads);
        foreach (PhRowJar jar in plan.Jars) Row(PhRowWords.Cells(jar, asked));
        to.WriteLine();
        foreach ((string step, int i) in PhRowWords.Steps(asked, plan).Select((s, i) => (s, i))) Lines($"{i + 1}. {step}");
        to.WriteLine();
        if (asked.Assumed.Count > 0) Lines($"Taken: {string.Join("; ", asked.Assumed)}.");
        Lines("Spans hold nine times in ten.");
        Lines($"Mind: {PhRowWords.Mind}");

        void Row(IReadOnlyList<string> cells) => to.WriteLine($"  {string.Concat(cells.Select((c, i) => c.PadRight(Widths[i])))}".TrimEnd());

        void Lines(string text)
        {
            foreach (string line in Columns.Wrapped(text, Columns.Width)) to.WriteLine(line);
        }
    }

    private static void WriteJson(PhRowRequest asked, PhRowPlan plan, TextWriter to) => to.WriteLine(Json.Text(new
    {
        LiquorPh = plan.LiquorPh,
        LiquorMl = asked.Input!.Liquor.Millilitres,
        FilledMl = plan.FilledMillilitres,
        AcidGPer100Ml = Strength(asked.Input.Acid),
        AlkaliGPer100Ml = Strength(asked.Input.Alkali),
        Jars = plan.Jars.Select(j => new { AimPh = j.AimPh.Value, Dose = Word(j), Of = PhRowWords.What(j, asked), DoseMl = j.Dose == RowDose.OutOfReach ? (object?)null : j.DoseMillilitres, PhExpected = j.PhWithIt, TopUpMl = j.TopUpMillilitres }),
        asked.Assumed,
        Caution = PhRowWords.Mind,
    }));

    private static void WriteCsv(PhRowRequest asked, PhRowPlan plan, TextWriter to)
    {
        to.Write(Csv.Line("aim_ph", "dose", "of", "dose_ml", "dose_ml_low", "dose_ml_high", "ph_expected", "ph_low", "ph_high", "top_up_ml", "ph", "L", "a", "b"));
        foreach (PhRowJar j in plan.Jars)
            to.Write(Csv.Line(j.AimPh.Value, Word(j), PhRowWords.What(j, asked), R(j.DoseMillilitres.Value), R(j.DoseMillilitres.Low), R(j.DoseMillilitres.High), R(j.PhWithIt.Value), R(j.PhWithIt.Low), R(j.PhWithIt.High), R(j.TopUpMillilitres), "", "", "", ""));
    }

    private static double? Strength(RowSolution solution) => solution.Substance.Unit == Alumroot.Chemistry.Planning.SubstanceUnit.Gram ? solution.GramsPer100Millilitres : null;

    private static string Word(PhRowJar jar) => Alumroot.Studio.Journal.SubjectLine.Word(jar.Dose);

    private static double R(double x) => Math.Round(x, 3);
}
