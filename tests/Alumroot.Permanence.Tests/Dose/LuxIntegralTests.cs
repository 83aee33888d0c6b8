using Alumroot.Numerics;
using Alumroot.Permanence.Dose;

namespace Alumroot.Permanence.Tests.Dose;

public sealed class LuxIntegralTests
{
    [Fact]
    public void Steady_light_is_level_times_hours()
    {
        // 450 lx for 4380 h is the yearly dose that print-permanence tests reckon with: 1.971 Mlx h (public test report).
        LightDose dose = LuxIntegral.OfLog([.. Enumerable.Range(0, 4381).Select(h => new LuxReading(h, 450))]);
        Assert.Equal(1.971, dose.MegaluxHours.Value, 6);
        Assert.Empty(dose.Gaps);
        // Nothing but the meter is in doubt.
        Assert.Equal(1.971 * LuxIntegral.MeterShare, dose.MegaluxHours.High - dose.MegaluxHours.Value, 6);
    }

    [Fact]
    public void Uneven_steps_give_the_area_under_the_lines()
    {
        // By hand: (0+10)/2 * 1 + (10+30)/2 * 2 + (30+0)/2 * 0.5 = 5 + 40 + 7.5.
        LightDose dose = LuxIntegral.OfLog([new(0, 0), new(1, 10), new(3, 30), new(3.5, 0)]);
        Assert.Equal(52.5e-6, dose.MegaluxHours.Value, 12);
    }

    [Fact]
    public void A_clear_day_has_the_area_of_its_half_wave()
    {
        // The area under a half wave of height h and length T is 2 h T / pi.
        LuxReading[] log = [.. Enumerable.Range(0, 73).Select(i => new LuxReading(i / 6.0, 8000 * Math.Sin(Math.PI * i / 72)))];
        LightDose dose = LuxIntegral.OfLog(log);
        Assert.Equal(2 * 8000 * 12 / Math.PI * 1e-6, dose.MegaluxHours.Value, 4);
    }

    [Fact]
    public void A_gap_is_filled_by_the_same_hours_of_other_days()
    {
        LuxReading[] days = [.. Enumerable.Range(0, 4 * 48).Select(i => new LuxReading(i / 2.0, Daylight(i / 2.0)))];
        double whole = LuxIntegral.OfLog(days).MegaluxHours.Value;
        // The logger slept from 22 to 33 of the third day: night and morning.
        LuxReading[] holed = [.. days.Where(r => r.Hours is < 70 or > 81)];
        LightDose dose = LuxIntegral.OfLog(holed);
        LightGap gap = Assert.Single(dose.Gaps);
        Assert.Equal(12, gap.LengthHours);
        Assert.InRange(dose.MegaluxHours.Value, 0.99 * whole, 1.01 * whole);
        // Up to half past nine a quarter of the half wave has passed: (1 - cos(pi/4))/2 of one day in four.
        Assert.Equal((1 - Math.Cos(Math.PI / 4)) / 2 / 4, dose.FilledShare, 2);
        Assert.InRange(dose.MegaluxHours.Low, 0, whole);
    }

    [Fact]
    public void The_truth_lies_within_nine_spans_in_ten()
    {
        // 500 logs of light that wanders as clouds do, read at uneven times by meters that are off.
        int within = 0;
        const int Count = 500;
        for (int n = 0; n < Count; n++)
        {
            var random = new SeededRandom((ulong)(n * 7919 + 5));
            double level = 2000, truth = 0, off = Math.Exp(LuxIntegral.MeterShare / Distributions.NormalHalfWidth90 * random.NextNormal());
            var log = new List<LuxReading>();
            double next = 0;
            const double Step = 0.05;
            double hours = 0;
            for (int i = 0; i <= 1200; i++, hours = i * Step)
            {
                if (hours >= next)
                {
                    log.Add(new LuxReading(hours, level * off));
                    next = hours + 0.5 + 3 * random.NextFraction();
                }
                truth += level * Step;
                level = Math.Abs(level + 400 * Math.Sqrt(Step) * random.NextNormal());
            }
            double end = log[^1].Hours;
            truth *= end / hours;
            LightDose dose = LuxIntegral.OfLog(log);
            if (dose.MegaluxHours.Low <= truth * 1e-6 && truth * 1e-6 <= dose.MegaluxHours.High) within++;
        }
        Assert.InRange(within / (double)Count, 0.85, 0.97);
    }

    [Fact]
    public void One_reading_stands_for_the_whole_time_within_a_factor_of_two()
    {
        LightDose dose = LuxIntegral.ByHand([new(0, 1000)], 0, 240, 12);
        Assert.Equal(1000 * 120e-6, dose.MegaluxHours.Value, 9);
        Assert.True(dose.MegaluxHours.High >= LuxIntegral.SingleFactor * dose.MegaluxHours.Value);
        Assert.Equal(DoseWay.Level, dose.Way);
    }

    [Fact]
    public void Readings_by_hand_count_the_lit_hours_only_and_hold_beyond_their_ends()
    {
        LuxReading[] weekly = [new(24, 900), new(192, 1100), new(360, 1000), new(528, 1200)];
        LightDose dose = LuxIntegral.ByHand(weekly, 0, 552, 8);
        // By hand: 900*24 + (900+1100)/2*168 + (1100+1000)/2*168 + (1000+1200)/2*168 + 1200*24, a third of it lit.
        Assert.Equal((900 * 24 + 1000 * 168 + 1050 * 168 + 1100 * 168 + 1200 * 24) / 3.0 * 1e-6, dose.MegaluxHours.Value, 9);
        Assert.True(dose.MegaluxHours.Low < 0.86 * dose.MegaluxHours.Value && dose.MegaluxHours.Low > 0.5 * dose.MegaluxHours.Value);
    }

    [Fact]
    public void More_readings_of_restless_light_narrow_the_span()
    {
        double Width(int each)
        {
            var random = new SeededRandom(3);
            LuxReading[] all = [.. Enumerable.Range(0, 201).Select(i => new LuxReading(i * 24, 3000 + 1500 * random.NextNormal()))];
            LightDose d = LuxIntegral.ByHand([.. all.Where((_, i) => i % each == 0)], 0, 4800, 10);
            return d.MegaluxHours.High - d.MegaluxHours.Low;
        }

        Assert.True(Width(1) < Width(10), $"{Width(1)} {Width(10)}");
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(5, 4)]
    public void Readings_out_of_order_are_refused(double first, double second) =>
        Assert.Throws<ArgumentException>(() => LuxIntegral.OfLog([new(first, 1), new(second, 1)]));

    private static double Daylight(double hours) => Math.Max(0, 5000 * Math.Sin(Math.PI * (hours % 24 - 7) / 10)) * (hours % 24 is > 7 and < 17 ? 1 : 0);
}
