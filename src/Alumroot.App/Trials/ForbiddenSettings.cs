using Alumroot.Trials.Analysis;
using Alumroot.Trials.Learning;

namespace Alumroot.App.Trials;

/// <summary>Settings that must not come together, as typed: "salt=iron-sulfate, alkali=potash".</summary>
internal static class ForbiddenSettings
{
    /// <summary>Whether settings are allowed; null when nothing is forbidden. A sentence when something is not understood.</summary>
    public static (Func<IReadOnlyList<RecipeSetting>, bool>? Allowed, string? Trouble) Read(IReadOnlyList<string> typed, TrialData data)
    {
        var all = new List<(string Factor, string Setting)[]>();
        foreach (string one in typed)
        {
            (string Factor, string Setting)[] parts = [.. one.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(p => p.Split('=', 2, StringSplitOptions.TrimEntries)).Select(p => p.Length == 2 ? (p[0], p[1]) : (p[0], ""))];
            if (parts.Length == 0 || parts.FirstOrDefault(p => data.Factors.FirstOrDefault(f => f.Name == p.Factor) is not { IsMeasured: false } f || !f.Levels.Contains(p.Setting)) is { Factor: not null })
                return (null, $"'--not {one}' is not understood. Write settings of named factors as they stand in the file, such as \"salt=iron-sulfate, alkali=potash\".");
            all.Add(parts);
        }
        return (all.Count == 0 ? null : settings => !all.Exists(parts => parts.All(p => settings.Any(s => s.Factor == p.Factor && s.Name == p.Setting))), null);
    }
}
