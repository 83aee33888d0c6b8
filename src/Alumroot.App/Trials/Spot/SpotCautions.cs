using Alumroot.App.Words;
using Alumroot.Catalogue;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Trials.Spot;

/// <summary>What has to be minded with a few drops of these salts, and of the plant; the pages of the salts say the rest.</summary>
internal static class SpotCautions
{
    private static readonly string[] Always = ["eyes", "iron-child", "copper-waste", "food-ware", "professional"];

    /// <summary>The cautions, each once; those of the lot's dyestuff last.</summary>
    internal static IReadOnlyList<string> Of(LotState? lot)
    {
        CatalogueData data = CatalogueData.Embedded;
        IEnumerable<string> plant = lot?.Bought?.PlanName is { } name && data.FindDyestuff(name) is { } dyestuff ? data.FindPlantHazard(dyestuff.Key)?.CautionKeys ?? [] : [];
        return [.. Always.Concat(plant).Distinct(StringComparer.Ordinal).Select(data.FindCaution).OfType<Caution>().Where(c => c.Placeholders.Count == 0 && c.Severity != Severity.Refuse).Select(c => CatalogueWords.Printed(c.Text))];
    }
}
