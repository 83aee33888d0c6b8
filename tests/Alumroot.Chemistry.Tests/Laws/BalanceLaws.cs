using System.Globalization;
using Alumroot.Chemistry.Constants;
using Alumroot.Chemistry.Equilibrium;
using Alumroot.Chemistry.Titration;

namespace Alumroot.Chemistry.Tests.Laws;

/// <summary>What goes in is there afterwards. Everything is counted anew from formulas and species, not from the solver's own reactions.</summary>
public class BalanceLaws
{
    private const string Elements = "elements", Charge = "charge", Strength = "ionic-strength", Water = "water-activity", Phases = "phases";

    public static TheoryData<string> ElementCases => LawCase.That(Elements);

    public static TheoryData<string> ChargeCases => LawCase.That(Charge);

    public static TheoryData<string> StrengthCases => LawCase.That(Strength);

    public static TheoryData<string> WaterCases => LawCase.That(Water);

    public static TheoryData<string> PhaseCases => LawCase.That(Phases);

    [Theory, MemberData(nameof(ElementCases))]
    public void Elements_are_kept(string name) => AtEachStep(LawCase.Of(name), ElementCount.Check);

    [Theory, MemberData(nameof(ReferenceData.AllCases), MemberType = typeof(ReferenceData))]
    public void Elements_are_kept_in_the_reference_cases(string folder, string name)
    {
        ReferenceData data = ReferenceData.Of(folder);
        var run = new TitrationRun(data.Constants, data.Cases[name]);
        foreach (double x in data.Expected[name].Select(r => r.Number("titrant_mol_total")))
        {
            Assert.Equal(WhyNot.None, run.Step(x));
            ElementCount.Check(data.Cases[name], run, x);
        }
    }

    [Theory, MemberData(nameof(ChargeCases))]
    public void Charges_cancel(string name) => AtEachStep(LawCase.Of(name), (c, run, x) =>
    {
        double net = 0, gross = 0;
        foreach (Species s in run.State.System.Species)
        {
            net += s.Charge * run.State.MolalityOf(s.Name);
            gross += Math.Abs(s.Charge) * run.State.MolalityOf(s.Name);
        }
        Assert.True(Math.Abs(net) <= 1e-9 * gross, $"{c.Name} at {x}: net charge {net:g3} of {gross:g3}");
    });

    [Theory, MemberData(nameof(StrengthCases))]
    public void Ionic_strength_is_half_the_sum_of_m_z_squared(string name) => AtEachStep(LawCase.Of(name), (c, run, x) =>
    {
        double sum = run.State.System.Species.Sum(s => 0.5 * s.Charge * s.Charge * run.State.MolalityOf(s.Name));
        Assert.True(Math.Abs(sum - run.State.IonicStrengthMolal) <= 1e-9 * sum, $"{c.Name} at {x}: {sum:r} against {run.State.IonicStrengthMolal:r}");
    });

    /// <summary>Activity of water 1 - 0.017 sum of molalities, the first-order form of Raoult's law (Garrels and Christ 1965, from memory).</summary>
    [Theory, MemberData(nameof(WaterCases))]
    public void Activity_of_water_follows_from_what_is_dissolved(string name) => AtEachStep(LawCase.Of(name), (c, run, x) =>
    {
        double expected = 1 - 0.017 * run.State.System.Species.Sum(s => run.State.MolalityOf(s.Name));
        Assert.True(Math.Abs(expected - run.State.WaterActivity) <= 1e-9, $"{c.Name} at {x}: {expected:r} against {run.State.WaterActivity:r}");
    });

    [Theory, MemberData(nameof(PhaseCases))]
    public void A_solid_is_there_and_saturated_or_absent_and_not_oversaturated(string name) => AtEachStep(LawCase.Of(name), (c, run, x) =>
    {
        foreach (AllowedPhase allowed in c.Phases)
        {
            Phase phase = LawCase.Constants.FindPhase(allowed.Name)!;
            if (LnProduct(run.State, phase) is not { } product) continue;
            double saturation = product - phase.Log10ProductAtSaturation(c.Celsius + 273.15) - (phase.IsGas ? allowed.Log10Atm : 0);
            double moles = run.State.PhaseMoles(phase.Name);
            bool there = allowed.Rule == PhaseRule.Held || moles > 0;
            Assert.True(allowed.Rule == PhaseRule.Held || moles >= 0, $"{c.Name} at {x}: {moles:g3} mol of {phase.Name}");
            Assert.True(there ? Math.Abs(saturation) < 1e-7 : saturation < 1e-7, $"{c.Name} at {x}: {phase.Name} with {moles:g3} mol has log10 saturation {saturation:g3}");
        }
    });

    [Fact]
    public void Every_broken_law_is_known_and_has_its_reason()
    {
        string[] laws = [Elements, Charge, Strength, Water, Phases, .. InvarianceLaws.Names, DerivativeLaws.Name];
        foreach (LawCase c in LawCase.All)
        {
            Assert.Empty(c.Breaks.Except(laws));
            Assert.True(c.Breaks.Count == 0 || c.Why.Length >= 20, $"{c.Case.Name} breaks a law without a reason");
        }
        Assert.True(LawCase.All.Count >= 25);
    }

    private static void AtEachStep(LawCase law, Action<TitrationCase, TitrationRun, double> check)
    {
        var run = new TitrationRun(LawCase.Constants, law.Case);
        foreach (double x in law.Steps)
        {
            Assert.True(run.Step(x) == WhyNot.None, $"{law.Case.Name} at {x.ToString(CultureInfo.InvariantCulture)} was not solved");
            check(law.Case, run, x);
        }
    }

    private static double? LnProduct(EquilibriumState state, Phase phase)
    {
        double sum = 0;
        foreach ((string component, double n) in phase.Dissolution.Terms)
        {
            if ((component == "H2O" ? Math.Log10(state.WaterActivity) : state.Log10ActivityOf(component)) is not { } activity) return null;
            sum += n * activity;
        }
        return sum;
    }
}
