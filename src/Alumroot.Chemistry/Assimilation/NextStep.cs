using Alumroot.Chemistry.Planning;
using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Assimilation;

/// <summary>What to do now: how much is left to pour, the next safe portion, or why to stop.</summary>
internal sealed class NextStep
{
    /// <summary>Chance of passing the aim that one portion may run.</summary>
    internal const double OvershootLimit = 0.1;

    // Another portion must bring the bath to the aim by at least so much more of the probability; else the pouring ends.
    private const double WorthIt = 0.01;
    private const int Candidates = 24;
    private readonly BenchCase _main;
    private readonly LakePlanInput _input;
    private readonly Guesses _guesses;
    private readonly double _poured, _step;

    internal NextStep(BenchCase main, LakePlanInput input, Guesses guesses, double poured, double planned)
    {
        (_main, _input, _guesses, _poured) = (main, input, guesses, poured);
        _step = main.SaltFirst && input.Alkali.Unit == SubstanceUnit.Millilitre ? Math.Max(1, input.ScaleStep.Grams) : Math.Max(input.ScaleStep.Grams, 1e-3);
        BeyondReachRatio = guesses.Share(g => !UntilAim(g, out _));
        Remaining = input.Aim is PlanAim.AlkaliAmount
            ? Estimate.Exact(Math.Max(0, planned - poured))
            : guesses.Read(g => UntilAim(g, out double units) ? units : g.Ahead.LastUnits);
        Stop = WhyStop();
        if (Stop is not null) return;
        Next = Portion();
        if (Next is null) Stop = _finer ? StopReason.FinerThanScale : StopReason.Reached;
    }

    private bool _finer;

    internal Estimate Remaining { get; }

    internal double BeyondReachRatio { get; }

    internal NextPortion? Next { get; }

    internal StopReason? Stop { get; }

    private bool UntilAim(Guess g, out double units)
    {
        switch (_input.Aim)
        {
            case PlanAim.ToPh to:
                units = g.Ahead.UntilPh(to.Ph.Value);
                return double.IsFinite(units);
            case PlanAim.AllMetalDown:
                (units, bool reached) = g.Ahead.UntilDown();
                return reached;
            default:
                units = Remaining.Value;
                return true;
        }
    }

    private StopReason? WhyStop()
    {
        if (_input.Aim is PlanAim.AlkaliAmount) return Remaining.Value < 0.5 * _step ? StopReason.NothingLeft : null;
        if (_input.Aim is PlanAim.ToPh to && Passed(to.Ph.Value, 0) > 0.5) return StopReason.Passed;
        // Where the metal never comes down to the limit, the least there is counts, and beyond it the lake dissolves.
        if (_input.Aim is PlanAim.AllMetalDown && Remaining.Value < 0.5 * _step)
            return _guesses.Share(g => g.Ahead.DissolvedNow > LakePlanner.AllDownShare) > 0.5 ? StopReason.MoreWouldRedissolve : StopReason.Reached;
        if (_input.Aim is PlanAim.ToPh aim && _main.SaltFirst && Redissolves(aim.Ph.Value) > 0.5) return StopReason.MoreWouldRedissolve;
        return null;
    }

    /// <summary>Probability that all that can come down is down and the way to the aim dissolves more than a fiftieth of it again.</summary>
    private double Redissolves(double aim) => _guesses.Share(g =>
        g.Ahead.DissolvedNow < 0.02 && g.Ahead.UntilPh(aim) is var left && double.IsFinite(left) && left > 0 && g.Ahead.DissolvedAt(left) > g.Ahead.DissolvedNow + 0.02);

    private double Passed(double aim, double units) => _guesses.Share(g => (_main.SaltFirst ? 1 : -1) * (g.Ahead.PhAt(units) - aim) > BenchState.AimTolerancePh);

    private double There(double aim, double units) => _guesses.Share(g => Math.Abs(g.Ahead.PhAt(units) - aim) <= BenchState.AimTolerancePh);

