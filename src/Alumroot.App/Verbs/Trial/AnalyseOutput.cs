using System.Globalization;
using Alumroot.App.Output;
using Alumroot.App.Words;
using Alumroot.Quantities;
using Alumroot.Studio.Exchange;
using Alumroot.Trials.Analysis;

namespace Alumroot.App.Verbs.Trial;

/// <summary>The effects of <c>trial analyse</c>.</summary>
internal static class AnalyseOutput
{
    internal static void Write(IReadOnlyList<ResponseFound> found, Form form, TextWriter to)
    {
        if (form == Form.Json) WriteJson(found, to);
        else if (form == Form.Csv) WriteCsv(found, to);
        else WriteText(found, to);
    }

    private static void WriteJson(IReadOnlyList<ResponseFound> found, TextWriter to) => to.WriteLine(Json.Text(new
    {
        Responses = found.Select(f => new
        {
            f.Response,
            f.JarCount,
            Mean = Known(f.Mean),
            Scatter = f.Scatter,
            ScatterFrom = f.From,
            DegreesOfFreedom = f.FreedomCount,
            f.LacksFit,
            ProductsLeftOut = f.LeftOut,
            Effects = f.Effects.Select(e => new { e.Factors, e.Setting, From = e.Ends?.From, To = e.Ends?.To, Bend = e.IsBend, Change = Known(e.Change), e.Verdict, e.SameAs }),
        }),
    }));

    private static void WriteCsv(IReadOnlyList<ResponseFound> found, TextWriter to)
    {
        to.Write(Csv.Line("response", "effect", "change", "low", "high", "verdict", "same_as"));
        foreach (ResponseFound f in found)
            foreach (Effect e in f.Effects)
                to.Write(Csv.Line(f.Response, TrialWords.Of(e), e.Change.Value, Finite(e.Change.Low), Finite(e.Change.High), TrialWords.Of(e.Verdict), string.Join(" ", e.SameAs)));
    }

    private static void WriteText(IReadOnlyList<ResponseFound> found, TextWriter to)
    {
        foreach (ResponseFound f in found)
        {
            to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{f.Response}: mean {Span(f.Mean)}, {f.JarCount} jars; {TrialWords.Of(f)}."));
            foreach (Effect e in f.Effects.OrderBy(e => e.Verdict).ThenByDescending(e => Math.Abs(e.Change.Value)))
                to.WriteLine(Columns.Beside("  " + TrialWords.Of(e), $"{(e.Change.Value > 0 ? "+" : "")}{Span(e.Change)}: {TrialWords.Of(e.Verdict)}{(e.SameAs.Count > 0 ? $"; cannot be told from {string.Join(", ", e.SameAs)}" : "")}", 34));
            if (f.LacksFit) to.WriteLine("  What is left over is more than jars made alike explain: something bends or works together that these effects do not hold.");
            if (f.LeftOut > 0) to.WriteLine($"  {f.LeftOut} products of factors were not tried: there are too few jars for them.");
            to.WriteLine();
        }
        foreach (string line in Columns.Wrapped("Spans hold nine times in ten. A change is from the first or least setting to the second or most.", Columns.Width)) to.WriteLine(line);
    }

    private static string Span(Estimate e) => double.IsFinite(e.Low) ? $"{TrialWords.Figure(e.Value)} ({TrialWords.Figure(e.Low)} to {TrialWords.Figure(e.High)})" : $"{TrialWords.Figure(e.Value)} (span not known)";

    private static object Known(Estimate e) => new { e.Value, Low = Finite(e.Low), High = Finite(e.High) };

    private static double? Finite(double x) => double.IsFinite(x) ? x : null;
}
