using System.Globalization;
using System.Text;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;

namespace Alumroot.App.Verbs.Plan;

/// <summary>The path of a plan as comma-separated values, numbers with a point.</summary>
internal static class PlanTable
{
    internal static string Of(LakePlan plan)
    {
        string unit = plan.Input.Alkali.Unit == SubstanceUnit.Gram ? "g" : "ml";
        var text = new StringBuilder();
        text.AppendLine(CultureInfo.InvariantCulture, $"alkali_{unit},salt_share,ph,ph_low,ph_high,gas_l,gas_l_low,gas_l_high,solid_g,solid_g_low,solid_g_high,dissolved_metal_mg_per_l,dissolved_metal_mg_per_l_low,dissolved_metal_mg_per_l_high");
        foreach (PlanPoint p in plan.Curve)
            text.AppendLine(CultureInfo.InvariantCulture, $"{p.Alkali:0.####},{p.SaltShare:0.####},{Three(p.Ph)},{Three(p.GasLitres)},{Three(p.SolidGrams)},{Three(p.DissolvedMetalMilligramsPerLitre)}");
        return text.ToString();
    }

    private static string Three(Estimate e) => string.Create(CultureInfo.InvariantCulture, $"{e.Value:0.#####},{e.Low:0.#####},{e.High:0.#####}");
}
