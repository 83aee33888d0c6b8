using System.Globalization;
using Alumroot.App.Requests;
using Alumroot.Quantities;

namespace Alumroot.App.Words;

/// <summary>The air of a room in words.</summary>
public static class AirWords
{
    private const double ActPercent = 10, StopPercent = 25;

    /// <summary>What to do, from the air near the vessel and the mean of the room. The thresholds of a tenth and a quarter of the lower explosive limit are common practice, no source.</summary>
    public static string Verdict(AirAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        double percent = answer.NearPercentOfExplosive.High;
        double? times = answer.Solvent.EightHourPpm is { } limit ? answer.StandingPpm.High / limit : null;
        return percent >= StopPercent ? "Do not do this in this room. The air near the vessel can come within reach of burning: take it outdoors, or close the vessel and use less."
            : percent >= ActPercent ? "Close the vessel or air the room widely first. Near the vessel the air can pass a tenth of what burns."
            : times >= 1 ? "Not for hours without a draught: the room can pass the workplace limit for a day. A lid, a smaller opening or a shorter time helps."
            : "Below a tenth of what burns and below the workplace limit, if nothing is spilt.";
    }

    /// <summary>When it can be lit, what a spill would do, and a remark.</summary>
    public static string Mind(AirAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        string lit = answer.Solvent.FlashPointCelsius < 25 ? "It can be lit at room temperature." : $"It can be lit from {CatalogueWords.Number(answer.Solvent.FlashPointCelsius!.Value)} °C up.";
        string spilt = answer.Spilt.PercentOfExplosive(answer.Solvent.LowerExplosivePercent!.Value) >= ActPercent ? " Spilt, all of it would pass a tenth of what burns in the whole room." : "";
        return $"{Verdict(answer)} {lit}{spilt} {CatalogueWords.AsSentence(answer.Solvent.Note)}".TrimEnd();
    }

    /// <summary>"2060 ppm, 6.2 % of the lower explosive limit, 2.1 times the workplace limit of a day".</summary>
    public static string Share(double ppm, AirAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        string limit = answer.Solvent.EightHourPpm is { } day ? $", {Two(ppm / day)} times the workplace limit of a day ({Two(day)} ppm)" : "";
        return $"{Two(ppm)} ppm, {Two(ppm / (100 * answer.Solvent.LowerExplosivePercent!.Value))} % of the lower explosive limit{limit}";
    }

    /// <summary>A span in parts per million: "40 to 380".</summary>
    public static string Span(Estimate ppm) => $"{Two(ppm.Low)} to {Two(ppm.High)}";

    /// <summary>Two significant digits: these figures are no better.</summary>
    public static string Two(double value)
    {
        if (value == 0) return "0";
        double step = Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) - 1);
        double rounded = Math.Round(value / step) * step;
        return rounded.ToString(step >= 1 ? "0" : step >= 0.1 ? "0.0" : step >= 0.01 ? "0.00" : "0.000", CultureInfo.InvariantCulture);
    }
}
