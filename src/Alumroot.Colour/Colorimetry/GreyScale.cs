namespace Alumroot.Colour.Colorimetry;

/// <summary>The grey scale for change in colour, reckoned from two colours (ISO 105-A05, from memory): 5 is no change, 1 a great one.</summary>
public static class GreyScale
{
    private const double BlueDegrees = 280, BlueWidthDegrees = 30, HalfTurn = 180, Turn = 360;
    private const double StepUnits = 1.7, Bend = 3.4, Base = 0.85;

    // Lower limits of the ranges for the grades 4-5, 4, 3-4, 3, 2-3, 2, 1-2 and 1; from memory.
    private static readonly double[] Limits = [0.4, 1.25, 2.1, 2.95, 4.1, 5.8, 8.2, 11.6];

    /// <summary>The standard's own difference: like CIELAB's, with chroma and hue shortened for strong colours and turned in the blues.</summary>
    /// <param name="before">The half that was covered.</param>
    /// <param name="after">The half that was in the light.</param>
    public static double Difference(Lab before, Lab after)
    {
        double chroma = 0.5 * (before.Chroma + after.Chroma), hue = MeanHueDegrees(before, after), toBlue = Math.Abs(hue - BlueDegrees);
        double x = Math.Pow((toBlue <= HalfTurn ? toBlue : Turn - toBlue) / BlueWidthDegrees, 2);
        double dL = after.L - before.L, dC = after.Chroma - before.Chroma, dA = after.A - before.A, dB = after.B - before.B;
        double dH = Math.Sqrt(Math.Max(0, dA * dA + dB * dB - dC * dC));
        double turned = dC * chroma * Math.Exp(-x) / 100;
        double f = chroma / 1000, dHf = (dH - turned) / (1 + 100 * f * f), dCf = (dC - turned) / (1 + 400 * f * f);
        return Math.Sqrt(dL * dL + dCf * dCf + dHf * dHf);
    }

    /// <summary>The grade as a number between grades: 4 at a difference of 1.7, 3 at 3.4, 2 at 6.8, 1 at 13.6; never below 1.</summary>
    /// <param name="before">The half that was covered.</param>
    /// <param name="after">The half that was in the light.</param>
    public static double Grade(Lab before, Lab after)
    {
        double d = Difference(before, after);
        return Math.Max(1, d <= Bend ? 5 - d / StepUnits : 5 - Math.Log2(d / Base));
    }

    /// <summary>The grade as the standard reports it: "5", "4-5", "4" and so on to "1".</summary>
    /// <param name="before">The half that was covered.</param>
    /// <param name="after">The half that was in the light.</param>
    public static string Reported(Lab before, Lab after)
    {
        double d = Difference(before, after);
        int halves = Limits.Count(limit => d >= limit), whole = 5 - halves / 2;
        return halves % 2 == 0 ? $"{whole}" : $"{whole - 1}-{whole}";
    }

    private static double MeanHueDegrees(Lab a, Lab b)
    {
        double mean = 0.5 * (a.HueDegrees + b.HueDegrees);
        return Math.Abs(a.HueDegrees - b.HueDegrees) <= HalfTurn ? mean : mean < HalfTurn ? mean + HalfTurn : mean - HalfTurn;
    }
}