    private NextPortion? Portion()
    {
        (double units, PortionLimit limit) = (Remaining.Value, PortionLimit.Aim);
        double perReading = PortionPlanner.LargeShare / PortionPlanner.LeastLarge * (_poured + Remaining.Value);
        if (units > perReading) (units, limit) = (perReading, PortionLimit.Reading);
        double gasPerUnit = GasLitresPerUnit();
        if (gasPerUnit > 0 && PortionPlanner.GasRoomLitres(_input, _main.Bath.LitresAt(_main.Log.AlkaliUnits)) / gasPerUnit is var froth && units > froth) (units, limit) = (froth, PortionLimit.Froth);
        if (_input.Aim is PlanAim.AlkaliAmount) return Made(Math.Min(Math.Max(Rounded(units), _step), Remaining.Value), limit, 0, gasPerUnit);
        if (Safe(units) is var safe && safe < units) (units, limit) = (safe, PortionLimit.Overshoot);
        double whole = Rounded(units);
        if (whole <= 0)
        {
            // Not even one step of the scale is safe, or less than one is left: it goes in only if it is likelier to end near the aim than to leave it there.
            if (!BringsNearer(_step)) return null;
            whole = _step;
        }
        else if (limit is PortionLimit.Aim or PortionLimit.Overshoot && !BringsNearer(whole))
        {
            return null;
        }
        return Made(whole, limit, Passing(whole), gasPerUnit);
    }

    private bool BringsNearer(double units)
    {
        bool nearer = _input.Aim is PlanAim.ToPh to ? There(to.Ph.Value, units) > There(to.Ph.Value, 0) + WorthIt : Remaining.Value > 0.5 * units;
        _finer = !nearer && units <= _step && Remaining.Value > 0 && _input.Aim is PlanAim.ToPh aim && There(aim.Ph.Value, 0) < 0.5;
        return nearer;
    }

    private double Passing(double units) => _input.Aim is PlanAim.ToPh to ? Passed(to.Ph.Value, units) : _guesses.Share(g => UntilAim(g, out double left) && left < units);

    /// <summary>The largest amount that passes the aim with no more than the chance that is allowed. With all metal down for an aim a little too much does no harm.</summary>
    private double Safe(double most)
    {
        if (_input.Aim is not PlanAim.ToPh) return most;
        if (Passing(most) <= OvershootLimit) return most;
        double low = 0, high = most;
        for (int i = 0; i < Candidates; i++)
        {
            double mid = 0.5 * (low + high);
            if (Passing(mid) <= OvershootLimit) low = mid;
            else high = mid;
        }
        return low;
    }

    private NextPortion Made(double units, PortionLimit limit, double overshoot, double gasPerUnit)
    {
        Estimate ph = _guesses.Read(g => g.Ahead.PhAt(units));
        bool strip = _main.Log.Readings.LastOrDefault(r => r.IsPh) is not { Kind: ReadingKind.Meter, Sd: > 0 };
        double share = _main.SaltFirst ? (_poured + units) / _main.Stoichiometric : 1;
        double sd = ReadingNoise.PhSd(_input.StripStepPh, strip ? PhInstrument.Strip : PhInstrument.Meter, share);
        Estimate bare = _guesses.Read(g => g.Ahead.PhAt(units) + (strip ? g.Truth.StripBiasPh : g.Truth.MeterBiasPh));
        double half = Distributions.NormalHalfWidth90 * sd;
        var reading = new Estimate(bare.Value, bare.Value - Math.Sqrt(Square(bare.Value - bare.Low) + half * half), bare.Value + Math.Sqrt(Square(bare.High - bare.Value) + half * half));
        return new NextPortion(units, ph, reading, overshoot, units * gasPerUnit, limit);

        static double Square(double x) => x * x;
    }

    private double Rounded(double units) => Math.Floor(units / _step + 1e-9) * _step;

    private double GasLitresPerUnit()
    {
        double perUnit = _input.Alkali.CarbonDioxideMolPerUnit;
        if (!_main.SaltFirst) perUnit *= _main.Log.AlkaliUnits / _input.Salts.Sum(s => s.Amount.Grams);
        return LakePlanner.GasLitres(perUnit, _main.Input.Temperature.Celsius);
    }
}
