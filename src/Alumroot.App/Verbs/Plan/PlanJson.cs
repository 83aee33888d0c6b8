using Alumroot.App.Output;
using Alumroot.App.Requests;
using Alumroot.App.Words;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;

namespace Alumroot.App.Verbs.Plan;

/// <summary>A plan as the JSON that scripts rely on. Every prediction is an object with value, low and high, the ends of its 90 % span.</summary>
internal static class PlanJson
{
    internal static Dictionary<string, object?> Of(PlanAnswer answer)
    {
        LakePlan plan = answer.Plan!;
        bool grams = plan.Input.Alkali.Unit == SubstanceUnit.Gram;
        var document = new Dictionary<string, object?> { ["inputs"] = Inputs(answer, plan) };
        if (answer.AmountsWithheld)
        {
            document["withheld"] = "Change this first; amounts are withheld until then.";
            document["cautions"] = Cautions(answer);
            document["assumptions"] = Assumptions(answer);
            return document;
        }
        document["amounts"] = new Dictionary<string, object?>
        {
            ["salt_g"] = plan.Salts[0].Grams,
            ["salt_water_ml"] = Math.Round(plan.Salts.Sum(s => s.WaterMillilitres)),
            ["salts"] = plan.Salts.Select(s => new Dictionary<string, object?> { ["key"] = s.Substance.Key, ["g"] = s.Grams, ["water_ml"] = Math.Round(s.WaterMillilitres) }).ToArray(),
            ["alkali_g"] = plan.Alkali.Times(plan.Input.Alkali.GramsPerUnit),
            ["alkali_ml"] = grams ? null : plan.Alkali,
            ["alkali_water_ml"] = Math.Round(plan.AlkaliWaterMillilitres),
            ["alkali_stoichiometric" + (grams ? "_g" : "_ml")] = plan.StoichiometricAlkali,
            ["base_per_metal"] = plan.BasePerMetal,
            ["span_cause"] = plan.AlkaliSpanCause,
            ["portions"] = plan.Portions.Select(p => new Dictionary<string, object?> { ["portion"] = p.Number, ["units"] = p.Units, ["total_units"] = p.TotalUnits, ["ph"] = p.PhAfter, ["gas_l"] = p.GasLitres }).ToArray(),
        };
        document["curve"] = plan.Curve.Select(p => new Dictionary<string, object?>
        {
            ["alkali_g"] = p.Alkali * plan.Input.Alkali.GramsPerUnit,
            ["salt_share"] = p.SaltShare,
            ["ph"] = p.Ph,
            ["ph_if_hydroxide"] = p.PhIfHydroxide,
            ["ph_if_basic_sulfate"] = p.PhIfBasicSalt,
            ["gas_l"] = p.GasLitres,
            ["solid_g"] = p.SolidGrams,
            ["dissolved_metal_mg_per_l"] = p.DissolvedMetalMilligramsPerLitre,
        }).ToArray();
        document["start_ph"] = plan.StartPh;
        document["end"] = new Dictionary<string, object?>
        {
            ["ph"] = plan.EndPh,
            ["ionic_strength"] = plan.EndIonicStrengthMolal,
            ["gas_l"] = plan.GasLitres,
            ["gas_all_l"] = plan.AllGasLitres,
            ["vessel_least_l"] = plan.LeastVesselLitres,
            ["dissolved_metal_mg_per_l"] = plan.DissolvedMetalMilligramsPerLitre,
            ["dissolved_metal_share"] = plan.DissolvedMetalShare,
        };
        document["precision"] = new Dictionary<string, object?> { ["alkali_g_per_0_1_ph"] = Finite(plan.AlkaliPerTenthPh.Times(plan.Input.Alkali.GramsPerUnit)) };
        document["telling_reading"] = plan.Telling is { } t
            ? new Dictionary<string, object?> { ["at_alkali_g"] = t.AtAlkali * plan.Input.Alkali.GramsPerUnit, ["ph_if_hydroxide"] = t.PhIfHydroxide, ["ph_if_basic_sulfate"] = t.PhIfBasicSalt }
            : null;
        document["end_ph_gas_held"] = plan.EndPhGasHeld;
        document["end_ph_gas_gone"] = plan.EndPhGasGone;
        document["solids"] = plan.Solids.Select(s => new Dictionary<string, object?> { ["name"] = s.PlainName, ["phase"] = s.Phase, ["g"] = s.Grams }).ToArray();
        document["yield_g"] = plan.YieldGrams;
        document["metal_mmol_per_g_colourant"] = plan.MetalMillimolesPerGramColourant;
        document["wash"] = plan.Washes.Select(w => new Dictionary<string, object?>
        {
            ["wash"] = w.Number,
            ["water_ml"] = Math.Round(w.WaterMillilitres),
            ["conductivity_us_cm_25c"] = w.MicrosiemensPerCm25,
            ["conductivity_us_cm_20c"] = w.MicrosiemensPerCm20,
            ["salt_left_g"] = w.SaltLeftGrams,
        }).ToArray();
        document["rule_of_thumb"] = plan.Rules.Select(r => new Dictionary<string, object?> { ["rule"] = r.Key, ["alkali_g"] = r.Alkali * plan.Input.Alkali.GramsPerUnit, ["ph_there"] = r.PhThere }).ToArray();
        document["findings"] = plan.Findings.Select(f => new Dictionary<string, object?> { ["key"] = f.Key, ["level"] = f.Level, ["text"] = Words.FindingWords.Of(f, plan), ["values"] = f.Values }).ToArray();
        document["cautions"] = Cautions(answer);
        document["assumptions"] = Assumptions(answer);
        return document;
    }

