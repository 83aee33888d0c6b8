using Alumroot.App.Charts;
using Alumroot.App.Requests;
using Alumroot.App.Words;
using Alumroot.Chemistry.Assimilation;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Bench;

/// <summary>The addition by portions as it stands: what went in, what was read, what is to go in next.</summary>
public sealed class Addition
{
    // A gram of dissolved salt or soda takes about this much room in its solution (the plan's own figure for the liquid in the pot).
    private const double MillilitresPerDissolvedGram = 0.4;

    private readonly LakeInWork _lake;
    private readonly LakePlan _plan;
    private readonly bool _alkaliLast;
    private readonly double _solutionMillilitresPerGram;

    internal Addition(LakeInWork lake, LakePlan plan, Func<LakePlanInput, IReadOnlyList<BenchEvent>, AssimilationOutcome> assimilate)
    {
        (_lake, _plan) = (lake, plan);
        _alkaliLast = plan.Input.Order == OrderOfAddition.SaltFirst;
        IsPoured = _alkaliLast && plan.Input.Alkali.Unit == SubstanceUnit.Millilitre;
        double solid = lake.Grams(Acts.AlkaliDissolved).Sum();
        double water = plan.Alkali.Value > 0 ? plan.AlkaliWaterMillilitres / plan.Alkali.Value : 0;
        _solutionMillilitresPerGram = _alkaliLast && !IsPoured && solid > 0 ? PlanNumbers.Enough(water * solid) / solid + MillilitresPerDissolvedGram : 0;
        Act act = _alkaliLast ? Acts.AlkaliIn : Acts.SaltIn;
        Portions = lake.Count(act);
        (IReadOnlyList<BenchEvent> events, Readings, Added) = Happened(act);
        State = assimilate(AsWeighed(), events) is AssimilationOutcome.Assimilated known ? known.State : null;
    }

    /// <summary>How things stand after the readings; null when this course of events is not modelled, and the plan's own portions are followed.</summary>
    public BenchState? State { get; }

    /// <summary>Whether it is poured as it is.</summary>
    public bool IsPoured { get; }

    /// <summary>How many portions went in.</summary>
    public int Portions { get; }

    /// <summary>What went in so far, in grams or millilitres.</summary>
    public double Added { get; }

    /// <summary>The readings so far, each with what had gone in.</summary>
    public IReadOnlyList<PhOnPath> Readings { get; }

    /// <summary>The next safe portion in grams or millilitres; null when to stop.</summary>
    public double? NextUnits => State is { } state ? state.Next?.Units : NextPlanned is { } next ? next.TotalUnits - Added : null;

    /// <summary>The pH to expect of a reading now.</summary>
    public Estimate PhNow => State?.PhNow ?? OnPath(Added);

    /// <summary>The pH to expect after the next portion; null when to stop.</summary>
    public Estimate? PhAfterNext => State is { } state ? state.Next?.ReadingPhAfter : NextPlanned?.PhAfter;

    /// <summary>What is to be said about it, at most two sentences.</summary>
    public IReadOnlyList<string> Said
    {
        get
        {
            double left = Math.Max(0, PlannedUnits.Value - Added);
            if (State is not { } state) return NextPlanned is null ? [] : [$"{Shown(Estimate.Exact(left)).Plain} of the planned amount to go. Readings cannot correct this order of addition."];
            if (state.Stop is { } stop) return [BenchStateWords.Stop(stop, state, _lake.Numbers, (_plan.Input.Aim as PlanAim.ToPh)?.Ph.Value)];
            return [BenchStateWords.ToGo(state, Shown(state.RemainingUnits).Line, Shown(Estimate.Exact(left)).Plain)];
        }
    }

    /// <summary>A reading that does not fit the masses; null when all fits.</summary>
    public string? Quarrel => State?.Quarrel is { } quarrel ? BenchStateWords.Quarrel(quarrel, _lake.Numbers) : null;

    /// <summary>What could explain it.</summary>
    public IReadOnlyList<BenchExplanation> Explanations => State?.Quarrel is { } quarrel
        ? [.. BenchStateWords.Explanations(quarrel, _lake.Numbers).Select(e => new BenchExplanation(e.Words, PlanUnder(e.Hypothesis)))]
        : [];

    /// <summary>The right end of the path.</summary>
    public double AxisEnd => _alkaliLast ? _plan.Curve[^1].Alkali : PlannedUnits.Value;

    /// <summary>An amount of it in words.</summary>
    public Shown Shown(Estimate units) => IsPoured ? _lake.Numbers.Volume90(units) : _lake.Numbers.Weighed(units);

    /// <summary>The same as volume of its solution; null when there is none.</summary>
    public string? Poured(double units) => _solutionMillilitresPerGram > 0 ? _lake.Numbers.Roughly(Math.Max(1, units * _solutionMillilitresPerGram)) : null;

