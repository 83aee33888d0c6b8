namespace Alumroot.Paint.Arithmetic;

/// <summary>A paste of pigment and water, mixed with egg yolk.</summary>
/// <param name="PasteMillilitres">Volume of the paste.</param>
/// <param name="PasteFraction">Share of pigment in the paste, by mass.</param>
/// <param name="PigmentGramsPerMillilitre">Density of the pigment.</param>
/// <param name="YolkPerPaste">Volume of yolk to one of paste.</param>
/// <param name="YolkSolids">Share of the yolk that stays, by mass; 0.52 for yolk as it is.</param>
/// <param name="DryBinderGramsPerMillilitre">Density of what stays of the yolk.</param>
public readonly record struct EggPaint(double PasteMillilitres, double PasteFraction, double PigmentGramsPerMillilitre, double YolkPerPaste, double YolkSolids, double DryBinderGramsPerMillilitre)
{
    /// <summary>Density of the paste.</summary>
    public double PasteGramsPerMillilitre => 1 / (PasteFraction / PigmentGramsPerMillilitre + (1 - PasteFraction) / Densities.WaterGramsPerMillilitre);

    /// <summary>Dry pigment in the paste.</summary>
    public double PigmentGrams => PasteMillilitres * PasteGramsPerMillilitre * PasteFraction;

    /// <summary>Volume of yolk.</summary>
    public double YolkMillilitres => PasteMillilitres * YolkPerPaste;

    /// <summary>Mass of yolk.</summary>
    public double YolkGrams => YolkMillilitres * Densities.YolkGramsPerMillilitre;

    /// <summary>What stays of the yolk.</summary>
    public double DryBinderGrams => YolkGrams * YolkSolids;

    /// <summary>Pigment and binder of the dry film.</summary>
    public PigmentVolume Dry => new(PigmentGrams / PigmentGramsPerMillilitre, DryBinderGrams / DryBinderGramsPerMillilitre);
}
