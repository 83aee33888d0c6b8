using Alumroot.Chemistry.Planning;
using Alumroot.Numerics;

namespace Alumroot.Chemistry.Assimilation;

/// <summary>The likeliest truth of one case and the spread about it: Gauss-Newton with damping in the standard space, Laplace's covariance.</summary>
/// <remarks>
/// Minimises |z|^2/2 + sum ((reading - predicted)/sd)^2/2 with exact derivatives of pH. The curvature I + J'WJ is the inverse covariance. A conductivity weighs
/// the cases and the guesses, but does not steer the fit: at a spread of a tenth it says little of any one unknown.
/// </remarks>
internal sealed class MapFit
{
    private const int N = Axis.Count;
    private const int LooksOnTheWay = 5;
    private const double StretchSpan = 1.5, MostSpan = 3, LongestStep = 2.5, Enough = 0.02, LeastGain = 0.005;

    private MapFit(BenchCase c, Look look, double[] lower)
    {
        Marginal = WithPouredFirst(look.Curvature(), c.PouredAxis);
        (Case, Z, Predicted, ByAxis, Lower, Trail) = (c, look.Z, look.Predicted, look.ByAxis, lower, look.Trail);
        LogDeterminant = 0;
        for (int i = 0; i < N; i++) LogDeterminant += Math.Log(lower[i * N + i]);
        LogEvidence = Math.Log(c.Prior) - look.Total - LogDeterminant;
    }

    internal BenchCase Case { get; }

    /// <summary>The likeliest point.</summary>
    internal double[] Z { get; }

    /// <summary>What each reading should show there.</summary>
    internal double[] Predicted { get; }

    /// <summary>Change of each prediction with each unknown, reading by reading.</summary>
    internal double[] ByAxis { get; }

    /// <summary>The states of the likeliest path; null without readings.</summary>
    internal Trail? Trail { get; }

    /// <summary>L of the curvature L L'.</summary>
    internal double[] Lower { get; }

    /// <summary>L of the same curvature with the strength of what is poured exchanged with the first unknown: its lower rows alone are then that of all others.</summary>
    internal double[] Marginal { get; }

    /// <summary>Half of ln of the curvature's determinant.</summary>
    internal double LogDeterminant { get; }

    /// <summary>ln of prior times likelihood of all readings, by Laplace; the constant of the readings' own widths is left out, which is the same for all cases.</summary>
    internal double LogEvidence { get; }

    /// <summary>Finds it, taking the readings in as they came: the first half, then all but one, then all. From nothing known a fit of all would lose its way where the pH turns.</summary>
    /// <param name="c">The case.</param>
    /// <param name="most">Most looks at the bath with all readings.</param>
    /// <returns>Null when the bath could not be solved.</returns>
    internal static MapFit? Along(BenchCase c, int most)
    {
        int n = c.Log.Readings.Count;
        double[] from = new double[N];
        Trail? trail = null;
        foreach (int readings in (int[])[(n + 1) / 2, n - 1])
        {
            if (readings < (n + 1) / 2 || readings < 1 || readings >= n) continue;
            BenchCase then = c.Until(readings);
            if (Find(then, Stretched(then, from, trail), trail, LooksOnTheWay) is not { } part) return null;
            (from, trail) = (part.Z, part.Trail);
        }
        return Find(c, Stretched(c, from, trail), trail, most);
    }

    /// <summary>Finds it from the fit of a like case, as another packet with the same readings.</summary>
    /// <param name="c">The case.</param>
    /// <param name="like">The fit of another.</param>
    /// <param name="most">Most looks at the bath.</param>
    /// <param name="floor">Gives up when ln of the evidence cannot rise above this any more by the look of the fit.</param>
    internal static MapFit? From(BenchCase c, MapFit like, int most, double floor) => Find(c, Stretched(c, like.Z, null, MostSpan), null, most, floor);

