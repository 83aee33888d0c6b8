using Alumroot.Numerics;
using Alumroot.Permanence.Fading;

namespace Alumroot.Permanence.Tests.Fading;

/// <summary>Differences from all parts of a colour at once, against the plain length (CIE 1976) where there is no noise and against simulated noise where there is.</summary>
public sealed class ColourStepTests
{
    [Fact]
    public void Without_noise_they_are_the_plain_lengths_even_when_the_colour_turns()
    {
        ColourStep[] turning = [new(1, 0, 0), new(2, 1, 0), new(3, 3, 1), new(3, 6, 2)];
        Assert.Equal([1, Math.Sqrt(5), Math.Sqrt(19), 7], ColourSteps.Differences(turning, 0), (x, y) => Math.Abs(x - y) < 1e-12);
        Assert.Equal([0.0, 0.0], ColourSteps.Differences([default, default], 0.3));
        Assert.Empty(ColourSteps.Differences([], 0.3));
    }

    // Lengths of pure noise of 0.4 in three parts have the mean 0.4 sqrt(8/pi) = 0.638 (Maxwell); along a known way the mean is near nothing.
    [Fact]
    public void Near_nothing_they_scatter_about_nothing_where_lengths_do_not()
    {
        var random = new SeededRandom(20261127);
        double lengths = 0, signed = 0, large = 0;
        const int Tests = 400;
        for (int t = 0; t < Tests; t++)
        {
            // Six readings at which nothing has happened yet, and three far along.
            ColourStep[] changes = [.. Enumerable.Range(0, 9).Select(i => Noisy(i < 6 ? 0 : 4 * (i - 5), random))];
            IReadOnlyList<double> found = ColourSteps.Differences(changes, 0.4);
            lengths += changes.Take(6).Average(c => Math.Sqrt(c.Lightness * c.Lightness + c.RedGreen * c.RedGreen + c.YellowBlue * c.YellowBlue)) / Tests;
            signed += found.Take(6).Average() / Tests;
            large += (found[8] - 12) / Tests;
        }
        Assert.Equal(0.638, lengths, 0.02);
        Assert.InRange(signed, -0.06, 0.06);
        Assert.InRange(large, -0.06, 0.06);
    }

    private static ColourStep Noisy(double change, SeededRandom random) =>
        new(0.8 * change + 0.4 * random.NextNormal(), -0.6 * change + 0.4 * random.NextNormal(), 0.4 * random.NextNormal());
}
