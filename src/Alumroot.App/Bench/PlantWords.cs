using System.Globalization;
using Alumroot.App.Words;
using Alumroot.Chemistry.Process;
using Alumroot.Quantities;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Bench;

/// <summary>How much colour is left in the plant, from the baths of the record.</summary>
internal static class PlantWords
{
    // What a soaked plant keeps when more was strained off than was poured on, as a part of what was poured on; common practice, no source.
    private const double LeastKeptRatio = 0.05;

    /// <summary>Names of a glass of a dilution row: its part of liquor and its absorbance, with the number of the glass behind.</summary>
    public const string PartName = "part-", AbsorbanceName = "absorbance-";

    /// <summary>The baths so far, each with the strength of its liquor where a dilution row was read.</summary>
    public static IReadOnlyList<Bath> Baths(LakeInWork lake)
    {
        if (lake.Plan is not { } plan) return [];
        var baths = new List<Bath>();
        foreach ((StepTaken taken, Act act) in lake.Done)
        {
            if (act == Acts.Strained && taken.Step.Values.FirstOrDefault(v => v.SiUnit == Measured.CubicMetre) is { SiValue: > 0 } strained)
            {
                double on = plan.Input.Water.Litres, off = strained.SiValue * 1000;
                baths.Add(new Bath(Volume.FromLitres(off), Volume.FromLitres(Math.Max(on - off, LeastKeptRatio * on)), null));
            }
            else if (act == Acts.RowRead && baths.Count > 0 && DilutionRow.Of(Glasses(taken.Step)) is { } row)
            {
                baths[^1] = baths[^1] with { Strength = row.Absorbance };
            }
        }
        return baths;
    }

    /// <summary>The glasses of a row that was kept.</summary>
    public static IReadOnlyList<DilutionGlass> Glasses(BatchStep step) =>
    [
        .. step.Values.Where(v => v.Name.StartsWith(PartName, StringComparison.Ordinal))
            .Select(part => (part, Absorbs: step.Values.FirstOrDefault(v => v.Name == AbsorbanceName + part.Name[PartName.Length..])))
            .Where(g => g.Absorbs is not null).Select(g => new DilutionGlass(g.part.SiValue, g.Absorbs!.SiValue)),
    ];

    /// <summary>What is left and whether another bath pays; nothing before the first was strained.</summary>
    public static IReadOnlyList<string> Of(LakeInWork lake)
    {
        if (ExtractionStages.Of(Baths(lake)) is not { } plant) return [];
        string left = $"{PlanNumbers.PercentSpan(plant.LeftRatio)} of the colour may still be in the plant; another bath like this would bring {PlanNumbers.PercentSpan(plant.NextOfFirstRatio)} of what the first brought.";
        return [left, plant.Measured < 2 ? "That is only what is usual. A dilution row of two baths tells it for your plant." : $"By the dilution rows of {plant.Measured} baths."];
    }

    /// <summary>What is wrong with the last row, if anything is.</summary>
    public static string? RowRemark(LakeInWork lake)
    {
        if (lake.Latest != Acts.RowRead) return null;
        IReadOnlyList<DilutionGlass> glasses = Glasses(lake.Done[^1].Taken.Step);
        return DilutionRow.Of(glasses) is not { } row ? "No glass of the row lies between an absorbance of 0.05 and 1.5, so it tells nothing: thin more, or less."
            : row.Bends ? "The glasses do not lie on a straight line: stray light, or a dye that changes when it is thinned. Take the paler ones."
            : string.Create(CultureInfo.InvariantCulture, $"The liquor absorbs {row.Absorbance.Value:0.00} ({row.Absorbance.Low:0.00} to {row.Absorbance.High:0.00}) by {row.Used} of {glasses.Count} glasses.");
    }
}