    /// <summary>The same start with the strength of what is poured at its best: along it the path only stretches, and no turn of the pH is too sharp.</summary>
    private static double[] Stretched(BenchCase c, double[] from, Trail? trail, double span = StretchSpan)
    {
        if (c.Log.Readings.Count == 0) return from;
        double[] z = [.. from];
        int poured = c.PouredAxis;
        double low = Math.Max(-MostSpan, from[poured] - span), high = Math.Min(MostSpan, from[poured] + span);
        if (c.PouredStrength(low) == c.PouredStrength(high)) return from;
        z[poured] = 0;
        double last = c.Log.PouredAt(c.Log.Alkali.Count - 1, c.SaltFirst) * c.PouredStrength(high) / c.PouredStrength(0);
        if (WholePath.Trace(c, z, trail, new Reach(new PlanAim.AlkaliAmount(0), 1, 0), last) is not { } path) return from;
        z[poured] = new StrengthGrid(c, path, c.At(z), low, high).Best;
        return z;
    }

    /// <summary>Finds it for a layer of the gas pressure, from the fit over the whole span.</summary>
    internal static MapFit? InLayer(BenchCase layer, MapFit whole, int most)
    {
        double[] from = [.. whole.Z];
        from[PlanDraw.GasAxis] = 0;
        return Find(layer, Stretched(layer, from, whole.Trail), whole.Trail, most);
    }

    /// <summary>Finds it from a start.</summary>
    internal static MapFit? Find(BenchCase c, double[] from, Trail? trail, int most, double floor = double.NegativeInfinity)
    {
        Look? best = Look.At(c, from, trail);
        if (best is null) return null;
        double damping = 0;
        for (int look = 1; look < most && c.Log.Readings.Count > 0; look++)
        {
            double[] curvature = best.Curvature();
            for (int i = 0; i < N; i++) curvature[i * N + i] *= 1 + damping;
            if (!DenseCholesky.Factor(curvature, N)) return null;
            double[] slope = best.Downhill();
            double[] step = [.. slope];
            DenseCholesky.SolveLower(curvature, step, N);
            DenseCholesky.SolveUpper(curvature, step, N);
            double length = Math.Sqrt(step.Sum(s => s * s));
            if (length < Enough) break;
            // What is left to gain by the fit's own curvature, half of step times slope; twice that is taken as the most.
            double promise = 0.5 * step.Zip(slope, (a, b) => a * b).Sum();
            if (promise < LeastGain || (look >= 2 && Math.Log(c.Prior) - best.Fit + 3 * promise < floor)) break;
            double factor = Math.Min(1, LongestStep / length);
            double[] z = new double[N];
            for (int i = 0; i < N; i++) z[i] = Math.Clamp(best.Z[i] + factor * step[i], -5, 5);
            if (Look.At(c, z, best.Trail) is { } next && next.Fit < best.Fit)
            {
                double gain = best.Fit - next.Fit;
                best = next;
                damping = damping < 0.05 ? 0 : damping / 5;
                if (gain < LeastGain) break;
            }
            else
            {
                damping = damping == 0 ? 0.5 : damping * 5;
                if (damping > 1e4) break;
            }
        }
        double[] lower = best.Curvature();
        return DenseCholesky.Factor(lower, N) ? new MapFit(c, best, lower) : null;
    }

    /// <summary>Standard deviation of a reading's prediction from the spread of the unknowns alone.</summary>
    internal double SdOfPrediction(int reading)
    {
        Span<double> row = stackalloc double[N];
        ByAxis.AsSpan(reading * N, N).CopyTo(row);
        DenseCholesky.SolveLower(Lower, row, N);
        double sum = 0;
        foreach (double v in row) sum += v * v;
        return Math.Sqrt(sum);
    }

    private static double[] WithPouredFirst(double[] a, int axis)
    {
        var m = new double[N * N];
        for (int i = 0; i < N; i++)
            for (int j = 0; j < N; j++)
            {
                int r = Swapped(i), c = Swapped(j);
                m[i * N + j] = r >= c ? a[r * N + c] : a[c * N + r];
            }
        return DenseCholesky.Factor(m, N) ? m : throw new InvalidOperationException("A curvature that was positive definite is not after an exchange of two unknowns.");

        int Swapped(int i) => i == 0 ? axis : i == axis ? 0 : i;
    }

