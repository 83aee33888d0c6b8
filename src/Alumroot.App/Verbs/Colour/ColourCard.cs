using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Interchange;

namespace Alumroot.App.Verbs.Colour;

/// <summary>One sample's colour under one condition, with the names of the contract.</summary>
internal sealed record ColourCard(
    string Sample, double X, double Y, double Z, double L, double A, double B, double C, double H, string SrgbHex, bool InGamut, string Name, double NameDe00, string From, string File)
{
    private const int Digits = 6;

    /// <summary>The heads of the table, in order.</summary>
    internal static IReadOnlyList<string> Heads { get; } = ["sample", "x", "y", "z", "l", "a", "b", "c", "h", "srgb_hex", "in_gamut", "name", "name_de00", "from", "file"];

    internal Lab Lab => new(L, A, B);

    internal IReadOnlyList<object?> Cells => [Sample, X, Y, Z, L, A, B, C, H, SrgbHex, InGamut ? "true" : "false", Name, NameDe00, From, File];

    /// <summary>The colour of a sample, or null for a lamp.</summary>
    internal static ColourCard? Of(ColourSample sample, string file, ViewingCondition seen)
    {
        Xyz white = SpectralWeights.For(seen, Neutral).White, colour;
        string from;
        if (sample.Shares is { } shares)
        {
            SpectralWeights weights = SpectralWeights.For(seen, shares);
            white = weights.White;
            colour = weights.Of(shares.ValueSpan);
            from = sample.Kind is SpectrumKind.Absorbance or SpectrumKind.Transmittance ? "light let through" : "spectrum";
        }
        else if (sample.Lab is { } lab) (colour, from) = (lab.ToXyz(white), "Lab as stated");
        else if (sample.Xyz is { } xyz) (colour, from) = (xyz, "XYZ as stated");
        else return null;
        Lab found = Lab.From(colour, white);
        Srgb screen = Srgb.From(colour, white);
        (NamedColour named, double far) = ColourNames.Nearest(colour, white);
        return new ColourCard(sample.Id, R(colour.X), R(colour.Y), R(colour.Z), R(found.L), R(found.A), R(found.B), R(found.Chroma), R(found.HueDegrees), screen.Hex, screen.InGamut, named.Name, Math.Round(far, 2), from, file);
    }

    private static Spectrum Neutral { get; } = Spectrum.Regular(380, 5, Enumerable.Repeat(1.0, 81));

    private static double R(double x) => Math.Round(x, Digits) + 0.0;
}
