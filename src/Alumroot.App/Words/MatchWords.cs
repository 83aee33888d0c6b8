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

    /// <summary>How far to trust it.</summary>
    internal static string Trust(MatchShelf shelf) => shelf.Drawn
        ? string.Create(CultureInfo.InvariantCulture, $"Approximate: three bands from colours over black and white. Nine mixtures in ten came out within {shelf.WithinDeltaE2000:0.0} in simulated films; a spectrum tells better.")
        : string.Create(CultureInfo.InvariantCulture, $"Rough: each lake is known by one colour only, and all are assumed to scatter alike. Nine mixtures in ten came out within {shelf.WithinDeltaE2000:0} in simulated films. Drawdowns over black and white tell three times better; mix a little first.");

    /// <summary>How near a mixture should come: "0.4 off (a little lighter)".</summary>
    internal static string Off(Lab aim, MixtureFound mixture) =>
        string.Create(CultureInfo.InvariantCulture, $"reckoned {mixture.WorstDeltaE2000:0.0} off the aim ({ColourWords.Of(aim, ColourDifference.Between(aim, mixture.Labs[0]))})");

    /// <summary>When even the best is far.</summary>
    internal static string Far(double off) => string.Create(CultureInfo.InvariantCulture, $"Cannot reach: the best of these mixtures is {off:0.0} off. A stronger or purer pigment is missing.");

    /// <summary>When a line of the drawdowns cannot be read.</summary>
    internal static string BadLine(int line) => string.Create(CultureInfo.InvariantCulture, $"Drawdowns: line {line} could not be read. Write a name of its own, the Lab over black and the Lab over white with ; between, such as madder; 30 20 8; 47 34 15. At most {MatchReading.MostPigments} lines are read.");

    /// <summary>When a typed colour is none.</summary>
    internal static string NoLab(string field, string? typed) => typed is { Length: > 0 } ? $"{field}: '{typed}' is no Lab. Write three numbers, such as 46 23 13." : $"{field}: write its Lab as three numbers, such as 46 23 13.";

    /// <summary>Pigments that were left out.</summary>
    internal static string LeftOut(IEnumerable<string> names) => $"Left out, since the drawdown hides, is clear, or has a colour too strong for three bands: {string.Join(", ", names)}. A thinner drawdown tells more.";
}
