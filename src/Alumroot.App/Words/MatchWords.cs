using System.Globalization;
using Alumroot.App.Colours;
using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Matching;

namespace Alumroot.App.Words;

/// <summary>What is said of mixtures that were looked for.</summary>
internal static class MatchWords
{
    /// <summary>When there is nothing to mix.</summary>
    internal const string NoPigments = "No lake here has a colour read dry, ground or painted yet, and no drawdown was typed, so there is nothing to mix.";

    /// <summary>What the spans hold.</summary>
    internal const string Spans = "Each span holds nine times in ten what an aim known within 0.5 and the doubt of the pigments leave open, if these are the pigments: 200 seeded draws move every reading and every band and look for the parts anew. Tried on simulated pigments that were not used to set it, it held 91 parts in a hundred from drawdowns and 95 from single colours.";

    /// <summary>A white is no use beside drawdowns.</summary>
    internal const string WhiteNeedsDrawdown = "A white beside drawdowns needs its own drawdown: write it as one more line.";

    /// <summary>How far to trust it.</summary>
    internal static string Trust(MatchShelf shelf) => shelf.Drawn
        ? "Approximate: three bands from colours over black and white; a spectrum tells better. Each mixture below says how near it should come."
        : "Rough: each pigment is known by one colour only, and how much it scatters is a guess within a factor of two. Each mixture below says how near it should come; drawdowns over black and white tell several times better. Mix a little first.";

    /// <summary>How near a mixture should come: "0.4 off (a little lighter)".</summary>
    internal static string Off(Lab aim, MixtureFound mixture) =>
        string.Create(CultureInfo.InvariantCulture, $"reckoned {mixture.WorstDeltaE2000:0.0} off the aim, {ColourWords.Of(aim, ColourDifference.Between(aim, mixture.Labs[0]))}");

    /// <summary>When even the best is far.</summary>
    internal static string Far(double off) => string.Create(CultureInfo.InvariantCulture, $"Cannot reach: the best of these mixtures is {off:0.0} off. A stronger or purer pigment is missing.");

    /// <summary>When a line of the drawdowns cannot be read.</summary>
    internal static string BadLine(int line) => string.Create(CultureInfo.InvariantCulture, $"Drawdowns: line {line} could not be read. Write a name of its own, the Lab over black and the Lab over white with ; between, such as madder; 30 20 8; 47 34 15. At most {MatchReading.MostPigments} lines are read.");

    /// <summary>When a typed colour is none.</summary>
    internal static string NoLab(string field, string? typed) => typed is { Length: > 0 } ? $"{field}: '{typed}' is no Lab. Write three numbers, such as 46 23 13." : $"{field}: write its Lab as three numbers, such as 46 23 13.";

    /// <summary>Pigments that were left out.</summary>
    internal static string LeftOut(IEnumerable<string> names) => $"Left out, since the drawdown hides, is clear, or has a colour too strong for three bands: {string.Join(", ", names)}. A thinner drawdown tells more.";
}
