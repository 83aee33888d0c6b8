using Alumroot.Chemistry.Equilibrium;

namespace Alumroot.Chemistry.Tests.Laws;

/// <summary>Compares two solutions of what should be the same state.</summary>
internal static class Same
{
    /// <summary>Equal pH, ionic strength, water and solids, the second state holding <paramref name="times"/> as much.</summary>
    public static void State(EquilibriumState a, EquilibriumState b, string what, double phTolerance = 1e-9, double times = 1)
    {
        Assert.True(Math.Abs(a.Ph - b.Ph) <= phTolerance, $"{what}: pH {a.Ph:r} against {b.Ph:r}");
        Near(a.IonicStrengthMolal, b.IonicStrengthMolal, $"{what}: ionic strength");
        Near(a.WaterKg * times, b.WaterKg, $"{what}: water");
        foreach (Constants.Phase phase in a.System.Phases)
        {
            double first = a.PhaseMoles(phase.Name) * times, second = b.PhaseMoles(phase.Name);
            double size = Math.Max(Math.Abs(first), 1e-3 * b.WaterKg);
            Assert.True(Math.Abs(first - second) <= 1e-8 * size, $"{what}: {phase.Name} {first:r} against {second:r} mol");
        }
    }

    private static void Near(double expected, double actual, string what) =>
        Assert.True(Math.Abs(expected - actual) <= 1e-8 * Math.Abs(expected), $"{what} {expected:r} against {actual:r}");
}
