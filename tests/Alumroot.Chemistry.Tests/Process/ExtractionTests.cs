using Alumroot.Chemistry.Process;
using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Tests.Process;

public class ExtractionTests(ITestOutputHelper output)
{
    [Fact]
    public void With_everything_released_it_is_cross_current_washing()
    {
        // Cross-current leaching of a solid that holds a part of the solution (any text on unit operations): after n equal stages (kept/(kept+strained))^n is left.
        Bath bath = new(Volume.FromLitres(2), Volume.FromLitres(0.5), null);
        double[] won = ExtractionStages.WonRatio([bath, bath, bath], 1, out double left);
        Assert.Equal(Math.Pow(0.2, 3), left, 12);
        Assert.Equal([0.8, 0.16, 0.032], won.Select(w => Math.Round(w, 12)));
    }

    [Fact]
    public void With_nothing_kept_each_bath_wins_the_part_it_releases()
    {
        Bath bath = new(Volume.FromLitres(2), Volume.Zero, null);
        double[] won = ExtractionStages.WonRatio([bath, bath], 0.6, out double left);
        Assert.Equal([0.6, 0.24], won.Select(w => Math.Round(w, 12)));
        Assert.Equal(0.16, left, 12);
    }

    [Fact]
    public void Two_measured_baths_narrow_what_is_left()
    {
        PlantState guess = ExtractionStages.Of([B(1, null), B(1, null)])!;
        PlantState known = ExtractionStages.Of([B(1, 1.0), B(1, 0.3)])!;
        Assert.Equal(0, guess.Measured);
        Assert.True(known.LeftRatio.High - known.LeftRatio.Low < 0.7 * (guess.LeftRatio.High - guess.LeftRatio.Low));
        Assert.Equal(1, known.LeftRatio.Value + known.DrawnRatio.Value, 1e-9);
        Assert.Null(ExtractionStages.Of([]));
        Assert.Null(ExtractionStages.Of([B(0, 1)]));
    }

    [Fact]
    public void Spans_of_what_is_left_hold_the_truth_about_nine_times_in_ten()
    {
        int held = 0;
        const int all = 400;
        for (ulong seed = 1; seed <= all; seed++)
        {
            var random = new SeededRandom(seed * 13 + 5);
            for (int i = 0; i < 4; i++) random.NextBits();
            // The middle of three uniforms has the density 6 x (1 - x); two of four the one that is taken as usual, e^2 (1 - e).
            double[] u = [random.NextFraction(), random.NextFraction(), random.NextFraction(), random.NextFraction()];
            Array.Sort(u);
            double released = u[2];
            int n = 2 + random.NextBelow(2);
            Bath[] bare = [.. Enumerable.Range(0, n).Select(_ => new Bath(Volume.FromLitres(1 + random.NextFraction()), Volume.FromLitres(0.1 + 0.4 * random.NextFraction()), null))];
            double[] won = ExtractionStages.WonRatio(bare, released, out double left);
            Bath[] read = [.. bare.Select((b, k) =>
            {
                double strength = won[k] / b.Strained.Litres * Math.Exp(0.08 * random.NextNormal() + 0.05 * random.NextNormal());
                return b with { Strength = new Estimate(strength, strength * (1 - 0.0822), strength * (1 + 0.0822)) };
            })];
            PlantState state = ExtractionStages.Of(read)!;
            if (state.LeftRatio.Low <= left && left <= state.LeftRatio.High) held++;
        }
        output.WriteLine($"held {held / (double)all:0.000}");
        Assert.InRange(held / (double)all, 0.85, 0.95);
    }

    [Fact]
    public void Absorbance_is_the_logarithm_of_what_is_let_through()
    {
        // A tenth let through is an absorbance of 1, by definition.
        Assert.Equal(1, DilutionRow.AbsorbanceOf(0.1, 1)!.Value, 12);
        Assert.Equal(1, DilutionRow.AbsorbanceOf(0.14, 0.95, 0.05)!.Value, 12);
        Assert.Null(DilutionRow.AbsorbanceOf(0.04, 0.9, 0.05));
    }

    [Fact]
    public void A_row_of_halves_gives_the_liquor_and_leaves_out_what_cannot_be_read()
    {
        DilutionStrength row = DilutionRow.Of([new(1, 2.4), new(0.5, 1.2), new(0.25, 0.6), new(0.125, 0.3), new(1 / 64.0, 0.0375)])!;
        Assert.Equal(2.4, row.Absorbance.Value, 9);
        Assert.Equal((3, 1, 1, false), (row.Used, row.TooPale, row.TooDark, row.Bends));
        Assert.InRange(row.Absorbance.High / row.Absorbance.Value, 1.01, 1.08);
        Assert.True(DilutionRow.Of([new(0.8, 1.0), new(0.4, 0.85), new(0.2, 0.7), new(0.1, 0.5)])!.Bends);
        Assert.Null(DilutionRow.Of([new(1, 0.01)]));
    }

    [Fact]
    public void Spans_of_a_dilution_row_hold_the_liquor_about_nine_times_in_ten()
    {
        int held = 0;
        const int all = 1000;
        var random = new SeededRandom(4711);
        for (int trial = 0; trial < all; trial++)
        {
            double liquor = 0.8 + 3 * random.NextFraction();
            DilutionGlass[] row = [.. Enumerable.Range(0, 5).Select(k =>
            {
                double true_ = liquor / Math.Pow(2, k);
                return new DilutionGlass(Math.Pow(2, -k), true_ * (1 + 0.03 * random.NextNormal()) + 0.01 * random.NextNormal());
            })];
            Estimate span = DilutionRow.Of(row)!.Absorbance;
            if (span.Low <= liquor && liquor <= span.High) held++;
        }
        output.WriteLine($"row held {held / (double)all:0.000}");
        Assert.InRange(held / (double)all, 0.85, 0.97);
    }

    [Fact]
    public void Own_times_need_one_and_narrow_with_more()
    {
        Assert.Null(OwnTimes.NextHours([]));
        Estimate one = OwnTimes.NextHours([10])!.Value, five = OwnTimes.NextHours([9, 10, 11, 10, 10])!.Value;
        Assert.Equal(10, one.Value, 9);
        Assert.True(one.High / one.Low > 1.5 * (five.High / five.Low));
        // Student's t with 3 degrees of freedom: 95 % point 2.353 (tables); the scale of one kept time is ln 1.5 times the root of 2.
        Assert.Equal(Math.Exp(2.353 * Math.Log(1.5) * Math.Sqrt(2)), one.High / one.Value, 0.002);
    }

    private static Bath B(double litres, double? strength) =>
        new(Volume.FromLitres(litres), Volume.FromLitres(0.2), strength is { } s ? new Estimate(s, 0.95 * s, 1.05 * s) : null);
}
