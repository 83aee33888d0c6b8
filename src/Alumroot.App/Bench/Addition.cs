using Alumroot.App.Charts;
using Alumroot.App.Words;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Bench;

/// <summary>The addition by portions as it stands: what went in, what was read, what is to go in next.</summary>
internal sealed class Addition
{
    // A gram of dissolved salt or soda takes about this much room in its solution (the plan's own figure for the liquid in the pot).
    private const double MillilitresPerDissolvedGram = 0.4;

    private readonly bool _alkaliLast;
    private readonly double _solutionMillilitresPerGram;

    private Addition(LakeInWork lake, LakePlan plan)
    {
        _alkaliLast = plan.Input.Order == OrderOfAddition.SaltFirst;
        IsPoured = _alkaliLast && plan.Input.Alkali.Unit == SubstanceUnit.Millilitre;
        double solid = lake.Grams(Acts.AlkaliDissolved).Sum();
        double water = plan.Alkali.Value > 0 ? plan.AlkaliWaterMillilitres / plan.Alkali.Value : 0;
        _solutionMillilitresPerGram = _alkaliLast && !IsPoured && solid > 0 ? PlanNumbers.Enough(water * solid) / solid + MillilitresPerDissolvedGram : 0;
        Act act = _alkaliLast ? Acts.AlkaliIn : Acts.SaltIn;
        Portions = lake.Count(act);
        Readings = [.. Read(lake, act)];
        Replan = Replan.OfPlan(plan, Added(lake, act));
        PhNow = PlanPh(plan, Added(lake, act));
    }

    /// <summary>Works out the addition of a batch.</summary>
    public static Addition Of(LakeInWork lake, LakePlan plan) => new(lake, plan);

    /// <summary>Whether it is poured as it is.</summary>
    public bool IsPoured { get; }

    /// <summary>How many portions went in.</summary>
    public int Portions { get; }

    /// <summary>What is left.</summary>
    public Replan Replan { get; }

    /// <summary>The pH expected now.</summary>
    public Estimate PhNow { get; }

    /// <summary>What is to be said about it.</summary>
    public IReadOnlyList<string> Said { get; private init; } = [];

    /// <summary>A reading that does not fit the masses.</summary>
    public string? Quarrel { get; private init; }

    /// <summary>What could explain it.</summary>
    public IReadOnlyList<BenchExplanation> Explanations { get; private init; } = [];

    /// <summary>The readings so far, each with what had gone in.</summary>
    public IReadOnlyList<PhOnPath> Readings { get; }

    /// <summary>The right end of the path.</summary>
    public double AxisEnd(LakePlan plan) => _alkaliLast ? plan.Curve[^1].Alkali : plan.Salts.Sum(s => s.Grams);

    /// <summary>An amount of it in words.</summary>
    public Shown Shown(PlanNumbers numbers, double units) => IsPoured ? numbers.Volume90(Estimate.Exact(units)) : numbers.Weighed(Estimate.Exact(units));

    /// <summary>The same as volume of its solution; null when there is none.</summary>
    public string? Poured(PlanNumbers numbers, double units) => _solutionMillilitresPerGram > 0 ? numbers.Roughly(Math.Max(1, units * _solutionMillilitresPerGram)) : null;

    private IEnumerable<PhOnPath> Read(LakeInWork lake, Act act)
    {
        double units = 0;
        foreach ((StepTaken taken, Act done) in lake.Done)
        {
            foreach (Measured value in taken.Step.Values)
            {
                if (done == act && value.Name == "amount") units += Units(value);
                if (value.Name == "ph" && (done == Acts.SaltRead || done == Acts.AlkaliRead || done == act)) yield return new PhOnPath(units, value.SiValue, value.Typed, value.ResolutionSi ?? 0.5, value.Instrument == "meter");
            }
        }
    }

    private double Units(Measured value) => value.SiUnit == Measured.Kilogram ? value.SiValue * 1000
        : IsPoured ? value.SiValue * 1e6
        : _solutionMillilitresPerGram > 0 ? value.SiValue * 1e6 / _solutionMillilitresPerGram : 0;

    private double Added(LakeInWork lake, Act act)
    {
        double poured = lake.Millilitres(act).Sum();
        if (IsPoured) return poured;
        return lake.Grams(act).Sum() + (_solutionMillilitresPerGram > 0 ? poured / _solutionMillilitresPerGram : 0);
    }

    private static Estimate PlanPh(LakePlan plan, double units)
    {
        var curves = plan.Curve;
        bool alkaliLast = plan.Input.Order == OrderOfAddition.SaltFirst;
        double salt = plan.Salts.Sum(s => s.Grams);
        double[] x = [.. curves.Select(p => alkaliLast ? p.Alkali : p.SaltShare * salt)];
        return new Estimate(Reading.At(x, [.. curves.Select(p => p.Ph.Value)], units), Reading.At(x, [.. curves.Select(p => p.Ph.Low)], units), Reading.At(x, [.. curves.Select(p => p.Ph.High)], units));
    }
}

/// <summary>A pH that was read during the addition.</summary>
/// <param name="Units">What had gone in.</param>
/// <param name="Ph">The pH.</param>
/// <param name="Typed">As typed.</param>
/// <param name="ResolutionPh">The step of the strip or meter.</param>
/// <param name="IsMeter">Whether it was a meter.</param>
internal sealed record PhOnPath(double Units, double Ph, string Typed, double ResolutionPh, bool IsMeter);
