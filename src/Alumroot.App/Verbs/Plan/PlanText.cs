using System.Globalization;
using System.Text;
using Alumroot.App.Output;
using Alumroot.App.Parts;
using Alumroot.App.Requests;
using Alumroot.App.Words;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;
using Alumroot.Quantities.Units;
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
        TextStyle style = Style(answer.Request);
        var text = new StringBuilder();
        foreach (string line in Columns.Wrapped(Sentence(answer, plan, style), Columns.Width)) text.AppendLine(line);
        if (answer.AmountsWithheld)
        {
            foreach (PlanCaution c in answer.Cautions.Where(c => c.Level == CautionWord.ChangeThisFirst)) Say(text, Bullet, Spoken(c));
            return text.ToString();
        }
        text.AppendLine().AppendLine("Do");
        foreach (SaltAmount s in plan.Salts)
            Say(text, s.Substance.PlainName, $"{QuantityText.Of(Mass.FromGrams(s.Grams), style, plan.Input.ScaleStep)} in {QuantityText.Of(Volume.FromMillilitres(s.WaterMillilitres), style)} of {(plan.Input.Temperature.Celsius > 40 ? "hot " : "")}water");
        string amount = Amount(plan, plan.Alkali, style);
        Say(text, plan.Input.Alkali.PlainName, plan.AlkaliWaterMillilitres > 0 ? $"{amount} in {QuantityText.Of(Volume.FromMillilitres(plan.AlkaliWaterMillilitres), style)} of water" : amount);
        Say(text, "vessel", $"at least {Math.Ceiling(plan.LeastVesselLitres).ToString(CultureInfo.InvariantCulture)} L");
        Say(text, "portions", Portions(plan));
        if (!quiet) Expect(text, answer, plan, style);
        return text.ToString();
    }

    internal static string Refused(PlanRefusal refusal) => $"Will not plan with {Small(refusal.What)}. {Ended(refusal.Reason)} {(refusal.Instead.Length > 0 ? $"Instead: {Ended(refusal.Instead)}" : "")}".TrimEnd();

    internal static string NotPlanned(PlanAnswer answer) => answer.Outcome switch
    {
        PlanOutcome.CannotReach no => CannotReach(no),
        _ => "The equations of this bath could not be solved, so nothing is claimed. Change one of the amounts a little, or leave the second salt out.",
    };

    internal static string Spoken(PlanCaution caution) => caution.Level switch
    {
        CautionWord.ChangeThisFirst => $"Change this first: {caution.Text}",
        CautionWord.DoesNotAddUp => $"Does not add up: {caution.Text}",
        _ => $"Mind: {caution.Text}",
    };

    private static void Expect(StringBuilder text, PlanAnswer answer, LakePlan plan, TextStyle style)
    {
        text.AppendLine().AppendLine("Expect    Spans hold nine times in ten.");
        Say(text, "pH at the start", QuantityText.OfPh(plan.StartPh, style));
        if (plan.Telling is { } t)
            Say(text, "telling reading", $"at {Units(plan, t.AtAlkali)} of alkali: {QuantityText.OfPh(t.PhIfHydroxide, style)} if plain hydroxide comes down, {QuantityText.OfPh(t.PhIfBasicSalt, style)} if a basic salt");
        Say(text, "pH at the end", $"{QuantityText.OfPh(plan.EndPh, style)}; gas held in {QuantityText.OfPh(plan.EndPhGasHeld, style)}, gas gone {QuantityText.OfPh(plan.EndPhGasGone, style)}");
        Say(text, "span of the alkali", plan.Alkali.High == plan.Alkali.Low ? "none, the amount is given" : $"{Closeness(plan.Alkali)}, mostly {CauseWords.Of(plan.AlkaliSpanCause)}");
        if (double.IsFinite(plan.AlkaliPerTenthPh.Value)) Say(text, "near the aim", $"{QuantityText.Of(plan.AlkaliPerTenthPh, plan.Input.Alkali.Unit == SubstanceUnit.Gram ? "g" : "mL", style, Math.Pow(10, Math.Floor(Math.Log10(plan.AlkaliPerTenthPh.Value)) - 1))} moves the pH by 0.1");
        if (plan.AllGasLitres > 0.01) Say(text, "gas", $"{QuantityText.Of(plan.GasLitres, "L", style)} while adding, {plan.AllGasLitres.ToString("0.#", CultureInfo.InvariantCulture)} L in all");
        Say(text, "comes down", plan.Solids.Count == 0 ? "nothing that lasts" : string.Join("; ", plan.Solids.Select(s => $"{s.PlainName} {QuantityText.OfMass(s.Grams, style)}")));
        Say(text, "metal left", $"{QuantityText.Of(plan.DissolvedMetalMilligramsPerLitre, "mg/L", style)}");
        Say(text, "pigment, air-dry", QuantityText.OfMass(plan.YieldGrams, style));
        if (plan.Washes.Count > 1)
            Say(text, "washes", string.Join("; ", plan.Washes.Select(w => $"{(w.Number == 0 ? "first liquid" : w.Number.ToString(CultureInfo.InvariantCulture))} {QuantityText.Of(w.MicrosiemensPerCm25, "µS/cm", style)}")) + " at 25 °C");
        foreach (RuleOfThumb rule in plan.Rules)
            Say(text, rule.Key == "half-the-salt" ? "usual rule" : "just hydroxide", $"{Units(plan, rule.Alkali)}; pH there {QuantityText.OfPh(rule.PhThere, style)}");
        Say(text, "time, cost", "no own batch and no prices kept yet");
        if (answer.Assumptions.Count > 0)
        {
            text.AppendLine().AppendLine("Assumed");
            foreach (Assumption a in answer.Assumptions) Say(text, FieldNames.Of(a.Field) is var name && name == a.Field ? a.Field.Replace('-', ' ') : name, $"{a.Text} [{a.Source}]");
        }
        text.AppendLine().AppendLine("Mind");
        foreach (PlanCaution c in answer.Cautions) Say(text, Bullet, c.Level == CautionWord.Mind ? c.Text : Spoken(c));
        foreach (Finding f in plan.Findings.Where(f => f.Level == FindingLevel.Note)) Say(text, Bullet, FindingWords.Of(f, plan));
        text.AppendLine().AppendLine("How reckoned: alumroot serve, then /handbook/how/plan; docs/models/plan.md");
    }

    private static string Sentence(PlanAnswer answer, LakePlan plan, TextStyle style)
    {
        LakePlanInput i = plan.Input;
        string dye = answer.Dyestuff is { } d && i.DryDyestuff is { } dry ? $"{QuantityText.Of(dry, style)} dry {d.Name.ToLowerInvariant()} in " : "Substrate alone: ";
        string hardness = QuantityText.Of(i.Hardness, style) + (i.HardnessIsAssumed ? ", assumed" : "");
        string salts = string.Join(" and ", i.Salts.Select(s => $"{QuantityText.Of(s.Amount, style)} {s.Substance.PlainName}"));
        string aim = i.Aim switch
        {
            PlanAim.ToPh a => $"to pH {a.Ph.Value.ToString("0.##", CultureInfo.InvariantCulture)}",
            PlanAim.AlkaliAmount => "all of the given alkali",
            _ => "until all the metal is down",
        };
        return $"{dye}{QuantityText.Of(i.Water, style)} water ({hardness}), {salts}, {i.Alkali.PlainName}{(i.Order == OrderOfAddition.AlkaliFirst ? " first" : "")}, at {QuantityText.Of(i.Temperature, style)}, {aim}.";
    }

    private static string CannotReach(PlanOutcome.CannotReach no)
    {
        string aim = no.AimPh.Value.ToString("0.##", CultureInfo.InvariantCulture), reach = QuantityText.OfPh(no.ReachablePh);
        string down = no.LowestPhWithMetalDown is { } low ? $" The lowest aim with nearly all the metal down is about {low.Value.ToString("0.0", CultureInfo.InvariantCulture)}." : "";
        return no.IsBelow
            ? $"Cannot reach pH {aim}: the bath starts at {reach} and alkali only raises it; about {100 * no.DissolvedThere.Value:0} % of the metal is dissolved there.{down}"
            : $"Cannot reach pH {aim}: with far more of this alkali than is sensible the bath ends at {reach}.{down}";
    }

    private static string Portions(LakePlan plan)
    {
        // No finer than the scale shows; the finding on a coarse scale says how to go further.
        double step = plan.Input.ScaleStep.Grams;
        IEnumerable<string> groups = plan.Portions.GroupBy(p => Math.Round(p.Units, 3)).Select(g => $"{g.Count()} x {(g.Key < step ? g.Key : Math.Round(g.Key / step) * step).ToString("0.###", CultureInfo.InvariantCulture)}");
        string what = plan.Input.Order == OrderOfAddition.AlkaliFirst ? "of the salt" : "of the alkali";
        return $"{string.Join(", then ", groups)} {(plan.Input.Order == OrderOfAddition.SaltFirst && plan.Input.Alkali.Unit == SubstanceUnit.Millilitre ? "mL" : "g")} {what}; wait after each until the froth is down";
    }

    private static string Amount(LakePlan plan, Estimate e, TextStyle style) =>
        plan.Input.Alkali.Unit == SubstanceUnit.Gram ? QuantityText.OfMass(e, style, plan.Input.ScaleStep) : QuantityText.OfVolume(e, style);

    private static string Units(LakePlan plan, double units) => units.ToString("0.#", CultureInfo.InvariantCulture) + (plan.Input.Alkali.Unit == SubstanceUnit.Gram ? " g" : " mL");

    private static string Closeness(Estimate e) => e.Closeness().ToString().ToLowerInvariant();

    private static TextStyle Style(PlanRequest request) => request[PlanFields.Units] == "kitchen"
        ? new TextStyle(UnitsShown.Kitchen, Kitchen: request[PlanFields.Kitchen] == "imperial" ? KitchenMeasures.Imperial : KitchenMeasures.Us)
        : TextStyle.Metric;

    private static string Small(string s) => char.ToLowerInvariant(s[0]) + s[1..];

    private static string Ended(string s) => s.EndsWith('.') ? s : s + ".";

    private static void Say(StringBuilder text, string label, string what) => text.AppendLine(Columns.Beside("  " + label, what, label == Bullet ? 4 : Label));
}
