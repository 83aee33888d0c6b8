using Alumroot.Chemistry.Equilibrium;
using Alumroot.Chemistry.Planning;

namespace Alumroot.Chemistry.Assimilation;

/// <summary>How far a truth is from all readings and from what was assumed: half the sum of squares, each in its own standard deviation.</summary>
internal static class Misfit
{
    // Meters refer a conductivity to 25 C with two parts in a hundred for each kelvin (common practice, no source).
    private const double MeterSharePerKelvin = 0.02;

    /// <summary>Half the square of a point of the standard space: what was assumed.</summary>
    internal static double OfPrior(ReadOnlySpan<double> z)
    {
        double sum = 0;
        foreach (double v in z) sum += v * v;
        return 0.5 * sum;
    }

    /// <summary>Half the square of a reading's distance.</summary>
    internal static double OfReading(BenchReading r, double predicted)
    {
        double d = (r.Value - predicted) / r.Sd;
        return 0.5 * d * d;
    }

    /// <summary>What a reading shows for the truth whose path stands at the reading's step.</summary>
    internal static double Predicted(BenchReading r, BenchPath path) => r.Kind switch
    {
        ReadingKind.LnConductivity => Math.Log(Conductance.MicrosiemensPerCm(path.State) / (1 + MeterSharePerKelvin * (path.System.Celsius - 25))),
        ReadingKind.Temperature => path.Truth.Draw.CelsiusOff,
        _ => path.State.Ph + path.Truth.Above(r.Kind),
    };
}
