using System.Globalization;
using Alumroot.App.Requests;
using Alumroot.Numerics;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Trials.Analysis;
using Alumroot.Trials.Learning;
using Microsoft.AspNetCore.WebUtilities;

namespace Alumroot.App.Trials;

/// <summary>A trial of the record as the analysis takes it.</summary>
public static class KeptTrial
{
    /// <summary>Settings and readings; null when no jar was read.</summary>
    public static TrialTable? Table(TrialState trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        if (trial.Begun is not { } begun || !trial.Jars.Any(j => j.IsRead)) return null;
        FactorColumn[] factors = [.. begun.Factors.Select((f, i) => Column(f, [.. trial.Jars.Select(j => f.Settings[j.Jar.Levels[i]])]))];
        string[] blocks = [.. trial.Jars.Select(j => j.Jar.Block.ToString(CultureInfo.InvariantCulture))];
        var responses = new List<Response>();
        if (trial.Jars.Any(j => j.Colour is not null))
            foreach ((string name, Func<LabText, double> of) in ((string, Func<LabText, double>)[])[("L", c => c.LabL), ("a", c => c.LabA), ("b", c => c.LabB)])
                responses.Add(new Response(name, [.. trial.Jars.Select(j => j.Colour?.Colour is { } lab ? of(lab) : double.NaN)]));
        foreach (string name in trial.ResultNames)
            if (trial.Jars.Any(j => j.Results.ContainsKey(name)))
                responses.Add(new Response(ResultText.Column(name), [.. trial.Jars.Select(j => j.Results.TryGetValue(name, out TrialResult? r) ? ResultText.Number(r.Value) : double.NaN)]));
        TrialTable.AddPolar(responses);
        return responses.Count == 0 ? null : new TrialTable(new TrialData(factors, blocks.Distinct().Count() > 1 ? blocks : null), responses);
    }

    /// <summary>One standard deviation of reading each response, from what was told of its doubt; 0 where nothing was.</summary>
    /// <remarks>A doubt holds nine times in ten, so it is 1.645 standard deviations of a normal spread. A colour's doubt is shared by its three axes alike; our choice, no source.</remarks>
    public static Func<string, double> ReadingSd(TrialState trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        return column =>
        {
            double[] within = column is "L" or "a" or "b"
                ? [.. trial.Jars.Select(j => j.Colour?.WithinDeltaE2000).OfType<double>().Select(w => w / Math.Sqrt(3))]
                : [.. trial.Jars.SelectMany(j => j.Results).Where(r => ResultText.Column(r.Key) == column).Select(r => ResultText.Within(r.Value)).OfType<double>()];
            return within.Length == 0 ? 0 : Math.Sqrt(within.Average(w => w * w)) / Distributions.NormalHalfWidth90;
        };
    }

    /// <summary>The plan of a proposed jar: the plan of the row with its settings in the fields of their names; null when the row had no plan.</summary>
    public static PlanRequest? PlanOf(TrialBegun begun, RecipeProposal proposal)
    {
        ArgumentNullException.ThrowIfNull(begun);
        ArgumentNullException.ThrowIfNull(proposal);
        int at = begun.DesignAddress.IndexOf('?', StringComparison.Ordinal);
        if (at < 0 || !QueryHelpers.ParseQuery(begun.DesignAddress[at..]).TryGetValue(DesignRequest.PlanField, out var typed) || PlanRequest.FromAddress(typed.ToString()) is not { } plan) return null;
        foreach (RecipeSetting setting in proposal.Settings)
            if (PlanFields.All.Contains(setting.Factor) && begun.Factors.FirstOrDefault(f => f.Name == setting.Factor) is { } factor) plan = plan.With(setting.Factor, factor.Unit.Length > 0 ? $"{setting.Name} {factor.Unit}" : setting.Name);
        return plan;
    }

    private static FactorColumn Column(TrialFactor factor, string[] settings)
    {
        double[] numbers = [.. settings.Select(s => double.TryParse(s, NumberStyles.Float, CultureInfo.InvariantCulture, out double x) && double.IsFinite(x) ? x : double.NaN)];
        return new FactorColumn(factor.Name, factor.Measured && numbers.All(double.IsFinite) ? numbers : null, settings);
    }
}
