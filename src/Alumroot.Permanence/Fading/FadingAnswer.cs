using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Permanence.Fading;

/// <summary>What the readings say about one criterion.</summary>
/// <param name="DeltaE">The difference that counts: 1.7 is grey scale 4, just noticeable; 3.4 is grey scale 3 (ISO 105-A02).</param>
/// <param name="DoseMegaluxHours">Dose to it; null when it was not reached and cannot be told.</param>
/// <param name="Reached">Whether it was reached within the exposure.</param>
/// <param name="Class">Blue wool class by the references exposed beside it; null when there are none or they do not enclose it.</param>
/// <param name="Bound">On which side it lies then.</param>
public sealed record CriterionFound(double DeltaE, Estimate? DoseMegaluxHours, bool Reached, Estimate? Class, ClassBound? Bound);

/// <summary>What the readings of one sample say.</summary>
/// <param name="Series">Its name.</param>
/// <param name="Model">The form with the most weight; null when too few readings were there.</param>
/// <param name="ModelWeight">Its weight among all forms.</param>
/// <param name="Criteria">The answers for 1.7 and 3.4.</param>
public sealed record SampleFound(string Series, FadingFormKind? Model, double ModelWeight, IReadOnlyList<CriterionFound> Criteria)
{
    /// <summary>How many readings after some light.</summary>
    public required int ReadingCount { get; init; }

    /// <summary>How many strips.</summary>
    public required int StripCount { get; init; }

    /// <summary>The most light it has had.</summary>
    public required double MostDoseMegaluxHours { get; init; }

    /// <summary>The category by ASTM D4303, as an indication; null when too few readings were there.</summary>
    public required FadingCategory? Category { get; init; }

    /// <summary>The curve: dose and difference, for drawing.</summary>
    public required IReadOnlyList<FadingPoint> Curve { get; init; }

    /// <summary>Half width of nine in ten about each point of the curve.</summary>
    public required IReadOnlyList<double> CurveHalfWidths { get; init; }
}

/// <summary>Fits a set of series exposed together.</summary>
public static class FadingAnalysis
{
    /// <summary>The two differences that count: grey scale 4 and 3 (ISO 105-A02).</summary>
    public static IReadOnlyList<double> Criteria { get; } = [1.7, 3.4];

    private const int CurvePoints = 40;
    private const double Half = 0.5;

    /// <summary>The answers for every series that is no reference, in the order given.</summary>
    public static IReadOnlyList<SampleFound> Analyse(IReadOnlyList<FadingSeries> series)
    {
        ArgumentNullException.ThrowIfNull(series);
        IReadOnlyList<SeriesFit> fits = SeriesFit.Of(series);
        SeriesFit[] references = [.. fits.Where(f => f.Series.Reference is not null).OrderBy(f => f.Series.Reference)];
        return [.. fits.Where(f => f.Series.Reference is null).Select(f => Told(f, references))];
    }

    private static SampleFound Told(SeriesFit fit, SeriesFit[] references)
    {
        double most = fit.Series.MostDoseMegaluxHours;
        return new SampleFound(fit.Series.Name, fit.Best, fit.Fits.Where(f => f.Fit.Kind == fit.Best).Sum(f => f.Weight), [.. Criteria.Select(c => Told(fit, references, c))])
        {
            ReadingCount = fit.Series.ExposedCount,
            StripCount = fit.Series.Strips.Count,
            MostDoseMegaluxHours = most,
            Category = fit.Fits.Count == 0 || most <= 0 ? null : FadingCategory.Of(fit.At, most),
            Curve = fit.Fits.Count == 0 || most <= 0 ? [] : [.. Doses(most).Select(d => new FadingPoint(d, fit.At(d)))],
            CurveHalfWidths = fit.Fits.Count == 0 || most <= 0 ? [] : [.. Doses(most).Select(d => WoolScale.Widening * Distributions.NormalHalfWidth90 * fit.DeviationAt(d))],
        };
    }

    private static IEnumerable<double> Doses(double most) => Enumerable.Range(0, CurvePoints + 1).Select(i => most * i / CurvePoints);

    private static CriterionFound Told(SeriesFit fit, SeriesFit[] references, double deltaE)
    {
        // Too few readings for any form: not even the side is known.
        if (fit.DoseTo(deltaE) is not { } dose) return new CriterionFound(deltaE, null, false, null, null);
        if (dose.ReachedShare < Half) return new CriterionFound(deltaE, null, false, null, ClassBound.Above);
        (Estimate? found, ClassBound? bound) = WoolScale.Of(dose, [.. references.Select(r => (r.Series.Reference!.Value, r.DoseTo(deltaE))).Where(r => r.Item2 is not null).Select(r => (r.Value, r.Item2!.Value))]);
        double half = WoolScale.Widening * Distributions.NormalHalfWidth90 * dose.Deviation;
        return new CriterionFound(deltaE, new Estimate(Math.Exp(dose.LogDose), Math.Exp(dose.LogDose - half), Math.Exp(dose.LogDose + half)), true, found, bound);
    }
}
