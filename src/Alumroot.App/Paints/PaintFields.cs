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
        _ => field,
    };
}
