using Alumroot.Colour.Colorimetry;
using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Colour.Matching;

/// <summary>The best shares of given pigments: Levenberg and Marquardt on the logarithms of the shares, which keeps them above nothing and their sum at one. Owns its work space.</summary>
internal sealed class MixtureFit
{
    private const int MostSteps = 30;
    private const double Settled = 1e-7, Met = 1e-12, MostDamping = 1e8, LongestStep = 2.5;

    // Nine in ten draws of three equal normal errors lie within this many of their standard deviations (chi, three degrees of freedom).
    private const double NineInTenOfThree = 2.5003;

    private readonly MixtureModel _model;
    private readonly int _residualCount;
    private readonly double[] _residuals, _slopes, _normal, _factored, _gradient, _step, _tried;
    private readonly int[] _pivots;

    internal MixtureFit(MixtureModel model, int mostPigments)
    {
        _model = model;
        _residualCount = model.Residuals;
        _residuals = new double[_residualCount];
        _slopes = new double[mostPigments * _residualCount];
        _normal = new double[mostPigments * mostPigments];
        _factored = new double[mostPigments * mostPigments];
        (_gradient, _step, _tried, _pivots) = (new double[mostPigments], new double[mostPigments], new double[mostPigments], new int[mostPigments]);
    }

    /// <summary>Improves the shares in place.</summary>
    /// <param name="pigments">Which.</param>
    /// <param name="shares">All above nothing, adding to one.</param>
    /// <param name="leastShare">A pigment that sinks below this is not worth having.</param>
    /// <returns>The sum of squared distances, or infinite when a share sank below the least: fewer pigments do as well.</returns>
    internal double Improve(ReadOnlySpan<int> pigments, Span<double> shares, double leastShare)
    {
        int n = shares.Length;
        double damping = 1e-2, sum = _model.Evaluate(pigments, shares, _residuals, _slopes.AsSpan(0, n * _residualCount));
        for (int round = 0; round < MostSteps && n > 1 && sum > Met; round++)
        {
            Assemble(shares);
            double before = sum;
            while (!Step(pigments, shares, damping, ref sum))
                if ((damping *= 8) > MostDamping) return sum;
            damping /= 8;
            foreach (double share in shares)
                if (share < leastShare) return double.PositiveInfinity;
            if (before - sum < Settled * before) return sum;
            sum = _model.Evaluate(pigments, shares, _residuals, _slopes.AsSpan(0, n * _residualCount));
        }
        return sum;
    }

    /// <summary>What the aim's own uncertainty leaves open of the shares.</summary>
    /// <param name="pigments">Which.</param>
    /// <param name="shares">The best.</param>
    /// <param name="within">Nine times in ten the true aim is no farther.</param>
    internal Estimate[] Spans(ReadOnlySpan<int> pigments, ReadOnlySpan<double> shares, double within)
    {
        int n = shares.Length, free = n - 1;
        if (free == 0) return [Estimate.Exact(shares[0])];
        _model.Evaluate(pigments, shares, _residuals, _slopes.AsSpan(0, n * _residualCount));
        Assemble(shares);
        _normal.AsSpan(0, free * free).CopyTo(_factored);
        // More unknowns than the aim has numbers, or pigments that move the colour alike: any share is as good.
        bool decided = free <= _residualCount && DenseLu.Factor(_factored, _pivots, free);
        double sd = within / NineInTenOfThree;
        var spans = new Estimate[n];
        for (int j = 0; j < n; j++)
        {
            double half = 1;
            if (decided)
            {
                for (int i = 0; i < free; i++) _step[i] = _gradient[i] = shares[j] * ((i == j ? 1 : 0) - shares[i]);
                DenseLu.Solve(_factored, _pivots, _step, free);
                double variance = 0;
                for (int i = 0; i < free; i++) variance += _gradient[i] * _step[i];
                half = variance >= 0 ? Distributions.NormalHalfWidth90 * sd * Math.Sqrt(variance) : 1;
            }
            spans[j] = new Estimate(shares[j], Math.Max(0, shares[j] - half), Math.Min(1, shares[j] + half));
        }
        return spans;
    }

