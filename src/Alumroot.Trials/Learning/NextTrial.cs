using Alumroot.Numerics;
using Alumroot.Quantities;
using Alumroot.Trials.Analysis;

namespace Alumroot.Trials.Learning;

/// <summary>Proposes the next jar by expected improvement toward an aim. Pure and reproducible.</summary>
/// <remarks>Mockus 1978; Jones, Schonlau, Welch 1998, J. Global Optimization 13 (from memory). Formulas and limits: docs/models/trials.md.</remarks>
public sealed class NextTrial
{
    /// <summary>The least number of rows.</summary>
    public const int LeastRows = 4;

    /// <summary>The most rows that the surrogate holds; of more it takes those that lie apart and those nearest the aim.</summary>
    public const int MostHeld = 400;

    private const int MostLearned = 160, Candidates = 1500, Refined = 8, Rounds = 5, PerRound = 24, Worlds = 96, MostOthers = 4, MostTrade = 8;
    private const double FarShare = 0.15;

    private readonly TrialData _data;
    private readonly int[] _whole;
    private readonly Response[] _responses;
    private readonly RecipeSpace _space;
    private readonly Surrogate[] _beliefs;
    private readonly Recipe[] _held;
    private readonly double[][] _worlds;
    private readonly SeededRandom _random;

    private NextTrial(TrialData data, int[] whole, Response[] responses, IReadOnlyList<double>? readingSds, Func<double[], double> loss, ulong seed)
    {
        (_data, _whole, _responses, _space, _random) = (data, whole, responses, new RecipeSpace(data), new SeededRandom(seed));
        int[] held = Held(loss);
        _held = [.. held.Select(i => _space.Rows[i])];
        int[]? learned = held.Length > MostLearned ? Apart([.. Enumerable.Range(0, held.Length)], _held, MostLearned) : null;
        _beliefs = [.. responses.Select((r, k) => Surrogate.Of(_held, [.. held.Select(i => r.Values[i])], [.. held.Select(_ => readingSds is null ? 0 : readingSds[k] * readingSds[k])], learned))];
        _worlds = [.. Enumerable.Range(0, Worlds / 2).SelectMany(_ =>
        {
            double[] z = [.. responses.Select(_ => _random.NextNormal())];
            return new[] { z, [.. z.Select(v => -v)] };
        })];
    }

    /// <summary>The next jar; null when there are too few whole rows or nothing was ever changed.</summary>
    /// <param name="data">What was set.</param>
    /// <param name="responses">What came of it, as far as the aims need it; rows with a missing value are passed over.</param>
    /// <param name="losses">For each aim, how far a set of responses is from it; the first decides.</param>
    /// <param name="readingSds">The known standard deviation of a reading of each response; null when none is known.</param>
    /// <param name="allowed">Whether settings may stand together; null when all may.</param>
    /// <param name="seed">Of the search.</param>
    public static NextFound? Propose(TrialData data, IReadOnlyList<Response> responses, IReadOnlyList<Func<double[], double>> losses, IReadOnlyList<double>? readingSds = null, Func<IReadOnlyList<RecipeSetting>, bool>? allowed = null, ulong seed = 1)
    {
        ArgumentNullException.ThrowIfNull(data);
        ArgumentNullException.ThrowIfNull(responses);
        ArgumentNullException.ThrowIfNull(losses);
        int[] whole = [.. Enumerable.Range(0, data.Count).Where(i => responses.All(r => double.IsFinite(r.Values[i])))];
        if (whole.Length < LeastRows) return null;
        TrialData rows = new([.. data.Factors.Select(f => new FactorColumn(f.Name, f.Numbers is { } n ? [.. whole.Select(i => n[i])] : null, [.. whole.Select(i => f.Names[i])]))], null);
        var trial = new NextTrial(rows, whole, [.. responses.Select(r => new Response(r.Name, [.. whole.Select(i => r.Values[i])]))], readingSds, losses[0], seed);
        return trial._space.MeasuredFactors.Count + trial._space.NamedFactors.Count == 0 ? null : trial.Run(losses, allowed);
    }

    private NextFound Run(IReadOnlyList<Func<double[], double>> losses, Func<IReadOnlyList<RecipeSetting>, bool>? allowed)
    {
        Func<double[], double> loss = losses[0];
        Recipe[] open = [.. _held.Where(r => allowed is null || allowed(Settings(r)))];
        Recipe best = (open.Length > 0 ? open : _held).MinBy(r => loss(MeanAt(r)))!;
        double least = loss(MeanAt(best));
        (Recipe Recipe, double Gain)[] pool = [.. Search().Select(_space.Rounded).Where(r => allowed is null || allowed(Settings(r))).Select(r => (r, GainOf(r, loss, least)))];
        (Recipe Recipe, double Gain)[] refined = [.. pool.OrderByDescending(p => p.Gain).Take(Refined).Select(p => Refine(p, loss, least, allowed)).OrderByDescending(p => p.Gain)];
        (Recipe next, double gain) = refined.Length > 0 ? refined[0] : (best, 0);
        bool repeat = gain <= 1e-3 * Math.Max(Math.Abs(least), 1e-9);
        if (repeat) (next, gain) = (best, 0);
        (WorthBecause because, IReadOnlyList<RecipeSetting> where) = repeat || Settings(next).SequenceEqual(Settings(best)) ? (WorthBecause.RepeatBest, []) : Why(next, loss, least);
        var others = new List<Recipe>();
        foreach ((Recipe recipe, _) in refined.Skip(1).Concat(pool.OrderByDescending(p => p.Gain).Take(40)))
            if (others.Count < MostOthers && others.Prepend(next).All(o => Apart(o, recipe) > FarShare)) others.Add(recipe);
        return new NextFound(
            Proposal(next, losses, gain), because, where, Proposal(best, losses, 0), [.. others.Select(o => Proposal(o, losses, GainOf(o, loss, least)))],
            losses.Count > 1 ? Trade(losses, [.. pool.Select(p => p.Recipe), .. open]) : [], Calibration(), _space.Rows.Count, _held.Length);
    }

