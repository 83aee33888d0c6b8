using Alumroot.Numerics;

namespace Alumroot.Permanence.Fading;

/// <summary>What the readings of a series say about the dose to a difference: a logarithm with its deviation, or that it was not reached.</summary>
/// <param name="LogDose">Natural logarithm of the dose in megalux hours.</param>
/// <param name="Deviation">Its standard deviation.</param>
/// <param name="ReachedShare">Weight of the forms that get there at all within the exposure; below a half it counts as not reached.</param>
internal readonly record struct DoseFound(double LogDose, double Deviation, double ReachedShare);

/// <summary>All forms fitted to a series and weighed by the corrected criterion of Akaike (Burnham and Anderson 2002, from memory), so that no single form has to be believed.</summary>
internal sealed class SeriesFit
{
    // With fewer readings only the forms with two parameters are tried.
    private const int LeastForThree = 6, LeastForFour = 10;

    // A lift of a difference near nothing is usual: readings are lengths. It is preferred unless some readings fall below nothing.
    private const double Extrapolated = 1.0;

    private SeriesFit(FadingSeries series, IReadOnlyList<(CurveFit Fit, double Weight)> fits) => (Series, Fits) = (series, fits);

    internal FadingSeries Series { get; }

    /// <summary>The fits with their weights, the heaviest first.</summary>
    internal IReadOnlyList<(CurveFit Fit, double Weight)> Fits { get; }

    /// <summary>The form with the most weight over its variants; null when nothing could be fitted.</summary>
    internal FadingFormKind? Best => Fits.Count == 0 ? null : Fits.GroupBy(f => f.Fit.Kind).MaxBy(g => g.Sum(f => f.Weight))!.Key;

    internal static SeriesFit Of(FadingSeries series)
    {
        var fitter = new CurveFitter(series);
        bool signed = series.Strips.Any(s => s.Points.Any(p => p.DeltaE < 0));
        var fits = new List<(CurveFit Fit, double Criterion)>();
        foreach (FadingFormKind kind in FadingForm.All)
        {
            int n = FadingForm.Count(kind);
            if ((n >= 3 && fitter.Count < LeastForThree) || (n >= 4 && fitter.Count < LeastForFour)) continue;
            // A reference is known to fade by first order or near it; its own few readings need not choose among all forms.
            if (series.Reference is not null && kind is not (FadingFormKind.FirstOrder or FadingFormKind.Power or FadingFormKind.Weibull or FadingFormKind.ZeroOrder)) continue;
            foreach (bool lifted in signed || fitter.Count < LeastForThree ? [false] : (bool[])[false, true])
                if (fitter.Fit(kind, lifted) is { } fit)
                    fits.Add((fit, Criterion(fit, fitter.Count)));
        }
        if (fits.Count == 0) return new SeriesFit(series, []);
        double least = fits.Min(f => f.Criterion);
        (CurveFit Fit, double Weight)[] weighed = [.. fits.Select(f => (f.Fit, Weight: Math.Exp(-0.5 * (f.Criterion - least)) * Prior(f.Fit.Kind, series.Reference is not null)))];
        double sum = weighed.Sum(f => f.Weight);
        return new SeriesFit(series, [.. weighed.Select(f => (f.Fit, f.Weight / sum)).Where(f => f.Item2 > 1e-4).OrderByDescending(f => f.Item2)]);
    }

    /// <summary>The dose to a difference by all forms together.</summary>
    internal DoseFound? DoseTo(double deltaE)
    {
        if (Fits.Count == 0) return null;
        double most = Series.MostDoseMegaluxHours, weight = 0, mean = 0, square = 0, reached = 0;
        foreach ((CurveFit fit, double w) in Fits)
        {
            if (fit.DoseTo(deltaE, most) is not { } found) continue;
            weight += w;
            mean += w * found.LogDose;
            square += w * (found.Variance + found.LogDose * found.LogDose);
            if (found.LogDose <= Math.Log(most * Extrapolated)) reached += w;
        }
        if (weight < 1e-6) return new DoseFound(double.PositiveInfinity, 0, 0);
        mean /= weight;
        return new DoseFound(mean, Math.Sqrt(Math.Max(0, square / weight - mean * mean)), reached);
    }

    /// <summary>The true difference after a dose, by all forms together.</summary>
    internal double At(double dose) => Fits.Sum(f => f.Weight * f.Fit.At(dose));

    private static double Criterion(CurveFit fit, int count)
    {
        int k = fit.Parameters + 1;
        double correction = count > k + 1 ? 2.0 * k * (k + 1) / (count - k - 1) : 2.0 * k * (k + 1);
        return -2 * fit.LogLikelihood + 2 * k + correction;
    }

    // Blue wool references fade by first order nearly (ISO 105-B08 prescribes dyes that do so in the range used; the CIE 157 table follows it).
    private static double Prior(FadingFormKind kind, bool reference) => reference && kind == FadingFormKind.FirstOrder ? 6 : 1;
}
