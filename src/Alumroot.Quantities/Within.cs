using System.Runtime.CompilerServices;

namespace Alumroot.Quantities;

/// <summary>The one check that every factory of a quantity makes.</summary>
internal static class Within
{
    /// <summary>Gives the number back when it is finite and lies between the ends, both included.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is not a number, not finite, or outside.</exception>
    public static double Range(double value, double low, double high, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value) && value >= low && value <= high
            ? value + 0.0 // turns -0 into 0, so that equal amounts are equal
            : throw new ArgumentOutOfRangeException(name, value, FormattableString.Invariant($"A finite number from {low} to {high} was expected."));

    /// <summary>The same for an amount that is never below nothing.</summary>
    public static double NotNegative(double value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        Range(value, 0, double.MaxValue, name);
}
