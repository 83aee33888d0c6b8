namespace Alumroot.Quantities;

/// <summary>How much matter: what a scale shows, in grams.</summary>
/// <remarks>default is 0 g, a real mass: an unweighed thing is <c>Mass?</c>. Never negative: a shortfall is a plain number of the unit, not a negative amount.</remarks>
public readonly record struct Mass : IComparable<Mass>
{
    private Mass(double grams) => Grams = grams;

    /// <summary>Nothing.</summary>
    public static Mass Zero => default;

    /// <summary>In grams.</summary>
    public double Grams { get; }

    /// <summary>In kilograms.</summary>
    public double Kilograms => Grams / 1000;

    /// <summary>In avoirdupois ounces.</summary>
    public double Ounces => Grams / UnitFactors.GramsPerOunce;

    /// <summary>A mass in grams.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or not finite.</exception>
    public static Mass FromGrams(double grams) => new(Within.NotNegative(grams));

    /// <summary>A mass in kilograms.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or not finite.</exception>
    public static Mass FromKilograms(double kilograms) => FromGrams(kilograms * 1000);

    /// <summary>A mass in avoirdupois ounces.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or not finite.</exception>
    public static Mass FromOunces(double ounces) => FromGrams(ounces * UnitFactors.GramsPerOunce);

    /// <summary>Both together.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The sum is not finite.</exception>
    public static Mass operator +(Mass left, Mass right) => FromGrams(left.Grams + right.Grams);

    /// <summary>What is left when the second is taken away from the first.</summary>
    /// <exception cref="ArgumentOutOfRangeException">More is taken away than there is.</exception>
    public static Mass operator -(Mass left, Mass right) => FromGrams(left.Grams - right.Grams);

    /// <summary>So many times as much.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The factor is negative or the product is not finite.</exception>
    public static Mass operator *(Mass amount, double factor) => FromGrams(amount.Grams * factor);

    /// <summary>One of so many equal shares.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The divisor is negative or zero.</exception>
    public static Mass operator /(Mass amount, double divisor) => FromGrams(amount.Grams / divisor);

    /// <summary>How many times the second goes into the first; infinite or not a number when the second is zero.</summary>
    public static double operator /(Mass left, Mass right) => left.Grams / right.Grams;

    /// <summary>Less than.</summary>
    public static bool operator <(Mass left, Mass right) => left.Grams < right.Grams;

    /// <summary>More than.</summary>
    public static bool operator >(Mass left, Mass right) => left.Grams > right.Grams;

    /// <summary>Less than or equal.</summary>
    public static bool operator <=(Mass left, Mass right) => left.Grams <= right.Grams;

    /// <summary>More than or equal.</summary>
    public static bool operator >=(Mass left, Mass right) => left.Grams >= right.Grams;

    /// <inheritdoc/>
    public int CompareTo(Mass other) => Grams.CompareTo(other.Grams);

    /// <summary>For logs and tests, with all digits; what people read is made in Writing.</summary>
    public override string ToString() => FormattableString.Invariant($"{Grams} g");
}
