using Alumroot.Chemistry.Assimilation;
using Alumroot.Chemistry.Planning;
using Alumroot.Chemistry.Tests.Planning;
using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Tests.Assimilation;

/// <summary>A batch with a hidden truth: what is poured acts on the truth, what is read comes from it with bias, reader's noise and rounding.</summary>
/// <remarks>
/// The truth is not the model that reads it: the path's discrepancy is a smooth wave along the addition, not scatter from reading to reading; the first pH lies
/// low, never high; strips are off by a uniform amount and rounded to their row; the reader's noise is not normal.
/// </remarks>
internal sealed class SimulatedBatch
{
    private static readonly string[] Salts = ["potash-alum", "potash-alum", "ammonium-alum", "aluminium-sulfate", "aluminium-sulfate-16", "aluminium-chloride"];
    private static readonly string[] Alkalis = ["soda-ash", "soda-ash", "soda-crystals", "potash", "baking-soda", "caustic-soda", "soda-monohydrate"];

    // Middle, low and high acid of roots, woods, herbs, berries and insects (docs/models/catalogue.md).
    private static readonly (double Middle, double Low, double High, double Pk)[] Acids =
        [(0.12, 0.03, 0.5, 4.2), (0.05, 0.005, 0.2, 4.6), (0.25, 0.05, 0.9, 4.0), (1.0, 0.3, 1.8, 3.4), (0.7, 0.3, 1.1, 3.4)];

    private readonly SeededRandom _random;
    private readonly BenchPath _path;
    private readonly BenchCase _case;
    private readonly double[] _wave, _z;
    private readonly double _bias, _stepPh, _whole;
    private readonly PhInstrument _instrument;

    internal SimulatedBatch(ulong seed, Func<LakePlanInput, LakePlanInput>? reallyIs = null, double extraBias = 0, string? salt = null, string? alkali = null, bool coarseStrips = false)
    {
        _random = new SeededRandom(seed * 7919 + 3);
        for (int i = 0; i < 5; i++) _random.NextBits();
        (double middle, double low, double high, double pk) = Acids[_random.NextBelow(Acids.Length)];
        double celsius = _random.NextFraction() < 0.5 ? 18 + 6 * _random.NextFraction() : 30 + 30 * _random.NextFraction();
        double saltGrams = 10 + 90 * _random.NextFraction();
        string drawnSalt = Salts[_random.NextBelow(Salts.Length)], drawnAlkali = Alkalis[_random.NextBelow(Alkalis.Length)];
        (_instrument, _stepPh) = coarseStrips ? (PhInstrument.Strip, 0.5) : _random.NextBelow(2) == 0 ? (PhInstrument.Strip, 0.2) : (PhInstrument.Meter, 0.05);
        Input = Baths.Of(salt ?? drawnSalt, Math.Round(saltGrams, 1), alkali ?? drawnAlkali, 0.02 * saltGrams * (1 + 2 * _random.NextFraction()), celsius, Baths.ToPh(6 + _random.NextFraction()), saltGrams * 2, 0, 20 * _random.NextFraction()) with
        {
            PlantAcidMilliequivalentsPerGram = new Estimate(middle, low, high),
            PlantAcidPk = pk,
            StripStepPh = _stepPh,
        };
        LakePlanInput really = reallyIs?.Invoke(Input) ?? Input;
        double[] z = _z = new double[Axis.Count];
        for (int a = 0; a < z.Length; a++) z[a] = _random.NextNormal();
        bool basic = _random.NextFraction() > (double)PathBundle.WithHydroxide / PathBundle.Solved;
        BenchCase[] ideas = [.. BenchCase.Of(new BenchHypothesis.AsRecorded(), 1, really, [])];
        _case = basic ? ideas[^1] : ideas[0];
        _whole = _case.Stoichiometric;
        _path = new BenchPath(_case, _z);
        double scatter = ReadingNoise.ModelWaveSd;
        _wave = [scatter * _random.NextNormal(), scatter * _random.NextNormal(), scatter * _random.NextNormal(), Math.Abs(0.3 * _random.NextNormal())];
        double uniform = 2 * _random.NextFraction() - 1;
        _bias = extraBias + (_instrument == PhInstrument.Strip ? 0.22 : 0.11) * uniform;
        Assert.True(_path.Solve(1e-7 * _whole, 1));
    }

    /// <summary>What the maker planned with.</summary>
    internal LakePlanInput Input { get; }

    internal List<BenchEvent> Events { get; } = [];

    internal double Poured { get; private set; }

    internal double[] TrueZ => _z;

    internal string Describe() => $"{_case.Idea} {_path.Truth} wave {string.Join(" ", _wave.Select(w => w.ToString("0.00")))} bias {_bias:0.00}";

    internal double TruePh => PhOf(Poured, _path.State.Ph);

    /// <summary>Units that are really still to pour to the aim.</summary>
    internal double TrulyLeft
    {
        get
        {
            double aim = ((PlanAim.ToPh)Input.Aim).Ph.Value, x = Poured;
            if (TruePh >= aim) return 0;
            var copy = new BenchPath(_case, _z);
            Assert.True(copy.Solve(1e-7 * _whole, 1));
            int steps = (int)Math.Ceiling(Poured / (0.1 * _whole));
            for (int i = 1; i <= steps; i++) Assert.True(copy.Solve(Poured * i / steps, 1));
            double before = TruePh, step = 0.02 * _whole;
            while (x < 30 * _whole)
            {
                double next = x + step;
                if (!copy.SolveWithin(next, 1, step > 1e-3 * _whole ? 0.1 : 99, out bool taken)) return double.PositiveInfinity;
                if (!taken)
                {
                    step /= 2;
                    continue;
                }
                double ph = PhOf(next, copy.State.Ph);
                if (ph >= aim) return x + (aim - before) / (ph - before) * (next - x) - Poured;
                (before, x) = (ph, next);
                step = Math.Min(1.3 * step, 0.1 * _whole);
            }
            return double.PositiveInfinity;
        }
    }

    /// <summary>Pours a portion. <paramref name="really"/> is what goes in when the weight was not what it seemed.</summary>
    internal void Pour(double units, double? really = null)
    {
        double from = Poured, by = really ?? units;
        for (int i = 1; i <= 3; i++) Assert.True(_path.Solve(from + by * i / 3, 1));
        Poured = from + by;
        Events.Add(new BenchEvent.AlkaliAdded(units));
    }

    /// <summary>Reads strip or meter.</summary>
    internal void Read()
    {
        // The sum of two uniforms: a triangle, as wide as the reader's noise.
        double noise = ReadingNoise.ReaderSd(_stepPh, _instrument) * Math.Sqrt(6) * (_random.NextFraction() + _random.NextFraction() - 1);
        double shown = Math.Round((TruePh + _bias + noise) / _stepPh) * _stepPh;
        Events.Add(new BenchEvent.PhRead(Ph.FromValue(shown), _stepPh, _instrument));
    }

    private double PhOf(double poured, double computed)
    {
        double f = poured / _whole;
        return computed + _path.Truth.ModelOffsetPh + _wave[0] * Math.Sin(2.5 * f + 6 * _wave[2]) + _wave[1] * Math.Sin(6 * f) - _wave[3] * Math.Exp(-f / 0.05);
    }
}
