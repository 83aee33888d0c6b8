using System.Globalization;
using Alumroot.Quantities;

namespace Alumroot.App.Words;

/// <summary>Amounts of a paint as a small scale shows them: three digits, no more than hundredths.</summary>
public static class PaintFigures
{
    /// <summary>One number: "12.3".</summary>
    public static string Of(double x) => x >= 100 ? x.ToString("0", CultureInfo.InvariantCulture) : x >= 10 ? x.ToString("0.0", CultureInfo.InvariantCulture) : x.ToString("0.00", CultureInfo.InvariantCulture);

    /// <summary>The span, rounded outward: "11.8 to 13.0"; null when there is none.</summary>
    public static string? Span(Estimate e)
    {
        if (e.High - e.Low < 1e-9 * Math.Abs(e.Value)) return null;
        double step = e.Value >= 100 ? 1 : e.Value >= 10 ? 0.1 : 0.01;
        return $"{Of(Math.Max(0, Math.Floor(e.Low / step + 1e-9) * step))} to {Of(Math.Ceiling(e.High / step - 1e-9) * step)}";
    }

    /// <summary>A share in percent: "42 %".</summary>
    public static string Percent(double fraction) => (100 * fraction).ToString("0", CultureInfo.InvariantCulture);

    /// <summary>The span of a share in percent.</summary>
    public static string? PercentSpan(Estimate e) => e.High - e.Low < 1e-9 ? null : string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(100 * e.Low):0} to {Math.Ceiling(100 * e.High):0}");
}
