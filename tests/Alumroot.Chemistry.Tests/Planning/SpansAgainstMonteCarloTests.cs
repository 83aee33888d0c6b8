using Alumroot.Chemistry.Planning;
using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Tests.Planning;

/// <summary>The spans of a plan against plain Monte Carlo: every draw is solved by itself, strengths of salt and alkali included. Seeded.</summary>
public class SpansAgainstMonteCarloTests
{
    private const int Draws = 1200;

    public static TheoryData<string, string, double, double, double> Cases => new()
    {
        { "potash-alum", "soda-ash", 25, 0.15, 14 },
        { "potash-alum", "soda-ash", 60, 0.15, 14 },
        { "potash-alum", "soda-crystals", 20, 0.05, 0 },
        { "aluminium-chloride", "potash", 20, 0.4, 5 },
        { "copper-sulfate", "soda-ash", 25, 0.1, 14 },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Alkali_and_pH_spans_agree(string salt, string alkali, double celsius, double acid, double hardness)
    {
        LakePlanInput input = Baths.Of(salt, 40, alkali, 2, celsius, Baths.ToPh(6.5), 80, acid, hardness);
        LakePlan plan = Baths.Plan(input);
        (Estimate amount, Estimate ph) = MonteCarlo(input, plan.Alkali.Value);
        double width = amount.High - amount.Low;
        Assert.Equal(amount.Value, plan.Alkali.Value, 0.15 * width);
        Assert.Equal(amount.Low, plan.Alkali.Low, 0.15 * width);
        Assert.Equal(amount.High, plan.Alkali.High, 0.25 * width);
        double phWidth = ph.High - ph.Low;
        Assert.Equal(ph.Low, plan.EndPh.Low, 0.2 * phWidth);
        Assert.Equal(ph.High, plan.EndPh.High, 0.2 * phWidth);
    }

    private static (Estimate Amount, Estimate Ph) MonteCarlo(LakePlanInput input, double planned)
    {
        var random = new SeededRandom(7);
        var u = new double[PlanDraw.Axes];
        var amounts = new List<double>();
        var phs = new List<double>();
        double saltWater = LakePlanner.DissolvingWater(input.Salts[0].Amount.Grams, null, 4), alkaliWater = LakePlanner.DissolvingWater(1, null, 8);
        bool matters = new BathModel(input, saltWater, alkaliWater).IdeaMatters;
        for (int i = 0; i < Draws; i++)
        {
            for (int a = 0; a < u.Length; a++) u[a] = random.NextFraction();
            SolidIdea idea = matters && random.NextFraction() > (double)PathBundle.WithHydroxide / PathBundle.Solved ? SolidIdea.BasicSalt : SolidIdea.Hydroxide;
            double alkali = PlanDraw.Skewed(input.Alkali.Strength, random.NextFraction());
            double salt = PlanDraw.Skewed(input.Salts[0].Substance.Strength, random.NextFraction());
            LakePlanInput truth = input with { Salts = [new SaltPortion(input.Salts[0].Substance, Mass.FromGrams(input.Salts[0].Amount.Grams * salt))] };
            var bath = new BathModel(truth, saltWater, alkaliWater);
            PlanDraw d = PlanDraw.At(idea, truth, u);
            double[] perUnit = [.. bath.AlkaliPerUnit().Select(x => x * alkali)];
            var tracer = new PathTracer(bath.SystemFor(d), bath.LiquorWithSalts(d), perUnit, bath.MetalIndexes);
            var path = new PlanPath(tracer.State.System.Phases.Count);
            double stoichiometric = (bath.BaseForMetal + bath.BaseForAcid) / input.Alkali.BaseMolPerUnit;
            Assert.True(tracer.Trace(LakePlanner.Grid(stoichiometric, 4), path, null, out _));
            amounts.Add(Math.Clamp(path.FirstAtPh(6.5), 0, path.LastX));
            phs.Add(path.At(path.Ph, planned));
        }
        return (PathBundle.Summarise([.. amounts]), PathBundle.Summarise([.. phs]));
    }
}
