using System.Globalization;
using System.Text.RegularExpressions;
using Alumroot.Trials.Design;

namespace Alumroot.App.Trials;

/// <summary>Factors as people type them, one a line: "salt: potash-alum, aluminium-sulfate", "temp: 20 to 60 C in 3".</summary>
public static partial class FactorLines
{
    private const int MostSteps = 12;

    /// <summary>The factors, or the sentence that says which line is not understood.</summary>
    public static (IReadOnlyList<Factor> Factors, string? Trouble) Read(string typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        var factors = new List<Factor>();
        string[] lines = typed.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (lines.Length > Designer.MostFactors) return ([], $"Factors: {lines.Length} lines were typed; {Designer.MostFactors} are the most.");
        foreach (string line in lines)
        {
            string[] parts = line.Split(':', 2, StringSplitOptions.TrimEntries);
            if (parts is not [{ Length: > 0 } name, { Length: > 0 } settings]) return ([], $"Factors: '{line}' has no colon. Write it like salt: potash-alum, aluminium-sulfate.");
            if (factors.Exists(f => f.Name == name)) return ([], $"Factors: '{name}' stands twice. Give each its own name.");
            if (Range().Match(settings) is { Success: true } range)
            {
                double low = Number(range.Groups[1].Value), high = Number(range.Groups[2].Value);
                int steps = range.Groups[4].Success ? int.Parse(range.Groups[4].Value, CultureInfo.InvariantCulture) : 2;
                if (!(high > low)) return ([], $"Factors: in '{line}' the smaller number stands first.");
                if (steps is < 2 or > MostSteps) return ([], $"Factors: in '{line}' the number of settings is 2 to {MostSteps}.");
                factors.Add(new Factor.Measured(name, [.. Enumerable.Range(0, steps).Select(i => Math.Round(low + (high - low) * i / (steps - 1), 10))], range.Groups[3].Value));
                continue;
            }
            string[] levels = settings.Split([',', ';'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
            if (levels.Length < 2 || levels.Distinct(StringComparer.Ordinal).Count() < levels.Length) return ([], $"Factors: '{line}' needs two or more different settings, parted by commas, or a range such as 20 to 60 C.");
            factors.Add(new Factor.Named(name, levels));
        }
        return (factors, null);
    }

    private static double Number(string typed) => double.Parse(typed.Replace(',', '.'), CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\A(-?[0-9]{1,7}(?:[.,][0-9]{1,6})?)\s+to\s+(-?[0-9]{1,7}(?:[.,][0-9]{1,6})?)\s*(?!in\b)([^\s0-9]{0,12}?)\s*(?:in\s+([0-9]{1,2}))?\z", RegexOptions.IgnoreCase)]
    private static partial Regex Range();
}
