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
    private const double LongestStep = 2.5, Enough = 0.02;

    private MapFit(BenchCase c, Look look, double[] lower)
    {
        (Case, Z, Predicted, ByAxis, Lower) = (c, look.Z, look.Predicted, look.ByAxis, lower);
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

    /// <summary>L of the curvature L L'.</summary>
    internal double[] Lower { get; }

    /// <summary>Half of ln of the curvature's determinant.</summary>
    internal double LogDeterminant { get; }

    /// <summary>ln of prior times likelihood of all readings, by Laplace; the constant of the readings' own widths is left out, which is the same for all cases.</summary>
    internal double LogEvidence { get; }

    /// <summary>Finds it.</summary>
    /// <param name="c">The case.</param>
    /// <param name="from">Where to start.</param>
    /// <param name="most">Most looks at the bath.</param>
    /// <param name="floor">Gives up when ln of the evidence cannot rise above this any more by the look of the fit.</param>
    /// <returns>Null when the bath could not be solved even at the start.</returns>
    internal static MapFit? Find(BenchCase c, double[] from, int most = 12, double floor = double.NegativeInfinity)
    {
        Look? best = Look.At(c, from);
        if (best is null) return null;
        double damping = 0;
        for (int look = 1; look < most && c.Log.Readings.Count > 0; look++)
        {
            double[] curvature = best.Curvature();
            for (int i = 0; i < N; i++) curvature[i * N + i] *= 1 + damping;
            if (!DenseCholesky.Factor(curvature, N)) return null;
            double[] step = best.Downhill();
            DenseCholesky.SolveLower(curvature, step, N);
            DenseCholesky.SolveUpper(curvature, step, N);
            double length = Math.Sqrt(step.Sum(s => s * s));
            if (length < Enough) break;
            double factor = Math.Min(1, LongestStep / length);
            double[] z = new double[N];
            for (int i = 0; i < N; i++) z[i] = Math.Clamp(best.Z[i] + factor * step[i], -5, 5);
            if (Look.At(c, z) is { } next && next.Fit < best.Fit)
            {
                double gain = best.Fit - next.Fit;
                best = next;
                damping = damping < 0.05 ? 0 : damping / 5;
                if (gain < 1e-3) break;
                if (look >= 4 && Math.Log(c.Prior) - best.Fit + 4 * gain < floor) break;
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

    /// <summary>The bath seen from one point.</summary>
    private sealed class Look
    {
        private readonly IReadOnlyList<BenchReading> _readings;

        private Look(BenchCase c, double[] z)
        {
            _readings = c.Log.Readings;
            Z = z;
            Predicted = new double[_readings.Count];
            ByAxis = new double[_readings.Count * N];
        }

        internal double[] Z { get; }

        internal double[] Predicted { get; }

        internal double[] ByAxis { get; }

        /// <summary>What the fit makes small.</summary>
        internal double Fit { get; private set; }

        /// <summary>The same with the conductivities.</summary>
        internal double Total { get; private set; }

        internal static Look? At(BenchCase c, double[] z)
        {
            var look = new Look(c, z);
            if (look._readings.Count == 0)
            {
                look.Fit = look.Total = Misfit.OfPrior(z);
                return look;
            }
            var path = new BenchTangents(c, z);
            if (!path.FollowLog(step => look.Read(step, path))) return null;
            look.Fit += Misfit.OfPrior(z);
            look.Total += look.Fit;
            return double.IsFinite(look.Total) ? look : null;
        }

        internal double[] Curvature()
        {
            var a = new double[N * N];
            for (int i = 0; i < N; i++) a[i * N + i] = 1;
            for (int k = 0; k < _readings.Count; k++)
            {
                double weight = 1 / (_readings[k].Sd * _readings[k].Sd);
                ReadOnlySpan<double> row = ByAxis.AsSpan(k * N, N);
                for (int i = 0; i < N; i++)
                    for (int j = 0; j <= i; j++) a[i * N + j] += weight * row[i] * row[j];
            }
            return a;
        }

        internal double[] Downhill()
        {
            var g = new double[N];
            for (int i = 0; i < N; i++) g[i] = -Z[i];
            for (int k = 0; k < _readings.Count; k++)
            {
                if (_readings[k].Kind == ReadingKind.LnConductivity) continue;
                double pull = (_readings[k].Value - Predicted[k]) / (_readings[k].Sd * _readings[k].Sd);
                for (int i = 0; i < N; i++) g[i] += pull * ByAxis[k * N + i];
            }
            return g;
        }

        private void Read(int step, BenchTangents path)
        {
            for (int k = 0; k < _readings.Count; k++)
            {
                BenchReading r = _readings[k];
                if (r.Step != step) continue;
                Predicted[k] = Misfit.Predicted(r, path);
                double misfit = Misfit.OfReading(r, Predicted[k]);
                Span<double> row = ByAxis.AsSpan(k * N, N);
                switch (r.Kind)
                {
                    case ReadingKind.LnConductivity:
                        Total += misfit;
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
                Fit += misfit;
            }
        }
    }
}
