using Alumroot.Chemistry.Planning;

namespace Alumroot.Chemistry.Assimilation;

/// <summary>How far to look ahead, and what for.</summary>
/// <param name="Aim">The aim.</param>
/// <param name="OfPlan">Grams or millilitres of the whole addition as planned: the measure of steps.</param>
/// <param name="UnitsLeft">With an amount for an aim: what is left of it; otherwise zero.</param>
internal readonly record struct Reach(PlanAim Aim, double OfPlan, double UnitsLeft);
