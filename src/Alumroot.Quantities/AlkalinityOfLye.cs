namespace Alumroot.Quantities;

/// <summary>How much strong acid a litre of lye takes up, in moles of hydrogen ion per litre.</summary>
/// <remarks>default is 0, plain water: an untested lye is <c>AlkalinityOfLye?</c>. From 0 to 50 mol/L. One mole of potassium carbonate counts as two.</remarks>
public readonly record struct AlkalinityOfLye : IComparable<AlkalinityOfLye>
{
    private AlkalinityOfLye(double molesPerLitre) => MolesPerLitre = molesPerLitre;

    /// <summary>In moles of hydrogen ion taken up per litre.</summary>
    public double MolesPerLitre { get; }

    /// <summary>An alkalinity in moles per litre.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, above 50, or not finite.</exception>
    public static AlkalinityOfLye FromMolesPerLitre(double molesPerLitre) => new(Within.Range(molesPerLitre, 0, 50));

    /// <summary>How much acid that volume of the lye takes up.</summary>
    public static AmountOfSubstance operator *(AlkalinityOfLye strength, Volume lye) => AmountOfSubstance.FromMoles(strength.MolesPerLitre * lye.Litres);

    /// <summary>Less than.</summary>
    public static bool operator <(AlkalinityOfLye left, AlkalinityOfLye right) => left.MolesPerLitre < right.MolesPerLitre;

    /// <summary>More than.</summary>
    public static bool operator >(AlkalinityOfLye left, AlkalinityOfLye right) => left.MolesPerLitre > right.MolesPerLitre;

    /// <summary>Less than or equal.</summary>
    public static bool operator <=(AlkalinityOfLye left, AlkalinityOfLye right) => left.MolesPerLitre <= right.MolesPerLitre;

    /// <summary>More than or equal.</summary>
    public static bool operator >=(AlkalinityOfLye left, AlkalinityOfLye right) => left.MolesPerLitre >= right.MolesPerLitre;

    /// <inheritdoc/>
    public int CompareTo(AlkalinityOfLye other) => MolesPerLitre.CompareTo(other.MolesPerLitre);

    /// <summary>For logs and tests, with all digits; what people read is made in Writing.</summary>
    public override string ToString() => FormattableString.Invariant($"{MolesPerLitre} mol/L");
}
