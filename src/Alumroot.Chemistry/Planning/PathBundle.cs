using Alumroot.Chemistry.Equilibrium;
using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Planning;

/// <summary>The paths of many draws: exact in everything that changes the chemistry, stretched for the strengths of salt and alkali.</summary>
/// <remarks>
/// 32 draws (a Latin hypercube for each idea of the solid) are solved exactly; each is read 32 times with other strengths of alkali and salt, which stretch the
/// addition: so much stronger an alkali is so much less of it. 1,024 draws in all. Tests compare the spans with plain Monte Carlo, every draw solved.
/// Where a basic salt can form two draws in three hold it: published recipes [kirby2014] reach pH 6 to 7 with 2.6 to 2.75 base for each aluminium, which plain hydroxide does not explain.
/// </remarks>
internal sealed class PathBundle
{
    internal const int Solved = 32;
    internal const int WithHydroxide = 11;
    internal const int Stretches = 32;
    private readonly double[] _stretch;
    private readonly double[] _alkaliStrength, _saltStrength;

    private PathBundle(List<PlanDraw> draws, List<PlanPath> paths, double[] stretch, double[] alkaliStrength, double[] saltStrength) =>
        (Draws, Paths, _stretch, _alkaliStrength, _saltStrength) = (draws, paths, stretch, alkaliStrength, saltStrength);

    internal IReadOnlyList<PlanDraw> Draws { get; }

    internal IReadOnlyList<PlanPath> Paths { get; }

    internal int Size => Paths.Count * Stretches;

    /// <summary>Solves the draws; draws that cannot be solved are left out. A gas pressure that is given replaces each draw's own; every other draw is enough where only an end is asked for.</summary>
    internal static PathBundle Solve(LakePlanInput input, BathModel bath, double[] xs, Func<PlanDraw, (double[] Start, double[] PerUnit)> setup, double? log10GasAtm = null, bool everyOther = false)
    {
        var draws = new List<PlanDraw>();
        var paths = new List<PlanPath>();
        foreach (SolidIdea idea in bath.IdeaMatters ? Enum.GetValues<SolidIdea>() : [SolidIdea.Hydroxide])
        {
            PlanDraw[] truths = Truths(idea, input, !bath.IdeaMatters ? Solved : idea == SolidIdea.Hydroxide ? WithHydroxide : Solved - WithHydroxide);
            if (everyOther) truths = [.. truths.Where((_, i) => i % 2 == 0)];
            var solved = new PlanPath?[truths.Length];
            // The first draw starts from nothing; its first state is where all the others start, so that their order does not matter.
            solved[0] = Follow(truths[0], null, out EquilibriumState? first);
            Parallel.For(1, truths.Length, i => solved[i] = Follow(truths[i], first, out _));
            for (int i = 0; i < truths.Length; i++)
            {
                if (solved[i] is not { } path) continue;
                draws.Add(truths[i]);
                paths.Add(path);
            }
        }
        double[,] strengths = LatinHypercube.Make(Stretches, 2, input.Seed + 100);
        var alkali = new double[Stretches];
        var salt = new double[Stretches];
        var stretch = new double[Stretches];
        Estimate saltStrength = input.Salts.Count == 0 ? Estimate.Exact(1) : input.Salts[0].Substance.Strength;
        for (int k = 0; k < Stretches; k++)
        {
            alkali[k] = PlanDraw.Skewed(input.Alkali.Strength, strengths[k, 0]);
            salt[k] = PlanDraw.Skewed(saltStrength, strengths[k, 1]);
            stretch[k] = input.Order == OrderOfAddition.SaltFirst ? alkali[k] / salt[k] : salt[k] / alkali[k];
        }
        return new PathBundle(draws, paths, stretch, alkali, salt);

        PlanPath? Follow(PlanDraw d, EquilibriumState? from, out EquilibriumState? first)
        {
            (double[] start, double[] perUnit) = setup(d);
            var tracer = new PathTracer(bath.SystemFor(d, log10GasAtm), start, perUnit, bath.MetalIndexes, everyOther ? PathTracer.CoarsePhStep : PathTracer.FinePhStep);
            var path = new PlanPath(tracer.State.System.Phases.Count);
            return tracer.Trace(xs, path, from, out first) ? path : null;
        }
    }

    private static PlanDraw[] Truths(SolidIdea idea, LakePlanInput input, int points)
    {
        double[,] cube = LatinHypercube.Make(points, PlanDraw.Axes, input.Seed + (ulong)idea);
        Span<double> u = stackalloc double[PlanDraw.Axes];
        var truths = new PlanDraw[points];
        for (int i = 0; i < points; i++)
        {
            for (int a = 0; a < u.Length; a++) u[a] = cube[i, a];
            truths[i] = PlanDraw.At(idea, input, u);
        }
        return truths;
    }

    /// <summary>One value for each draw and stretch.</summary>
    /// <param name="read">From a path and the effective amount for a planned amount of one.</param>
    internal double[] Read(Func<PlanPath, double, double> read)
    {
        var values = new double[Size];
        int n = 0;
        foreach (PlanPath path in Paths)
            foreach (double f in _stretch) values[n++] = read(path, f);
        return values;
    }

    /// <summary>A curve's value at a planned amount, with its span.</summary>
    internal Estimate At(Func<PlanPath, double[]> curve, double x) => Summarise(Read((p, f) => p.At(curve(p), x * f)));

    /// <summary>Which unknown explains most of the spread of values that were read in the bundle's order.</summary>
    internal SpanCause MainCause(double[] values)
    {
        int n = values.Length;
        (SpanCause Cause, Func<int, int, double> Value)[] causes =
        [
            (SpanCause.KindOfSolid, (i, _) => (double)Draws[i].Idea),
            (SpanCause.SolubilityOfSolid, (i, _) => Draws[i].Idea == SolidIdea.Hydroxide ? Draws[i].PlainShift : Draws[i].BasicShift),
            (SpanCause.GasHeld, (i, _) => Draws[i].Log10GasAtm),
            (SpanCause.PlantAcid, (i, _) => Draws[i].AcidMilliequivalentsPerGram),
            (SpanCause.AlkaliStrength, (_, k) => _alkaliStrength[k]),
            (SpanCause.SaltStrength, (_, k) => _saltStrength[k]),
            (SpanCause.Hardness, (i, _) => Draws[i].HardnessFactor),
            (SpanCause.FreeAcid, (i, _) => Draws[i].FreeAcidShare),
            (SpanCause.Temperature, (i, _) => Draws[i].CelsiusOff),
        ];
        double mean = values.Average();
        SpanCause best = SpanCause.AlkaliStrength;
        double most = -1;
        foreach ((SpanCause cause, Func<int, int, double> value) in causes)
        {
            double sum = 0, squares = 0, cross = 0;
            for (int v = 0; v < n; v++) sum += value(v / Stretches, v % Stretches);
            double middle = sum / n;
            for (int v = 0; v < n; v++)
            {
                double d = value(v / Stretches, v % Stretches) - middle;
                squares += d * d;
                cross += d * (values[v] - mean);
            }
            double explained = squares > 0 ? cross * cross / squares : 0;
            if (explained > most) (most, best) = (explained, cause);
        }
        return best;
    }

    /// <summary>Median with 5 and 95 % points; sorts the values.</summary>
    internal static Estimate Summarise(double[] values)
    {
        Array.Sort(values);
        return new Estimate(Distributions.SortedQuantile(values, 0.5), Distributions.SortedQuantile(values, 0.05), Distributions.SortedQuantile(values, 0.95));
    }
}