    internal static Dictionary<string, object?> Refused(PlanRefusal refusal) => new() { ["refused"] = refusal.What, ["reason"] = refusal.Reason, ["instead"] = refusal.Instead };

    internal static Dictionary<string, object?> NotPlanned(PlanAnswer answer)
    {
        var document = new Dictionary<string, object?> { ["reason"] = NotPlannedWords.NotPlanned(answer) };
        if (answer.Outcome is PlanOutcome.CannotReach no)
        {
            document["aim_ph"] = no.AimPh.Value;
            document["reachable_ph"] = no.ReachablePh;
            document["lowest_ph_with_metal_down"] = no.LowestPhWithMetalDown;
            document["dissolved_metal_share"] = no.DissolvedThere;
        }
        if (answer.Outcome is PlanOutcome.MetalStays stays)
        {
            document["least_dissolved_metal_share"] = stays.LeastDissolvedShare;
            document["ph_there"] = stays.Ph;
        }
        document["assumptions"] = Assumptions(answer);
        return document;
    }

    private static Dictionary<string, object?> Inputs(PlanAnswer answer, LakePlan plan)
    {
        LakePlanInput i = plan.Input;
        return new Dictionary<string, object?>
        {
            ["dyestuff"] = answer.Dyestuff?.Key,
            ["dry_g"] = i.DryDyestuff?.Grams,
            ["water_ml"] = i.Water.Millilitres,
            ["hardness_dh"] = i.Hardness.GermanDegrees,
            ["salt"] = i.Salts[0].Substance.Key,
            ["salt_formula"] = i.Salts[0].Substance.Formula,
            ["salt_g"] = i.Salts[0].Amount.Grams,
            ["second_salt"] = i.Salts.Count > 1 ? i.Salts[1].Substance.Key : null,
            ["second_salt_g"] = i.Salts.Count > 1 ? i.Salts[1].Amount.Grams : null,
            ["alkali"] = i.Alkali.Key,
            ["alkali_formula"] = i.Alkali.Formula,
            ["order"] = i.Order == OrderOfAddition.SaltFirst ? "salt-first" : "alkali-first",
            ["temperature_c"] = i.Temperature.Celsius,
            ["aim"] = i.Aim switch { PlanAim.ToPh => "to-ph", PlanAim.AlkaliAmount => "alkali-amount", _ => "all-down" },
            ["to_ph"] = i.Aim is PlanAim.ToPh a ? a.Ph.Value : i.StatedPh?.Value,
            ["vessel_ml"] = i.Vessel?.Millilitres,
            ["scale_g"] = i.ScaleStep.Grams,
            ["strips_ph"] = i.StripStepPh,
            ["wash_to_us_cm"] = i.WashTo.MicrosiemensPerCentimetre,
            ["typed"] = PlanFields.All.Where(f => answer.Request[f] is not null).ToDictionary(f => f, f => answer.Request[f]),
        };
    }

    private static object Cautions(PlanAnswer answer) => answer.Cautions.Select(c => new Dictionary<string, object?> { ["key"] = c.Key, ["text"] = c.Text, ["severity"] = c.IsDanger ? "danger" : Json.Name(c.Level) }).ToArray();

    private static object Assumptions(PlanAnswer answer) => answer.Assumptions.Select(a => new Dictionary<string, object?> { ["field"] = a.Field, ["text"] = a.Text, ["source"] = a.Source }).ToArray();

    private static Estimate? Finite(Estimate e) => double.IsFinite(e.Value) ? e : null;
}
