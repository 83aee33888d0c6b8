using System.Globalization;
using Alumroot.App.Output;
using Alumroot.App.Words;
using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Matching;
using Alumroot.Quantities;
using Alumroot.Studio.Exchange;

namespace Alumroot.App.Verbs.Match;

/// <summary>The answers of <c>match</c>.</summary>
internal static class MatchOutput
{
    private static readonly string[] Heads = ["mixture", "de00", "pigment", "percent", "percent_low", "percent_high", "l", "a", "b", "srgb_hex", "name", "within_de00"];

    internal static void WriteJson(Lab aim, IReadOnlyList<MixtureFound> found, Xyz white, TextWriter to) => to.WriteLine(Json.Text(new
    {
        AimLab = Numbers(aim),
        Mixtures = found.Select(m => new
        {
            De00 = R(m.WorstDeltaE2000),
            Lab = Numbers(m.Labs[0]),
            WithinDe00 = m.WithinDeltaE2000 is { } within ? R(within) : (double?)null,
            SrgbHex = Screen(m.Labs[0], white).Hex,
            Screen(m.Labs[0], white).InGamut,
            Name = NameOf(m.Labs[0], white),
            Parts = m.Parts.Select(p => new { Pigment = p.Key, Percent = Percent(p.Fraction) }),
        }),
    }));

    internal static void WriteCsv(IReadOnlyList<MixtureFound> found, Xyz white, TextWriter to)
    {
        to.Write(Csv.Line([.. Heads]));
        for (int i = 0; i < found.Count; i++)
            foreach (MixturePart p in found[i].Parts)
            {
                Lab lab = found[i].Labs[0];
                to.Write(Csv.Line([i + 1, R(found[i].WorstDeltaE2000), p.Key, R(100 * p.Fraction.Value), R(100 * p.Fraction.Low), R(100 * p.Fraction.High), R(lab.L), R(lab.A), R(lab.B), Screen(lab, white).Hex, NameOf(lab, white), found[i].WithinDeltaE2000 is { } within ? R(within) : null]));
            }
    }

    internal static void WriteText(Lab aim, IReadOnlyList<MixtureFound> found, Xyz white, bool spansTold, TextWriter to)
    {
        to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Aim  L* {aim.L:0.0}  a* {aim.A:0.0}  b* {aim.B:0.0}  {NameOf(aim, white)}"));
        for (int i = 0; i < found.Count; i++)
        {
            Lab lab = found[i].Labs[0];
            to.WriteLine();
            to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{i + 1}.  {found[i].WorstDeltaE2000:0.0} off ({ColourWords.Of(aim, ColourDifference.Between(aim, lab))})"));
            to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"    L* {lab.L:0.0}  a* {lab.A:0.0}  b* {lab.B:0.0}  {NameOf(lab, white)}{(found[i].WithinDeltaE2000 is { } within ? string.Create(CultureInfo.InvariantCulture, $", nine times in ten within {within:0.0}") : "")}"));
            int width = found[i].Parts.Max(p => p.Key.Length);
            foreach (MixturePart p in found[i].Parts)
                to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"    {p.Key.PadRight(width)}  {100 * p.Fraction.Value,5:0.0} %  ({100 * p.Fraction.Low:0.0} to {100 * p.Fraction.High:0.0})"));
        }
        to.WriteLine();
        if (!spansTold) to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"The file tells no spans (k_low, k_high, s_low, s_high, as 'alumroot film' writes them); K and S are taken as known to {100 * BandPigments.UntoldHalfWidthShare:0} %, our judgement."));
        to.WriteLine("Shares of dry pigment by the amount that the drawdowns had alike; the span is what the aim and the pigments leave open. Mix a little, let it dry, and measure: wet paint is darker.");
    }

    private static Estimate Percent(Estimate share) => new(R(100 * share.Value), R(100 * share.Low), R(100 * share.High));

    private static double[] Numbers(Lab lab) => [R(lab.L), R(lab.A), R(lab.B)];

    private static Srgb Screen(Lab lab, Xyz white) => Srgb.From(lab.ToXyz(white), white);

    private static string NameOf(Lab lab, Xyz white) => ColourNames.Nearest(lab.ToXyz(white), white).Colour.Name;

    private static double R(double x) => Math.Round(x, 4) + 0.0;
}
