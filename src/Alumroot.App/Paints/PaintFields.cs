using Alumroot.App.Requests;

namespace Alumroot.App.Paints;

/// <summary>The words above the fields of a paint recipe.</summary>
public static class PaintFields
{
    /// <summary>The words above a field.</summary>
    public static string Label(string field) => field switch
    {
        PaintRequest.Lake => "Lake",
        PaintRequest.Pigment => "Name of the pigment",
        PaintRequest.Grams => "Grams in hand",
        PaintRequest.CakeWater => "Of wet cake: percent of water",
        PaintRequest.Oil => "Oil absorption",
        PaintRequest.Density => "Density",
        PaintRequest.MediumField => "Medium",
        PaintRequest.Fill => "Fill into",
        PaintRequest.Count => "How many",
        PaintRequest.Cost => "Cost of the pigment in all",
        PaintRequest.NoHoney => "Without honey, for a damp climate",
        PaintRequest.Colour => "Kind of colour",
        PaintRequest.Loss => "Stays on slab and muller, percent",
        PaintRequest.Preservative => "Preservative",
        PaintRequest.PastePh => "pH of the paste, by strip",
        TintReading.Full => "Full colour",
        TintReading.Tint => "One tint that was made",
        TintReading.TintShare => "Pigment in that tint, percent",
        TintReading.Kept => "A coat of the record",
        TintReading.OverBlack => "Thin coat over black",
        TintReading.OverWhite => "Thin coat over white",
        TintReading.Black => "Bare black card",
        TintReading.White => "Bare white card",
        TintReading.Coverage => "Pigment in the coat, grams on a square metre",
        TintReading.Chalk => "Chalk",
        _ => field,
    };
}
