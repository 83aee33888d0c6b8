using Alumroot.Chemistry.Equilibrium;

namespace Alumroot.Chemistry.Assimilation;

/// <summary>How far a truth is from all readings and from what was assumed: half the sum of squares, each in its own standard deviation.</summary>
internal static class Misfit
{
    // Meters refer a conductivity to 25 C with two parts in a hundred for each kelvin (common practice, no source).
    private const double MeterSharePerKelvin = 0.02;

    /// <summary>Half the sum of squares.</summary>
    internal static double Half(ReadOnlySpan<double> z)
    {
        double sum = 0;
        foreach (double v in z) sum += v * v;
        return 0.5 * sum;
    }

    /// <summary>What a reading shows for the truth whose path stands at the reading's step.</summary>
    internal static double Predicted(BenchReading r, BenchPath path) => r.Kind switch
    {
        ReadingKind.LnConductivity => LnConductivity(path),
        ReadingKind.Temperature => path.Truth.Draw.CelsiusOff,
        _ => path.State.Ph + path.Truth.Above(r.Kind),
    };

    /// <summary>ln of the conductivity in microsiemens per centimetre, referred to 25 C as a meter does.</summary>
    internal static double LnConductivity(BenchPath path) => Math.Log(Conductance.MicrosiemensPerCm(path.State) / (1 + MeterSharePerKelvin * (path.System.Celsius - 25)));
}
