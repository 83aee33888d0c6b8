using Alumroot.Chemistry.Equilibrium;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Planning;

/// <summary>Puts a plan together once the amount of alkali is known.</summary>
internal sealed class PlanAssembler(
    LakePlanInput input, BathModel bath, PathBundle saltFirst, Estimate alkali, SpanCause cause, double stoichiometric, double saltWater, double alkaliWaterPerUnit, double beyondShare)
{
    private const int CurvePoints = 41;

    // Few points suffice where only the end counts; the tracer halves its steps where the pH moves fast.
    private static readonly double[] EndGrid = [1e-7, 0.4, 0.7, 0.85, 0.95, 1, 1.06, 1.15];
    private const double RoomForFroth = 4.4;     // times the liquid: 125 mL foamed to 550 mL in a photographed madder run [making_knowing_trio2022]
    private const double RoomWithoutFroth = 1.3; // common practice, no source
    private readonly bool _alkaliLast = input.Order == OrderOfAddition.SaltFirst;
    private readonly EquilibriumState?[] _first = new EquilibriumState?[2];
    private readonly double _planned = alkali.Value;
    private readonly double _litres = bath.LitresAt(alkali.Value);

    internal LakePlan Assemble()
    {
        // The x axis is grams of alkali, or the share of the salt when the alkali goes in first.
        double end = _alkaliLast ? _planned : 1;
        double last = _alkaliLast ? Math.Max(1.25 * _planned, Math.Min(1.15 * stoichiometric, saltFirst.Paths.Min(p => p.LastX))) : 1;
        PathBundle bundle = _alkaliLast ? saltFirst : AlkaliFirst();
        PlanPath hydroxide = Middle(SolidIdea.Hydroxide, last), basic = bath.IdeaMatters ? Middle(SolidIdea.BasicSalt, last) : hydroxide;
        Estimate endPh = bundle.At(p => p.Ph, end);
        // With a pH for an aim the maker stops by the strip, so what is left dissolved is read where each draw reaches it; "blind" is the planned amount poured in whatever the strip says.
        double where(PlanPath p, double stretch) => input.Aim is PlanAim.ToPh aim && _alkaliLast ? Math.Clamp(p.FirstAtPh(aim.Ph.Value), 0, p.LastX) : end * stretch;
        Estimate dissolved = PathBundle.Summarise(bundle.Read((p, f) => p.At(p.DissolvedFraction, where(p, f))));
        double metalMilligramsPerLitre = bath.MetalMoles * bath.GramsPerMoleOfMetal * 1000 / _litres;
        IReadOnlyList<PlanPoint> curve = Curve(bundle, hydroxide, basic, last, metalMilligramsPerLitre);
        double allGas = LakePlanner.GasLitres(_planned * input.Alkali.CarbonDioxideMolPerUnit + 2 * input.Hardness.MillimolesPerLitre / 1000 * input.Water.Litres, input.Temperature.Celsius);
        var washes = new WashPlanner(input, bath);
        IReadOnlyList<WashStep> steps = washes.Plan(DissolvedAtEnd(hydroxide, end), _litres);
        var plan = new LakePlan
        {
            Input = input,
            Salts = Salts(),
            Alkali = alkali,
            AlkaliWaterMillilitres = _planned * alkaliWaterPerUnit,
            AlkaliSpanCause = cause,
            StoichiometricAlkali = stoichiometric,
            BasePerMetal = bath.MetalMoles > 0 ? _planned * input.Alkali.BaseMolPerUnit / bath.MetalMoles : 0,
            Curve = curve,
            SamplePaths = SamplePaths(bundle, last),
            StartPh = bundle.At(p => p.Ph, 0),
            EndPh = endPh,
            EndPhGasHeld = GasEnd(0, end, endPh),
            EndPhGasGone = GasEnd(-3.4, end, endPh),
            EndIonicStrengthMolal = bundle.At(p => p.IonicStrength, end),
            GasLitres = bundle.At(p => p.GasMol, end).Times(LakePlanner.GasLitres(1, input.Temperature.Celsius)),
            AllGasLitres = allGas,
            LiquidLitres = _litres,
            LeastVesselLitres = _litres * (input.Alkali.CarbonDioxideMolPerUnit > 0 ? RoomForFroth : RoomWithoutFroth),
            AlkaliPerTenthPh = PerTenthPh(endPh),
            Telling = bath.IdeaMatters && _alkaliLast && Telling(bundle) is var t && Math.Abs(t.PhIfHydroxide.Value - t.PhIfBasicSalt.Value) >= Math.Min(input.StripStepPh, 0.3) ? t : null,
            Solids = Solids(bundle, where),
            DissolvedMetalShare = dissolved,
            DissolvedMetalShareBlind = bundle.At(p => p.DissolvedFraction, end),
            DissolvedMetalMilligramsPerLitre = dissolved.Times(metalMilligramsPerLitre),
            YieldGrams = YieldModel.Grams(bundle, where, input.DryDyestuff?.Grams ?? 0, input.Seed),
            MetalMillimolesPerGramColourant = PerColourant(),
            Washes = steps,
            Portions = PortionPlanner.Plan(bundle, end, _alkaliLast ? _planned : input.Salts.Sum(s => s.Amount.Grams), input, allGas, _litres),
            Rules = Rules(),
            Findings = [],
        };
        return plan with { WashWaterMicrosiemensPerCentimetre = washes.WaterMicrosiemensPerCm25, Findings = PlanFindings.For(plan, bath, washes.WaterMicrosiemensPerCm25, input.StatedPh is { } stated ? bundle.At(p => p.Ph, end) : null, beyondShare) };
    }

    private PathBundle AlkaliFirst()
    {
        double[] all = bath.AllSalts();
        double[] xs = [1e-7, 0.02, 0.05, .. Enumerable.Range(1, 38).Select(i => 0.05 + i * 0.025)];
        // The free acid of the salt comes in with it and is left out here: it is gone at once in the alkali.
        return PathBundle.Solve(input, bath, [.. xs, 1.15], d => (bath.LiquorWithAlkali(d, _planned), all));
    }

    private (double[] Start, double[] PerUnit) Setup(PlanDraw d) =>
        _alkaliLast ? (bath.LiquorWithSalts(d), bath.AlkaliPerUnit()) : (bath.LiquorWithAlkali(d, _planned), bath.AllSalts());

    private PlanPath Middle(SolidIdea idea, double last)
    {
        PlanDraw d = PlanDraw.Middle(idea, input);
        (double[] start, double[] perUnit) = Setup(d);
        var tracer = new PathTracer(bath.SystemFor(d), start, perUnit, bath.MetalIndexes);
        var path = new PlanPath(tracer.State.System.Phases.Count);
        double[] xs = _alkaliLast ? LakePlanner.Grid(stoichiometric, last / stoichiometric) : [1e-7, .. Enumerable.Range(1, 40).Select(i => i * 0.025)];
        tracer.Trace(xs, path, _first[(int)idea], out EquilibriumState? first);
        _first[(int)idea] ??= first;
        return path.Count > 1 ? path : saltFirst.Paths[0];
    }

    /// <summary>pH at the end if the gas keeps a given pressure, log10 atm: half of the same draws followed again on few points.</summary>
    private Estimate GasEnd(double log10Gas, double end, Estimate otherwise)
    {
        PathBundle same = PathBundle.Solve(input, bath, [.. EndGrid.Select(f => f * end)], Setup, log10Gas, everyOther: true);
        if (same.Paths.Count == 0) return otherwise;
        Estimate e = same.At(p => p.Ph, end);
        // With all the gas held in no draw reads higher, and with all of it gone none reads lower, than it does stirred: half the draws must not say otherwise.
        return log10Gas == 0
            ? new Estimate(Math.Min(e.Value, otherwise.Value), Math.Min(e.Low, otherwise.Low), Math.Min(e.High, otherwise.High))
            : new Estimate(Math.Max(e.Value, otherwise.Value), Math.Max(e.Low, otherwise.Low), Math.Max(e.High, otherwise.High));
    }

    private PlanPoint[] Curve(PathBundle bundle, PlanPath hydroxide, PlanPath basic, double last, double metalMilligramsPerLitre)
    {
        double litresPerMole = LakePlanner.GasLitres(1, input.Temperature.Celsius);
        var points = new PlanPoint[CurvePoints];
        for (int i = 0; i < CurvePoints; i++)
        {
            double x = last * i / (CurvePoints - 1);
            double[] ph = bundle.Read((p, f) => p.At(p.Ph, x * f));
            Estimate e = PathBundle.Summarise(ph);
            points[i] = new PlanPoint(_alkaliLast ? x : _planned, _alkaliLast ? 1 : x, e,
                Numerics.Distributions.SortedQuantile(ph, 0.25), Numerics.Distributions.SortedQuantile(ph, 0.75),
                hydroxide.At(hydroxide.Ph, x), bath.IdeaMatters ? basic.At(basic.Ph, x) : null,
                Few(bundle, p => p.GasMol, x).Times(litresPerMole), Few(bundle, p => p.SolidGrams, x), Few(bundle, p => p.DissolvedFraction, x).Times(metalMilligramsPerLitre));
        }
        return points;
    }

    /// <summary>Like <see cref="PathBundle.At"/> with the solved draws only: enough for amounts that strengths hardly move.</summary>
    private static Estimate Few(PathBundle bundle, Func<PlanPath, double[]> curve, double x) => PathBundle.Summarise(bundle.Paths.Select(p => p.At(curve(p), x)).ToArray());

    private static IReadOnlyList<double>[] SamplePaths(PathBundle bundle, double last)
    {
        int step = Math.Max(1, bundle.Paths.Count / 5);
        return bundle.Paths.Where((_, i) => i % step == 0).Take(5)
            .Select(p => (IReadOnlyList<double>)Enumerable.Range(0, CurvePoints).Select(i => p.At(p.Ph, last * i / (CurvePoints - 1))).ToArray()).ToArray();
    }

    private Estimate PerTenthPh(Estimate endPh)
    {
        double at = input.Aim is PlanAim.ToPh aim ? aim.Ph.Value : endPh.Value;
        double[] slopes = saltFirst.Read((p, f) => (p.FirstAtPh(at + 0.1) - p.FirstAtPh(at - 0.1)) / 2 / f).Where(x => double.IsFinite(x) && x > 0).ToArray();
        return slopes.Length == 0 ? Estimate.Exact(double.NaN) : PathBundle.Summarise(slopes);
    }

    private TellingReading Telling(PathBundle bundle)
    {
        double half = _planned / 2;
        double[] hydroxide = Of(SolidIdea.Hydroxide), basic = Of(SolidIdea.BasicSalt);
        // Where no draw of one idea could be followed, a reading tells nothing between them.
        return new TellingReading(half, PathBundle.Summarise(hydroxide.Length > 0 ? hydroxide : [.. basic]), PathBundle.Summarise(basic.Length > 0 ? basic : [.. hydroxide]));

        double[] Of(SolidIdea idea) => [.. bundle.Paths.Where((_, i) => bundle.Draws[i].Idea == idea).Select(p => p.At(p.Ph, half))];
    }

    /// <summary>Each solid over all draws, where each draw ends; a solid that most draws lack is left out.</summary>
    private List<SolidAmount> Solids(PathBundle bundle, Func<PlanPath, double, double> where)
    {
        var list = new List<SolidAmount>();
        AqueousSystem[] systems = [bath.SystemFor(PlanDraw.Middle(SolidIdea.Hydroxide, input)), bath.SystemFor(PlanDraw.Middle(SolidIdea.BasicSalt, input))];
        var ideaOf = bundle.Paths.Select((p, i) => (p, bundle.Draws[i].Idea)).ToDictionary(x => x.p, x => x.Idea);
        foreach (Constants.Phase phase in systems[1].Phases.Where(p => !p.IsGas))
        {
            double gramsPerMole = phase.GramsPerMole ?? throw new InvalidOperationException($"the constants give no molar mass for {phase.Name}");
            int[] index = [systems[0].IndexOfPhase(phase.Name), systems[1].IndexOfPhase(phase.Name)];
            Estimate grams = PathBundle.Summarise(bundle.Read((p, f) => index[(int)ideaOf[p]] is var i and >= 0 ? Math.Max(0, p.PhaseMolAt(i, where(p, f))) * gramsPerMole : 0));
            if (grams.High >= 0.001 * Math.Max(1e-3, bath.MetalMoles * bath.GramsPerMoleOfMetal)) list.Add(new SolidAmount(phase.Name, phase.PlainName, grams));
        }
        return list;
    }

    private double[] DissolvedAtEnd(PlanPath hydroxide, double end)
    {
        PlanDraw d = PlanDraw.Middle(SolidIdea.Hydroxide, input);
        (double[] start, double[] perUnit) = Setup(d);
        AqueousSystem s = bath.SystemFor(d);
        int n = s.Nc + 1;
        var t = new double[n];
        for (int j = 0; j < n; j++) t[j] = start[j] + end * perUnit[j];
        for (int p = 0; p < s.Np; p++)
        {
            double moles = s.Phases[p].IsGas ? hydroxide.At(hydroxide.GasMol, end) : hydroxide.PhaseMolAt(p, end);
            for (int j = 0; j < n; j++) t[j] -= moles * s.PhaseNu[p * n + j];
        }
        return t;
    }

    private Estimate? PerColourant()
    {
        if (input.ColourantFraction is not { Value: > 0 } c || input.DryDyestuff is not { Grams: > 0 } dry) return null;
        double millimoles = bath.MetalMoles * 1000;
        return new Estimate(millimoles / (dry.Grams * c.Value), millimoles / (dry.Grams * c.High), millimoles / (dry.Grams * Math.Max(c.Low, 1e-6)));
    }

    private IReadOnlyList<SaltAmount> Salts()
    {
        double total = input.Salts.Sum(s => s.Amount.Grams);
        return input.Salts.Select(s => new SaltAmount(s.Substance, s.Amount.Grams, saltWater * s.Amount.Grams / total)).ToArray();
    }

    private List<RuleOfThumb> Rules()
    {
        var rules = new List<RuleOfThumb>();
        if (LakePlanner.RuleAmount(input) is { } half) rules.Add(new RuleOfThumb("half-the-salt", half, saltFirst.At(p => p.Ph, half)));
        double hydroxide = bath.BaseForMetal / input.Alkali.BaseMolPerUnit;
        if (hydroxide > 0) rules.Add(new RuleOfThumb("just-hydroxide", hydroxide, saltFirst.At(p => p.Ph, hydroxide)));
        return rules;
    }
}
