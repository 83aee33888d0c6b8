using System.Globalization;
using Alumroot.Trials.Analysis;
using Alumroot.Trials.Design;
using Alumroot.Trials.Learning;

namespace Alumroot.App.Words;

/// <summary>Trials in sentences.</summary>
public static class TrialWords
{
    private static readonly string[] Roman = ["", "I", "II", "III", "IV", "V", "VI", "VII", "VIII", "IX", "X", "XI", "XII"];

    /// <summary>Why there is no design, and what to do.</summary>
    public static string Of(DesignOutcome.Refused refused)
    {
        ArgumentNullException.ThrowIfNull(refused);
        return refused.Why switch
        {
            DesignRefusal.FactorCount => $"A trial has one to {refused.Needed} factors. Keep those that matter most, and hold the others still.",
            DesignRefusal.LevelCount => $"A factor has two to {refused.Needed} settings. Choose fewer, or split the trial.",
            DesignRefusal.TooManyJars => $"That is more than {refused.Needed} jars. Take fewer settings, or the kind \"fraction\" or \"best\" with a number of jars.",
            DesignRefusal.NeedsTwoLevels => "A fraction needs two settings for each factor. Choose the two farthest apart, or take the kind \"best\".",
            DesignRefusal.TooFewJars => $"So few jars cannot tell so many effects apart; {refused.Needed} is the least. Allow more jars, fewer factors, or set \"interactions\" to false.",
            DesignRefusal.NeedsSquare => "A Latin square has three factors with the same number of settings: rows, columns, and what is tried. Change the settings, or take the kind \"best\".",
            DesignRefusal.ForbiddenLeavesTooLittle => "What is forbidden leaves too little to tell the effects apart. Forbid less, or set \"interactions\" to false.",
            DesignRefusal.ForbiddenNotHere => "A fraction and a Latin square cannot leave pairs out. Take the kind \"best\".",
            _ => $"The jars cannot be spread evenly over {refused.Needed} blocks so that the effects stay apart. Make as many replicates as blocks, or take 2, 4 or 8 blocks of a trial with two settings for each factor.",
        };
    }

    /// <summary>What a design can and cannot tell, a sentence each.</summary>
    public static IEnumerable<string> Of(TrialDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        IReadOnlyList<Factor> factors = design.Request.Factors;
        string Name(IReadOnlyList<int> of) => string.Join(" × ", of.Select(f => factors[f].Name));
        if (design.Resolution is { } r)
        {
            string what = r switch { 3 => "single factors are mixed up with products of two", 4 => "single factors stay apart from products of two, but products of two are mixed up with each other", _ => "single factors and products of two stay apart" };
            yield return $"Resolution {(r < Roman.Length ? Roman[r] : r.ToString(CultureInfo.InvariantCulture))}: {what}.";
        }
        foreach ((int factor, IReadOnlyList<int> by) in design.Generators) yield return $"{factors[factor].Name} is set by the product {Name(by)}.";
        foreach (IReadOnlyList<IReadOnlyList<int>> group in design.Aliases) yield return $"Cannot be told apart: {string.Join(" = ", group.Select(Name))}.";
        foreach (IReadOnlyList<int> hidden in design.HiddenByBlocks) yield return $"Hidden by the blocks: {Name(hidden)}.";
        if (design.EfficiencyRatio is { } e) yield return string.Create(CultureInfo.InvariantCulture, $"The effects are known {100 * e:0} % as well as in a balanced trial of as many jars (D-efficiency), which pairs left out and in-between settings may make impossible.");
        if (design.Request.Replicates == 1) yield return "No jar is made twice: make the first again at the end, so that the scatter between jars made alike is known.";
    }

    /// <summary>From where the scatter is known.</summary>
    public static string Of(ResponseFound found)
    {
        ArgumentNullException.ThrowIfNull(found);
        string from = found.From switch
        {
            ScatterFrom.Replicates => "from jars made alike",
            ScatterFrom.Rest => "from what the effects leave over",
            ScatterFrom.SmallEffects => "from the small effects themselves, since hardly anything is left over (Lenth 1989)",
            _ => "not known: too few jars, so no span can be given. Make one jar twice",
        };
        return found.Scatter is { } s ? string.Create(CultureInfo.InvariantCulture, $"scatter between jars {Figure(s)} {from}") : from;
    }

    /// <summary>An effect as a plain reading.</summary>
    public static string Of(Effect effect)
    {
        ArgumentNullException.ThrowIfNull(effect);
        string name = string.Join(" × ", effect.Factors);
        string what = effect.IsBend ? $"{name}, middle above ends"
            : effect.Setting is { } setting ? $"{name} {setting}, from the mean"
            : effect.Ends is var (from, to) ? $"{name} {from} to {to}"
            : name;
        return what;
    }

    /// <summary>"sure" or "cannot tell".</summary>
    public static string Of(Verdict verdict) => verdict == Verdict.Sure ? "sure" : "cannot tell";

    /// <summary>Why a recipe is worth a jar, or a batch.</summary>
    public static string Because(NextFound found, string thing = "jar")
    {
        ArgumentNullException.ThrowIfNull(found);
        string where = string.Join(" and ", found.Where.Select(s => $"{s.Factor} {s.Name}"));
        return found.Because switch
        {
            WorthBecause.ExpectedNearer => $"because it is expected to come nearer than any {thing} so far",
            WorthBecause.NeverTogether => $"because {where} were never put together",
            WorthBecause.LittleKnown => where.Length > 0 ? $"because little is known near {where}, and it may come nearer" : "because little is known there, and it may come nearer",
            _ => "because nothing better is in sight: make the best one again and see how well it repeats",
        };
    }

    /// <summary>A name as a part of an id on a page: letters, digits and dashes.</summary>
    public static string Id(string name) => string.Concat((name ?? "").Select(c => char.IsAsciiLetterOrDigit(c) ? char.ToLowerInvariant(c) : '-'));

    /// <summary>A value with its span, or that its span is not known.</summary>
    public static string Span(Quantities.Estimate value) => double.IsFinite(value.Low) ? $"{Figure(value.Value)} ({Figure(value.Low)} to {Figure(value.High)})" : $"{Figure(value.Value)} (span not known)";

    /// <summary>A number with three or four figures.</summary>
    public static string Figure(double value) => !double.IsFinite(value) ? "not known"
        : value == 0 ? "0" : (0.0 + Math.Round(value, Math.Clamp(3 - (int)Math.Ceiling(Math.Log10(Math.Abs(value))), 0, 6))).ToString("0.######", CultureInfo.InvariantCulture);
}
