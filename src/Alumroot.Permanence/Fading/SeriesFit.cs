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

    // What strips side by side usually differ by in rate, before these are seen; judgement.
    private const double UsualRate = 0.12;

    private SeriesFit(FadingSeries series, IReadOnlyList<(CurveFit Fit, double Weight)> fits) => (Series, Fits) = (series, fits);

    internal FadingSeries Series { get; }

    /// <summary>The fits with their weights, the heaviest first.</summary>
    internal IReadOnlyList<(CurveFit Fit, double Weight)> Fits { get; }

    /// <summary>The form with the most weight over its variants; null when nothing could be fitted.</summary>
    internal FadingFormKind? Best => Fits.Count == 0 ? null : Fits.GroupBy(f => f.Fit.Kind).MaxBy(g => g.Sum(f => f.Weight))!.Key;

    /// <summary>Fits series that were exposed together: each alone at first, then all again with the scatter that they share.</summary>
    internal static IReadOnlyList<SeriesFit> Of(IReadOnlyList<FadingSeries> together)
    {
        SeriesFit[] alone = [.. together.AsParallel().AsOrdered().Select(s => Of(s, null))];
        SharedScatter shared = Shared(alone);
        return [.. together.AsParallel().AsOrdered().Select(s => Of(s, shared))];
    }

    private static SeriesFit Of(FadingSeries series, SharedScatter? shared)
    {
        var fitter = new CurveFitter(series, shared);
        var fits = new List<(CurveFit Fit, double Criterion)>();
        foreach (FadingFormKind kind in FadingForm.All)
        {
            int n = FadingForm.Count(kind);
            if ((n >= 3 && fitter.Count < LeastForThree) || (n >= 4 && fitter.Count < LeastForFour)) continue;
            // A reference is known to fade by first order or near it; its own few readings need not choose among all forms.
            if (series.Reference is not null && kind is not (FadingFormKind.FirstOrder or FadingFormKind.Power or FadingFormKind.Weibull or FadingFormKind.ZeroOrder)) continue;
            // What all share needs no form with four parameters.
            if (shared is null && n > 3) continue;
            foreach (bool lifted in shared is null && fitter.Count >= LeastForThree ? (bool[])[false, true] : [false])
                if (fitter.Fit(kind, lifted) is { } fit)
                    fits.Add((fit, Criterion(fit, fitter.Count)));
        }
        if (fits.Count == 0) return new SeriesFit(series, []);
        double least = fits.Min(f => f.Criterion);
        (CurveFit Fit, double Weight)[] weighed = [.. fits.Select(f => (f.Fit, Weight: Math.Exp(-0.5 * (f.Criterion - least)) * Prior(f.Fit.Kind, series.Reference is not null)))];
        double sum = weighed.Sum(f => f.Weight);
        return new SeriesFit(series, [.. weighed.Select(f => (f.Fit, f.Weight / sum)).Where(f => f.Item2 > 1e-4 || shared is null).OrderByDescending(f => f.Item2)]);
    }

    /// <summary>Rate and lift that suit all series best. Readings that fall below nothing are no lengths and have no lift.</summary>
    private static SharedScatter Shared(SeriesFit[] alone)
    {
        bool signed = alone.Any(f => f.Series.Strips.Any(s => s.Points.Any(p => p.DeltaE < 0)));
        double[] profile = [.. CurveFitter.Rates.Select(r => -0.5 * (r / UsualRate) * (r / UsualRate))];
        double plain = 0, withLift = 0, weight = 0, lift = 0;
        foreach (SeriesFit f in alone)
        {
            if (f.Fits.Count == 0) continue;
            var fitter = new CurveFitter(f.Series, null);
            (CurveFit Fit, double Weight)[] lifted = [.. f.Fits.Where(x => x.Fit.Lift > 0)], bare = [.. f.Fits.Where(x => x.Fit.Lift == 0)];
            CurveFit best = signed && bare.Length > 0 ? bare[0].Fit : f.Fits[0].Fit;
            double[] own = fitter.RateProfile(best);
            for (int i = 0; i < profile.Length; i++) profile[i] += own[i];
            if (lifted.Length == 0 || bare.Length == 0) continue;
            plain += Criterion(bare[0].Fit, fitter.Count);
            withLift += Criterion(lifted[0].Fit, fitter.Count);
            int n = lifted[0].Fit.Parameters;
            double w = 1 / Math.Max(0.01, lifted[0].Fit.Covariance[n * n - 1]);
            weight += w;
            lift += w * lifted[0].Fit.Lift * lifted[0].Fit.Lift;
        }
        double rate = CurveFitter.Rates[Array.IndexOf(profile, profile.Max())];
        return new SharedScatter(rate, signed || weight == 0 || plain <= withLift ? 0 : Math.Sqrt(lift / weight));
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
            if (found.LogDose <= Math.Log(most)) reached += w;
        }
        if (weight < 1e-6) return new DoseFound(double.PositiveInfinity, 0, 0);
        mean /= weight;
        return new DoseFound(mean, Math.Sqrt(Math.Max(0, square / weight - mean * mean)), reached);
    }

    /// <summary>The true difference after a dose, by all forms together.</summary>
    internal double At(double dose) => Fits.Sum(f => f.Weight * f.Fit.At(dose));

    /// <summary>Standard deviation of the true difference after a dose: of each form, and of the forms among themselves.</summary>
    internal double DeviationAt(double dose)
    {
        double mean = At(dose), square = 0;
        foreach ((CurveFit fit, double weight) in Fits)
        {
            double off = fit.At(dose) - mean;
            square += weight * (fit.VarianceAt(dose) + off * off);
        }
        return Math.Sqrt(square);
    }

    private static double Criterion(CurveFit fit, int count)
    {
        int k = fit.Parameters + 1;
        double correction = count > k + 1 ? 2.0 * k * (k + 1) / (count - k - 1) : 2.0 * k * (k + 1);
        return -2 * fit.LogLikelihood + 2 * k + correction;
    }

    // Blue wool references fade by first order nearly (ISO 105-B08 prescribes dyes that do so in the range used; the CIE 157 table follows it).
    private static double Prior(FadingFormKind kind, bool reference) => reference && kind == FadingFormKind.FirstOrder ? 6 : 1;
}
