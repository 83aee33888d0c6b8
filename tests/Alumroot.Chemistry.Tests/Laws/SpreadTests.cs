using Alumroot.Chemistry.Constants;
using Alumroot.Chemistry.Equilibrium;
using Alumroot.Chemistry.Titration;
using Alumroot.Numerics;

namespace Alumroot.Chemistry.Tests.Laws;

/// <summary>The spread that the exact derivatives predict is the spread that seeded draws give, where the inputs are small enough for a straight line.</summary>
public class SpreadTests
{
    [Theory]
    [InlineData("alum-soda-vented", 0.03)]
    [InlineData("alum-soda-basic-sulfate", 0.05)]
    [InlineData("hard-water-plant-acid", 0.03)]
    [InlineData("citric-acid-alum", 0.05)]
    [InlineData("copper-soda", 0.02)]
    public void Draws_and_derivatives_give_the_same_spread(string name, double titrantMol)
    {
        LawCase law = LawCase.Of(name);
        Reagent salt = law.Case.Start[^1].Reagent;
        double saltMol = law.Case.Start[^1].Moles;
        InputChange[] inputs = [new InputChange.StartAmount(salt), new InputChange.TitrantStrength(), new InputChange.Temperature()];
        double[] deviation = [0.003 * saltMol, 0.003, 0.5];
        TitrationRun middle = LawCase.Run(law.Case, [titrantMol], null, inputs);
        double predicted = Math.Sqrt(deviation.Select((d, k) => d * middle.PhByInput[k]).Sum(x => x * x));

        const int draws = 1000;
        var random = new SeededRandom(2026);
        double sum = 0, squares = 0;
        for (int i = 0; i < draws; i++)
        {
            double salts = deviation[0] * random.NextNormal(), strength = deviation[1] * random.NextNormal(), kelvin = deviation[2] * random.NextNormal();
            TitrationCase drawn = law.Case with { Celsius = law.Case.Celsius + kelvin, Start = [.. law.Case.Start.Select(r => r.Reagent == salt ? (r.Reagent, r.Moles + salts) : r)] };
            double off = LawCase.Run(drawn, [titrantMol * (1 + strength)]).State.Ph - middle.State.Ph;
            sum += off;
            squares += off * off;
        }
        double found = Math.Sqrt(squares / draws - sum / draws * (sum / draws));
        // A spread from 1,000 draws is itself uncertain by 2.2 %; four times that, and a curve's bend, are allowed.
        Assert.InRange(found / predicted, 0.9, 1.1);
    }
}