    /// <summary>The bath seen from one point.</summary>
    private sealed class Look
    {
        private readonly BenchLog _log;
        private readonly IReadOnlyList<BenchReading> _readings;
        private readonly double[] _distance, _white;

        private Look(BenchCase c, double[] z)
        {
            _log = c.Log;
            _readings = c.Log.Readings;
            _distance = new double[_readings.Count];
            _white = new double[_readings.Count * N];
            Z = z;
            Predicted = new double[_readings.Count];
            ByAxis = new double[_readings.Count * N];
        }

        internal double[] Z { get; }

        internal double[] Predicted { get; }

        internal double[] ByAxis { get; }

        internal Trail? Trail { get; private set; }

        /// <summary>What the fit makes small.</summary>
        internal double Fit { get; private set; }

        /// <summary>The same with the conductivities.</summary>
        internal double Total { get; private set; }

        internal static Look? At(BenchCase c, double[] z, Trail? trail)
        {
            var look = new Look(c, z);
            if (look._readings.Count == 0)
            {
                look.Fit = look.Total = Misfit.Half(z);
                return look;
            }
            var path = new BenchTangents(c, z, trail);
            if (!path.FollowLog(step => look.Read(step, path))) return null;
            look.Trail = path.Trail;
            look.Weigh();
            return double.IsFinite(look.Total) ? look : null;
        }

        internal double[] Curvature()
        {
            var a = new double[N * N];
            for (int i = 0; i < N; i++) a[i * N + i] = 1;
            for (int k = 0; k < _readings.Count; k++)
            {
                ReadOnlySpan<double> row = _white.AsSpan(k * N, N);
                for (int i = 0; i < N; i++)
                    for (int j = 0; j <= i; j++) a[i * N + j] += row[i] * row[j];
            }
            return a;
        }

        internal double[] Downhill()
        {
            var g = new double[N];
            for (int i = 0; i < N; i++) g[i] = -Z[i];
            for (int k = 0; k < _readings.Count; k++)
                for (int i = 0; i < N; i++) g[i] += _distance[k] * _white[k * N + i];
            return g;
        }

        private void Read(int step, BenchTangents path)
        {
            for (int k = 0; k < _readings.Count; k++)
            {
                BenchReading r = _readings[k];
                if (r.Step != step) continue;
                Predicted[k] = Misfit.Predicted(r, path);
                Span<double> row = ByAxis.AsSpan(k * N, N);
                switch (r.Kind)
                {
                    case ReadingKind.LnConductivity:
                        continue;
                    case ReadingKind.Temperature:
                        row[PlanDraw.CelsiusAxis] = PlanDraw.CelsiusSd;
                        break;
                    default:
                        path.PhByAxis.CopyTo(row);
                        row[Axis.StripBias] = r.Kind == ReadingKind.Strip ? path.Case.StripBiasSd : 0;
                        row[Axis.MeterBias] = r.Kind == ReadingKind.Meter ? ReadingNoise.MeterBiasSd : 0;
                        row[Axis.ModelOffset] = path.Case.ModelOffsetSd;
                        break;
                }
            }
        }

        /// <summary>Distances and slopes, made independent.</summary>
        private void Weigh()
        {
            int n = _readings.Count;
            ReadingWave wave = _log.Wave;
            for (int k = 0; k < n; k++) _distance[k] = _readings[k].Value - Predicted[k];
            wave.Whiten(_distance);
            Span<double> column = stackalloc double[n];
            for (int a = 0; a < N; a++)
            {
                for (int k = 0; k < n; k++) column[k] = ByAxis[k * N + a];
                wave.Whiten(column);
                for (int k = 0; k < n; k++) _white[k * N + a] = column[k];
            }
            Total = Misfit.Half(Z) + Misfit.Half(_distance);
            for (int k = 0; k < n; k++)
                if (_readings[k].Kind == ReadingKind.LnConductivity) _distance[k] = 0;
            Fit = Misfit.Half(Z) + Misfit.Half(_distance);
        }
    }
}
