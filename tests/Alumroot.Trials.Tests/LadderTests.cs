using Alumroot.Numerics;
using Alumroot.Trials.Ladder;

namespace Alumroot.Trials.Tests;

/// <summary>Ladders of simulated spectra with published pKa: the truth is hidden, the fit must find it and its spans must hold.</summary>
public sealed class LadderTests
{
    private static readonly double[] Ladder = [3, 4, 5, 6, 7, 8, 9, 10, 11];

    // Haematein: 6.86 and 9.9 (Studies on haematoxylin and haematein, the colouring principles of logwood). Curcumin: 8.38, 9.88, 10.51 (Bernabe-Pineda and others 2004).
    // Laccaic colour: 5.96 (Ketmaro and others). The bands of the forms are invented.
    private static readonly double[] Haematein = [6.86, 9.9], Laccaic = [5.96];

    [Fact]
    public void At_its_pka_half_of_a_dye_has_turned()
    {
        double[] shares = new double[3];
        AcidForms.Shares(4, [4, 9], shares);
        Assert.Equal(0.5, shares[0], 4);
        Assert.Equal(1, shares.Sum(), 12);
        AcidForms.Shares(14, [-20, 40], shares);
        Assert.Equal(1, shares[1], 12);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void The_number_of_forms_and_the_steps_are_found(int steps)
    {
        double[] truth = steps == 1 ? Laccaic : Haematein;
        LadderFound found = LadderAnalysis.Fit(Ladder, Spectra(truth, 0.005, 11), 0.05)!;
        Assert.Equal(steps, found.Steps.Count);
        for (int i = 0; i < steps; i++) Assert.InRange(truth[i], found.Steps[i].Pka.Low, found.Steps[i].Pka.High);
        Assert.All(found.Steps, s => Assert.True(s.IsInside));
    }

    [Fact]
    public void Spans_of_the_steps_and_of_colours_between_hold_nine_times_in_ten()
    {
        int held = 0, all = 0, between = 0, asked = 0, right = 0;
        for (ulong seed = 1; seed <= 60; seed++)
        {
            var random = new SeededRandom(seed);
            double shift = 0.1 * random.NextNormal();
            double[][] signals = Spectra(Haematein, 0.01, seed * 31, bands: 3);
            // The maker's strip is off by a shift that is the same for the whole row.
            LadderFound found = LadderAnalysis.Fit([.. Ladder.Select(p => p + shift)], signals, 0.1)!;
            if (found.Steps.Count != 2) continue;
            right++;
            for (int i = 0; i < 2; i++, all++) if (found.Steps[i].Pka.Low <= Haematein[i] && Haematein[i] <= found.Steps[i].Pka.High) held++;
            double[] truth = Clean(Haematein, 6.5, 3);
            double[][] worlds = [.. found.DrawsAt(6.5)];
            for (int s = 0; s < truth.Length; s++, asked++)
            {
                double[] sorted = [.. worlds.Select(w => w[s]).Order()];
                if (Distributions.SortedQuantile(sorted, 0.05) <= truth[s] && truth[s] <= Distributions.SortedQuantile(sorted, 0.95)) between++;
            }
        }
        Assert.True(right >= 54, $"two steps are found in {right} of 60 ladders only");
        Assert.InRange(held / (double)all, 0.84, 0.97);
        Assert.InRange(between / (double)asked, 0.82, 1);
    }

    [Fact]
    public void A_step_beyond_the_row_is_a_direction_only()
    {
        LadderFound found = LadderAnalysis.Fit([3, 3.5, 4, 4.5, 5, 5.5, 6], Spectra(Laccaic, 0.002, 5, ladder: [3, 3.5, 4, 4.5, 5, 5.5, 6]), 0.05, forms: 2)!;
        Assert.InRange(found.Steps[0].Pka.Value, 5.8, 6.2);
        Assert.Null(LadderAnalysis.Fit([3, 5, 7, 9], Spectra(Laccaic, 0.002, 5, ladder: [3, 5, 7, 9]), 0.05));
    }

    [Fact]
    public void A_dye_that_does_not_turn_has_one_form()
    {
        var random = new SeededRandom(9);
        double[][] same = [.. Ladder.Select(_ => Enumerable.Range(0, 3).Select(b => 0.5 + 0.1 * b + 0.01 * random.NextNormal()).ToArray())];
        Assert.Empty(LadderAnalysis.Fit(Ladder, same, 0.1)!.Steps);
    }

    private static double[][] Spectra(double[] pka, double noise, ulong seed, int bands = 16, double[]? ladder = null)
    {
        var random = new SeededRandom(seed);
        return [.. (ladder ?? Ladder).Select(ph => Clean(pka, ph, bands).Select(v => v + noise * random.NextNormal()).ToArray())];
    }

    private static double[] Clean(double[] pka, double ph, int bands)
    {
        double[] shares = new double[pka.Length + 1];
        AcidForms.Shares(ph, pka, shares);
        // Each form has one broad band; the more alkaline the form the longer the wave.
        return [.. Enumerable.Range(0, bands).Select(b => shares.Select((share, f) => share * (0.8 + 0.1 * f) * Math.Exp(-Math.Pow((b / (bands - 1.0) - 0.2 - 0.25 * f) / 0.2, 2))).Sum())];
    }
}
