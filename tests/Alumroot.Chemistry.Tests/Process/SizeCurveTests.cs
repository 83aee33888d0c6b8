using Alumroot.Chemistry.Process;
using Alumroot.Quantities;
using CsCheck;

namespace Alumroot.Chemistry.Tests.Process;

public class SizeCurveTests
{
    private static readonly Mass Step = Mass.FromGrams(0.1);

    [Fact]
    public void The_main_sizes_are_the_renard_series()
    {
        // ISO 565 takes every third of the R 20 series of ISO 3: each opening is 10^(3/20) = 1.4125 times the next, rounded to preferred numbers within 2 %.
        double[] main = [.. SieveSeries.All.Where(s => s.MainSize).Select(s => s.OpeningMicrometres)];
        Assert.Equal(10, main.Length);
        for (int i = 0; i < main.Length; i++) Assert.Equal(1, main[i] / (1000 * Math.Pow(10, -3 * i / 20.0)), 0.02);
        Assert.NotNull(SieveSeries.Find(63));
        Assert.Null(SieveSeries.Find(64));
    }

    [Fact]
    public void A_worked_sieving_gives_its_curve()
    {
        // Worked by hand: 10 g of 100 on 250, 30 on 125, 40 on 63, 20 in the pan: 90, 60 and 20 % pass.
        SizeCurve curve = SizeCurve.Of([(125, G(30)), (250, G(10)), (63, G(40))], G(20), Step)!;
        Assert.Equal([250, 125, 63], curve.Passing.Select(p => p.OpeningMicrometres));
        Assert.Equal([90, 60, 20], curve.Passing.Select(p => Math.Round(p.PassingPercent.Value, 9)));
        // Half lies a quarter of the way down from 125 to 63 on a logarithm: 63 (125/63)^(30/40) = 105.3.
        Estimate half = Assert.IsType<SizeAt.Between>(curve.D50).Micrometres;
        Assert.Equal(105.3, half.Value, 0.1);
        Assert.Equal((63, 125), (half.Low, half.High));
        Assert.Equal(250, Assert.IsType<SizeAt.Between>(curve.D90).Micrometres.Value);
        Assert.Equal(63, Assert.IsType<SizeAt.FinerThan>(curve.D10).Micrometres);
    }

    [Fact]
    public void Nothing_weighed_is_no_curve_and_all_on_top_is_coarser()
    {
        Assert.Null(SizeCurve.Of([(63, G(0))], G(0), Step));
        Assert.IsType<SizeAt.CoarserThan>(SizeCurve.Of([(63, G(10))], G(0.5), Step)!.D50);
        Assert.Throws<ArgumentException>(() => SizeCurve.Of([(63, G(1)), (63, G(1))], G(0), Step));
    }

    [Fact]
    public void The_curve_never_rises_towards_finer_sieves_and_quantiles_keep_their_order() =>
        Gen.Double[0, 50].Array[5].Select(Gen.Double[0.01, 50]).Sample((grams, pan) =>
        {
            double[] openings = [500, 250, 125, 90, 63];
            SizeCurve curve = SizeCurve.Of([.. openings.Zip(grams, (o, g) => (o, G(g)))], G(pan), Step)!;
            double[] passing = [.. curve.Passing.Select(p => p.PassingPercent.Value)];
            double last = double.NegativeInfinity;
            foreach (SizeAt at in new[] { curve.D10, curve.D50, curve.D90 })
            {
                double size = at switch
                {
                    SizeAt.Between b => b.Micrometres.Value,
                    SizeAt.FinerThan f => f.Micrometres - 1e-6,
                    SizeAt.CoarserThan c => c.Micrometres + 1e-6,
                    _ => double.NaN,
                };
                if (!(size >= last - 1e-6)) return false;
                last = size;
            }
            return passing.Zip(passing.Skip(1)).All(p => p.Second <= p.First + 1e-9) && passing.All(p => p is >= 0 and <= 100);
        });

    [Fact]
    public void Below_38_the_openings_are_the_ten_series_down_to_20()
    {
        // ISO 3's R 10 series: 10^(1.5), 10^(1.4) and 10^(1.3) are 31.6, 25.1 and 20.0; ASTM E11 reaches down to 20 (its scope).
        double[] fine = [.. SieveSeries.All.Select(s => s.OpeningMicrometres).Where(o => o < 38)];
        Assert.Equal(3, fine.Length);
        for (int i = 0; i < 3; i++) Assert.Equal(1, fine[i] / Math.Pow(10, 1.5 - 0.1 * i), 0.02);
    }

    [Fact]
    public void Where_the_scale_cannot_say_on_which_side_of_a_sieve_a_quantile_lies_the_span_goes_on_to_the_next()
    {
        // 49.95 % pass 125 with a span of more than 0.05 %: half lies between 63 and 250.
        SizeCurve curve = SizeCurve.Of([(250, G(10)), (125, G(40.05)), (63, G(40)), (45, G(5))], G(4.95), Step)!;
        Estimate half = Assert.IsType<SizeAt.Between>(curve.D50).Micrometres;
        Assert.Equal((63, 250), (half.Low, half.High));
        Assert.InRange(half.Value, 125, 126);
        // Nine tenths pass the coarsest sieve, to the scale: nothing tells how coarse they may be.
        Assert.Equal(double.PositiveInfinity, Assert.IsType<SizeAt.Between>(curve.D90).Micrometres.High);
    }

    [Fact]
    public void A_balance_tells_losses_and_what_cannot_be()
    {
        IReadOnlyList<BalanceRow> rows = MassBalance.Of(
            [(WeighedAs.WetCake, G(120)), (WeighedAs.DryCake, G(15)), (WeighedAs.Ground, G(14.4)), (WeighedAs.Sieved, G(16))], Step, new Estimate(16, 12, 20));
        Assert.Equal(105, rows[1].LostGrams!.Value.Value, 9);
        Assert.Equal(0.04, rows[2].LostRatio!.Value.Value, 9);
        Assert.True(rows[2].LostGrams!.Value.Low is > 0.5 and < 0.6);
        Assert.Null(rows[0].OfPlanRatio);
        Assert.Equal(15 / 16.0, rows[1].OfPlanRatio!.Value.Value, 9);
        Assert.Equal([false, false, false, true], rows.Select(r => r.MoreThanBefore));
    }

    private static Mass G(double grams) => Mass.FromGrams(grams);
}
