using Alumroot.Chemistry.Planning;
using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Assimilation;

/// <summary>What to do now: how much is left to pour, the next safe portion, or why to stop.</summary>
internal sealed class NextStep
{
    // A portion may run this chance of passing the aim; or, where it is likelier that it brings the bath into the aim's tolerance, this share of that chance.
    private const double OvershootLimit = 0.004, OvershootShare = 0.03;

    // The way to the turn of the pH is known in proportion: each guess of it is smeared by this part of itself.
    private const double Smear = 0.15;

    // While the bath is this likely to lie below the aim's tolerance the pouring goes on.
    private const double StillBelow = 0.25;

    // Another portion must raise the chance to be at the aim by so much to be worth it.
    private const double WorthIt = 0.04;

    // Near the end no portion is more than so much of the middle way that is left nor so many times the last one, since the guesses may all be wrong together;
    // nor less than so much of the way, since nobody reads strips without end. Tuned on simulated batches (docs/models/assimilation.md).
    private const double NearRatio = 1, MostShareOfWay = 0.35, MostShareOfLowWay = 0.7, MostGrowth = 1.5, LeastShareOfWay = 0.05;

    // Under so many steps of the scale a portion is measured as solution: to a twentieth of a step.
    private const int StepsAsSolution = 5, FinenessOfSolution = 20;
    private readonly BenchCase _main;
    private readonly LakePlanInput _input;
    private readonly Guesses _guesses;
    private readonly double _poured, _step, _fine, _sign;
    private readonly double[] _untilNear = [], _untilPast = [];

    internal NextStep(BenchCase main, LakePlanInput input, Guesses guesses, double poured, double planned)
    {
        (_main, _input, _guesses, _poured) = (main, input, guesses, poured);
        _step = main.SaltFirst && input.Alkali.Unit == SubstanceUnit.Millilitre ? Math.Max(1, input.ScaleStep.Grams) : Math.Max(input.ScaleStep.Grams, 1e-3);
        _fine = _step / FinenessOfSolution;
        _sign = main.SaltFirst ? 1 : -1;
        if (input.Aim is PlanAim.ToPh to)
        {
            _untilNear = [.. guesses.All.Select(g => g.Ahead.UntilPh(to.Ph.Value - _sign * BenchState.AimTolerancePh))];
            _untilPast = [.. guesses.All.Select(g => g.Ahead.UntilPh(to.Ph.Value + _sign * BenchState.AimTolerancePh))];
        }
        BeyondReachRatio = guesses.Share(g => !UntilAim(g, out _));
        Remaining = input.Aim is PlanAim.AlkaliAmount
            ? Estimate.Exact(Math.Max(0, planned - poured))
            : guesses.Read(g => UntilAim(g, out double units) ? units : g.Ahead.LastUnits);
        Stop = WhyStop();
        if (Stop is not null) return;
        Next = Portion();
        if (Next is null) Stop = _tooSteep ? StopReason.FinerThanScale : StopReason.Reached;
    }

