namespace Alumroot.Quantities;

/// <summary>A reading on the pH scale: acid is low, alkaline is high.</summary>
/// <remarks>default is pH 0, stronger acid than anything on the bench: an unread strip is <c>Ph?</c>. From -2 to 16, wider than any water solution here. A logarithm: two of them cannot be added; a step between two is a plain number.</remarks>
public readonly record struct Ph : IComparable<Ph>
{
    private Ph(double value) => Value = value;

    /// <summary>The pH.</summary>
    public double Value { get; }

    /// <summary>A pH.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below -2, above 16, or not finite.</exception>
    public static Ph FromValue(double value) => new(Within.Range(value, -2, 16));

    /// <summary>Less than.</summary>
    public static bool operator <(Ph left, Ph right) => left.Value < right.Value;

    /// <summary>More than.</summary>
    public static bool operator >(Ph left, Ph right) => left.Value > right.Value;

    /// <summary>Less than or equal.</summary>
    public static bool operator <=(Ph left, Ph right) => left.Value <= right.Value;

    /// <summary>More than or equal.</summary>
    public static bool operator >=(Ph left, Ph right) => left.Value >= right.Value;

    /// <inheritdoc/>
    public int CompareTo(Ph other) => Value.CompareTo(other.Value);

    /// <summary>For logs and tests, with all digits; what people read is made in Writing.</summary>
    public override string ToString() => FormattableString.Invariant($"pH {Value}");
}
