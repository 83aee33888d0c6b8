namespace Alumroot.Quantities;

/// <summary>A value with the ends of its 90 % interval, in the unit that the property's name says.</summary>
/// <remarks>default is 0 with no width: an unknown estimate is <c>Estimate?</c>.</remarks>
/// <param name="Value">The middle value.</param>
/// <param name="Low">The 5 % point.</param>
/// <param name="High">The 95 % point.</param>
public readonly record struct Estimate(double Value, double Low, double High)
{
    /// <summary>An exactly known value: both ends are the value.</summary>
    public static Estimate Exact(double value) => new(value, value, value);

    /// <summary>The same estimate in another unit.</summary>
    /// <param name="factor">A positive factor.</param>
    public Estimate Times(double factor) => new(Value * factor, Low * factor, High * factor);

    /// <summary>Half the width of the interval over the size of the value; infinite for a value of zero with width.</summary>
    public double RelativeHalfWidth => High == Low ? 0 : Math.Abs((High - Low) / 2 / Value);
}
