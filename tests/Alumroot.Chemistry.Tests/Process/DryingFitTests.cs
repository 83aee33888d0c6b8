using Alumroot.Chemistry.Process;
using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Tests.Process;

public class DryingFitTests(ITestOutputHelper output)
{
    private static readonly Mass Tenth = Mass.FromGrams(0.1);

    [Fact]
    public void Exact_weights_of_an_exponential_give_its_end_and_its_time()
    {
        // m(t) = 20 + 80 exp(-t/8): by the formula 100, 68.53, 49.43, 37.85, 30.83 at 0, 4, 8, 12, 16 h.
        Weighing[] weights = [.. new[] { 0.0, 4, 8, 12, 16 }.Select(t => new Weighing(t, 20 + 80 * Math.Exp(-t / 8)))];
        Drying.StillDrying drying = Assert.IsType<Drying.StillDrying>(DryingFit.Of(weights, Mass.FromGrams(0.01)));
        Assert.Equal(20, drying.EndGrams.Value, 0.3);
        Assert.InRange(20, drying.EndGrams.Low, drying.EndGrams.High);
        // From 10.83 g over the end to half a percent of the end (0.1 g): 8 ln(10.83 / 0.1) = 37.5 h.
        Assert.Equal(37.5, drying.ToGoHours.Value, 1.5);
    }

    [Fact]
    public void Two_equal_weights_say_dry_only_when_an_hour_lies_between()
    {
        Assert.IsType<Drying.Constant>(DryingFit.Of([new(0, 30), new(10, 14.3), new(14, 14.3)], Tenth));
        Assert.Equal(0.5, Assert.IsType<Drying.TooSoon>(DryingFit.Of([new(0, 30), new(10, 14.3), new(10.5, 14.3)], Tenth)).WaitHours, 9);
    }

    [Fact]
    public void A_cake_that_gains_is_named_and_too_few_weights_say_nothing()
    {
        Assert.Equal(0.9, Assert.IsType<Drying.Gained>(DryingFit.Of([new(0, 30), new(10, 14.3), new(20, 15.2)], Tenth)).GainGrams, 9);
        Assert.Equal(new Drying.NotKnown(0, 0), DryingFit.Of([], Tenth));
        // One weight: the least distance of two. Two: as long again, so that the three stand at equal distances.
        Assert.Equal(new Drying.NotKnown(1, 1), DryingFit.Of([new(0, 30)], Tenth));
        Assert.Equal(new Drying.NotKnown(2, 4), DryingFit.Of([new(0, 30), new(4, 20)], Tenth));
    }

    [Fact]
    public void Spans_hold_the_truth_about_nine_times_in_ten()
    {
        int held = 0, heldHours = 0, counted = 0;
        for (ulong seed = 1; seed <= 400; seed++)
        {
            var random = new SeededRandom(seed * 31 + 7);
            for (int i = 0; i < 4; i++) random.NextBits();
            double end = 5 + 60 * random.NextFraction(), over = end * (3 + 8 * random.NextFraction()), tau = 3 + 20 * random.NextFraction();
            var weights = new List<Weighing>();
            double t = 0;
            int n = 4 + random.NextBelow(3);
            for (int i = 0; i < n; i++)
            {
                double true_ = end + over * Math.Exp(-t / tau);
                weights.Add(new Weighing(t, Math.Round(true_ * (1 + 0.002 * random.NextNormal()), 1)));
                t += tau * (0.4 + 0.5 * random.NextFraction());
            }
            if (DryingFit.Of(weights, Tenth) is not Drying.StillDrying drying) continue;
            counted++;
            if (drying.EndGrams.Low <= end && end <= drying.EndGrams.High) held++;
            double same = Math.Max(0.2, 0.005 * end);
            double left = Math.Max(0, tau * Math.Log(over * Math.Exp(-weights[^1].Hours / tau) / same));
            if (drying.ToGoHours.Low <= left && left <= drying.ToGoHours.High) heldHours++;
        }
        output.WriteLine($"end {held / (double)counted:0.000}, hours {heldHours / (double)counted:0.000} of {counted}");
        Assert.True(counted > 350);
        Assert.InRange(held / (double)counted, 0.85, 0.95);
        Assert.InRange(heldHours / (double)counted, 0.85, 0.96);
    }
}
