using Alumroot.Colour.Colorimetry;
using Alumroot.Numerics;

namespace Alumroot.Colour.Photograph;

/// <summary>A correction from a camera's light to colour, fitted to the patches of a target.</summary>
/// <remarks>
/// A Gaussian process (Rasmussen and Williams 2006, chapters 2 and 5, from memory) whose mean is the root polynomial: the factors and the smooth rest have normal priors, and errors count as CIEDE2000 counts them near each patch.
/// Leaving one patch out has a closed form (their section 5.4.2, for blocks of three).
/// </remarks>
internal sealed class ColourFit
{
    private const int Features = 6, Linear = 3;
    private const double WhiteScale = 100;

    // A patch whose channel is cut off teaches what its other channels tell: in the direction of the cut its doubt counts so many times. (Taking the usual depth for true made strong blue-greens worse in simulated photographs.)
    private const double CutTeaching = 4;

    // Two rounds settle the slopes at the colour that is found.
    private const int Rounds = 3;

    private readonly CorrectionShape _shape;
    private readonly Xyz _white;
    private readonly double[] _prior, _features, _inverse, _alpha, _slopes, _factors;
    private readonly LocalMetric[] _metrics;
    private readonly int _count;

    private ColourFit(CorrectionShape shape, Xyz white, double[] prior, int count)
    {
        (_shape, _white, _prior, _count) = (shape, white, prior, count);
        _features = new double[count * Features];
        _slopes = new double[count * 9];
        _metrics = new LocalMetric[count];
        _inverse = new double[9 * count * count];
        _alpha = new double[3 * count];
        _factors = new double[3 * Features];
        LeftOut = new Lab[count];
    }

    /// <summary>Mean distance of the patches that are not cut off, each predicted from the others.</summary>
    internal double LeftOutMean { get; private set; }

    /// <summary>The colour of each patch as predicted from the others.</summary>
    internal Lab[] LeftOut { get; }

    /// <summary>Unexplained scatter of one patch in each of three directions, in units of CIEDE2000.</summary>
    internal double Scatter { get; private set; }

    /// <summary>The shape it has.</summary>
    internal CorrectionShape Shape => _shape;

    /// <summary>Fits; null when the patches do not settle it.</summary>
    /// <param name="patches">Patches that are not clipped above; four at least.</param>
    /// <param name="prior">Nine entries, row by row, of the matrix that is expected before any patch is seen.</param>
    /// <param name="shape">How supple it is.</param>
    /// <param name="white">The white that the truths are seen against.</param>
    internal static ColourFit? Of(IReadOnlyList<TrainingPatch> patches, double[] prior, CorrectionShape shape, Xyz white)
    {
        var fit = new ColourFit(shape, white, prior, patches.Count);
        return fit.Solve(patches) ? fit : null;
    }

    /// <summary>The colour that stands behind what the camera saw, and the standard deviation of its error in each of three directions.</summary>
    internal (Lab Colour, double Deviation) At(SeenColour seen, double noise)
    {
        Span<double> f = stackalloc double[Features], slopes = stackalloc double[9], cuts = stackalloc double[9];
        FillFeatures(seen.Light, f);
        Xyz xyz = Polynomial(f);
        Lab lab = Lab.From(xyz, _white);
        double[] cross = new double[9 * _count];
        double variance = 0, cut = 0;
        for (int round = 0; round < Rounds; round++)
        {
            var metric = new LocalMetric(lab);
            metric.FillSlopes(_white, slopes);
            Lab start = Lab.From(xyz, _white);
            (double l, double c, double h) = _shape.RestScale > 0 ? Rest(lab) : default;
            Lab moved = metric.After(l, c, h);
            lab = new Lab(start.L + moved.L - lab.L, start.A + moved.A - lab.A, start.B + moved.B - lab.B);
        }
        var last = new LocalMetric(lab);
        last.FillSlopes(_white, slopes);
        FillCuts(slopes, seen.Doubt, cuts);
        FillCross(f, slopes, lab, cross);
        int n = 3 * _count;
        for (int d = 0; d < 3; d++)
        {
            double explained = 0;
            for (int i = 0; i < n; i++)
            {
                double s = 0;
                for (int j = 0; j < n; j++) s += _inverse[i * n + j] * cross[d * n + j];
                explained += cross[d * n + i] * s;
            }
            cut += Dot(cuts, d, d);
            variance += PriorVariance(f, slopes.Slice(3 * d, 3)) + _shape.RestScale * _shape.RestScale + 1 - explained;
        }
        return (lab, Math.Sqrt(Scatter * Scatter * Math.Max(variance / 3, 0.5) + cut / 3 + noise * noise));
    }

