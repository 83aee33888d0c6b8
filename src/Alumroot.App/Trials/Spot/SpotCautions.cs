using Alumroot.App.Words;
using Alumroot.Catalogue;
using Alumroot.Studio.Journal;
using Alumroot.Trials.Spot;

namespace Alumroot.App.Trials.Spot;

/// <summary>What the handbook says of the salts of the row and of the plant.</summary>
internal static class SpotCautions
{
    private static readonly string[] Always = ["eyes", "iron-child", "copper-waste", "food-ware", "professional"];

    /// <summary>The cautions, each once; those of the lot's dyestuff last.</summary>
    internal static IReadOnlyList<string> Of(LotState? lot)
    {
        CatalogueData data = CatalogueData.Embedded;
        IEnumerable<string> plant = lot?.Bought?.PlanName is { } name && data.FindDyestuff(name) is { } dyestuff ? data.FindPlantHazard(dyestuff.Key)?.CautionKeys ?? [] : [];
        IEnumerable<string> salts = SpotSalt.All.SelectMany(s => data.FindReagent(s.Salt)?.CautionKeys ?? []);
        return [.. Always.Concat(salts).Concat(plant).Distinct(StringComparer.Ordinal).Select(data.FindCaution).OfType<Caution>().Where(c => c.Placeholders.Count == 0 && c.Severity != Severity.Refuse).Select(c => CatalogueWords.Printed(c.Text))];
    }
}
