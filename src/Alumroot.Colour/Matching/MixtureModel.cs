using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Film;
using Alumroot.Numerics;

namespace Alumroot.Colour.Matching;

/// <summary>From shares to colours and their slopes, without allocation: two-constant mixing, surface, CIELAB, weighed as CIEDE2000 weighs near the aim.</summary>
internal sealed class MixtureModel
{
    // Below this q = K/S the slope of an opaque white runs away.
    private const double LeastRatio = 1e-9;
    private const double Nudge = 1e-6;

    private readonly MixtureAsk _ask;
    private readonly int _bands;
    private readonly double[] _k, _s, _off;
    private readonly double _ground;
    private readonly Seen[] _seen;

    internal MixtureModel(MixtureAsk ask)
    {
        _ask = ask;
        _bands = ask.Nanometres.Count;
        _k = [.. ask.Pigments.SelectMany(p => p.Bands.Select(b => b.AbsorbedUnits))];
        _s = [.. ask.Pigments.SelectMany(p => p.Bands.Select(b => b.ScatteredUnits))];
        _ground = ask.Surface.Inside(ask.GroundReflectance);
        Spectrum grid = Spectrum.Of(ask.Nanometres, ask.Nanometres.Select(_ => 0.0));
        _seen = [.. ask.Aims.Select(a => new Seen(SpectralWeights.For(a.Condition, grid), a.Lab))];
        _off = new double[Residuals];
    }

    /// <summary>Takes each pigment as one of its draws; one without draws stays as it is known.</summary>
    internal void Draw(ReadOnlySpan<int> pigments, int draw)
    {
        foreach (int p in pigments)
            if (_ask.Pigments[p].Drawn is { Count: > 0 } drawn) Take(p, drawn[draw % drawn.Count]);
    }

    /// <summary>Takes each pigment as it is known, and the aim as it is wanted.</summary>
    internal void Undraw(ReadOnlySpan<int> pigments)
    {
        foreach (int p in pigments) Take(p, _ask.Pigments[p].Bands);
        _off.AsSpan().Clear();
    }

    /// <summary>Moves the aim in each of the weighed directions.</summary>
    internal void MoveAim(SeededRandom random, double sd)
    {
        for (int i = 0; i < _off.Length; i++) _off[i] = sd * random.NextNormal();
    }

    private void Take(int pigment, IReadOnlyList<Layer> bands)
    {
        for (int i = 0; i < _bands; i++) (_k[pigment * _bands + i], _s[pigment * _bands + i]) = (bands[i].AbsorbedUnits, bands[i].ScatteredUnits);
    }

    /// <summary>Three residuals for each aim.</summary>
    internal int Residuals => 3 * _seen.Length;

    /// <summary>The mean strength of a pigment, to begin with shares that all show.</summary>
    internal double Strength(int pigment)
    {
        double sum = 0;
        for (int i = 0; i < _bands; i++) sum += _k[pigment * _bands + i] + 0.1 * _s[pigment * _bands + i];
        return sum / _bands;
    }

    /// <summary>The colour of a mixture under each condition.</summary>
    internal Lab[] Labs(ReadOnlySpan<int> pigments, ReadOnlySpan<double> shares)
    {
        var values = new double[_bands];
        for (int i = 0; i < _bands; i++)
        {
            (double k, double s) = Mixed(pigments, shares, i);
            values[i] = Measured(k, s);
        }
        return Array.ConvertAll(_seen, seen => seen.Weights.LabOf(values));
    }

    /// <summary>The weighed distances from the aims and their slopes by each share.</summary>
    /// <param name="pigments">Which.</param>
    /// <param name="shares">How much of each.</param>
    /// <param name="residuals">Three for each aim.</param>
    /// <param name="slopes">For each pigment three for each aim, or empty.</param>
    /// <returns>The sum of squares.</returns>
    internal double Evaluate(ReadOnlySpan<int> pigments, ReadOnlySpan<double> shares, Span<double> residuals, Span<double> slopes)
    {
        int n = pigments.Length, aims = _seen.Length;
        Span<double> tristimulus = stackalloc double[3 * aims];
        tristimulus.Clear();
        slopes.Clear();
        for (int i = 0; i < _bands; i++)
        {
            (double k, double s) = Mixed(pigments, shares, i);
            double r = Measured(k, s);
            for (int a = 0; a < aims; a++) _seen[a].Add(i, r, tristimulus[(3 * a)..]);
            if (slopes.IsEmpty) continue;
            (double byK, double byS) = Slopes(k, s, r);
            for (int p = 0; p < n; p++)
            {
                double slope = byK * _k[pigments[p] * _bands + i] + byS * _s[pigments[p] * _bands + i];
                for (int a = 0; a < aims; a++) _seen[a].Add(i, slope, slopes[(p * Residuals + 3 * a)..]);
            }
        }
        double sum = 0;
        for (int a = 0; a < aims; a++) sum += _seen[a].Weigh(tristimulus[(3 * a)..], _off.AsSpan(3 * a, 3), residuals[(3 * a)..], slopes, n, Residuals, 3 * a);
        return sum;
    }

