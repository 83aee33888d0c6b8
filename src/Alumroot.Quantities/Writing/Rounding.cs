using System.Globalization;

namespace Alumroot.Quantities.Writing;

/// <summary>Rounds numbers to steps of a scale in decimal arithmetic, so that 18.4 stays 18.4.</summary>
internal static class Rounding
{
    /// <summary>Beyond this, numbers are written in full by the runtime; decimal arithmetic could overflow.</summary>
    private const double Largest = 1e15;

    /// <summary>The power of ten that leaves so many significant digits: 0.1 for 19.7 and three digits.</summary>
    public static double SensibleStep(double value, int digits)
    {
        if (value == 0 || !double.IsFinite(value)) return 1;
        // The exponent after rounding, so that 99.96 with three digits is 100 and not 100.0.
        string rounded = value.ToString("E" + (digits - 1), CultureInfo.InvariantCulture);
        int exponent = int.Parse(rounded.AsSpan(rounded.IndexOf('E', StringComparison.Ordinal) + 1), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture) - digits + 1;
        return Math.Pow(10, Math.Min(0, Math.Max(-9, exponent)));
    }

    /// <summary>The number to the nearest step, halves away from zero.</summary>
    public static string Nearest(double value, double step) => Write(value, step, x => Math.Round(x, MidpointRounding.AwayFromZero));

    /// <summary>The number to the step at or below it.</summary>
    public static string Down(double value, double step) => Write(value, step, Math.Floor);

    /// <summary>The number to the step at or above it.</summary>
    public static string Up(double value, double step) => Write(value, step, Math.Ceiling);

    private static string Write(double value, double step, Func<decimal, decimal> round)
    {
        if (!double.IsFinite(value) || Math.Abs(value) > Largest) return value.ToString("R", CultureInfo.InvariantCulture);
        decimal exactStep = (decimal)step;
        decimal rounded = round((decimal)value / exactStep) * exactStep;
        return rounded.ToString("F" + Decimals(exactStep), CultureInfo.InvariantCulture);
    }

    private static int Decimals(decimal step)
    {
        int decimals = 0;
        while (step != decimal.Truncate(step) && decimals < 12)
        {
            step *= 10;
            decimals++;
        }
        return decimals;
    }
}
