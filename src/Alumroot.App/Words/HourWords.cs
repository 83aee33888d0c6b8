using System.Globalization;
using Alumroot.Quantities;

namespace Alumroot.App.Words;

/// <summary>Lengths of time with their spans.</summary>
public static class HourWords
{
    private const double DaysFromHours = 48;

    /// <summary>"9 h (6 to 15)", "3 days (2 to 5)", "20 min (10 to 40)"; an end that is not known is "no telling".</summary>
    public static string Of(Estimate hours)
    {
        (double perHour, string unit) = hours.Value switch
        {
            < 1.5 => (60.0, "min"),
            >= DaysFromHours => (1 / 24.0, "days"),
            _ => (1.0, "h"),
        };
        string low = Number(hours.Low * perHour), high = Number(hours.High * perHour);
        return low == high ? $"{Number(hours.Value * perHour)}\u00A0{unit}" : $"{Number(hours.Value * perHour)}\u00A0{unit} ({low} to {high})";
    }

    private static string Number(double value) => !double.IsFinite(value) ? "no telling" : value.ToString(value < 10 ? "0.#" : "0", CultureInfo.InvariantCulture);
}
