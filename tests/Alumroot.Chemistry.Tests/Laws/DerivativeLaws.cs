using System.Globalization;
using Alumroot.Chemistry.Constants;
using Alumroot.Chemistry.Equilibrium;
using Alumroot.Chemistry.Titration;

namespace Alumroot.Chemistry.Tests.Laws;

/// <summary>Each exact derivative equals a central difference of runs solved again with the input moved to both sides.</summary>
/// <remarks>Where the set of phases differs between the two sides the curve has a corner and no derivative; such places are counted, so that they stay rare.</remarks>
public class DerivativeLaws
{
    internal const string Name = "derivative";

    private static readonly string[] SomeSpecies = ["OH-", "HSO4-", "AlSO4+", "AlOH+2", "Al(OH)4-", "HCO3-", "CO2", "CuSO4", "NH3", "H(Acetate)", "HPlantacid"];

    public static TheoryData<string> Cases => LawCase.That(Name);

    [Theory, MemberData(nameof(Cases))]
    public void An_exact_derivative_equals_a_central_difference(string name)
    {
        LawCase law = LawCase.Of(name);
        InputChange[] inputs = [.. Inputs(law)];
        int compared = 0, corners = 0;
        for (int last = 0; last < law.Steps.Count; last++)
        {
            double[] steps = [.. law.Steps.Take(last + 1)];
            TitrationRun exact = LawCase.Run(law.Case, steps, null, inputs);
            double[] ph = exact.PhByInput.ToArray(), gas = exact.GasByInput.ToArray();
            for (int k = 0; k < inputs.Length; k++)
            {
                double size = SizeOf(inputs[k], law, steps[^1]);
                if (size == 0) continue;
                if (inputs[k] is InputChange.SpeciesLog10K s && exact.State.System.IndexOfSpecies(s.Name) < 0)
                {
                    Assert.Equal(0, ph[k]);
                    continue;
                }
                double h = inputs[k] is InputChange.Temperature ? 0.01 : Math.Min(3e-4 * size, 1e-3 / (Math.Abs(ph[k]) + 1e-300));
                if (Differences(law, steps, inputs[k], h, exact) is not { } difference)
                {
                    corners++;
                    continue;
                }
                compared++;
                string at = $"{name} after {steps[^1].ToString(CultureInfo.InvariantCulture)}, {Label(inputs[k])}";
                Near(difference.Ph, ph[k], 1e-6 / size, $"{at}: pH");
                Near(difference.Gas, gas[k], 1e-7 * law.Case.StartWaterKg / size, $"{at}: gas");
            }
        }
        Assert.True(compared > 0 && corners <= compared / 4, $"{name}: {compared} compared, {corners} corners");
    }

    /// <summary>Central differences with steps h and h/2, extrapolated to none (Richardson); null where a phase comes or goes within the step.</summary>
    private static (double Ph, double Gas)? Differences(LawCase law, double[] steps, InputChange input, double h, TitrationRun exact)
    {
        (double Ph, double Gas)[] found = new (double, double)[2];
        for (int i = 0; i < 2; i++, h /= 2)
        {
            (TitrationRun below, TitrationRun above) = (Moved(law, steps, input, -h), Moved(law, steps, input, h));
            if (!SamePhases(exact, below) || !SamePhases(exact, above)) return null;
            found[i] = ((above.State.Ph - below.State.Ph) / (2 * h), (above.GasEvolvedMol - below.GasEvolvedMol) / (2 * h));
        }
        return ((4 * found[1].Ph - found[0].Ph) / 3, (4 * found[1].Gas - found[0].Gas) / 3);
    }

    private static string Label(InputChange input) => input is InputChange.StartAmount a ? a.Reagent.Key : input.ToString();

    private static IEnumerable<InputChange> Inputs(LawCase law)
    {
        foreach (Reagent r in law.Case.Start.Select(s => s.Reagent).Distinct()) yield return new InputChange.StartAmount(r);
        yield return new InputChange.TitrantAmount();
        yield return new InputChange.TitrantStrength();
        yield return new InputChange.StartWater();
        yield return new InputChange.Temperature();
        foreach (AllowedPhase p in law.Case.Phases) yield return new InputChange.PhaseLog10K(p.Name);
        foreach (string s in SomeSpecies) yield return new InputChange.SpeciesLog10K(s);
    }

    private static double SizeOf(InputChange input, LawCase law, double titrantMol) => input switch
    {
        InputChange.StartAmount a => law.Case.Start.First(r => r.Reagent == a.Reagent).Moles,
        InputChange.TitrantAmount => titrantMol,
        InputChange.TitrantStrength => titrantMol > 0 ? 1 : 0,
        InputChange.StartWater => law.Case.StartWaterKg,
        InputChange.Temperature => 10,
        _ => 1,
    };

    private static TitrationRun Moved(LawCase law, double[] steps, InputChange input, double h)
    {
        TitrationCase c = law.Case;
        ConstantSet constants = LawCase.Constants;
        switch (input)
        {
            case InputChange.StartAmount a:
                c = c with { Start = [.. c.Start.Select(r => r.Reagent == a.Reagent ? (r.Reagent, r.Moles + h) : r)] };
                break;
            case InputChange.TitrantAmount:
                steps = [.. steps[..^1], steps[^1] + h];
                break;
            case InputChange.TitrantStrength:
                steps = [.. steps.Select(x => x * (1 + h))];
                break;
            case InputChange.StartWater:
                c = c with { StartWaterKg = c.StartWaterKg + h };
                break;
            case InputChange.Temperature:
                c = c with { Celsius = c.Celsius + h };
                break;
            case InputChange.PhaseLog10K p:
                constants = constants.WithPhaseShift(p.Name, h);
                break;
            case InputChange.SpeciesLog10K s:
                constants = ShiftedConstants.Species(s.Name, h);
                break;
        }
        return LawCase.Run(c, steps, constants);
    }

    private static bool SamePhases(TitrationRun a, TitrationRun b) =>
        a.State.System.Phases.All(p => a.State.PhaseMoles(p.Name) != 0 == (b.State.PhaseMoles(p.Name) != 0)) && a.GasEvolvedMol > 0 == b.GasEvolvedMol > 0;

    private static void Near(double difference, double exact, double floor, string what) =>
        Assert.True(Math.Abs(difference - exact) <= 1e-5 * Math.Abs(exact) + floor, $"{what} by difference {difference:g9}, exact {exact:g9}");
}