    // Rows that lie apart, and those that are nearest the aim.
    private int[] Held(Func<double[], double> loss)
    {
        int n = _space.Rows.Count;
        int[] all = [.. Enumerable.Range(0, n)];
        if (n <= MostHeld) return all;
        int[] near = [.. all.OrderBy(i => loss([.. _responses.Select(r => r.Values[i])])).Take(MostHeld / 2)];
        return [.. near.Concat(Apart([.. all.Except(near)], _space.Rows, MostHeld / 2)).Order()];
    }

    // Each next one lies as far as can be from those taken (Gonzalez 1985; from memory).
    private static int[] Apart(int[] of, IReadOnlyList<Recipe> rows, int count)
    {
        double[] far = [.. of.Select(_ => double.PositiveInfinity)];
        var taken = new List<int>();
        int next = 0;
        while (taken.Count < Math.Min(count, of.Length))
        {
            taken.Add(of[next]);
            far[next] = -1;
            for (int i = 0; i < of.Length; i++) if (far[i] >= 0) far[i] = Math.Min(far[i], Apart(rows[of[next]], rows[of[i]]));
            next = Array.IndexOf(far, far.Max());
        }
        return [.. taken];
    }

    private static double Apart(Recipe a, Recipe b)
    {
        double sum = 0;
        for (int i = 0; i < a.Measured.Length; i++) sum += Math.Abs(a.Measured[i] - b.Measured[i]);
        for (int i = 0; i < a.Named.Length; i++) if (a.Named[i] != b.Named[i]) sum += 1;
        return sum;
    }

    private IEnumerable<Recipe> Search()
    {
        int measured = _space.MeasuredFactors.Count;
        double[,] spread = measured > 0 ? LatinHypercube.Make(Candidates, measured, _random.NextBits()) : new double[Candidates, 0];
        for (int c = 0; c < Candidates; c++)
        {
            // The ends of the ranges are recipes too, and a spread of points never touches them.
            double[] place = [.. Enumerable.Range(0, measured).Select(d => _random.NextFraction() < 0.15 ? (spread[c, d] < 0.5 ? 0 : 1) : spread[c, d])];
            yield return new Recipe(place, [.. _space.NamedFactors.Select(f => _random.NextBelow(f.Levels.Count))]);
        }
    }

    private (Recipe Recipe, double Gain) Refine((Recipe Recipe, double Gain) from, Func<double[], double> loss, double least, Func<IReadOnlyList<RecipeSetting>, bool>? allowed)
    {
        double width = 0.12;
        for (int round = 0; round < Rounds && from.Recipe.Measured.Length > 0; round++, width /= 2)
            for (int i = 0; i < PerRound; i++)
            {
                Recipe near = _space.Rounded(from.Recipe with { Measured = [.. from.Recipe.Measured.Select(v => Math.Clamp(v + width * _random.NextNormal(), 0, 1))] });
                if (allowed is not null && !allowed(Settings(near))) continue;
                double gain = GainOf(near, loss, least);
                if (gain > from.Gain) from = (near, gain);
            }
        return from;
    }

    private double[] MeanAt(Recipe recipe) => [.. _beliefs.Select(b => b.At(recipe).Mean)];

    private double GainOf(Recipe recipe, Func<double[], double> loss, double least)
    {
        (double Mean, double Sd)[] at = [.. _beliefs.Select(b => b.At(recipe))];
        double sum = 0;
        double[] world = new double[at.Length];
        foreach (double[] z in _worlds)
        {
            for (int r = 0; r < at.Length; r++) world[r] = at[r].Mean + z[r] * at[r].Sd;
            sum += Math.Max(0, least - loss(world));
        }
        return sum / _worlds.Length;
    }

