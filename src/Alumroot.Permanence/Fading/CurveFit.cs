using Alumroot.Numerics;

namespace Alumroot.Permanence.Fading;

/// <summary>One form fitted to one series.</summary>
/// <param name="Kind">The form.</param>
/// <param name="Logs">Its parameters, as logarithms.</param>
/// <param name="Lift">What noise adds to a difference near nothing: observed is the root of true and lift in squares.</param>
/// <param name="LogLikelihood">Of all readings, with the scatter that suits them best.</param>
/// <param name="Parameters">How many numbers were fitted to the mean.</param>
/// <param name="Covariance">Of the parameters and, when it was fitted, the lift.</param>
/// <param name="Scatter">The scatter that suits them best.</param>
internal sealed record CurveFit(FadingFormKind Kind, double[] Logs, double Lift, double LogLikelihood, int Parameters, double[] Covariance, StripScatter Scatter)
{
    private const double FarthestFactor = 200;

    /// <summary>The true difference after a dose.</summary>
    internal double At(double dose) => FadingForm.Value(Kind, Logs, dose);

    /// <summary>The dose that makes a difference, as a natural logarithm with its variance; null when the curve never gets there.</summary>
    internal (double LogDose, double Variance)? DoseTo(double deltaE, double mostDose)
    {
        double low = 1e-7 * mostDose, high = FarthestFactor * mostDose;
        if (At(high) < deltaE) return null;
        if (At(low) > deltaE) return (Math.Log(low), 1);
        for (int i = 0; i < 80; i++)
        {
            double middle = Math.Sqrt(low * high);
            if (At(middle) < deltaE) low = middle;
            else high = middle;
        }
        double dose = Math.Sqrt(low * high), slope = dose * (At(dose * 1.001) - At(dose / 1.001)) / (dose * (1.001 - 1 / 1.001));
        if (!(slope > 0)) return null;
        return (Math.Log(dose), VarianceAt(dose) / (slope * slope));
    }

    /// <summary>Variance of the true difference after a dose, from that of the parameters.</summary>
    internal double VarianceAt(double dose)
    {
        int n = (int)Math.Round(Math.Sqrt(Covariance.Length));
        Span<double> g = stackalloc double[n];
        double[] moved = [.. Logs];
        for (int k = 0; k < Logs.Length; k++)
        {
            const double Step = 1e-4;
            moved[k] = Logs[k] + Step;
            double up = FadingForm.Value(Kind, moved, dose);
            moved[k] = Logs[k] - Step;
            g[k] = (up - FadingForm.Value(Kind, moved, dose)) / (2 * Step);
            moved[k] = Logs[k];
        }
        double variance = 0;
        for (int i = 0; i < n; i++)
            for (int j = 0; j < n; j++) variance += g[i] * Covariance[i * n + j] * g[j];
        return Math.Max(variance, 0);
    }
}

/// <summary>How readings scatter about a curve.</summary>
/// <param name="Point">Standard deviation of one reading.</param>
/// <param name="Strip">Standard deviation that all readings of a strip share, from its first reading.</param>
/// <param name="Rate">Standard deviation of the logarithm of a strip's own rate.</param>
internal readonly record struct StripScatter(double Point, double Strip, double Rate);

/// <summary>What all series share that were exposed side by side and read by one hand.</summary>
/// <param name="Rate">Standard deviation of the logarithm of a strip's own rate.</param>
/// <param name="Lift">What noise adds to a difference near nothing.</param>
internal readonly record struct SharedScatter(double Rate, double Lift);
