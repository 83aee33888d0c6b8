using System.Globalization;
using Alumroot.App.Colours;
using Alumroot.Colour.Film;
using Alumroot.Quantities;
using Alumroot.Studio.Documents;

namespace Alumroot.App.Words;

/// <summary>What coats over a black and a white card tell, as words.</summary>
public static class DrawdownWords
{
    /// <summary>"26-014 Madder, ground, 100 µm wet".</summary>
    public static string Name(KeptDrawdown drawn)
    {
        ArgumentNullException.ThrowIfNull(drawn);
        return $"{drawn.OverWhite.Subject} {drawn.OverWhite.Dyestuff}, {SwatchWords.Of(drawn.OverWhite.Read.State)}{(drawn.WetMicrometres is { } wet ? $", {Micrometres(wet)} µm wet" : "")}";
    }

    /// <summary>What a swatch lies on; empty when it was not told.</summary>
    public static string Lies(SwatchRead swatch)
    {
        ArgumentNullException.ThrowIfNull(swatch);
        string ground = swatch.Ground switch { SwatchGround.White => "on a white card", SwatchGround.Black => "on a black card", SwatchGround.Paper => "on paper", _ => "" };
        string wet = swatch.WetMicrometres is { } w ? $"{Micrometres(w)} µm wet" : "";
        return string.Join(", ", new[] { ground, wet }.Where(t => t.Length > 0));
    }

    /// <summary>How well the coat hides, and in which thickness it would.</summary>
    public static string Hiding(KeptDrawdown drawn)
    {
        ArgumentNullException.ThrowIfNull(drawn);
        if (drawn.Read is not { } read) return $"How it hides cannot be told yet: measure the bare {(drawn.Black is null ? "black" : "white")} card once, and write it beside a swatch on it.";
        var hiding = new ThreeBandHiding(read);
        string contrast = string.Create(CultureInfo.InvariantCulture, $"Over black it gives back {100 * hiding.ContrastRatio:0} % of what it gives back over white");
        if (hiding.ContrastRatio >= ThreeBandHiding.HidingRatio) return $"{contrast}: it hides in this coat.";
        if (hiding.TimesToHideSpan(drawn.WithinDeltaE2000) is not { } times)
            return $"{contrast}. In which thickness it hides cannot be told: {Why(read)}.";
        return drawn.WetMicrometres is { } wet
            ? $"{contrast}. It hides (98 %) from about {Round(wet * times.Value)} µm wet ({Round(wet * times.Low)} to {Round(wet * times.High)}), approximate."
            : string.Create(CultureInfo.InvariantCulture, $"{contrast}. It hides (98 %) from about {times.Value:0.0} such coats ({times.Low:0.0} to {times.High:0.0}), approximate; with its wet thickness told it would be micrometres.");
    }

    /// <summary>K X.</summary>
    internal static string Absorbs(FilmMeasurement band) => band.Found is FilmFound.Clear clear ? Span(clear.AbsorbedUnits) : band.Of(f => f.AbsorbedUnits) is { } k ? Span(k) : "not told";

    /// <summary>S X.</summary>
    internal static string Scatters(FilmMeasurement band) => band.Of(f => f.ScatteredUnits) is { } s ? Span(s) : band.Found is FilmFound.Clear ? "not seen" : "not told";

    /// <summary>K/S.</summary>
    internal static string Ratio(FilmMeasurement band) => band.Found is FilmFound.Hides hides ? Span(hides.AbsorptionRatio) : band.Of(f => f.AbsorbedUnits / f.ScatteredUnits) is { } ratio ? Span(ratio) : "not told";

    private static string Why(ColourDrawdown read) =>
        MatchReading.Measured(read).Select(m => m.Found).FirstOrDefault(f => f is not FilmFound.Known) is { } found ? FilmWords.Of(found) : "it scatters too little for any thickness to hide";

    private static string Span(Estimate e) => string.Create(CultureInfo.InvariantCulture, $"{e.Value:0.##} ({Math.Max(0, e.Low):0.##} to {e.High:0.##})");

    // Three bands do not tell more than two digits.
    private static string Round(double x)
    {
        double step = Math.Pow(10, Math.Floor(Math.Log10(Math.Max(x, 1))) - 1);
        return (Math.Round(x / step) * step).ToString("0.#", CultureInfo.InvariantCulture);
    }

    private static string Micrometres(double x) => x.ToString(x < 20 ? "0.#" : "0", CultureInfo.InvariantCulture);
}