    private (double K, double S) Mixed(ReadOnlySpan<int> pigments, ReadOnlySpan<double> shares, int band)
    {
        double k = 0, s = 0;
        for (int p = 0; p < pigments.Length; p++)
        {
            int at = pigments[p] * _bands + band;
            k += shares[p] * _k[at];
            s += shares[p] * _s[at];
        }
        return (k, s);
    }

    private double Measured(double k, double s) => _ask.Surface.Measured(_ask.Thickness is { } x
        ? FilmOptics.Over(new Layer(k, s).Times(x), _ground)
        : s > 0 ? FilmOptics.OpaqueReflectance(k / s) : 0);

    private (double ByK, double ByS) Slopes(double k, double s, double r)
    {
        if (_ask.Thickness is not null)
        {
            double step = Nudge * (k + s);
            return step > 0 ? ((Measured(k + step, s) - r) / step, (Measured(k, s + step) - r) / step) : (0, 0);
        }
        if (!(s > 0)) return (0, 0);
        double q = Math.Max(LeastRatio, k / s), root = Math.Sqrt(q * (q + 2)), inside = 1 / (1 + q + root);
        double byRatio = -inside / root / _ask.Surface.InsidePerMeasured(inside);
        return (byRatio / s, -byRatio * q / s);
    }

    /// <summary>One aim: the weights of its condition, and the metric of CIEDE2000 at the aim as three rows.</summary>
    private sealed class Seen
    {
        private readonly Lab _aim;
        private readonly double[] _x, _y, _z;
        private readonly double _lightness, _chromaA, _chromaB, _hueA, _hueB;

        internal Seen(SpectralWeights weights, Lab aim)
        {
            (Weights, _aim) = (weights, aim);
            (_x, _y, _z) = (weights.X.ToArray(), weights.Y.ToArray(), weights.Z.ToArray());
            double stretch = Ciede2000.Stretch(aim.Chroma);
            var stretched = new Lab(aim.L, stretch * aim.A, aim.B);
            (double sl, double sc, double sh) = Ciede2000.Weights(aim.L, stretched.Chroma, stretched.HueDegrees);
            (double sin, double cos) = Math.SinCos(stretched.HueDegrees * Math.PI / 180);
            (_lightness, _chromaA, _chromaB, _hueA, _hueB) = (1 / sl, stretch * cos / sc, sin / sc, -stretch * sin / sh, cos / sh);
        }

        internal SpectralWeights Weights { get; }

        internal void Add(int band, double value, Span<double> to)
        {
            to[0] += _x[band] * value;
            to[1] += _y[band] * value;
            to[2] += _z[band] * value;
        }

        /// <summary>Turns sums into weighed distances, and the slopes of the sums into slopes of the distances.</summary>
        internal double Weigh(ReadOnlySpan<double> sums, ReadOnlySpan<double> off, Span<double> residuals, Span<double> slopes, int n, int stride, int offset)
        {
            Xyz white = Weights.White;
            Lab lab = Lab.From(new Xyz(sums[0], sums[1], sums[2]), white);
            Turn(lab.L - _aim.L, lab.A - _aim.A, lab.B - _aim.B, residuals);
            for (int i = 0; i < 3; i++) residuals[i] -= off[i];
            if (!slopes.IsEmpty)
            {
                double fx = Lab.SignalSlope(sums[0] / white.X) / white.X, fy = Lab.SignalSlope(sums[1] / white.Y) / white.Y, fz = Lab.SignalSlope(sums[2] / white.Z) / white.Z;
                for (int p = 0; p < n; p++)
                {
                    Span<double> d = slopes[(p * stride + offset)..];
                    double x = fx * d[0], y = fy * d[1], z = fz * d[2];
                    Turn(116 * y, 500 * (x - y), 200 * (y - z), d);
                }
            }
            return residuals[0] * residuals[0] + residuals[1] * residuals[1] + residuals[2] * residuals[2];
        }

        private void Turn(double l, double a, double b, Span<double> to) => (to[0], to[1], to[2]) = (_lightness * l, _chromaA * a + _chromaB * b, _hueA * a + _hueB * b);
    }
}
