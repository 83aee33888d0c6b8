using Alumroot.Chemistry.Assimilation;
using Alumroot.Chemistry.Planning;
using Alumroot.Chemistry.Tests.Planning;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Tests.Assimilation;

/// <summary>Before any reading the bench knows what the plan knows: its spans against the plan's own, which come from other draws and other formulas.</summary>
public class PlanAgreementTests
{
    public static TheoryData<string, string, double, double> Baths => new()
    {
        { "potash-alum", "soda-ash", 20, 0.12 },
        { "potash-alum", "soda-ash", 60, 0.12 },
        { "aluminium-sulfate", "soda-crystals", 20, 0.3 },
        { "aluminium-chloride", "potash", 20, 0.2 },
    };

    [Theory]
    [MemberData(nameof(Baths))]
    public void Without_a_reading_the_remaining_alkali_is_the_plan_s(string salt, string alkali, double celsius, double acid)
    {
        LakePlanInput input = Planning.Baths.Of(salt, 50, alkali, 2, celsius, Planning.Baths.ToPh(6.5), 100, acid, 14);
        Estimate plan = Planning.Baths.Plan(input).Alkali;
        Estimate bench = Bench.State(input).RemainingUnits;
        double width = plan.High - plan.Low;
        Assert.Equal(plan.Value, bench.Value, 0.15 * width);
        Assert.Equal(plan.Low, bench.Low, 0.25 * width);
        Assert.Equal(plan.High, bench.High, 0.3 * width);
    }

    [Theory]
    [MemberData(nameof(Baths))]
    public void At_each_portion_the_pH_is_the_plan_s(string salt, string alkali, double celsius, double acid)
    {
        LakePlanInput input = Planning.Baths.Of(salt, 50, alkali, 2, celsius, Planning.Baths.ToPh(6.5), 100, acid, 14);
        foreach (Portion p in Planning.Baths.Plan(input).Portions.Where((_, i) => i % 2 == 1))
        {
            Estimate ph = Bench.State(input, new BenchEvent.AlkaliAdded(p.TotalUnits)).PhNow;
            // Where the pH turns the ends of both spans are single draws on a steep place: tolerances follow the width.
            double width = p.PhAfter.High - p.PhAfter.Low;
            Assert.Equal(p.PhAfter.Value, ph.Value, 0.2 + 0.15 * width);
            Assert.Equal(p.PhAfter.Low, ph.Low, 0.2 + 0.2 * width);
            Assert.Equal(p.PhAfter.High, ph.High, 0.2 + 0.4 * width);
        }
    }
}
