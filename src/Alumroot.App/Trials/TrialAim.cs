using Alumroot.App.Colours;
using Alumroot.Colour.Colorimetry;
using Alumroot.Trials.Analysis;

namespace Alumroot.App.Trials;

/// <summary>What a trial is to reach: a colour, or the most or least of something measured.</summary>
/// <param name="Typed">As typed.</param>
/// <param name="Responses">The names of the responses it needs.</param>
/// <param name="Loss">How far those responses are from it; small is good.</param>
/// <param name="IsColour">Whether the loss is a CIEDE2000 difference.</param>
/// <param name="Sign">For the most of something -1, so that the loss times it is the value itself; otherwise 1.</param>
public sealed record TrialAim(string Typed, IReadOnlyList<string> Responses, Func<double[], double> Loss, bool IsColour, int Sign)
{
    /// <summary>Reads "lab=52 38 21", "most=chroma", "least=de"; a sentence that says what is wrong instead.</summary>
    public static (TrialAim? Aim, string? Trouble) Read(string typed, TrialTable table)
    {
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(table);
        string[] parts = typed.Split('=', 2, StringSplitOptions.TrimEntries);
        if (parts is ["lab", var text])
        {
            if (LabReading.Of(text) is not { } aim) return (null, $"'--aim {typed}' is no colour. Write its Lab as three numbers, such as --aim \"lab=52 38 21\".");
            if (new[] { "L", "a", "b" }.FirstOrDefault(n => table.Find(n) is null) is { } lacking) return (null, $"'--aim {typed}' needs the column {lacking}, which the file does not have.");
            return (new TrialAim(typed, ["L", "a", "b"], v => Ciede2000.Of(new Lab(v[0], v[1], v[2]), aim).DeltaE, true, 1), null);
        }
        if (parts is not ["most" or "least", var name]) return (null, $"'--aim {typed}' is not understood. Write \"lab=52 38 21\", \"most=chroma\" or \"least=de\".");
        if ((table.Find(name) ?? table.WithUnit(name)) is not { } response) return (null, $"'--aim {typed}': {name} was not measured. The file has {string.Join(", ", table.Responses.Select(r => r.Name))}.");
        if (response.IsAngle) return (null, $"'--aim {typed}': a hue has no most or least. Aim at a colour with \"lab=52 38 21\".");
        int sign = parts[0] == "most" ? -1 : 1;
        // Chroma is not a straight thing: it is reckoned from a and b, which are.
        return response.Name == "chroma" && table.Find("a") is not null && table.Find("b") is not null
            ? (new TrialAim(typed, ["a", "b"], v => sign * Math.Sqrt(v[0] * v[0] + v[1] * v[1]), false, sign), null)
            : (new TrialAim(typed, [response.Name], v => sign * v[0], false, sign), null);
    }

    /// <summary>All responses that the aims need, and each aim's loss on a set of them in that order.</summary>
    public static (IReadOnlyList<Response> Responses, IReadOnlyList<Func<double[], double>> Losses) Together(IReadOnlyList<TrialAim> aims, TrialTable table)
    {
        ArgumentNullException.ThrowIfNull(aims);
        ArgumentNullException.ThrowIfNull(table);
        string[] names = [.. aims.SelectMany(a => a.Responses).Distinct(StringComparer.OrdinalIgnoreCase)];
        return ([.. names.Select(n => table.Find(n)!)], [.. aims.Select(aim =>
        {
            int[] at = [.. aim.Responses.Select(r => Array.IndexOf(names, r))];
            return (Func<double[], double>)(v => aim.Loss([.. at.Select(i => v[i])]));
        })]);
    }
}
