using Alumroot.Quantities;

namespace Alumroot.Permanence.Dose;

/// <summary>A lamp that burns for known hours at a level.</summary>
public static class LampLight
{
    private const double Million = 1e6;

    /// <summary>Level times hours.</summary>
    /// <param name="hours">Hours that it burned.</param>
    /// <param name="lux">At the strips; nine in ten, with the meter and the fall of light across the strips.</param>
    public static LightDose Of(double hours, Estimate lux)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(hours);
        return new LightDose(lux.Times(hours / Million), DoseWay.Level);
    }

    /// <summary>Level at another distance from a small lamp: it falls with the square. Near a tube or a panel it falls more slowly.</summary>
    /// <param name="lux">Where it was measured.</param>
    /// <param name="measuredCm">How far from the lamp that was.</param>
    /// <param name="stripCm">How far the strips are.</param>
    public static Estimate AtDistance(Estimate lux, double measuredCm, double stripCm)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(measuredCm);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(stripCm);
        double square = Math.Pow(measuredCm / stripCm, 2), slow = measuredCm / stripCm;
        // Between the square of a point and the first power of a long tube.
        return new Estimate(lux.Value * square, lux.Low * Math.Min(square, slow), lux.High * Math.Max(square, slow));
    }
}
