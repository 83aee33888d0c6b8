using System.Globalization;
using Alumroot.App.Output;
using Alumroot.App.Words;
using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Photograph;
using Alumroot.Studio.Exchange;

namespace Alumroot.App.Photographs;

/// <summary>The answers of <c>measure</c>.</summary>
internal static class MeasureOutput
{
    private static readonly string[] Heads = ["id", "l", "a", "b", "interval_de00", "name", "srgb_hex", "in_gamut", "clipped"];

    internal static void WriteJson(Measured measured, TextWriter to) => to.WriteLine(Json.Text(new
    {
        Swatches = measured.Answer.Colours.Select(c => new
        {
            c.Id,
            LabD50 = new[] { R(c.Colour.L), R(c.Colour.A), R(c.Colour.B) },
            IntervalDe00 = c.IntervalDeltaE2000 is { } interval ? R(interval) : (double?)null,
            Name = NameOf(c.Colour),
            SrgbHex = Screen(c.Colour).Hex,
            Screen(c.Colour).InGamut,
            Clipped = c.IsClipped,
            LeftOutPercent = R(100 * c.LeftOutShare),
        }),
        measured.Answer.Unread,
        Correction = PhotoWords.Of(measured.Answer.Kind, measured.Answer.ToneStraightened),
        TargetDe00LooMean = R(measured.Answer.LeftOutMeanDeltaE2000),
        TargetDe00LooMax = R(measured.Answer.LeftOutMostDeltaE2000),
        TargetPatchesClipped = measured.Answer.PatchesClipped,
        LightUnevenPercent = R(measured.Answer.LightUnevenPercent),
        TargetCornersPx = measured.Target?.Corners.Select(p => new[] { Math.Round(p.X, 2), Math.Round(p.Y, 2) }),
        Notes = PhotoWords.Notes(measured.Answer),
    }));

    internal static void WriteCsv(Measured measured, TextWriter to)
    {
        to.Write(Csv.Line([.. Heads]));
        foreach (PhotoColour c in measured.Answer.Colours)
            to.Write(Csv.Line([c.Id, R(c.Colour.L), R(c.Colour.A), R(c.Colour.B), R(c.IntervalDeltaE2000), NameOf(c.Colour), Screen(c.Colour).Hex, Screen(c.Colour).InGamut ? "true" : "false", c.IsClipped ? "true" : "false"]));
    }

    internal static void WriteText(Measured measured, TextWriter to)
    {
        int width = measured.Answer.Colours.Max(c => c.Id.Length);
        foreach (PhotoColour c in measured.Answer.Colours)
            to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{c.Id.PadRight(width)}  L* {c.Colour.L,5:0.0}  a* {c.Colour.A,6:0.0}  b* {c.Colour.B,6:0.0}  {(c.IntervalDeltaE2000 is { } i ? $"within {i:0.0}" : "not bounded"),-11}  {NameOf(c.Colour)}"));
        to.WriteLine();
        if (measured.Answer.Colours.Any(c => c.IntervalDeltaE2000 is not null)) to.WriteLine("Seen in D50 by the observer of 2 degrees. Nine times in ten the truth is no farther off, in CIEDE2000, than 'within' says.");
        to.WriteLine($"Correction: {PhotoWords.Of(measured.Answer.Kind, measured.Answer.ToneStraightened)}.");
        if (measured.Target is not null)
            to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Each patch of the target told from the others: {measured.Answer.LeftOutMeanDeltaE2000:0.0} off in the mean, {measured.Answer.LeftOutMostDeltaE2000:0.0} at most."));
        if (measured.Answer.LightUnevenPercent is { } uneven) to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"The light differed by {uneven:0} % and was evened out by the surround."));
    }

    private static Srgb Screen(Lab lab) => Srgb.From(lab.ToXyz(ColourNames.White), ColourNames.White);

    private static string NameOf(Lab lab) => ColourNames.Nearest(lab).Colour.Name;

    private static double R(double x) => Math.Round(x, 4) + 0.0;

    private static double? R(double? x) => x is { } v ? R(v) : null;
}
