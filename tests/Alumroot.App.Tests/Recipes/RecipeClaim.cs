using System.Globalization;
using Alumroot.App.Requests;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;
using Alumroot.Quantities.Tables;

namespace Alumroot.App.Tests.Recipes;

/// <summary>One claim of one recipe: a row of recipes.csv.</summary>
internal sealed class RecipeClaim
{
    private static readonly Lazy<IReadOnlyList<RecipeClaim>> Rows = new(() =>
        Read(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Recipes", "recipes.csv"))));

    private RecipeClaim(TableRow row) =>
        (Recipe, Plan, Check, Expected, Source, KnownMiss) = (row["recipe"], row["plan"], row["check"], row["expected"], row["source"], row["known_miss"]);

    public static IReadOnlyList<RecipeClaim> All => Rows.Value;

    public static IReadOnlyList<RecipeClaim> Read(string table) => [.. Table.Parse("recipes.csv", table).Rows.Select(r => new RecipeClaim(r))];

    public string Recipe { get; }

    public string Plan { get; }

    public string Check { get; }

    public string Expected { get; }

    public string Source { get; }

    /// <summary>Why the claim is not met; empty when it is.</summary>
    public string KnownMiss { get; }

    public PlanRequest Request()
    {
        Dictionary<string, string> fields = Plan.Split(';').Select(part => part.Split('=', 2)).ToDictionary(p => p[0].Trim(), p => p[1].Trim(), StringComparer.Ordinal);
        Assert.All(fields.Keys, name => Assert.Contains(name, PlanFields.All));
        return PlanRequest.From(fields.GetValueOrDefault);
    }

    /// <summary>What is wrong with the claim, or null when the reckoning agrees with it.</summary>
    public string? Quarrel(PlanAnswer answer)
    {
        if (answer.Troubles.Count > 0) return string.Join(" ", answer.Troubles.Select(t => t.Sentence));
        if (Check == "refused") return Told(answer.Refusal?.What == Expected && answer.Plan is null && answer.Input is null, answer.Refusal?.What ?? "it was planned");
        if (answer.Plan is not { } plan) return "nothing was planned";
        return Check switch
        {
            "end-ph" => Overlap(Ends(plan)),
            "start-ph" => Overlap(plan.StartPh),
            "alkali" => Overlap(plan.Alkali),
            "alkali-most" => Told(plan.Alkali.High <= Number, plan.Alkali),
            "base-per-metal" => Told(Math.Abs(plan.BasePerMetal - Number) <= 0.02, plan.BasePerMetal),
            "just-hydroxide" => Told(Math.Abs(Hydroxide(plan) - Number) <= 0.005 * Number, Hydroxide(plan)),
            "all-gas-l" => Told(Math.Abs(plan.AllGasLitres - Number) <= 0.05, plan.AllGasLitres),
            "gas-least-l" => Told(plan.GasLitres.Value >= Number, plan.GasLitres),
            "vessel-least-l" => Told(plan.LeastVesselLitres >= Number, plan.LeastVesselLitres),
            "vessel-over-liquid" => Overlap(Estimate.Exact(plan.LeastVesselLitres / plan.LiquidLitres)),
            "gas-gone-above" => Told(plan.EndPhGasGone.Value > Number, plan.EndPhGasGone),
            "gas-gone-most" => Told(plan.EndPhGasGone.High <= Number, plan.EndPhGasGone),
            "yield-g" => Told(plan.YieldGrams.Low <= Number && Number <= plan.YieldGrams.High, plan.YieldGrams),
            "yield-least-g" => Told(plan.YieldGrams.Low >= Number, plan.YieldGrams),
            "start-solid-most-g" => Told(plan.Curve[0].SolidGrams.Value <= Number, plan.Curve[0].SolidGrams),
            "dissolved-most-percent" => Told(100 * plan.DissolvedMetalShareBlind.Value <= Number, plan.DissolvedMetalShareBlind),
            "dissolved-least-percent" => Told(100 * plan.DissolvedMetalShareBlind.Value >= Number, plan.DissolvedMetalShareBlind),
            "solid" => Told(plan.Solids.Any(s => s.Phase == Expected), string.Join(", ", plan.Solids.Select(s => s.Phase))),
            "finding" => Told(plan.Findings.Any(f => f.Key == Expected), string.Join(", ", plan.Findings.Select(f => f.Key))),
            "no-finding" => Told(plan.Findings.All(f => f.Key != Expected), string.Join(", ", plan.Findings.Select(f => f.Key))),
            "mix-up" => Told(answer.MixUps.Any(m => m.Instead.Key == Expected), string.Join(", ", answer.MixUps.Select(m => m.Instead.Key))),
            _ => $"there is no check '{Check}'",
        };
    }

    private double Number => double.Parse(Expected, CultureInfo.InvariantCulture);

    // What a strip may read while the froth settles: from gas held in to gas gone.
    private static Estimate Ends(LakePlan plan)
    {
        Estimate[] all = [plan.EndPh, plan.EndPhGasHeld, plan.EndPhGasGone];
        return new Estimate(plan.EndPh.Value, all.Min(e => e.Low), all.Max(e => e.High));
    }

    private static double Hydroxide(LakePlan plan) => plan.Rules.Single(r => r.Key == "just-hydroxide").Alkali;

    private string? Overlap(Estimate found)
    {
        double[] ends = [.. Expected.Split("..").Select(x => double.Parse(x, CultureInfo.InvariantCulture))];
        return Told(found.Low <= ends[1] && ends[0] <= found.High, found);
    }

    private string? Told(bool agrees, object found) => agrees ? null : string.Create(CultureInfo.InvariantCulture, $"{Recipe}: {Check} {Expected} is claimed, {found} is reckoned");
}
