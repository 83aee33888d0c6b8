using System.Globalization;
using Alumroot.App.Parts;
using Alumroot.App.Requests;
using Alumroot.Catalogue;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities.Writing;

namespace Alumroot.App.Words;

/// <summary>The cautions of a plan: what the plan itself found, and what the handbook says of its substances and its plant.</summary>
public static class PlanCautions
{
    /// <summary>All cautions, gravest first, each once.</summary>
    public static IReadOnlyList<PlanCaution> For(PlanAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var list = new List<PlanCaution>();
        if (answer.Plan is not { } plan) return list;
        foreach (Finding f in plan.Findings)
            if (f.Level != FindingLevel.Note) list.Add(new PlanCaution(f.Key, FindingWords.Of(f, plan), Level(f.Level), f.Key == "ammonia-vapour"));
        if (answer.MixUps.Count > 0)
            list.Add(new PlanCaution("would-fit", $"The stated pH would fit if the packet held {string.Join("; or ", answer.MixUps.Take(3).Select(m => $"{m.Instead.PlainName}, pH {QuantityText.OfPh(m.Ph)}"))}. Check the packets.", CautionWord.DoesNotAddUp));
        if (answer.Laking is { Answer: LakingAnswer.DoesNotTake or LakingAnswer.HardlyTakes or LakingAnswer.TakesPartly or LakingAnswer.NotKnown } laking)
            list.Add(new PlanCaution("will-it-take", $"{answer.Dyestuff!.Name}: {CatalogueWords.Sentence(laking)} {Ended(laking.Reason)} Try a few grams in a jar before the day is spent on it.", CautionWord.Mind));
        foreach (string key in HandbookKeys(answer, plan)) AddHandbook(list, key, plan);
        return [.. list.DistinctBy(c => c.Key).OrderByDescending(c => Rank(c.Level)).ThenByDescending(c => c.IsDanger || c.Key == "froth")];
    }

    private static IEnumerable<string> HandbookKeys(PlanAnswer answer, LakePlan plan)
    {
        CatalogueData data = CatalogueData.Embedded;
        foreach (SaltAmount s in plan.Salts)
        {
            foreach (string key in data.FindReagent(s.Substance.Key)?.CautionKeys ?? []) yield return key;
            if (s.Substance.MolPerUnit("Cu+2") > 0) yield return "copper-waste";
            if (s.Substance.MolPerUnit("FeII+2") + s.Substance.MolPerUnit("FeIII+3") > 0) yield return "iron-child";
            if (s.Substance.MolPerUnit("Zn+2") > 0) yield return "zinc-waste";
            if (s.Substance.MolPerUnit("SnII+2") > 0) yield return "tin";
        }
        foreach (string key in data.FindReagent(plan.Input.Alkali.Key)?.CautionKeys ?? []) yield return key;
        if (plan.Input.Alkali.CarbonDioxideMolPerUnit > 0) yield return "closed-vessel";
        if (plan.Input.Alkali.MolPerUnit("NH4+") > 0)
        {
            yield return "ammonia-vapour";
            yield return "bleach";
        }
        yield return "pan-metal";
        if (answer.Dyestuff is { } dyestuff && data.FindPlantHazard(dyestuff.Key) is { } plant)
            foreach (string key in plant.CautionKeys) yield return key;
        yield return "dust";
        yield return "food-ware";
        yield return "professional";
    }

    private static void AddHandbook(List<PlanCaution> list, string key, LakePlan plan)
    {
        // The plan's own finding on froth says more, and without carbonate nothing froths.
        if (key == "co2-foam" || list.Any(c => c.Key == key)) return;
        if (CatalogueData.Embedded.FindCaution(key) is not { } caution || caution.Severity == Severity.Refuse) return;
        string text = caution.Text;
        foreach (string placeholder in caution.Placeholders)
        {
            string? value = placeholder switch
            {
                "gas_l" => plan.AllGasLitres.ToString("0.#", CultureInfo.InvariantCulture),
                "vessel_l" => Math.Ceiling(plan.LeastVesselLitres).ToString(CultureInfo.InvariantCulture),
                _ => null,
            };
            if (value is null) return;   // A caution about a room or a solvent, of which a plan knows nothing.
            text = text.Replace("{" + placeholder + "}", value, StringComparison.Ordinal);
        }
        list.Add(new PlanCaution(key, Ended(text), CautionWord.Mind, caution.Severity == Severity.Danger));
    }

    private static CautionWord Level(FindingLevel level) => level switch
    {
        FindingLevel.ChangeFirst => CautionWord.ChangeThisFirst,
        FindingLevel.DoesNotAddUp => CautionWord.DoesNotAddUp,
        _ => CautionWord.Mind,
    };

    private static int Rank(CautionWord word) => word switch { CautionWord.ChangeThisFirst => 3, CautionWord.DoesNotAddUp => 2, _ => 1 };

    private static string Ended(string text) => text.Length == 0 || text.EndsWith('.') ? text : text + ".";
}