    private (WorthBecause, IReadOnlyList<RecipeSetting>) Why(Recipe next, Func<double[], double> loss, double least)
    {
        IReadOnlyList<RecipeSetting> settings = Settings(next);
        for (int i = 0; i < next.Named.Length; i++)
            for (int j = i + 1; j < next.Named.Length; j++)
                if (!_held.Any(r => r.Named[i] == next.Named[i] && r.Named[j] == next.Named[j]))
                    return (WorthBecause.NeverTogether, [Of(_space.NamedFactors[i].Name), Of(_space.NamedFactors[j].Name)]);
        if (loss(MeanAt(next)) < least) return (WorthBecause.ExpectedNearer, []);
        // The measured factor whose setting lies farthest from every row with the same names.
        Recipe[] alike = [.. _held.Where(r => r.Named.SequenceEqual(next.Named)) is var same && same.Any() ? same : _held];
        int? farthest = null;
        double far = 0;
        for (int d = 0; d < next.Measured.Length; d++)
            if (alike.Min(r => Math.Abs(r.Measured[d] - next.Measured[d])) is var gap && gap >= far) (farthest, far) = (d, gap);
        return (WorthBecause.LittleKnown, farthest is { } f ? [Of(_space.MeasuredFactors[f].Name)] : []);

        RecipeSetting Of(string factor) => settings.First(s => s.Factor == factor);
    }

    private RecipeProposal Proposal(Recipe recipe, IReadOnlyList<Func<double[], double>> losses, double gain)
    {
        (double Mean, double Sd)[] at = [.. _beliefs.Select(b => b.At(recipe))];
        Estimate[] expected = [.. at.Select((a, r) => Spread(a.Mean, Math.Sqrt(a.Sd * a.Sd + _beliefs[r].NoiseSd * _beliefs[r].NoiseSd)))];
        Estimate[] of = [.. losses.Select(loss =>
        {
            double[] each = [.. _worlds.Select(z => loss([.. at.Select((a, r) => a.Mean + z[r] * a.Sd)])).Order()];
            return new Estimate(loss([.. at.Select(a => a.Mean)]), Distributions.SortedQuantile(each, 0.05), Distributions.SortedQuantile(each, 0.95));
        })];
        return new RecipeProposal(Settings(recipe), [.. _responses.Select((r, i) => (r.Name, expected[i]))], of[0], gain) { OtherLosses = of[1..] };
    }

    private static Estimate Spread(double mean, double sd) => new(mean, mean - Distributions.NormalHalfWidth90 * sd, mean + Distributions.NormalHalfWidth90 * sd);

    private IReadOnlyList<RecipeSetting> Settings(Recipe recipe) =>
    [
        .. _data.Factors.Select(f =>
        {
            int m = IndexOf(_space.MeasuredFactors, f), n = IndexOf(_space.NamedFactors, f);
            if (m >= 0) return new RecipeSetting(f.Name, _space.Setting(m, recipe.Measured[m]), _space.Setting(m, recipe.Measured[m]).ToString("0.######", System.Globalization.CultureInfo.InvariantCulture));
            return n >= 0 ? new RecipeSetting(f.Name, null, f.Levels[recipe.Named[n]]) : new RecipeSetting(f.Name, f.Numbers?[0], f.Names[0]);
        }),
    ];

    private IReadOnlyList<RecipeProposal> Trade(IReadOnlyList<Func<double[], double>> losses, Recipe[] recipes)
    {
        (Recipe Recipe, double[] Losses)[] all = [.. recipes.Select(r => (r, losses.Select(l => l(MeanAt(r))).ToArray()))];
        (Recipe Recipe, double[] Losses)[] front = [.. all.Where(a => !all.Any(b => b.Losses.Zip(a.Losses).All(p => p.First <= p.Second) && b.Losses.Zip(a.Losses).Any(p => p.First < p.Second))).OrderBy(a => a.Losses[0]).DistinctBy(a => string.Join(' ', a.Losses))];
        // Evenly along the first aim.
        int[] picks = [.. Enumerable.Range(0, Math.Min(MostTrade, front.Length)).Select(i => front.Length <= MostTrade ? i : i * (front.Length - 1) / (MostTrade - 1))];
        return [.. picks.Select(i => Proposal(front[i].Recipe, losses, 0))];
    }

    private IReadOnlyList<Foretold> Calibration() =>
    [
        .. _beliefs.Select((b, r) =>
        {
            IReadOnlyList<(double Mean, double Sd)> left = b.LeftOut();
            double[] y = [.. _held.Select((h, i) => _responses[r].Values[HeldRow(i)])];
            double mean = y.Average();
            return new Foretold(_responses[r].Name, Math.Sqrt(y.Select((v, i) => (v - left[i].Mean) * (v - left[i].Mean)).Average()), Math.Sqrt(y.Sum(v => (v - mean) * (v - mean)) / (y.Length - 1)), y.Where((v, i) => Math.Abs(v - left[i].Mean) <= Distributions.NormalHalfWidth90 * left[i].Sd).Count() / (double)y.Length)
            {
                Each = [.. left.Select((l, i) => (_whole[HeldRow(i)], Spread(l.Mean, l.Sd)))],
            };
        }),
    ];

    private int[]? _rowOf;

    private int HeldRow(int held) => (_rowOf ??= [.. _held.Select(h => IndexOf(_space.Rows, h))])[held];

    private static int IndexOf<T>(IReadOnlyList<T> list, T item) where T : class
    {
        for (int i = 0; i < list.Count; i++) if (ReferenceEquals(list[i], item)) return i;
        return -1;
    }
}
