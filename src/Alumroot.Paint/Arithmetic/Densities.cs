namespace Alumroot.Paint.Arithmetic;

/// <summary>Densities at room temperature in grams per millilitre, and what the parts are made of; handbook values from memory where nothing else is said.</summary>
public static class Densities
{
    /// <summary>Water at 20 °C (CRC Handbook, from memory).</summary>
    public const double WaterGramsPerMillilitre = 0.998;

    /// <summary>Linseed oil of the method of oil absorption (ISO 787-5, from memory).</summary>
    public const double LinseedOilGramsPerMillilitre = 0.935;

    /// <summary>Dry gum arabic or tragacanth.</summary>
    public const double GumGramsPerMillilitre = 1.40;

    /// <summary>Glycerine.</summary>
    public const double GlycerineGramsPerMillilitre = 1.261;

    /// <summary>Honey with its water.</summary>
    public const double HoneyGramsPerMillilitre = 1.42;

    /// <summary>The share of honey that is water.</summary>
    public const double HoneyWaterFraction = 0.17;

    /// <summary>Egg yolk as it is.</summary>
    public const double YolkGramsPerMillilitre = 1.03;

    /// <summary>One yolk of a hen's egg.</summary>
    public const double YolkGrams = 17;

    /// <summary>Dry yolk: fat and protein.</summary>
    public const double DryYolkGramsPerMillilitre = 1.035;

    /// <summary>Beeswax.</summary>
    public const double BeeswaxGramsPerMillilitre = 0.96;

    /// <summary>Damar resin.</summary>
    public const double DamarGramsPerMillilitre = 1.06;

    /// <summary>What stays of an alkyd medium.</summary>
    public const double AlkydSolidsGramsPerMillilitre = 1.05;
}
