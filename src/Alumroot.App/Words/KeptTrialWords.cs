using System.Globalization;
using Alumroot.App.Trials;
using Alumroot.Colour.Colorimetry;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Words;

/// <summary>Kept trials in words.</summary>
public static class KeptTrialWords
{
    /// <summary>How a trial stands: "8 jars, 3 read, begun 27 Nov 2026".</summary>
    public static string About(TrialState trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        if (trial.Begun is null) return "taken back";
        int read = trial.Jars.Count(j => j.IsRead);
        return $"{trial.Jars.Count} jars, {(read == 0 ? "none" : read == trial.Jars.Count ? "all" : read.ToString(CultureInfo.InvariantCulture))} read, begun {TimeWords.Day(trial.At)}{(trial.IsEnded ? ", ended" : "")}";
    }

    /// <summary>The settings of a jar: "salt potash-alum, to-ph 5.5, temp 20 C".</summary>
    public static string Settings(TrialBegun trial, TrialJar jar)
    {
        ArgumentNullException.ThrowIfNull(trial);
        ArgumentNullException.ThrowIfNull(jar);
        return string.Join(", ", trial.Factors.Select((_, i) => Setting(trial, jar, i)));
    }

    /// <summary>One setting of a jar: "temp 20 C".</summary>
    public static string Setting(TrialBegun trial, TrialJar jar, int factor)
    {
        ArgumentNullException.ThrowIfNull(trial);
        ArgumentNullException.ThrowIfNull(jar);
        TrialFactor of = trial.Factors[factor];
        return $"{of.Name} {of.Settings[jar.Levels[factor]]}{(of.Unit.Length > 0 ? " " + of.Unit : "")}";
    }

    /// <summary>A factor with its unit, for the head of a column.</summary>
    public static string Head(TrialFactor factor)
    {
        ArgumentNullException.ThrowIfNull(factor);
        return factor.Unit.Length > 0 ? $"{factor.Name}, {factor.Unit}" : factor.Name;
    }

    /// <summary>An amount with its span: "0.84 g (0.78 to 0.91)"; without one where it is exact.</summary>
    public static string Amount(TrialAmount amount)
    {
        ArgumentNullException.ThrowIfNull(amount);
        (double factor, string unit) = amount.SiUnit == Measured.Kilogram ? (1e3, "g") : (1e6, "mL");
        string value = $"{TrialWords.Figure(amount.SiValue * factor)}\u00A0{unit}";
        return amount.SiLow == amount.SiHigh ? value : $"{value} ({TrialWords.Figure(amount.SiLow * factor)} to {TrialWords.Figure(amount.SiHigh * factor)})";
    }

    /// <summary>What goes into a jar: "salt 2 g, alkali 0.84 g (0.78 to 0.91)"; empty when nothing was reckoned.</summary>
    public static string Amounts(TrialJar jar)
    {
        ArgumentNullException.ThrowIfNull(jar);
        return string.Join(", ", jar.Amounts.Select(a => $"{a.What} {Amount(a)}"));
    }

    /// <summary>What was read of a jar at once: "jar 3: yield 2.4 g, L* 52, a* 38, b* 21".</summary>
    public static string Read(TrialJarRead read)
    {
        ArgumentNullException.ThrowIfNull(read);
        IEnumerable<string> said = read.Results.Select(r => $"{r.Value.Name} {r.Value.Typed}");
        if (read.Colour is { } c) said = said.Append($"colour {SwatchWords.Numbers(new Lab(c.LabL, c.LabA, c.LabB))}, {SwatchWords.Within(read.WithinDeltaE2000)}");
        if (read.ReadyAt is { } ready) said = said.Append($"look again {TimeWords.Day(ready)}");
        string all = string.Join(", ", said);
        return all.Length > 0 ? $"jar {read.Jar}: {all}" : $"jar {read.Jar}";
    }

    /// <summary>What waits: "look at jars 3, 5 and write what you read".</summary>
    public static string Waits(TrialState trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        int[] jars = [.. trial.Jars.Where(j => j.ReadyAt is { } at && at == trial.ReadyAt).Select(j => j.Jar.Order)];
        return jars.Length == trial.Jars.Count ? "look at the jars and write what you read" : $"look at {(jars.Length == 1 ? "jar" : "jars")} {string.Join(", ", jars)} and write what you read";
    }

    /// <summary>What the head of a result says.</summary>
    public static string Result(string name) => ResultText.Label(name);
}
