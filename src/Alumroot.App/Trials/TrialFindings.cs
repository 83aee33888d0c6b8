using Alumroot.Trials.Analysis;
using Alumroot.Trials.Learning;

namespace Alumroot.App.Trials;

/// <summary>What a table of jars tells: effects, and the next jar when an aim was typed. One way for pasted tables and kept trials.</summary>
/// <param name="Table">What was set and measured.</param>
/// <param name="Effects">Effects on each response that two jars or more have.</param>
/// <param name="Aims">What is aimed at.</param>
/// <param name="Next">The next jar; null without an aim, or with too few jars.</param>
/// <param name="Trouble">What is wrong with the aim, or why there is no next jar.</param>
public sealed record TrialFindings(TrialTable Table, IReadOnlyList<ResponseFound> Effects, IReadOnlyList<TrialAim> Aims, NextFound? Next, string? Trouble)
{
    private const int LeastJars = 2;

    /// <summary>What is wrong with an aim, in the words of a page.</summary>
    public static string OnAPage(string wrong)
    {
        ArgumentNullException.ThrowIfNull(wrong);
        return wrong.Replace("--aim ", "", StringComparison.Ordinal).Replace("The file has", "There are", StringComparison.Ordinal).Replace("the file does not have", "is not there", StringComparison.Ordinal);
    }

    /// <summary>Works it out.</summary>
    /// <param name="table">The jars.</param>
    /// <param name="typedAims">Aims as typed, with semicolons between; null or blank for none.</param>
    /// <param name="products">Whether products of two factors are looked for.</param>
    /// <param name="readingSd">One standard deviation of reading a response, by name; null when none is known.</param>
    public static TrialFindings Of(TrialTable table, string? typedAims, bool products, Func<string, double>? readingSd = null)
    {
        ArgumentNullException.ThrowIfNull(table);
        ResponseFound[] effects = [.. table.Responses.Where(r => r.Values.Count(double.IsFinite) >= LeastJars).Select(r => EffectAnalysis.Of(table.Data, r, products))];
        var aims = new List<TrialAim>();
        string? trouble = null;
        foreach (string typed in (typedAims ?? "").Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            (TrialAim? aim, string? wrong) = TrialAim.Read(typed, table);
            if (aim is not null) aims.Add(aim);
            else trouble ??= OnAPage(wrong!);
        }
        if (trouble is not null || aims.Count == 0) return new TrialFindings(table, effects, aims, null, trouble);
        (IReadOnlyList<Response> responses, IReadOnlyList<Func<double[], double>> losses) = TrialAim.Together(aims, table);
        NextFound? next = NextTrial.Propose(table.Data, responses, losses, readingSd is null ? null : [.. responses.Select(r => readingSd(r.Name))]);
        return new TrialFindings(table, effects, aims, next, next is null ? $"{NextTrial.LeastRows} jars with everything that the aim needs are the least for a next one." : null);
    }
}
