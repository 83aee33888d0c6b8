using System.Globalization;
using Alumroot.Chemistry.Process;
using Alumroot.Studio.Documents;

namespace Alumroot.App.Bench;

/// <summary>A dilution row as typed: "1/2 0.62; 1/4 0.31", or with light instead of absorbance, "1/4 48:100".</summary>
public static class RowText
{
    private const int MostGlasses = 12;

    /// <summary>The glasses, or the sentence that says what is wrong.</summary>
    public static (IReadOnlyList<Measured> Values, string? Trouble) Read(string typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        string[] glasses = typed.Split([';', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (glasses.Length is 0 or > MostGlasses) return ([], $"Dilution row: {glasses.Length} glasses were typed; one to {MostGlasses} are read, parted by semicolons.");
        var values = new List<Measured>();
        for (int i = 0; i < glasses.Length; i++)
        {
            string[] words = glasses[i].Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
            if (words.Length != 2) return Wrong(glasses[i], "needs two numbers, the part of liquor and the absorbance, such as 1/4 0.31");
            if (Part(words[0]) is not { } part || part is <= 0 or > 1) return Wrong(glasses[i], $"'{words[0]}' is no part of liquor; write 1/4, 0.25 or 25%");
            if (Absorbance(words[1]) is not { } absorbance) return Wrong(glasses[i], $"'{words[1]}' is no absorbance; write 0.31, or the light through the glass and through water as 49:100");
            values.Add(new Measured(PlantWords.PartName + (i + 1), words[0], part, "1"));
            values.Add(new Measured(PlantWords.AbsorbanceName + (i + 1), words[1], Math.Round(absorbance, 6), "1"));
        }
        return (values, null);
    }

    private static (IReadOnlyList<Measured>, string) Wrong(string glass, string what) => ([], $"Dilution row: in '{glass}' {what}.");

    private static double? Part(string word) =>
        word.Split('/') is [var top, var bottom] ? Number(top) / (Number(bottom) is > 0 and var b ? b : null)
        : word.EndsWith('%') ? Number(word[..^1]) / 100
        : Number(word);

    private static double? Absorbance(string word) =>
        word.Split(':') is [var glass, var water] ? Number(glass) is { } g && Number(water) is { } w ? DilutionRow.AbsorbanceOf(g, w) : null
        : Number(word) is >= 0 and <= 6 and var a ? a : null;

    private static double? Number(string word) =>
        double.TryParse(word.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double x) && double.IsFinite(x) ? x : null;
}
