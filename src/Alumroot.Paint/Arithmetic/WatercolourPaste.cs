namespace Alumroot.Paint.Arithmetic;

/// <summary>A paste of pigment, gum, glycerine, honey and water, and what is left of it in a pan.</summary>
/// <param name="Pigment">The pigment.</param>
/// <param name="GumGrams">Dry gum.</param>
/// <param name="GlycerineGrams">Glycerine.</param>
/// <param name="HoneyGrams">Honey with its water.</param>
/// <param name="WaterGrams">Water that was added.</param>
/// <param name="WaterKeptFraction">The share of all water that a dry pan still holds.</param>
public readonly record struct WatercolourPaste(DryPigment Pigment, double GumGrams, double GlycerineGrams, double HoneyGrams, double WaterGrams, double WaterKeptFraction)
{
    private const double Full = 0.95;
    private const int MostPours = 60;

    /// <summary>Mass of the wet paste.</summary>
    public double WetGrams => Pigment.Grams + GumGrams + GlycerineGrams + HoneyGrams + WaterGrams;

    /// <summary>Volume of the wet paste; volumes are taken to add.</summary>
    public double WetMillilitres => Pigment.Millilitres + GumGrams / Densities.GumGramsPerMillilitre + GlycerineGrams / Densities.GlycerineGramsPerMillilitre
        + HoneyGrams / Densities.HoneyGramsPerMillilitre + WaterGrams / Densities.WaterGramsPerMillilitre;

    /// <summary>Water that goes.</summary>
    public double WaterLostGrams => (1 - WaterKeptFraction) * (WaterGrams + Densities.HoneyWaterFraction * HoneyGrams);

    /// <summary>Mass of the dry paint.</summary>
    public double DryGrams => WetGrams - WaterLostGrams;

    /// <summary>Volume of the dry paint.</summary>
    public double DryMillilitres => WetMillilitres - WaterLostGrams / Densities.WaterGramsPerMillilitre;

    /// <summary>The share of the wet volume that goes.</summary>
    public double ShrinkageFraction => 1 - DryMillilitres / WetMillilitres;

    /// <summary>What keeps the paint soft, as a share of the dry binder.</summary>
    public double HumectantFraction
    {
        get
        {
            double soft = GlycerineGrams + (1 - Densities.HoneyWaterFraction) * HoneyGrams;
            return soft + GumGrams > 0 ? soft / (soft + GumGrams) : 0;
        }
    }

    /// <summary>How often a pan is filled to the brim and dried until it is full to 95 %.</summary>
    public int PoursToFill
    {
        get
        {
            int pours = 1;
            while (1 - Math.Pow(ShrinkageFraction, pours) < Full && pours < MostPours) pours++;
            return pours;
        }
    }

    /// <summary>Wet paste for a pan that is filled so often.</summary>
    /// <param name="panMillilitres">What the pan holds.</param>
    public double WetMillilitresPerPan(double panMillilitres) => panMillilitres * (1 - Math.Pow(ShrinkageFraction, PoursToFill)) / (1 - ShrinkageFraction);
}
