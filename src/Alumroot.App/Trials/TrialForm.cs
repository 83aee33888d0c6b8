using Alumroot.App.Studio;
using Alumroot.App.Verbs;
using Alumroot.Chemistry.Planning;
using Alumroot.Studio.Documents;
using Alumroot.Trials.Design;

namespace Alumroot.App.Trials;

/// <summary>A row of jars that is to be kept as a trial: what was typed, and what is wrong with it.</summary>
public sealed class TrialForm
{
    /// <summary>Names of the fields.</summary>
    public const string Title = "title", Results = "results", Again = "again", DesignAddress = "design";

    /// <summary>The most jars of a kept trial.</summary>
    public const int MostJars = 128;

    private const int LongestTitle = 80, LongestWords = 200;
    private readonly Dictionary<string, string> _troubles = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _typed = new(StringComparer.Ordinal);

    /// <summary>What is wrong, by field.</summary>
    public IReadOnlyDictionary<string, string> Troubles => _troubles;

    /// <summary>What stands in a field.</summary>
    public string? Typed(string field) => _typed.GetValueOrDefault(field);

    /// <summary>The trial; null when something is wrong.</summary>
    public TrialBegun? Document { get; private set; }

    /// <summary>Reads the form, or fills it for a row that was just laid out.</summary>
    /// <param name="request">The row; laid out.</param>
    /// <param name="typed">Text by field name; null or blank for nothing.</param>
    /// <param name="posted">Whether the maker sent it; otherwise usual words stand in it.</param>
    /// <param name="now">The time here.</param>
    public static TrialForm Read(DesignRequest request, Func<string, string?> typed, bool posted, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(typed);
        TrialDesign design = request.Design ?? throw new ArgumentException("A trial is kept from a row that was laid out.", nameof(request));
        var form = new TrialForm();
        foreach (string field in (string[])[Title, Results, Again])
            if (typed(field) is { } text && !string.IsNullOrWhiteSpace(text)) form._typed[field] = text.Trim()[..Math.Min(text.Trim().Length, LongestWords)];
        if (!posted && form._typed.Count == 0) (form._typed[Title], form._typed[Results]) = (string.Join(", ", design.Request.Factors.Select(f => f.Name)), design.Request.Factors.Any(f => f.Name == ResultText.Yield) ? "" : ResultText.Yield);
        form.ReadFields(request, design, now);
        return form;
    }

    private void ReadFields(DesignRequest request, TrialDesign design, DateTimeOffset now)
    {
        if (Typed(Title) is null) _troubles[Title] = "Name: nothing is typed. Write what you call the trial.";
        (IReadOnlyList<string> results, string? wrong) = ResultText.Names(Typed(Results), [.. design.Request.Factors.Select(f => f.Name)]);
        if (wrong is not null) _troubles[Results] = wrong;
        (DateTimeOffset? ready, wrong) = LookAgain.Read(Typed(Again), now);
        if (wrong is not null) _troubles[Again] = wrong;
        if (design.Jars.Count > MostJars) _troubles[Title] = $"A trial of {design.Jars.Count} jars is too large to keep; {MostJars} are the most. Lay out fewer, or keep the address.";
        if (_troubles.Count > 0) return;
        string title = Typed(Title)!;
        Document = new TrialBegun(title[..Math.Min(title.Length, LongestTitle)], request.Address, request.Seed, CommandLine.Version)
        {
            Factors = [.. design.Request.Factors.Select(Factor)],
            Jars = [.. design.Jars.Select((j, i) => new TrialJar(j.Order, j.Block, j.Levels) { Amounts = request.Plans is { } plans ? Amounts(plans[i]) : [] })],
            Results = results,
            ReadyAt = ready,
        };
    }

    private static TrialFactor Factor(Factor factor) =>
        new(factor.Name, factor is Factor.Measured m ? m.Unit : "", [.. Enumerable.Range(0, factor.LevelCount).Select(factor.Setting)], factor is Factor.Measured);

    private static IReadOnlyList<TrialAmount> Amounts(JarPlan plan)
    {
        if (plan.WhyNot is not null) return [];
        (double scale, string unit) = plan.AlkaliUnit == SubstanceUnit.Gram ? (1e-3, Measured.Kilogram) : (1e-6, Measured.CubicMetre);
        return [new TrialAmount("salt", Si(plan.SaltGrams * 1e-3), Si(plan.SaltGrams * 1e-3), Si(plan.SaltGrams * 1e-3), Measured.Kilogram), new TrialAmount("alkali", Si(plan.Alkali.Value * scale), Si(plan.Alkali.Low * scale), Si(plan.Alkali.High * scale), unit)];
    }

    private static double Si(double value) => Math.Round(value, 12);
}
