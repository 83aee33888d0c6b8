namespace Alumroot.Chemistry.Equilibrium;

/// <summary>Proof of a solve: how far each law is from being met, relative to the amounts in it.</summary>
/// <param name="Mass">Worst mass balance, relative to the sum of the absolute terms.</param>
/// <param name="Charge">Net charge over the sum of absolute charges.</param>
/// <param name="Saturation">Worst deviation of a phase in units of ln: a present phase off saturation, or an absent one above it.</param>
public readonly record struct Residuals(double Mass, double Charge, double Saturation)
{
    /// <summary>Whether all laws hold to the accuracy a result must have.</summary>
    public bool Hold => Mass <= 1e-9 && Charge <= 1e-7 && Saturation <= 1e-7;
}

/// <summary>Why a solve gave no result.</summary>
public enum WhyNot
{
    /// <summary>It did succeed.</summary>
    None,

    /// <summary>Newton's method used up its iterations.</summary>
    NoConvergence,

    /// <summary>The equations became singular: the allowed phases contradict each other.</summary>
    Singular,

    /// <summary>The totals cannot be met: water is used up, or a component is there in a negative amount.</summary>
    ImpossibleTotals,

    /// <summary>A number was not finite.</summary>
    NotFinite,

    /// <summary>The set of phases kept changing without settling.</summary>
    PhasesDoNotSettle,
}
