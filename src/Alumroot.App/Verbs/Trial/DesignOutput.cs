using System.Globalization;
using Alumroot.App.Output;
using Alumroot.App.Trials;
using Alumroot.App.Words;
using Alumroot.Chemistry.Planning;
using Alumroot.Studio.Exchange;
using Alumroot.Trials.Design;

namespace Alumroot.App.Verbs.Trial;

/// <summary>The run list of <c>trial design</c>.</summary>
internal static class DesignOutput
{
    internal static void Write(TrialDesign design, JarPlan[]? plans, Form form, TextWriter to)
    {
        if (form == Form.Json) WriteJson(design, plans, to);
        else if (form == Form.Csv) WriteCsv(design, plans, to);
        else WriteText(design, plans, to);
    }

    private static void WriteJson(TrialDesign design, JarPlan[]? plans, TextWriter to) => to.WriteLine(Json.Text(new
    {
        Kind = design.Request.Kind,
        design.Request.Seed,
        JarCount = design.Jars.Count,
        design.Resolution,
        Generators = design.Generators.Select(g => new { Factor = Name(design, g.Factor), By = g.By.Select(b => Name(design, b)) }),
        Aliases = design.Aliases.Select(g => g.Select(e => e.Select(f => Name(design, f)))),
        DEfficiency = design.EfficiencyRatio,
        HiddenByBlocks = design.HiddenByBlocks.Select(e => e.Select(f => Name(design, f))),
        Jars = design.Jars.Select((j, i) => new
        {
            j.Order,
            j.Block,
            j.Replicate,
            Settings = design.Request.Factors.Select((f, n) => (f, Level: j.Levels[n])).ToDictionary(p => p.f.Name, p => p.f is Factor.Measured m ? (object)m.Values[p.Level] : p.f.Setting(p.Level)),
            Amounts = plans is null ? null : new
            {
                SaltG = plans[i].WhyNot is null ? plans[i].SaltGrams : (double?)null,
                AlkaliG = plans[i] is { WhyNot: null, AlkaliUnit: SubstanceUnit.Gram } g ? g.Alkali : (Quantities.Estimate?)null,
                AlkaliMl = plans[i] is { WhyNot: null, AlkaliUnit: SubstanceUnit.Millilitre } m ? m.Alkali : (Quantities.Estimate?)null,
                VesselLeastL = plans[i].WhyNot is null ? plans[i].VesselLitres : (double?)null,
                plans[i].Remarks,
                plans[i].WhyNot,
            },
        }),
        Notes = TrialWords.Of(design),
    }));

    private static void WriteCsv(TrialDesign design, JarPlan[]? plans, TextWriter to)
    {
        to.Write(Csv.Line([.. new[] { "order", "block", "replicate" }, .. design.Request.Factors.Select(f => f.Name), .. plans is null ? Array.Empty<string>() : ["salt_g", "alkali_g", "alkali_low_g", "alkali_high_g", "alkali_ml", "vessel_l"]]));
        for (int i = 0; i < design.Jars.Count; i++)
        {
            Jar jar = design.Jars[i];
            to.Write(Csv.Line([jar.Order, jar.Block, jar.Replicate, .. Settings(design, jar), .. plans is null ? [] : Amounts(plans[i])]));
        }
    }

    private static object?[] Amounts(JarPlan plan) => plan.WhyNot is not null ? [null, null, null, null, null, null]
        : plan.AlkaliUnit == SubstanceUnit.Gram ? [R(plan.SaltGrams), R(plan.Alkali.Value), R(plan.Alkali.Low), R(plan.Alkali.High), null, R(plan.VesselLitres)]
        : [R(plan.SaltGrams), null, null, null, R(plan.Alkali.Value), R(plan.VesselLitres)];

    private static void WriteText(TrialDesign design, JarPlan[]? plans, TextWriter to)
    {
        string[][] rows = [.. design.Jars.Select((j, i) => (string[])[j.Order.ToString(CultureInfo.InvariantCulture), j.Block.ToString(CultureInfo.InvariantCulture), .. Settings(design, j), .. plans is null ? [] : Amount(plans[i])])];
        string[] heads = ["jar", "day", .. design.Request.Factors.Select(f => f is Factor.Measured { Unit.Length: > 0 } m ? $"{f.Name}, {m.Unit}" : f.Name), .. plans is null ? Array.Empty<string>() : ["salt", "alkali"]];
        if (design.Request.Blocks == 1) (rows, heads) = ([.. rows.Select(r => (string[])[r[0], .. r[2..]])], [heads[0], .. heads[2..]]);
        to.WriteLine($"{design.Jars.Count} jars, in this order (by lot, seed {design.Request.Seed}):");
        to.WriteLine();
        int[] widths = [.. heads.Select((h, c) => rows.Select(r => r[c].Length).Append(h.Length).Max() + 2)];
        foreach (string[] row in rows.Prepend(heads)) to.WriteLine(string.Concat(row.Select((cell, c) => cell.PadRight(widths[c]))).TrimEnd());
        to.WriteLine();
        foreach (string note in TrialWords.Of(design)) foreach (string line in Columns.Wrapped(note, Columns.Width)) to.WriteLine(line);
        foreach (IGrouping<string, int> remark in (plans ?? []).SelectMany((p, i) => (p.WhyNot is { } why ? [why] : p.Remarks).Select(r => (r, i))).GroupBy(r => r.r, r => r.i + 1))
            foreach (string line in Columns.Wrapped($"Jar {string.Join(", ", remark)}: {remark.Key}.", Columns.Width)) to.WriteLine(line);
    }

    private static string[] Amount(JarPlan plan) => plan.WhyNot is not null ? ["not planned", ""]
        : [$"{TrialWords.Figure(plan.SaltGrams)} g", $"{TrialWords.Figure(plan.Alkali.Value)} ({TrialWords.Figure(plan.Alkali.Low)} to {TrialWords.Figure(plan.Alkali.High)}) {(plan.AlkaliUnit == SubstanceUnit.Gram ? "g" : "mL")}"];

    private static IEnumerable<string> Settings(TrialDesign design, Jar jar) => design.Request.Factors.Select((f, i) => f.Setting(jar.Levels[i]));

    private static string Name(TrialDesign design, int factor) => design.Request.Factors[factor].Name;

    private static double R(double x) => Math.Round(x, 4);
}
