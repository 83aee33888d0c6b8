using Alumroot.App.Words;
using Alumroot.Colour.Colorimetry;

namespace Alumroot.App.Verbs.Colour;

/// <summary>How one sample differs from another, with its parts.</summary>
internal sealed record DifferenceCard(
    string First, string Second, double De00, double De76, double De94, double Dl, double Da, double Db, double Dc, double Dh,
    double LightnessPart, double ChromaPart, double HuePart, double RotationPart, string Words)
{
    private const int Digits = 6;

    internal static IReadOnlyList<string> Heads { get; } =
        ["first", "second", "de00", "de76", "de94", "dl", "da", "db", "dc", "dh", "lightness_part", "chroma_part", "hue_part", "rotation_part", "words"];

    internal IReadOnlyList<object?> Cells => [First, Second, De00, De76, De94, Dl, Da, Db, Dc, Dh, LightnessPart, ChromaPart, HuePart, RotationPart, Words];

    internal static DifferenceCard Between(ColourCard first, ColourCard second)
    {
        ColourDifference d = ColourDifference.Between(first.Lab, second.Lab);
        return new DifferenceCard(first.Sample, second.Sample, R(d.DeltaE2000), R(d.DeltaE76), R(d.DeltaE94), R(d.DeltaL), R(d.DeltaA), R(d.DeltaB), R(d.DeltaChroma), R(d.DeltaHue),
            R(d.LightnessPart), R(d.ChromaPart), R(d.HuePart), R(d.RotationPart), ColourWords.Of(first.Lab, d));
    }

    private static double R(double x) => Math.Round(x, Digits) + 0.0;
}
