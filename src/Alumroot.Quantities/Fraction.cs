namespace Alumroot.Quantities;

/// <summary>A part of a whole, from 0 to 1: a purity, a loss, a share.</summary>
/// <remarks>default is 0, none of it: an unknown purity is <c>Fraction?</c>. Parts of different wholes cannot be added.</remarks>
public readonly record struct Fraction : IComparable<Fraction>
{
    private Fraction(double ratio) => Ratio = ratio;

    /// <summary>As a part of one.</summary>
    public double Ratio { get; }

    /// <summary>In percent.</summary>
    public double Percent => Ratio * 100;

    /// <summary>The whole.</summary>
    public static Fraction Whole => FromRatio(1);

    /// <summary>What is not this part.</summary>
    public Fraction Rest => FromRatio(1 - Ratio);

    /// <summary>A part of one.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0, above 1, or not finite.</exception>
    public static Fraction FromRatio(double ratio) => new(Within.Range(ratio, 0, 1));

    /// <summary>A part in percent.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0, above 100, or not finite.</exception>
    public static Fraction FromPercent(double percent) => FromRatio(percent / 100);

    /// <summary>That part of a mass.</summary>
    public static Mass operator *(Fraction part, Mass whole) => whole * part.Ratio;

    /// <summary>That part of a volume.</summary>
    public static Volume operator *(Fraction part, Volume whole) => whole * part.Ratio;

    /// <summary>Less than.</summary>
    public static bool operator <(Fraction left, Fraction right) => left.Ratio < right.Ratio;

    /// <summary>More than.</summary>
    public static bool operator >(Fraction left, Fraction right) => left.Ratio > right.Ratio;

    /// <summary>Less than or equal.</summary>
    public static bool operator <=(Fraction left, Fraction right) => left.Ratio <= right.Ratio;

    /// <summary>More than or equal.</summary>
    public static bool operator >=(Fraction left, Fraction right) => left.Ratio >= right.Ratio;

    /// <inheritdoc/>
    public int CompareTo(Fraction other) => Ratio.CompareTo(other.Ratio);

    /// <summary>For logs and tests, with all digits; what people read is made in Writing.</summary>
    public override string ToString() => FormattableString.Invariant($"{Percent} %");
}
