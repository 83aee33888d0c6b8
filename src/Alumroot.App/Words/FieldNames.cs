using Alumroot.App.Requests;

namespace Alumroot.App.Words;

/// <summary>What the fields of the forms are called on the page and in sentences.</summary>
public static class FieldNames
{
    private static readonly Dictionary<string, string> Names = new(StringComparer.Ordinal)
    {
        [PlanFields.Dyestuff] = "Dyestuff",
        [PlanFields.Dry] = "Dry dyestuff",
        [PlanFields.Fresh] = "Fresh dyestuff",
        [PlanFields.Water] = "Water",
        [PlanFields.Hardness] = "Hardness",
        [PlanFields.LiquorPh] = "pH of the liquor",
        [PlanFields.Salt] = "Salt",
        [PlanFields.SaltAmount] = "Amount of salt",
        [PlanFields.SecondSalt] = "Second salt",
        [PlanFields.SecondSaltAmount] = "Amount of the second salt",
        [PlanFields.Alkali] = "Alkali",
        [PlanFields.AlkaliAmount] = "Amount of alkali",
        [PlanFields.AlkaliStrength] = "Strength of the alkali",
        [PlanFields.BakedBefore] = "Baking soda before baking",
        [PlanFields.BakedAfter] = "Powder after baking",
        [PlanFields.Order] = "Order",
        [PlanFields.Temperature] = "Temperature",
        [PlanFields.Aim] = "Aim",
        [PlanFields.ToPh] = "Final pH",
        [PlanFields.AllDown] = "All metal down",
        [PlanFields.Vessel] = "Vessel",
        [PlanFields.Scale] = "Step of the scale",
        [PlanFields.Strips] = "Step of the pH strips",
        [PlanFields.WashTo] = "Wash to",
        [PlanFields.WashWater] = "Water for washing",
        [PlanFields.Kitchen] = "Cups and pints",
        [PlanFields.Units] = "Units shown",
        [PlanFields.DyestuffLot] = "Lot of the dyestuff",
        [PlanFields.SaltLot] = "Lot of the salt",
        [PlanFields.AlkaliLot] = "Lot of the alkali",
        [PlanFields.RepeatOf] = "Batch repeated",
        [AirRequest.Solvent] = "Solvent",
        [AirRequest.Amount] = "Amount",
        [AirRequest.Room] = "Room",
        [AirRequest.Opening] = "Opening of the vessel",
        [AirRequest.Hours] = "Hours it stands open",
        [AirRequest.AiringField] = "Airing",
    };

    /// <summary>The label of a field.</summary>
    public static string Of(string field) => Names.GetValueOrDefault(field, field);
}