    private Estimate PlannedUnits => _alkaliLast ? _plan.Alkali : Estimate.Exact(_plan.Salts.Sum(s => s.Grams));

    private Portion? NextPlanned => _plan.Portions.FirstOrDefault(p => p.TotalUnits > Added + 0.1 * p.Units);

    // The plan as it was carried out up to the addition: what was weighed takes the place of what was planned.
    private LakePlanInput AsWeighed()
    {
        LakePlanInput input = _plan.Input;
        double dyestuff = _lake.Grams(Acts.DyestuffIn).Sum();
        if (dyestuff > 0) input = input with { DryDyestuff = Mass.FromGrams(dyestuff) };
        if (_lake.Done.LastOrDefault(d => d.Act == Acts.LiquorRead).Taken?.Step.Values.FirstOrDefault(v => v.Name == "ph") is { } read) input = input with { LiquorPh = Ph.FromValue(read.SiValue) };
        if (!_alkaliLast) return input;
        double[] weighed = [_lake.Grams(Acts.SaltIn).Sum(), _lake.Grams(Acts.SecondSaltIn).Sum()];
        return input with { Salts = [.. input.Salts.Select((s, i) => i < weighed.Length && weighed[i] > 0 ? s with { Amount = Mass.FromGrams(weighed[i]) } : s)] };
    }

    private (IReadOnlyList<BenchEvent>, IReadOnlyList<PhOnPath>, double Added) Happened(Act act)
    {
        var events = new List<BenchEvent>();
        var readings = new List<PhOnPath>();
        double units = 0;
        foreach ((StepTaken taken, Act done) in _lake.Done)
        {
            if (done.Step is not (StepKind.Salt or StepKind.Alkali)) continue;
            foreach (Measured value in taken.Step.Values)
            {
                if (value.Name == "amount" && done == act)
                {
                    units += Units(value);
                    events.Add(_alkaliLast ? new BenchEvent.AlkaliAdded(Units(value)) : new BenchEvent.SaltAdded(Mass.FromGrams(value.SiValue * 1000)));
                }
                else if (value.Name == "amount" && done == Acts.AlkaliIn) events.Add(new BenchEvent.AlkaliAdded(Units(value)));
                else if (value.Name == "ph")
                {
                    bool meter = value.Instrument == "meter";
                    double step = value.ResolutionSi ?? _plan.Input.StripStepPh;
                    readings.Add(new PhOnPath(units, value.SiValue, value.Typed, step, meter));
                    events.Add(new BenchEvent.PhRead(Ph.FromValue(value.SiValue), step, meter ? PhInstrument.Meter : PhInstrument.Strip));
                }
                else if (value.Name == "temperature") events.Add(new BenchEvent.TemperatureRead(Temperature.FromCelsius(value.SiValue - 273.15)));
            }
        }
        return (events, readings, units);
    }

    private double Units(Measured value) => value.SiUnit == Measured.Kilogram ? value.SiValue * 1000
        : _plan.Input.Alkali.Unit == SubstanceUnit.Millilitre ? value.SiValue * 1e6
        : _solutionMillilitresPerGram > 0 ? value.SiValue * 1e6 / _solutionMillilitresPerGram : 0;

    private Estimate OnPath(double units)
    {
        double salt = _plan.Salts.Sum(s => s.Grams);
        double[] x = [.. _plan.Curve.Select(p => _alkaliLast ? p.Alkali : p.SaltShare * salt)];
        return new Estimate(At(p => p.Ph.Value), At(p => p.Ph.Low), At(p => p.Ph.High));

        double At(Func<PlanPoint, double> read) => Reading.At(x, [.. _plan.Curve.Select(read)], units);
    }

    // The plan with an explanation taken as true; null when only the entry itself could be corrected.
    private string? PlanUnder(BenchHypothesis hypothesis) => hypothesis switch
    {
        BenchHypothesis.OtherAlkali other => _lake.Answer!.Request.With(PlanFields.Alkali, other.Instead.Key).With(PlanFields.BakedBefore, null).With(PlanFields.BakedAfter, null).With(PlanFields.AlkaliStrength, null).Address,
        BenchHypothesis.OtherSalt other => _lake.Answer!.Request.With(PlanFields.Salt, other.Instead.Key).Address,
        _ => null,
    };
}

/// <summary>A pH that was read during the addition.</summary>
/// <param name="Units">What had gone in.</param>
/// <param name="Ph">The pH.</param>
/// <param name="Typed">As typed.</param>
/// <param name="ResolutionPh">The step of the strip or meter.</param>
/// <param name="IsMeter">Whether it was a meter.</param>
public sealed record PhOnPath(double Units, double Ph, string Typed, double ResolutionPh, bool IsMeter);
