namespace Alumroot.Permanence.Fading;

/// <summary>The published forms of fading against dose.</summary>
public enum FadingFormKind
{
    /// <summary>A (1 - exp(-k H)): one colourant that each quantum finds alike (Johnston-Feller and others 1984).</summary>
    FirstOrder,

    /// <summary>b H up to A: a glaze that takes in all the light (Whitmore and Bailie 1997, limit).</summary>
    ZeroOrder,

    /// <summary>A1 (1 - exp(-k1 H)) + A2 (1 - exp(-k2 H)): two populations.</summary>
    TwoPopulations,

    /// <summary>A (1 - exp(-k1 H)) + k2 H (Ha 1964).</summary>
    FirstOrderAndLine,

    /// <summary>a H^n.</summary>
    Power,

    /// <summary>A (1 - exp(-(H/tau)^m)): with an induction when m is above 1.</summary>
    Weibull,

    /// <summary>The lightness of an opaque tint whose K/S falls by first order.</summary>
    Tint,

    /// <summary>The lightness of a glaze over white, of which the rate follows the light taken in (Whitmore and Bailie 1997).</summary>
    Glaze,
}

/// <summary>A form with its parameters as logarithms, so that none falls below nothing.</summary>
internal static class FadingForm
{
    internal static IReadOnlyList<FadingFormKind> All { get; } = Enum.GetValues<FadingFormKind>();

    /// <summary>How many parameters a form has.</summary>
    internal static int Count(FadingFormKind kind) => kind switch
    {
        FadingFormKind.FirstOrder or FadingFormKind.ZeroOrder or FadingFormKind.Power => 2,
        FadingFormKind.TwoPopulations => 4,
        _ => 3,
    };

    /// <summary>Difference in colour after a dose.</summary>
    internal static double Value(FadingFormKind kind, ReadOnlySpan<double> log, double dose)
    {
        if (dose <= 0) return 0;
        double a = Exp(log[0]), b = Exp(log[1]);
        switch (kind)
        {
            case FadingFormKind.FirstOrder:
                return a * OneMinusExp(b * dose);
            case FadingFormKind.ZeroOrder:
                return SoftLeast(a * dose, b);
            case FadingFormKind.Power:
                return a * Math.Pow(dose, b);
            case FadingFormKind.FirstOrderAndLine:
                return a * OneMinusExp(b * dose) + Exp(log[2]) * dose;
            case FadingFormKind.Weibull:
                return a * OneMinusExp(Math.Pow(dose / b, Exp(log[2])));
            case FadingFormKind.TwoPopulations:
                return a * OneMinusExp(b * dose) + Exp(log[2]) * OneMinusExp(Exp(log[3]) * dose);
            case FadingFormKind.Tint:
                {
                    // log[0]: K/S that goes, log[1]: rate, log[2]: K/S that stays.
                    double stays = Exp(log[2]);
                    return Math.Abs(Lightness(Opaque(stays + a * Math.Exp(-b * dose))) - Lightness(Opaque(stays + a)));
                }

            default:
                {
                    // log[0]: absorbance at first, log[1]: rate; the ground is white paper or chalk. log[2] scales for what lightness does not hold.
                    const double Ground = 0.85;
                    double start = Math.Min(a, 12), left = Math.Log10(1 + (Math.Pow(10, start) - 1) * Math.Pow(10, -Math.Min(b * dose, 300)));
                    return Exp(log[2]) * Math.Abs(Lightness(Ground * Math.Pow(10, -2 * left)) - Lightness(Ground * Math.Pow(10, -2 * start)));
                }
        }
    }

    /// <summary>Places to begin the search from, given what the readings reach.</summary>
    internal static IEnumerable<double[]> Starts(FadingFormKind kind, double mostDose, double mostChange)
    {
        double top = Math.Max(mostChange, 0.3), h = mostDose;
        double L(double x) => Math.Log(x);
        switch (kind)
        {
            case FadingFormKind.FirstOrder:
                foreach (double reach in (double[])[1.1, 2, 8]) yield return [L(top * reach), L(-Math.Log(1 - Math.Min(0.95, 1 / reach)) / h)];
                break;
            case FadingFormKind.ZeroOrder:
                foreach (double reach in (double[])[1, 3]) yield return [L(top * reach / h), L(top)];
                break;
            case FadingFormKind.Power:
                foreach (double n in (double[])[0.5, 0.9]) yield return [L(top / Math.Pow(h, n)), L(n)];
                break;
            case FadingFormKind.FirstOrderAndLine:
                foreach (double fast in (double[])[0.3, 0.7]) yield return [L(fast * top), L(8 / h), L((1 - fast) * top / h)];
                break;
            case FadingFormKind.Weibull:
                foreach (double m in (double[])[0.8, 1.5, 2.2]) yield return [L(1.1 * top), L(0.5 * h), L(m)];
                break;
            case FadingFormKind.TwoPopulations:
                foreach (double fast in (double[])[0.3, 0.7]) yield return [L(fast * top), L(10 / h), L(2 * (1 - fast) * top), L(0.7 / h)];
                break;
            case FadingFormKind.Tint:
                foreach (double start in (double[])[0.4, 1.5]) yield return [L(start), L(Math.Min(2, top / 12 / start) / h), L(0.015)];
                break;
            default:
                foreach (double start in (double[])[0.4, 1]) yield return [L(start), L(top / 40 / h), L(1)];
                break;
        }
    }

    private static double Exp(double log) => Math.Exp(Math.Clamp(log, -40, 40));

    private static double OneMinusExp(double x) => -Math.Exp(-Math.Min(x, 700)) + 1 is var plain && x > 1e-4 ? plain : x * (1 - x / 2);

    // The lesser of two with a rounded corner, so that the search feels both.
    private static double SoftLeast(double x, double most) => x < 0.9 * most ? x : x > 1.1 * most ? most : most * (0.9 + 0.1 * (1 - Math.Pow(1 - (x / most - 0.9) / 0.2, 2)));

    private static double Opaque(double absorption) => 1 + absorption - Math.Sqrt(absorption * absorption + 2 * absorption);

    // CIE 1976 L* of a luminance factor (ISO/CIE 11664-4).
    private static double Lightness(double y) => y > 216.0 / 24389 ? 116 * Math.Cbrt(y) - 16 : 24389.0 / 27 * y;
}
