using System.Globalization;
using Alumroot.App.Output;
using Alumroot.App.Trials;
using Alumroot.App.Words;
using Alumroot.Quantities;
using Alumroot.Studio.Exchange;
using Alumroot.Trials.Learning;

namespace Alumroot.App.Verbs.Trial;

/// <summary>The next jar of <c>trial next</c>.</summary>
internal static class NextOutput
{
    internal static void Write(NextFound found, IReadOnlyList<TrialAim> aims, Form form, TextWriter to)
    {
        if (form == Form.Json) WriteJson(found, aims, to);
        else if (form == Form.Csv) WriteCsv(found, aims, to);
        else WriteText(found, aims, to);
    }

    private static void WriteJson(NextFound found, IReadOnlyList<TrialAim> aims, TextWriter to) => to.WriteLine(Json.Text(new
    {
        Aims = aims.Select(a => a.Typed),
        Next = Of(found.Next, aims),
        Because = TrialWords.Because(found),
        BestSoFar = Of(found.Best, aims),
        Others = found.Others.Select(o => Of(o, aims)),
        Trade = found.Trade.Select(t => Of(t, aims)),
        LeaveOneOut = found.Calibration.Select(c => new { c.Response, c.Rms, ScatterSd = c.ScatterSd, c.InsideRatio }),
        found.RowCount,
        found.UsedCount,
    }));

    private static object Of(RecipeProposal proposal, IReadOnlyList<TrialAim> aims) => new
    {
        Settings = proposal.Settings.ToDictionary(s => s.Factor, s => s.Number is { } n ? (object)n : s.Name),
        Expected = proposal.Expected.ToDictionary(e => e.Response, e => e.Value),
        Aims = proposal.OtherLosses.Prepend(proposal.Loss).Zip(aims).ToDictionary(p => p.Second.Typed, p => Turned(p.First, p.Second)),
        ExpectedGain = proposal.Gain,
    };

    private static void WriteCsv(NextFound found, IReadOnlyList<TrialAim> aims, TextWriter to)
    {
        to.Write(Csv.Line([.. new[] { "what" }, .. found.Next.Settings.Select(s => s.Factor), .. found.Next.Expected.SelectMany(e => new[] { e.Response, e.Response + "_low", e.Response + "_high" }), .. aims.Select(a => a.Typed)]));
        foreach ((string what, RecipeProposal p) in new[] { ("next", found.Next), ("best", found.Best) }.Concat(found.Others.Select(o => ("other", o))).Concat(found.Trade.Select(t => ("trade", t))))
            to.Write(Csv.Line([what, .. p.Settings.Select(s => (object?)(s.Number is { } n ? n : s.Name)), .. p.Expected.SelectMany(e => new object?[] { e.Value.Value, e.Value.Low, e.Value.High }), .. p.OtherLosses.Prepend(p.Loss).Zip(aims).Select(x => (object?)Turned(x.First, x.Second).Value)]));
    }

    private static void WriteText(NextFound found, IReadOnlyList<TrialAim> aims, TextWriter to)
    {
        to.WriteLine("Do");
        foreach (RecipeSetting s in found.Next.Settings) to.WriteLine(Columns.Beside("  " + s.Factor, s.Name, 24));
        foreach (string line in Columns.Wrapped(TrialWords.Because(found) + ".", Columns.Width - 2)) to.WriteLine("  " + line);
        to.WriteLine("Expect");
        foreach ((string response, Estimate value) in found.Next.Expected) to.WriteLine(Columns.Beside("  " + response, $"{Span(value)} for one jar", 24));
        foreach ((Estimate loss, TrialAim aim) in found.Next.OtherLosses.Prepend(found.Next.Loss).Zip(aims)) to.WriteLine(Columns.Beside("  " + aim.Typed, Reached(loss, aim), 24));
        to.WriteLine($"Best so far ({found.RowCount} jars{(found.UsedCount < found.RowCount ? $", {found.UsedCount} of them held" : "")})");
        to.WriteLine("  " + string.Join(", ", found.Best.Settings.Select(s => $"{s.Factor} {s.Name}")));
        to.WriteLine(Columns.Beside("  " + aims[0].Typed, Reached(found.Best.Loss, aims[0]), 24));
        if (found.Trade.Count > 0)
        {
            to.WriteLine("None of these is better in all aims");
            foreach (RecipeProposal t in found.Trade)
                to.WriteLine("  " + string.Join(", ", t.Settings.Select(s => $"{s.Factor} {s.Name}")) + ": " + string.Join("; ", t.OtherLosses.Prepend(t.Loss).Zip(aims).Select(p => $"{p.Second.Typed} {Reached(p.First, p.Second)}")));
        }
        to.WriteLine("How well each jar is foretold by the others");
        foreach (Foretold c in found.Calibration)
            to.WriteLine(Columns.Beside("  " + c.Response, string.Create(CultureInfo.InvariantCulture, $"off by {TrialWords.Figure(c.Rms)}, where jars differ by {TrialWords.Figure(c.ScatterSd)}; {100 * c.InsideRatio:0} % in their spans"), 24));
        if (found.Calibration.Any(c => c.Rms > 0.9 * c.ScatterSd)) foreach (string line in Columns.Wrapped("That is hardly better than the mean of all: these jars teach little yet. Make the row wider, or jars twice.", Columns.Width)) to.WriteLine(line);
    }

    private static string Reached(Estimate loss, TrialAim aim) => aim.IsColour ? $"off by {Span(loss)} CIEDE2000" : Span(Turned(loss, aim));

    private static Estimate Turned(Estimate loss, TrialAim aim) => aim.Sign > 0 ? loss : new Estimate(-loss.Value, -loss.High, -loss.Low);

    private static string Span(Estimate e) => $"{TrialWords.Figure(e.Value)} ({TrialWords.Figure(e.Low)} to {TrialWords.Figure(e.High)})";
}
