using Alumroot.Paint.Arithmetic;

namespace Alumroot.Paint.Recipes;

/// <summary>One strength of a test row of pastel.</summary>
/// <param name="GumFraction">Share of gum in the solution, by mass.</param>
/// <param name="SolutionGrams">Solution for its powder.</param>
public readonly record struct PastelTrial(double GumFraction, double SolutionGrams);

/// <summary>One tint of a row from the full colour towards white.</summary>
/// <param name="PigmentFraction">Share of pigment in the powder.</param>
/// <param name="ChalkGrams">Chalk that is kneaded in at this step.</param>
/// <param name="DoughPowderGrams">Powder of the dough that is kept at this step.</param>
public readonly record struct PastelTint(double PigmentFraction, double ChalkGrams, double DoughPowderGrams);

/// <summary>What is made of pastel before the sticks: a row of strengths, and the tints with chalk. Common practice, no source for its numbers.</summary>
public static class PastelSeries
{
    /// <summary>Parts of water to one of gum in the strong solution.</summary>
    public const double StrongWaterParts = 30;

    /// <summary>Parts of water that let one part of solution down to the next.</summary>
    public const double LetDownParts = 2;

    private const double SolutionPerPowder = 0.35;
    private const int Strengths = 3;

    /// <summary>Three strengths, strongest first, each for so much powder.</summary>
    /// <param name="powderGrams">Powder for each trial.</param>
    public static IReadOnlyList<PastelTrial> TestRow(double powderGrams) =>
        [.. PastelDough.Strengths(StrongWaterParts, LetDownParts, Strengths).Select(gum => new PastelTrial(gum, powderGrams * SolutionPerPowder))];

    /// <summary>Tints by halving: half of each dough is kept, the other half is kneaded with as much chalk.</summary>
    /// <param name="pigmentGrams">Pigment to begin with.</param>
    /// <param name="tints">How many, the full colour among them.</param>
    public static IReadOnlyList<PastelTint> Tints(double pigmentGrams, int tints = 5) =>
        [.. Enumerable.Range(0, tints).Select(k => new PastelTint(Math.Pow(0.5, k), k == 0 ? 0 : pigmentGrams / 2, k == tints - 1 && k > 0 ? pigmentGrams : pigmentGrams / 2))];
}