    private bool Solve(IReadOnlyList<TrainingPatch> patches)
    {
        int n = 3 * _count;
        var y = new double[n];
        for (int i = 0; i < _count; i++)
        {
            Span<double> f = _features.AsSpan(i * Features, Features), slopes = _slopes.AsSpan(i * 9, 9);
            FillFeatures(patches[i].Seen.Light, f);
            _metrics[i] = new LocalMetric(patches[i].Truth);
            _metrics[i].FillSlopes(_white, slopes);
            Xyz truth = patches[i].Truth.ToXyz(_white), expected = Prior(f);
            for (int d = 0; d < 3; d++) y[3 * i + d] = slopes[3 * d] * (truth.X - expected.X) + slopes[3 * d + 1] * (truth.Y - expected.Y) + slopes[3 * d + 2] * (truth.Z - expected.Z);
        }
        var covariance = new double[n * n];
        var row = new double[3 * n];
        Span<double> cuts = stackalloc double[9];
        for (int i = 0; i < _count; i++)
        {
            FillCross(_features.AsSpan(i * Features, Features), _slopes.AsSpan(i * 9, 9), patches[i].Truth, row);
            FillCuts(_slopes.AsSpan(i * 9, 9), patches[i].Seen.Doubt, cuts);
            row.CopyTo(covariance, 3 * i * n);
            for (int d = 0; d < 3; d++)
            {
                covariance[(3 * i + d) * n + 3 * i + d] += 1 + patches[i].Noise * patches[i].Noise;
                for (int e = 0; e < 3; e++) covariance[(3 * i + d) * n + 3 * i + e] += CutTeaching * CutTeaching * Dot(cuts, d, e);
            }
        }
        if (!DenseCholesky.Factor(covariance, n)) return false;
        DenseCholesky.Inverse(covariance, _inverse, n);
        for (int i = 0; i < n; i++)
        {
            double s = 0;
            for (int j = 0; j < n; j++) s += _inverse[i * n + j] * y[j];
            _alpha[i] = s;
        }
        FillFactors();
        return Judge(patches, y);
    }

    /// <summary>Leaves out each patch in turn: its error is the inverse of its block of the inverse, times its share of the weights.</summary>
    private bool Judge(IReadOnlyList<TrainingPatch> patches, double[] y)
    {
        int n = 3 * _count, whole = 0;
        double sum = 0, standard = 0;
        Span<double> block = stackalloc double[9], e = stackalloc double[3];
        for (int i = 0; i < _count; i++)
        {
            for (int a = 0; a < 3; a++)
            {
                e[a] = _alpha[3 * i + a];
                for (int b = 0; b < 3; b++) block[3 * a + b] = _inverse[(3 * i + a) * n + 3 * i + b];
            }
            double a0 = e[0], a1 = e[1], a2 = e[2];
            if (!DenseCholesky.Factor(block, 3)) return false;
            DenseCholesky.SolveLower(block, e, 3);
            DenseCholesky.SolveUpper(block, e, 3);
            standard += a0 * e[0] + a1 * e[1] + a2 * e[2];
            LeftOut[i] = _metrics[i].After(-e[0], -e[1], -e[2]);
            double distance = Ciede2000.Of(patches[i].Truth, LeftOut[i]).DeltaE;
            if (!double.IsFinite(distance)) return false;
            if (patches[i].Seen.IsCut) continue;
            sum += distance;
            whole++;
        }
        LeftOutMean = sum / whole;
        Scatter = Math.Sqrt(standard / n);
        return whole > 0 && double.IsFinite(Scatter);
    }

    private static void FillFeatures(LinearRgb seen, Span<double> f)
    {
        double r = Math.Max(seen.R, 0), g = Math.Max(seen.G, 0), b = Math.Max(seen.B, 0);
        (f[0], f[1], f[2], f[3], f[4], f[5]) = (seen.R, seen.G, seen.B, Math.Sqrt(r * g), Math.Sqrt(g * b), Math.Sqrt(r * b));
    }

