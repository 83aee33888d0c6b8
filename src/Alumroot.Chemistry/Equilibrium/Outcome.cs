namespace Alumroot.Chemistry.Equilibrium;

/// <summary>What came of one solve: solved with a state, or not solved with a reason. Nobody can read a pH from a failure.</summary>
public abstract record Outcome
{
    private Outcome() { }

    /// <summary>Solved; the state fulfils mass, charge and phase rules as <paramref name="Proof"/> shows.</summary>
    /// <param name="State">The state.</param>
    /// <param name="Proof">Its residuals.</param>
    public sealed record Solved(EquilibriumState State, Residuals Proof) : Outcome;

    /// <summary>Not solved.</summary>
    /// <param name="Reason">Why not.</param>
    public sealed record NotSolved(WhyNot Reason) : Outcome;
}
