namespace Alumroot.Catalogue;

/// <summary>A measured solubility: grams of the water-free substance that dissolve in 100 g of water, against temperature.</summary>
/// <remarks>Immutable. Between two rows a straight line is taken; outside the rows nothing is said.</remarks>
public sealed class SolubilityCurve
{
    internal SolubilityCurve(string key, IEnumerable<SolubilityPoint> points)
    {
        Key = key;
        Points = [.. points.OrderBy(p => p.TemperatureCelsius)];
    }

    /// <summary>The name of the curve in the table; several hydrates share one.</summary>
    public string Key { get; }

    /// <summary>The rows, cold to hot; at least one.</summary>
    public IReadOnlyList<SolubilityPoint> Points { get; }

    /// <summary>Grams of the water-free substance per 100 g of water, by a straight line between the two rows around the temperature.</summary>
    /// <param name="temperatureCelsius">A temperature; not a number gives null.</param>
    /// <returns>Null outside the table. A table of one row answers at that temperature only.</returns>
    public double? AnhydrousGramsPer100GramsWater(double temperatureCelsius)
    {
        for (int i = 0; i < Points.Count; i++)
        {
            SolubilityPoint upper = Points[i];
            if (upper.TemperatureCelsius == temperatureCelsius) return upper.AnhydrousGramsPer100GramsWater;
            if (i == 0 || upper.TemperatureCelsius < temperatureCelsius) continue;
            SolubilityPoint lower = Points[i - 1];
            if (!(temperatureCelsius > lower.TemperatureCelsius)) return null;
            double share = (temperatureCelsius - lower.TemperatureCelsius) / (upper.TemperatureCelsius - lower.TemperatureCelsius);
            return lower.AnhydrousGramsPer100GramsWater
                + share * (upper.AnhydrousGramsPer100GramsWater - lower.AnhydrousGramsPer100GramsWater);
        }
        return null;
    }

    internal static SolubilityPoint ReadPoint(Reading.Fields row) => new(
        row.Number("temperature_c"),
        row.Number("anhydrous_g_per_100g_water"),
        row.Text("solid_phase"),
        row.Citation());
}