    private bool _tooSteep;

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
        if (_input.Aim is PlanAim.ToPh to && Share(to.Ph.Value, 0, d => d > BenchState.AimTolerancePh) > 0.5) return StopReason.Passed;
        // Where the metal never comes down to the limit, the least there is counts, and beyond it the lake dissolves.
        if (_input.Aim is PlanAim.AllMetalDown && Remaining.Value < 0.5 * _step)
            return _guesses.Share(g => g.Ahead.DissolvedNow > LakePlanner.AllDownShare) > 0.5 ? StopReason.MoreWouldRedissolve : StopReason.Reached;
        if (_input.Aim is PlanAim.ToPh aim && _main.SaltFirst && Redissolves(aim.Ph.Value) > 0.5) return StopReason.MoreWouldRedissolve;
        return null;
    }

    /// <summary>Probability that all that can come down is down and the way to the aim dissolves more than a fiftieth of it again.</summary>
    private double Redissolves(double aim) => _guesses.Share(g =>
        g.Ahead.DissolvedNow < 0.02 && g.Ahead.UntilPh(aim) is var left && double.IsFinite(left) && left > 0 && g.Ahead.DissolvedAt(left) > g.Ahead.DissolvedNow + 0.02);

    /// <summary>Probability that the distance beyond the aim, after so many more units, is such.</summary>
    private double Share(double aim, double units, Func<double, bool> such) => _guesses.Share(g => such(_sign * (g.Ahead.PhAt(units) - aim)));

    private double There(double aim, double units) => Share(aim, units, d => Math.Abs(d) <= BenchState.AimTolerancePh);

    private NextPortion? Portion()
    {
        (double units, PortionLimit limit) = (Remaining.Value, PortionLimit.Aim);
        double perReading = PortionPlanner.LargeShare / PortionPlanner.LeastLarge * (_poured + Remaining.Value);
        if (units > perReading) (units, limit) = (perReading, PortionLimit.Reading);
        double gasPerUnit = GasLitresPerUnit();
        if (gasPerUnit > 0 && PortionPlanner.GasRoomLitres(_input, _main.Bath.LitresAt(_main.Log.AlkaliUnits)) / gasPerUnit is var froth && units > froth) (units, limit) = (froth, PortionLimit.Froth);
        switch (_input.Aim)
        {
            case PlanAim.AlkaliAmount:
                return Made(Math.Min(Math.Max(Rounded(units), _step), Remaining.Value), limit, 0, gasPerUnit);
            case PlanAim.ToPh to:
                double aim = to.Ph.Value, safe = Remaining.Value < NearRatio * _poured ? NearTheEnd(Safe(units)) : Safe(units);
                if (safe < units) (units, limit) = (safe, PortionLimit.Overshoot);
                if (Rounded(units) <= 0) units = _fine;
                units = Rounded(units);
                bool below = Share(aim, 0, d => d < -BenchState.AimTolerancePh) > StillBelow;
                if (!below && (Remaining.Value < 0.5 * _fine || There(aim, units) < There(aim, 0) + WorthIt)) return null;
                _tooSteep = units <= _fine && Passing(units) > 0.5;
                return _tooSteep ? null : Made(units, limit, Passing(units), gasPerUnit);
            default:
                return Made(Math.Max(Rounded(units), _fine), limit, Passing(units), gasPerUnit);
        }
    }

    /// <summary>Chance that so many units pass a bath beyond the aim's tolerance that is not beyond it yet.</summary>
    private double Passing(double units) =>
        _input.Aim is PlanAim.ToPh ? Reaching(_untilPast, units) : _guesses.Share(g => UntilAim(g, out double left) && left < units);

    /// <summary>Chance that so many units bring a bath somewhere, of those that are not beyond the aim's tolerance yet.</summary>
    private double Reaching(double[] until, double units)
    {
        double sum = 0, all = 0;
        for (int i = 0; i < until.Length; i++)
        {
            if (_untilPast[i] <= 0) continue;
            double weight = _guesses.All[i].Weight;
            all += weight;
            if (until[i] <= 0) sum += weight;
            else if (double.IsFinite(until[i]) && units > 0) sum += weight * Distributions.NormalFraction(Math.Log(units / until[i]) / Smear);
        }
        return all > 0 ? sum / all : 1;
    }

    private bool IsSafe(double units) => Passing(units) <= Math.Max(OvershootLimit, OvershootShare * Reaching(_untilNear, units));

    /// <summary>The largest amount that is safe.</summary>
    private double Safe(double most)
    {
        if (IsSafe(most)) return most;
        double low = 0, high = most;
        for (int i = 0; i < 24; i++)
        {
            double mid = 0.5 * (low + high);
            if (IsSafe(mid)) low = mid;
            else high = mid;
        }
        return low;
    }

    private double NearTheEnd(double safe) => Math.Min(
        Math.Max(safe, LeastShareOfWay * Remaining.Value),
        Math.Min(Math.Max(MostShareOfWay * Remaining.Value, MostShareOfLowWay * Remaining.Low), MostGrowth * LastPortionUnits()));

    private double LastPortionUnits()
    {
        IReadOnlyList<double> poured = _main.SaltFirst ? _main.Log.Alkali : _main.Log.SaltShare;
        return poured.Count < 2 || poured[^1] <= 0 ? double.PositiveInfinity : (poured[^1] - poured[^2]) / poured[^1] * _poured;
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
        return new NextPortion(units, AsSolution(units), ph, reading, overshoot, units * gasPerUnit, limit);

        static double Square(double x) => x * x;
    }

    private double Rounded(double units) => AsSolution(units) ? Math.Floor(units / _fine + 1e-9) * _fine : Math.Floor(units / _step + 1e-9) * _step;

    private bool AsSolution(double units) => units < StepsAsSolution * _step;

    private double GasLitresPerUnit()
    {
        double perUnit = _input.Alkali.CarbonDioxideMolPerUnit;
        if (!_main.SaltFirst) perUnit *= _main.Log.AlkaliUnits / _input.Salts.Sum(s => s.Amount.Grams);
        return LakePlanner.GasLitres(perUnit, _main.Input.Temperature.Celsius);
    }
}
