using Alumroot.Chemistry.Constants;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Planning;

/// <summary>What a maker should know about a plan, as keys with values; the words are the app's.</summary>
internal static class PlanFindings
{
    // Coarser strips end within 0.3 of the aim in three of four simulated batches only (docs/models/assimilation.md).
    private const double FineStripStepPh = 0.3;

    internal static IReadOnlyList<Finding> For(LakePlan plan, BathModel bath, double washWaterMicrosiemens, Estimate? phForStated, double beyondShare)
    {
        var list = new List<Finding>();
        LakePlanInput input = plan.Input;
        bool aluminium = bath.Metals.Contains("Al+3");
        double celsius = input.Temperature.Celsius;
        bool carbonate = input.Alkali.CarbonDioxideMolPerUnit > 0;

        if (input.Vessel is { } vessel && vessel.Litres < plan.LeastVesselLitres)
            Say("vessel-too-small", vessel.Litres < (carbonate ? 2 : 1.1) * plan.LiquidLitres ? FindingLevel.ChangeFirst : FindingLevel.Mind,
                ("vessel_l", vessel.Litres), ("least_l", plan.LeastVesselLitres), ("liquid_l", plan.LiquidLitres), ("parts", Math.Ceiling(plan.LeastVesselLitres / vessel.Litres)));
        if (input.StatedPh is { } stated && phForStated is { } there && (stated.Value < there.Low - input.StripStepPh / 2 || stated.Value > there.High + input.StripStepPh / 2))
            Say("stated-ph-quarrels", FindingLevel.DoesNotAddUp, ("stated_ph", stated.Value), ("ph", there.Value), ("ph_low", there.Low), ("ph_high", there.High), ("alkali", plan.Alkali.Value));
        if (input.Aim is PlanAim.AlkaliAmount && plan.BasePerMetal > 0 && bath.BaseForMetal > 0)
        {
            double ratio = plan.Alkali.Value / plan.StoichiometricAlkali;
            if (ratio > 1.3 && plan.EndPh.Value > 8) Say("alkali-too-much", FindingLevel.DoesNotAddUp, ("ratio", ratio), ("base_per_metal", plan.BasePerMetal), ("ph", plan.EndPh.Value), ("alkali_needed", plan.StoichiometricAlkali));
            if (ratio < 0.8 && plan.DissolvedMetalShare.Value > 0.05) Say("alkali-too-little", FindingLevel.DoesNotAddUp, ("ratio", ratio), ("base_per_metal", plan.BasePerMetal), ("dissolved_percent", 100 * plan.DissolvedMetalShare.Value), ("alkali_needed", plan.StoichiometricAlkali));
        }
        if (plan.DissolvedMetalShare.Value is > 0.01 && (input.Aim is PlanAim.ToPh ? plan.DissolvedMetalShare.Value <= 0.2 : true) && plan.EndPh.Value < 7) Say("metal-stays-dissolved", FindingLevel.Mind, ("percent", 100 * plan.DissolvedMetalShare.Value), ("percent_high", 100 * plan.DissolvedMetalShare.High));
        if (aluminium && plan.DissolvedMetalShareBlind.High > 0.02 && plan.EndPh.High > 8) Say("lake-dissolves-again", FindingLevel.Mind, ("ph", plan.EndPh.High), ("percent", 100 * plan.DissolvedMetalShareBlind.High));
        if (!carbonate && bath.BaseForMetal > 0) Say("no-carbonate-no-gas", FindingLevel.Note);
        if (plan.EndPhGasGone.Value - plan.EndPhGasHeld.Value > 0.4)
            Say("ph-climbs-as-gas-leaves", FindingLevel.Mind, ("held", plan.EndPhGasHeld.Value), ("gone", plan.EndPhGasGone.Value));
        if (carbonate && plan.GasLitres.Value < 0.3 * plan.AllGasLitres) Say("froth-comes-late", FindingLevel.Mind, ("gas_l", plan.AllGasLitres));
        if (carbonate) Say("froth", FindingLevel.Mind, ("gas_l", plan.AllGasLitres), ("least_l", plan.LeastVesselLitres));
        if (plan.AlkaliPerTenthPh.Value < input.ScaleStep.Grams && input.Alkali.Unit == SubstanceUnit.Gram)
            Say("scale-too-coarse", FindingLevel.Mind, ("per_tenth_g", plan.AlkaliPerTenthPh.Value), ("scale_g", input.ScaleStep.Grams));
        if (plan.AlkaliPerTenthPh.Value < 0.01 * plan.Alkali.Value)
            Say("steep-end", FindingLevel.Mind, ("per_half", 5 * plan.AlkaliPerTenthPh.Value));
        if (input.Aim is PlanAim.ToPh && input.StripStepPh > FineStripStepPh) Say("coarse-strips", FindingLevel.Note, ("step", input.StripStepPh));
        if (plan.Telling is not null) Say("two-solids", FindingLevel.Note);
        else if (bath.IdeaMatters) Say("two-solids-untold", FindingLevel.Note);
        if (aluminium && input.Order == OrderOfAddition.SaltFirst) Say("first-ph-reads-low", FindingLevel.Note, ("ph_low", plan.StartPh.Low), ("ph_high", plan.StartPh.High));
        if (celsius > 45) Say("hot-bath", FindingLevel.Note, ("celsius", celsius));
        if (celsius > 45 && aluminium && plan.EndPh.High > 7.5) Say("hot-and-alkaline", FindingLevel.Mind, ("ph", plan.EndPh.High));
        if (Math.Abs(celsius - 25) > 10 && plan.Solids.Any(s => EmbeddedConstants.Set.FindPhase(s.Phase)!.LacksTemperatureData)) Say("solid-without-enthalpy", FindingLevel.Note);
        if (input.Order == OrderOfAddition.AlkaliFirst && carbonate && aluminium) Say("gel-holds-carbonate", FindingLevel.Note);
        if (plan.EndIonicStrengthMolal.Value > 0.5) Say("strong-solution", FindingLevel.Note, ("ionic_strength", plan.EndIonicStrengthMolal.Value));
        if (input.DryDyestuff is { Grams: < 20 } dry) Say("small-batch", FindingLevel.Mind, ("dry_g", dry.Grams));
        if (bath.SaltMoles("NH4+") > 0 && plan.EndPh.High > 8.5 || input.Alkali.MolPerUnit("NH4+") > 0) Say("ammonia-vapour", FindingLevel.Mind);
        if (plan.Washes.Count > 0 && plan.Washes[^1].MicrosiemensPerCm25.Value > input.WashTo.MicrosiemensPerCentimetre)
            Say("wash-aim-not-reached", FindingLevel.Mind, ("water_us", washWaterMicrosiemens), ("aim_us", input.WashTo.MicrosiemensPerCentimetre));
        if (beyondShare > 0.05) Say("span-is-cut", FindingLevel.Note, ("percent", 100 * beyondShare));
        if (input.Aim is PlanAim.ToPh && plan.DissolvedMetalShare.Value > 0.2) Say("aim-keeps-metal-dissolved", FindingLevel.ChangeFirst, ("percent", 100 * plan.DissolvedMetalShare.Value));
        if (input.Order == OrderOfAddition.AlkaliFirst && input.Aim is not PlanAim.AlkaliAmount) Say("aim-from-other-order", FindingLevel.Note);
        if (input.DryDyestuff is { Grams: > 0 } plant)
        {
            double salt = input.Salts.Sum(x => x.Amount.Grams);
            if (salt < 0.05 * plant.Grams && aluminium) Say("little-salt", FindingLevel.Mind, ("salt_g", salt), ("dry_g", plant.Grams));
            if (input.Water.Millilitres < 3 * plant.Grams) Say("little-water", FindingLevel.Mind, ("water_ml", input.Water.Millilitres), ("dry_g", plant.Grams));
        }
        if (celsius < 4) Say("near-freezing", FindingLevel.Mind, ("celsius", celsius));
        if (!input.WashWithPureWater && input.Hardness.GermanDegrees > 30) Say("hard-wash-water", FindingLevel.Mind, ("degrees", input.Hardness.GermanDegrees));
        return list;

        void Say(string key, FindingLevel level, params (string Name, double Value)[] values) =>
            list.Add(new Finding(key, level, values.ToDictionary(v => v.Name, v => v.Value, StringComparer.Ordinal)));
    }
}
