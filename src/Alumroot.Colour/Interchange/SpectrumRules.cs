using System.Globalization;
using System.Text.RegularExpressions;
using Alumroot.Colour.Colorimetry;

namespace Alumroot.Colour.Interchange;

/// <summary>What every format asks of the spectra it holds. The limits are ours.</summary>
internal static partial class SpectrumRules
{
    /// <summary>The colour of what has no value below 400 or above 700 nm cannot be told.</summary>
    private const double NeedFromNanometres = 400, NeedToNanometres = 700;

    private const double WidestGapNanometres = 20, Slack = 0.5;

    /// <summary>Instruments read a little below nothing on black; what lies lower is a mistake.</summary>
    private const double Least = -0.005;

    /// <summary>Fluorescent papers exceed 1; nothing of a studio exceeds this.</summary>
    private const double Most = 1.6;

    /// <summary>A base line may lie a little wrong; no instrument tells absorbances above ten.</summary>
    private const double LeastAbsorbance = -1, MostAbsorbance = 10;

    /// <summary>Values are percent when more than this share of a table exceeds what the 0 to 1 scale can hold.</summary>
    private const double PercentShare = 0.1;

    [GeneratedRegex(@"^(?:SPECTRAL_?(?:NM)?_?|SPEC_?|R_?|NM_?)?(?<nm>\d{3,4}(?:[.,]\d+)?)[\s_]*(?:NM)?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex WavelengthHead();

    /// <summary>The wavelength that a column's head names, or null.</summary>
    internal static double? WavelengthNanometres(string head)
    {
        Match match = WavelengthHead().Match(head.Trim());
        return match.Success ? double.Parse(match.Groups["nm"].Value.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture) : null;
    }

    /// <summary>A finite number, or null.</summary>
    internal static double? Number(ReadOnlySpan<char> text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double x) && double.IsFinite(x) ? x : null;

    /// <summary>Asks that wavelengths rise, leave no wide gap between 400 and 700 nm, and cover that range.</summary>
    internal static void CheckWavelengths(IReadOnlyList<double> nanometres, int line)
    {
        for (int i = 1; i < nanometres.Count; i++)
        {
            if (nanometres[i] == nanometres[i - 1]) throw new FaultException(new(FaultKind.Duplicate, line) { Field = Text(nanometres[i]) });
            if (nanometres[i] < nanometres[i - 1]) throw new FaultException(new(FaultKind.WavelengthOrder, line) { Found = Text(nanometres[i]), Expected = Text(nanometres[i - 1]) });
        }
        if (nanometres.Count == 0 || nanometres[0] > NeedFromNanometres + Slack || nanometres[^1] < NeedToNanometres - Slack)
            throw new FaultException(new(FaultKind.NarrowRange, line) { Found = nanometres.Count == 0 ? "" : $"{Text(nanometres[0])}-{Text(nanometres[^1])}", Expected = $"{NeedFromNanometres}-{NeedToNanometres}" });
        for (int i = 1; i < nanometres.Count; i++)
            if (nanometres[i] - nanometres[i - 1] > WidestGapNanometres + Slack && nanometres[i] > NeedFromNanometres && nanometres[i - 1] < NeedToNanometres)
                throw new FaultException(new(FaultKind.Gap, line) { Found = $"{Text(nanometres[i - 1])}-{Text(nanometres[i])}", Expected = Text(WidestGapNanometres) });
    }

    /// <summary>Whether a value can be a reflectance or a transmittance.</summary>
    internal static bool CanBeShare(double value) => value is >= Least and <= Most;

    /// <summary>Whether the values of a table are percent, by their size.</summary>
    internal static bool LooksLikePercent(IEnumerable<double> values)
    {
        int all = 0, large = 0;
        foreach (double v in values)
        {
            all++;
            if (v > Most) large++;
        }
        return large > PercentShare * all;
    }

    /// <summary>Asks that a value can be true of its kind; the field is where it stands.</summary>
    internal static void CheckValue(SpectrumKind kind, double value, double written, int line, string sample, string field)
    {
        bool can = kind switch
        {
            SpectrumKind.Emission or SpectrumKind.Unstated => Math.Abs(value) < 1e12,
            SpectrumKind.Absorbance => value is >= LeastAbsorbance and <= MostAbsorbance,
            _ => CanBeShare(value),
        };
        if (!can) throw new FaultException(new(FaultKind.Impossible, line) { Sample = sample, Field = field, Found = Text(written) });
    }

    /// <summary>Asks that Lab can be a colour.</summary>
    internal static Lab Checked(Lab lab, int line, string sample) =>
        lab.L is >= -1 and <= 200 && Math.Abs(lab.A) <= 500 && Math.Abs(lab.B) <= 500 ? lab : throw new FaultException(new(FaultKind.Impossible, line) { Sample = sample, Field = "Lab", Found = $"{Text(lab.L)} {Text(lab.A)} {Text(lab.B)}" });

    /// <summary>Asks that tristimulus values can be those of a surface.</summary>
    internal static Xyz Checked(Xyz xyz, int line, string sample) =>
        Math.Min(xyz.X, Math.Min(xyz.Y, xyz.Z)) >= -1 && Math.Max(xyz.X, Math.Max(xyz.Y, xyz.Z)) <= 1000 ? xyz : throw new FaultException(new(FaultKind.Impossible, line) { Sample = sample, Field = "XYZ", Found = $"{Text(xyz.X)} {Text(xyz.Y)} {Text(xyz.Z)}" });

    internal static string Text(double x) => x.ToString("g10", CultureInfo.InvariantCulture);
}
