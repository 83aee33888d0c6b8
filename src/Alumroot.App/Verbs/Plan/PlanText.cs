using System.Globalization;
using System.Text;
using Alumroot.App.Output;
using Alumroot.App.Parts;
using Alumroot.App.Requests;
using Alumroot.App.Words;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;
using Alumroot.Quantities.Writing;

namespace Alumroot.App.Verbs.Plan;

/// <summary>A plan for a terminal: sentence, Do, Expect, Mind; at most 80 wide, spans in brackets.</summary>
internal static class PlanText
{
    private const int Label = 24;
    private const string Bullet = "-";

    internal static string Of(PlanAnswer answer, bool quiet)
    {
        LakePlan plan = answer.Plan!;
        PlanNumbers numbers = PlanNumbers.For(answer);
        var text = new StringBuilder();
        foreach (string line in Columns.Wrapped(Capital(PlanSentence.Text(answer)), Columns.Width)) text.AppendLine(line);
        if (answer.AmountsWithheld)
        {
            foreach (PlanCaution c in answer.Cautions.Where(c => c.Level == CautionWord.ChangeThisFirst)) Say(text, Bullet, NotPlannedWords.Spoken(c));
            return text.ToString();
        }
        text.AppendLine().AppendLine("Do");
        foreach (SaltAmount s in plan.Salts)
            Say(text, s.Substance.PlainName, $"{numbers.Weighed(Estimate.Exact(s.Grams)).Plain} in {numbers.Poured(PlanNumbers.Enough(s.WaterMillilitres))} of hot water");
        string amount = numbers.Alkali(plan.Alkali, plan.Input.Alkali).Line;
        Say(text, plan.Input.Alkali.PlainName, plan.AlkaliWaterMillilitres > 0 ? $"{amount} in {numbers.Poured(PlanNumbers.Enough(plan.AlkaliWaterMillilitres))} of warm water" : amount);
        Say(text, "vessel", $"at least {numbers.Vessel(plan.LeastVesselLitres)}");
        Say(text, "portions", Portions(plan, numbers));
        if (!quiet) Expect(text, answer, plan, numbers);
        return text.ToString();
    }

    private static void Expect(StringBuilder text, PlanAnswer answer, LakePlan plan, PlanNumbers numbers)
    {
        Substance alkali = plan.Input.Alkali;
        string unit = alkali.Unit == SubstanceUnit.Gram ? "g" : "mL";
        text.AppendLine().AppendLine("Expect    Spans hold nine times in ten.");
        Say(text, "pH at the start", numbers.Ph90(plan.StartPh).Line);
        if (plan.Telling is { } t)
            Say(text, "telling reading", $"at {numbers.Alkali(Estimate.Exact(t.AtAlkali), alkali).Plain} of alkali: {numbers.Ph90(t.PhIfHydroxide).Line} if plain hydroxide comes down, {numbers.Ph90(t.PhIfBasicSalt).Line} if a basic salt{(t.PhIfHydroxide.Low > t.PhIfBasicSalt.High ? "" : "; the spans meet, so take it as a hint")}");
        string gas = alkali.CarbonDioxideMolPerUnit > 0 ? $"; gas held in {numbers.Ph90(plan.EndPhGasHeld).Line}, gas gone {numbers.Ph90(plan.EndPhGasGone).Line}" : "";
        Say(text, "pH at the end", numbers.Ph90(plan.EndPh).Line + gas);
        Say(text, "span of the alkali", plan.Alkali.High == plan.Alkali.Low ? "none, the amount is given" : $"{plan.Alkali.Closeness().ToString().ToLowerInvariant()}, mostly {CauseWords.Of(plan.AlkaliSpanCause)}");
        if (double.IsFinite(plan.AlkaliPerTenthPh.Value)) Say(text, "near the aim", $"{QuantityText.Of(plan.AlkaliPerTenthPh, unit, TextStyle.Metric, Math.Pow(10, Math.Floor(Math.Log10(plan.AlkaliPerTenthPh.Value)) - 1))} moves the pH by 0.1");
        if (plan.AllGasLitres > 0.01) Say(text, "gas", $"{numbers.Volume90(plan.GasLitres.Times(1000)).Line} while adding, {numbers.Roughly(1000 * plan.AllGasLitres)} in all");
        Say(text, "comes down", plan.Solids.Count == 0 ? "nothing that lasts" : string.Join("; ", plan.Solids.Select(s => $"{s.PlainName} {numbers.Mass90(s.Grams).Line}")));
        Say(text, "metal left", numbers.Number(plan.DissolvedMetalMilligramsPerLitre, "mg/L").Line);
        Say(text, "pigment, air-dry", numbers.Mass90(plan.YieldGrams).Line);
        if (plan.Washes.Count > 1)
            Say(text, "washes", string.Join("; ", plan.Washes.Select(w => $"{(w.Number == 0 ? "first liquid" : w.Number.ToString(CultureInfo.InvariantCulture))} {numbers.Number(w.MicrosiemensPerCm25, "µS/cm").Line}")) + " at 25 °C");
        foreach (RuleOfThumb rule in plan.Rules)
            Say(text, rule.Key == "half-the-salt" ? "usual rule" : "just hydroxide", $"{numbers.Alkali(Estimate.Exact(rule.Alkali), alkali).Plain}; pH there {numbers.Ph90(rule.PhThere).Line}");
        Say(text, "time, cost", "on the page of the plan (alumroot serve), from your own lakes and lots");
        if (answer.Assumptions.Count > 0)
        {
            text.AppendLine().AppendLine("Assumed");
            foreach (Assumption a in answer.Assumptions) Say(text, FieldNames.Of(a.Field) is var name && name == a.Field ? a.Field.Replace('-', ' ') : name, $"{a.Text} [{a.Source}]");
        }
        text.AppendLine().AppendLine("Mind");
        foreach (PlanCaution c in answer.Cautions) Say(text, Bullet, c.Level == CautionWord.Mind ? c.Text : NotPlannedWords.Spoken(c));
        foreach (Finding f in plan.Findings.Where(f => f.Level == FindingLevel.Note)) Say(text, Bullet, FindingWords.Of(f, plan));
        text.AppendLine().AppendLine("How reckoned: alumroot serve, then /handbook/how/plan; docs/models/plan.md");
    }

    private static string Portions(LakePlan plan, PlanNumbers numbers)
    {
        bool alkaliLast = plan.Input.Order == OrderOfAddition.SaltFirst;
        IEnumerable<string> groups = plan.Portions.GroupBy(p => Math.Round(p.Units, 3))
            .Select(g => $"{g.Count()} x {(alkaliLast ? numbers.Alkali(Estimate.Exact(g.Key), plan.Input.Alkali) : numbers.Weighed(Estimate.Exact(g.Key))).Plain}");
        return $"{string.Join(", then ", groups)} of the {(alkaliLast ? "alkali" : "salt")}; {(plan.Input.Alkali.CarbonDioxideMolPerUnit > 0 ? "wait after each until the froth is down" : "stir well after each")}";
    }

    private static string Capital(string s) => char.ToUpperInvariant(s[0]) + s[1..];

    private static void Say(StringBuilder text, string label, string what) => text.AppendLine(Columns.Beside("  " + label, what, label == Bullet ? 4 : Label));
}
