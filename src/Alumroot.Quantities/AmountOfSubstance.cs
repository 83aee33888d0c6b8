namespace Alumroot.Quantities;

/// <summary>How many particles, in moles.</summary>
/// <remarks>default is 0 mol, a real amount. Never negative: a shortfall is a plain number of the unit, not a negative amount.</remarks>
public readonly record struct AmountOfSubstance : IComparable<AmountOfSubstance>
{
    private AmountOfSubstance(double moles) => Moles = moles;

    /// <summary>Nothing.</summary>
    public static AmountOfSubstance Zero => default;

    /// <summary>In moles.</summary>
    public double Moles { get; }

    /// <summary>In millimoles.</summary>
    public double Millimoles => Moles * 1000;

    /// <summary>An amount in moles.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or not finite.</exception>
    public static AmountOfSubstance FromMoles(double moles) => new(Within.NotNegative(moles));

    /// <summary>An amount in millimoles.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or not finite.</exception>
    public static AmountOfSubstance FromMillimoles(double millimoles) => FromMoles(millimoles / 1000);

    /// <summary>Both together.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The sum is not finite.</exception>
    public static AmountOfSubstance operator +(AmountOfSubstance left, AmountOfSubstance right) => FromMoles(left.Moles + right.Moles);

    /// <summary>What is left when the second is taken away from the first.</summary>
    /// <exception cref="ArgumentOutOfRangeException">More is taken away than there is.</exception>
    public static AmountOfSubstance operator -(AmountOfSubstance left, AmountOfSubstance right) => FromMoles(left.Moles - right.Moles);

    /// <summary>So many times as much.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The factor is negative or the product is not finite.</exception>
    public static AmountOfSubstance operator *(AmountOfSubstance amount, double factor) => FromMoles(amount.Moles * factor);

    /// <summary>One of so many equal shares.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The divisor is negative or zero.</exception>
    public static AmountOfSubstance operator /(AmountOfSubstance amount, double divisor) => FromMoles(amount.Moles / divisor);

    /// <summary>How many times the second goes into the first; infinite or not a number when the second is zero.</summary>
    public static double operator /(AmountOfSubstance left, AmountOfSubstance right) => left.Moles / right.Moles;

    /// <summary>Less than.</summary>
    public static bool operator <(AmountOfSubstance left, AmountOfSubstance right) => left.Moles < right.Moles;

    /// <summary>More than.</summary>
    public static bool operator >(AmountOfSubstance left, AmountOfSubstance right) => left.Moles > right.Moles;

    /// <summary>Less than or equal.</summary>
    public static bool operator <=(AmountOfSubstance left, AmountOfSubstance right) => left.Moles <= right.Moles;

    /// <summary>More than or equal.</summary>
    public static bool operator >=(AmountOfSubstance left, AmountOfSubstance right) => left.Moles >= right.Moles;

    /// <inheritdoc/>
    public int CompareTo(AmountOfSubstance other) => Moles.CompareTo(other.Moles);

    /// <summary>For logs and tests, with all digits; what people read is made in Writing.</summary>
    public override string ToString() => FormattableString.Invariant($"{Moles} mol");
}
