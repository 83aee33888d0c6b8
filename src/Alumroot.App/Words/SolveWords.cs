using Alumroot.Chemistry.Equilibrium;

namespace Alumroot.App.Words;

/// <summary>Why an equilibrium has no result, as words for a table.</summary>
public static class SolveWords
{
    /// <summary>The words for a reason.</summary>
    public static string Of(WhyNot why) => why switch
    {
        WhyNot.NoConvergence => "no proven solution was found; check the amounts and the solids allowed",
        WhyNot.Singular => "the solids allowed contradict each other; allow fewer",
        WhyNot.ImpossibleTotals => "the amounts cannot be met: the water is used up or something is there less than not at all",
        WhyNot.NotFinite => "an amount is not a finite number",
        WhyNot.PhasesDoNotSettle => "the solids do not settle; allow fewer",
        _ => "",
    };
}
