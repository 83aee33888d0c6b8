namespace Alumroot.Paint.Arithmetic;

/// <summary>Powder kneaded with a thin solution of gum, rolled into sticks.</summary>
/// <param name="PowderGrams">Pigment and white together.</param>
/// <param name="PowderGramsPerMillilitre">Density of the powder without air.</param>
/// <param name="SolutionGrams">Solution of gum.</param>
/// <param name="GumFraction">Share of gum in the solution, by mass.</param>
/// <param name="SolidFraction">Share of the dry stick's volume that is solid; the rest is air.</param>
public readonly record struct PastelDough(double PowderGrams, double PowderGramsPerMillilitre, double SolutionGrams, double GumFraction, double SolidFraction)
{
    /// <summary>Gum that stays.</summary>
    public double GumGrams => SolutionGrams * GumFraction;

    /// <summary>Mass of the dry sticks.</summary>
    public double DryGrams => PowderGrams + GumGrams;

    /// <summary>Water that goes.</summary>
    public double WaterGrams => SolutionGrams - GumGrams;

    /// <summary>Volume of the dry sticks with their air.</summary>
    public double DryMillilitres => (PowderGrams / PowderGramsPerMillilitre + GumGrams / Densities.GumGramsPerMillilitre) / SolidFraction;

    /// <summary>Volume of the dough.</summary>
    public double WetMillilitres => PowderGrams / PowderGramsPerMillilitre + GumGrams / Densities.GumGramsPerMillilitre + WaterGrams / Densities.WaterGramsPerMillilitre;

    /// <summary>By which share a stick grows shorter; nothing when it dries no smaller than the dough.</summary>
    public double LinearShrinkageFraction => Math.Max(0, 1 - Math.Cbrt(DryMillilitres / WetMillilitres));

    /// <summary>How many sticks it gives.</summary>
    /// <param name="diameterMillimetres">Of a dry stick.</param>
    /// <param name="lengthMillimetres">Of a dry stick.</param>
    public double Sticks(double diameterMillimetres, double lengthMillimetres) => DryMillilitres / (Math.PI / 4 * diameterMillimetres * diameterMillimetres * lengthMillimetres / 1000);

    /// <summary>Shares of gum when a solution is let down again and again.</summary>
    /// <param name="waterParts">Parts of water to one of gum at first.</param>
    /// <param name="addedParts">Parts of water to one of the last solution.</param>
    /// <param name="steps">How many strengths.</param>
    public static IReadOnlyList<double> Strengths(double waterParts, double addedParts, int steps) => [.. Enumerable.Range(0, steps).Select(k => 1 / (1 + waterParts) / Math.Pow(1 + addedParts, k))];
}
