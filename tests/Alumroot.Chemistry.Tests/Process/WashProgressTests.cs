using Alumroot.Chemistry.Process;
using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Tests.Process;

public class WashProgressTests(ITestOutputHelper output)
{
    [Fact]
    public void Readings_that_fall_by_a_quarter_teach_a_quarter()
    {
        // Dilution by a fixed part: 100 µS/cm of water under 6400, 1600, 400, 100 µS/cm of salt.
        WashState state = WashProgress.Of([.. new[] { 6500.0, 1700, 500, 200 }.Select(Conductivity.FromMicrosiemensPerCentimetre)], Of(100), Of(150));
        Assert.Equal(0.25, state.KeptRatio.Value, 0.02);
        Assert.Equal(1 / 64.0, state.SaltLeftRatio.Value, 0.0005);
        // 100 above the water, 50 wanted: ln 2 / ln 4 = half a wash.
        Assert.Equal(0.5, state.WashesToGo.Value, 0.05);
        Assert.Equal(WashOddity.None, state.Oddity);
    }

    [Fact]
    public void Without_a_reading_it_is_the_usual_part()
    {
        WashState state = WashProgress.Of([], Of(300), Of(500));
        // The assumption of docs/models/washing.md: 0.3, between 0.2 and 0.45 (common practice, no source).
        Assert.Equal(0.3, state.KeptRatio.Value, 1e-9);
        Assert.Equal(0.2, state.KeptRatio.Low, 1e-9);
        Assert.Equal(0.45, state.KeptRatio.High, 1e-9);
    }

    [Fact]
    public void Oddities_are_named()
    {
        Assert.Equal(WashOddity.AimBelowWater, WashProgress.Of([Of(5000), Of(2000)], Of(600), Of(500)).Oddity);
        Assert.Equal(WashOddity.NotFalling, WashProgress.Of([Of(5000), Of(4800)], Of(300), Of(500)).Oddity);
        Assert.Equal(WashOddity.BelowWater, WashProgress.Of([Of(5000), Of(200)], Of(300), Of(500)).Oddity);
        Assert.Equal(0, WashProgress.Of([Of(5000), Of(450)], Of(300), Of(500)).WashesToGo.High);
    }

    [Fact]
    public void Spans_of_the_washes_to_go_hold_the_truth_about_nine_times_in_ten()
    {
        int held = 0, all = 0;
        for (ulong seed = 1; seed <= 600; seed++)
        {
            var random = new SeededRandom(seed * 17 + 1);
            for (int i = 0; i < 4; i++) random.NextBits();
            double water = 100 + 400 * random.NextFraction(), salt = 4000 + 12_000 * random.NextFraction(), aim = water + 200;
            double kept = Math.Exp(Math.Log(0.3) + 0.2465 * random.NextNormal());
            var readings = new List<double> { Read(water + salt) };
            int taken = 1 + random.NextBelow(3);
            for (int i = 0; i < taken; i++) readings.Add(Read(water + (salt *= Drained())));
            if (readings[^1] <= aim) continue;
            WashState state = WashProgress.Of([.. readings.Select(Conductivity.FromMicrosiemensPerCentimetre)], Of(water), Of(aim));
            double before = salt, washes = 0;
            while (salt > aim - water)
            {
                before = salt;
                salt *= Drained();
                washes++;
            }
            washes -= 1 - Math.Log(before / (aim - water)) / Math.Log(before / salt);
            all++;
            if (state.WashesToGo.Low <= washes && washes <= state.WashesToGo.High) held++;

            double Drained() => kept * Math.Exp(0.1 * random.NextNormal());
            double Read(double true_) => true_ * (1 + 0.02 * random.NextNormal());
        }
        output.WriteLine($"held {held / (double)all:0.000} of {all}");
        Assert.True(all > 300);
        Assert.InRange(held / (double)all, 0.85, 0.97);
    }

    private static Conductivity Of(double microsiemens) => Conductivity.FromMicrosiemensPerCentimetre(microsiemens);
}