    /// <summary>What the doubts of the pigments and of the aim leave open together, by draws: the shares found anew in each, and how far the colour of the best shares lies off.</summary>
    /// <param name="pigments">Which.</param>
    /// <param name="shares">The best.</param>
    /// <param name="labs">Their colour under each condition.</param>
    /// <param name="within">Nine times in ten the true aim is no farther.</param>
    /// <param name="draws">How many draws.</param>
    /// <param name="seed">Seed of the aim's draws.</param>
    internal (Estimate[] Spans, double Within) Drawn(ReadOnlySpan<int> pigments, ReadOnlySpan<double> shares, IReadOnlyList<Lab> labs, double within, int draws, ulong seed)
    {
        int n = shares.Length;
        var found = new double[n][];
        for (int j = 0; j < n; j++) found[j] = new double[draws];
        var off = new double[draws];
        var random = new SeededRandom(seed);
        double[] at = new double[n];
        for (int d = 0; d < draws; d++)
        {
            _model.Draw(pigments, d);
            off[d] = _model.Labs(pigments, shares).Zip(labs, (drawn, known) => Ciede2000.Of(known, drawn).DeltaE).Max();
            _model.MoveAim(random, within / NineInTenOfThree);
            shares.CopyTo(at);
            Improve(pigments, at, 0);
            for (int j = 0; j < n; j++) found[j][d] = at[j];
        }
        _model.Undraw(pigments);
        Array.Sort(off);
        var spans = new Estimate[n];
        for (int j = 0; j < n; j++)
        {
            Array.Sort(found[j]);
            spans[j] = new Estimate(shares[j], Math.Min(shares[j], Distributions.SortedQuantile(found[j], 0.05)), Math.Max(shares[j], Distributions.SortedQuantile(found[j], 0.95)));
        }
        return (spans, Distributions.SortedQuantile(off, 0.9));
    }

    /// <summary>Slopes by the logarithms of all shares but the last, the normal matrix and the gradient.</summary>
    private void Assemble(ReadOnlySpan<double> shares)
    {
        int n = shares.Length, free = n - 1;
        for (int r = 0; r < _residualCount; r++)
        {
            double mean = 0;
            for (int p = 0; p < n; p++) mean += shares[p] * _slopes[p * _residualCount + r];
            for (int p = 0; p < n; p++) _slopes[p * _residualCount + r] = shares[p] * (_slopes[p * _residualCount + r] - mean);
        }
        for (int i = 0; i < free; i++)
        {
            _gradient[i] = Dot(i, _residuals);
            for (int j = 0; j <= i; j++) _normal[i * free + j] = _normal[j * free + i] = Dot(i, _slopes.AsSpan(j * _residualCount, _residualCount));
        }
    }

    private double Dot(int pigment, ReadOnlySpan<double> other)
    {
        double sum = 0;
        for (int r = 0; r < _residualCount; r++) sum += _slopes[pigment * _residualCount + r] * other[r];
        return sum;
    }

    private bool Step(ReadOnlySpan<int> pigments, Span<double> shares, double damping, ref double sum)
    {
        int n = shares.Length, free = n - 1;
        for (int i = 0; i < free * free; i++) _factored[i] = _normal[i];
        for (int i = 0; i < free; i++)
        {
            _factored[i * free + i] += damping * (_normal[i * free + i] + 1e-9);
            _step[i] = -_gradient[i];
        }
        if (!DenseLu.Factor(_factored, _pivots, free)) return false;
        DenseLu.Solve(_factored, _pivots, _step, free);
        double total = 0;
        for (int i = 0; i < n; i++) total += _tried[i] = shares[i] * (i < free ? Math.Exp(Math.Clamp(_step[i], -LongestStep, LongestStep)) : 1);
        for (int i = 0; i < n; i++) _tried[i] /= total;
        double next = _model.Evaluate(pigments, _tried.AsSpan(0, n), _residuals, []);
        if (!(next < sum)) return false;
        _tried.AsSpan(0, n).CopyTo(shares);
        sum = next;
        return true;
    }
}
