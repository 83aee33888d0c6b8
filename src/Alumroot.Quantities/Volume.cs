namespace Alumroot.Quantities;

/// <summary>How much room a liquid, a gas or a vessel takes, in millilitres.</summary>
/// <remarks>default is 0 mL, a real volume: an unmeasured one is <c>Volume?</c>. Never negative: a shortfall is a plain number of the unit, not a negative amount.</remarks>
public readonly record struct Volume : IComparable<Volume>
{
    private Volume(double millilitres) => Millilitres = millilitres;

    /// <summary>Nothing.</summary>
    public static Volume Zero => default;

    /// <summary>In millilitres.</summary>
    public double Millilitres { get; }

    /// <summary>In litres.</summary>
    public double Litres => Millilitres / 1000;

    /// <summary>A volume in millilitres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or not finite.</exception>
    public static Volume FromMillilitres(double millilitres) => new(Within.NotNegative(millilitres));

    /// <summary>A volume in litres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or not finite.</exception>
    public static Volume FromLitres(double litres) => FromMillilitres(litres * 1000);

    /// <summary>Both together.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The sum is not finite.</exception>
    public static Volume operator +(Volume left, Volume right) => FromMillilitres(left.Millilitres + right.Millilitres);

    /// <summary>What is left when the second is taken away from the first.</summary>
    /// <exception cref="ArgumentOutOfRangeException">More is taken away than there is.</exception>
    public static Volume operator -(Volume left, Volume right) => FromMillilitres(left.Millilitres - right.Millilitres);

    /// <summary>So many times as much.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The factor is negative or the product is not finite.</exception>
    public static Volume operator *(Volume amount, double factor) => FromMillilitres(amount.Millilitres * factor);

    /// <summary>One of so many equal shares.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The divisor is negative or zero.</exception>
    public static Volume operator /(Volume amount, double divisor) => FromMillilitres(amount.Millilitres / divisor);

    /// <summary>How many times the second goes into the first; infinite or not a number when the second is zero.</summary>
    public static double operator /(Volume left, Volume right) => left.Millilitres / right.Millilitres;

    /// <summary>Less than.</summary>
    public static bool operator <(Volume left, Volume right) => left.Millilitres < right.Millilitres;

    /// <summary>More than.</summary>
    public static bool operator >(Volume left, Volume right) => left.Millilitres > right.Millilitres;

    /// <summary>Less than or equal.</summary>
    public static bool operator <=(Volume left, Volume right) => left.Millilitres <= right.Millilitres;

    /// <summary>More than or equal.</summary>
    public static bool operator >=(Volume left, Volume right) => left.Millilitres >= right.Millilitres;

    /// <inheritdoc/>
    public int CompareTo(Volume other) => Millilitres.CompareTo(other.Millilitres);

    /// <summary>For logs and tests, with all digits; what people read is made in Writing.</summary>
    public override string ToString() => FormattableString.Invariant($"{Millilitres} mL");
}
