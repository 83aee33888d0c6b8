using Alumroot.App.Words;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;

namespace Alumroot.App.Bench;

/// <summary>What is weighed out for a lake, in words.</summary>
/// <param name="What">The substance.</param>
/// <param name="Amount">How much.</param>
/// <param name="Span">Its span; null when there is none.</param>
/// <param name="With">What it is dissolved in.</param>
public sealed record BenchAmount(string What, string Amount, string? Span, string With)
{
    /// <summary>The amounts of a plan in the order of use.</summary>
    public static IReadOnlyList<BenchAmount> Of(LakePlan plan, PlanNumbers numbers)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(numbers);
        Shown alkali = numbers.Alkali(plan.Alkali, plan.Input.Alkali);
        var alkaliRow = new BenchAmount(plan.Input.Alkali.PlainName, alkali.Plain, alkali.Span, AlkaliHandling.Short(plan.Input.Alkali, numbers.Poured(PlanNumbers.Enough(plan.AlkaliWaterMillilitres))));
        IEnumerable<BenchAmount> salts = plan.Salts.Select(s => new BenchAmount(s.Substance.PlainName, numbers.Weighed(Estimate.Exact(s.Grams)).Plain, null, $"{numbers.Poured(PlanNumbers.Enough(s.WaterMillilitres))} hot water"));
        return [.. plan.Input.Order == OrderOfAddition.SaltFirst ? salts.Append(alkaliRow) : salts.Prepend(alkaliRow)];
    }
}