    private Xyz Prior(ReadOnlySpan<double> f) => new(
        _prior[0] * f[0] + _prior[1] * f[1] + _prior[2] * f[2],
        _prior[3] * f[0] + _prior[4] * f[1] + _prior[5] * f[2],
        _prior[6] * f[0] + _prior[7] * f[1] + _prior[8] * f[2]);

    private Xyz Polynomial(ReadOnlySpan<double> f)
    {
        Xyz xyz = Prior(f);
        double x = xyz.X, y = xyz.Y, z = xyz.Z;
        for (int k = 0; k < Features; k++)
        {
            x += _factors[k] * f[k];
            y += _factors[Features + k] * f[k];
            z += _factors[2 * Features + k] * f[k];
        }
        return new Xyz(x, y, z);
    }

    /// <summary>The most likely factors: prior variance times features times slopes times weights.</summary>
    private void FillFactors()
    {
        for (int axis = 0; axis < 3; axis++)
            for (int k = 0; k < Features; k++)
            {
                double s = 0;
                for (int i = 0; i < _count; i++)
                    for (int d = 0; d < 3; d++) s += _slopes[9 * i + 3 * d + axis] * _features[i * Features + k] * _alpha[3 * i + d];
                _factors[axis * Features + k] = Variance(k) * s;
            }
    }

    private double Variance(int feature)
    {
        double scale = WhiteScale * (feature < Linear ? _shape.MatrixScale : _shape.RootScale);
        return scale * scale;
    }

    private double PriorVariance(ReadOnlySpan<double> f, ReadOnlySpan<double> slopes)
    {
        double s = 0;
        for (int k = 0; k < Features; k++) s += Variance(k) * f[k] * f[k];
        return s * (slopes[0] * slopes[0] + slopes[1] * slopes[1] + slopes[2] * slopes[2]);
    }

    /// <summary>Covariance of a colour's three coordinates with those of all patches: three rows.</summary>
    private void FillCross(ReadOnlySpan<double> f, ReadOnlySpan<double> slopes, Lab at, Span<double> rows)
    {
        int n = 3 * _count;
        for (int j = 0; j < _count; j++)
        {
            double common = 0;
            for (int k = 0; k < Features; k++) common += Variance(k) * f[k] * _features[j * Features + k];
            double rest = RestCovariance(at, _metrics[j].At);
            for (int d = 0; d < 3; d++)
                for (int e = 0; e < 3; e++)
                    rows[d * n + 3 * j + e] = common * (slopes[3 * d] * _slopes[9 * j + 3 * e] + slopes[3 * d + 1] * _slopes[9 * j + 3 * e + 1] + slopes[3 * d + 2] * _slopes[9 * j + 3 * e + 2]) + (d == e ? rest : 0);
        }
    }

    private double RestCovariance(Lab a, Lab b)
    {
        if (_shape.RestScale == 0) return 0;
        double dl = a.L - b.L, da = a.A - b.A, db = a.B - b.B;
        return _shape.RestScale * _shape.RestScale * Math.Exp(-0.5 * (dl * dl + da * da + db * db) / (_shape.RestReach * _shape.RestReach));
    }

    /// <summary>What a deviation of each channel's cut does to the three coordinates: three rows of three.</summary>
    private void FillCuts(ReadOnlySpan<double> slopes, LinearRgb doubt, Span<double> cuts)
    {
        for (int d = 0; d < 3; d++)
            for (int c = 0; c < 3; c++)
                cuts[3 * d + c] = (c == 0 ? doubt.R : c == 1 ? doubt.G : doubt.B) * (slopes[3 * d] * _prior[c] + slopes[3 * d + 1] * _prior[3 + c] + slopes[3 * d + 2] * _prior[6 + c]);
    }

    private static double Dot(ReadOnlySpan<double> rows, int i, int j) => rows[3 * i] * rows[3 * j] + rows[3 * i + 1] * rows[3 * j + 1] + rows[3 * i + 2] * rows[3 * j + 2];

    private (double L, double C, double H) Rest(Lab at)
    {
        double l = 0, c = 0, h = 0;
        for (int j = 0; j < _count; j++)
        {
            double k = RestCovariance(at, _metrics[j].At);
            l += k * _alpha[3 * j];
            c += k * _alpha[3 * j + 1];
            h += k * _alpha[3 * j + 2];
        }
        return (l, c, h);
    }
}
