using System.Globalization;
using Alumroot.App.Requests;
using Alumroot.Numerics;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Trials.Analysis;
using Alumroot.Trials.Learning;

namespace Alumroot.App.Trials;

/// <summary>A finished batch that cannot be learned from, and what it lacks.</summary>
/// <param name="Key">The batch.</param>
/// <param name="Lacks">What it lacks, in a few words.</param>
public sealed record BatchLeftOut(SubjectKey Key, string Lacks);

/// <summary>The studio's finished batches as a table to learn from.</summary>
/// <param name="Rows">Batches whose factors are all known, the earliest first.</param>
/// <param name="LeftOut">Batches that are finished and lack something.</param>
public sealed record BatchLearning(IReadOnlyList<BatchFacts> Rows, IReadOnlyList<BatchLeftOut> LeftOut)
{
    /// <summary>The least batches to learn from.</summary>
    public const int LeastRows = 5;

    /// <summary>Names of the factors.</summary>
    public const string Dyestuff = "dyestuff", Salt = "salt", SaltPerGram = "salt per g", Alkali = "alkali", FinalPh = "final pH", Temperature = "temp";

    /// <summary>The response that is pigment for each gram of dyestuff.</summary>
    public const string Yield = "yield";

    // A page must not read a whole studio; the latest tell best.
    private const int Latest = 300;

    private static readonly string[] Finished = [.. new[] { BatchStage.DryCake, BatchStage.Pigment, BatchStage.UsedUp }.Select(SubjectLine.Word)];

    /// <summary>The table; null when there are no rows.</summary>
    public TrialTable? Table { get; } = Rows.Count == 0 ? null : Read(Rows);

    /// <summary>The finished batches of a studio.</summary>
    public static BatchLearning Of(StudioStore store)
    {
        ArgumentNullException.ThrowIfNull(store);
        var rows = new List<BatchFacts>();
        var left = new List<BatchLeftOut>();
        foreach (SubjectLine line in store.List(null, Latest, SubjectClass.Batch, Finished))
        {
            BatchState batch = store.Batch(line.Subject)!;
            if (batch.Plan?.Origin == BatchOrigin.Split) left.Add(new BatchLeftOut(batch.Key, "is a part of another batch"));
            else if (BatchFacts.Of(batch) is not { } facts) left.Add(new BatchLeftOut(batch.Key, "has no plan that can be read"));
            else if (facts.SaltPerGram is null) left.Add(new BatchLeftOut(batch.Key, "has no dyestuff"));
            else if (facts.FinalPh is null) left.Add(new BatchLeftOut(batch.Key, "has no final pH, neither read nor aimed at"));
            else if (facts.YieldPerGram is null && !facts.Colours.ContainsKey(SwatchState.Dry)) left.Add(new BatchLeftOut(batch.Key, "has neither the weight of the dry pigment nor the colour of a dry swatch"));
            else rows.Add(facts);
        }
        return new BatchLearning([.. rows.OrderBy(r => r.At)], left);
    }

    /// <summary>One standard deviation of reading a colour's axis, from the doubts that were kept; 0 for others.</summary>
    public double ReadingSd(string response)
    {
        double[] within = response is "L" or "a" or "b" ? [.. Rows.Select(r => r.Colours.GetValueOrDefault(SwatchState.Dry)?.WithinDeltaE2000).OfType<double>()] : [];
        return within.Length == 0 ? 0 : Math.Sqrt(within.Average(w => w * w) / 3) / Distributions.NormalHalfWidth90;
    }

    /// <summary>The next batch toward the aims; null with fewer than five whole rows, or when nothing was ever changed.</summary>
    /// <param name="aims">One or more.</param>
    /// <param name="dyestuff">Only this dyestuff; null for any.</param>
    public NextFound? Next(IReadOnlyList<TrialAim> aims, string? dyestuff)
    {
        if (Table is not { } table) return null;
        (IReadOnlyList<Response> responses, IReadOnlyList<Func<double[], double>> losses) = TrialAim.Together(aims, table);
        return Enumerable.Range(0, Rows.Count).Count(i => responses.All(r => double.IsFinite(r.Values[i]))) < LeastRows ? null
            : NextTrial.Propose(table.Data, responses, losses, [.. responses.Select(r => ReadingSd(r.Name))], dyestuff is null ? null : settings => settings.First(s => s.Factor == Dyestuff).Name == dyestuff);
    }

    /// <summary>The plan of a proposed batch: that of the batch most like it, with what is new put in.</summary>
    public PlanRequest PlanOf(RecipeProposal proposal)
    {
        ArgumentNullException.ThrowIfNull(proposal);
        string Name(string factor) => proposal.Settings.First(s => s.Factor == factor).Name;
        BatchFacts like = Rows.OrderByDescending(r => 4 * Same(r.Dyestuff, Name(Dyestuff)) + 2 * Same(r.Salt, Name(Salt)) + Same(r.Alkali, Name(Alkali))).ThenByDescending(r => r.At).First();
        PlanRequest plan = like.Request;
        if (like.Salt != Name(Salt) && Rows.LastOrDefault(r => r.Salt == Name(Salt)) is { } salted)
            foreach (string field in (string[])[PlanFields.Salt, PlanFields.SecondSalt, PlanFields.SecondSaltAmount]) plan = plan.With(field, salted.Request[field]);
        if (like.Alkali != Name(Alkali) && Rows.LastOrDefault(r => r.Alkali == Name(Alkali)) is { } made)
            foreach (string field in (string[])[PlanFields.Alkali, PlanFields.AlkaliStrength, PlanFields.BakedBefore, PlanFields.BakedAfter]) plan = plan.With(field, made.Request[field]);
        foreach (string field in (string[])[PlanFields.Aim, PlanFields.AlkaliAmount, PlanFields.AllDown, PlanFields.LiquorPh, .. PlanFields.Origins]) plan = plan.With(field, null);
        double dry = like.Input.DryDyestuff?.Grams ?? 0;
        return plan.With(PlanFields.SaltAmount, Text(Number(SaltPerGram) * dry, "g")).With(PlanFields.ToPh, Text(Number(FinalPh), "")).With(PlanFields.Temperature, Text(Number(Temperature), "C"));

        double Number(string factor) => proposal.Settings.First(s => s.Factor == factor).Number ?? 0;
    }

    private static int Same(string one, string other) => one == other ? 1 : 0;

    private static string Text(double value, string unit) => string.Create(CultureInfo.InvariantCulture, $"{value:0.##} {unit}").Trim();

    private static TrialTable Read(IReadOnlyList<BatchFacts> rows)
    {
        var responses = new List<Response>();
        foreach ((string name, Func<LabText, double> of) in ((string, Func<LabText, double>)[])[("L", c => c.LabL), ("a", c => c.LabA), ("b", c => c.LabB)])
            responses.Add(new Response(name, [.. rows.Select(r => r.Colours.TryGetValue(SwatchState.Dry, out SwatchRead? dry) ? of(dry.Colour) : double.NaN)]));
        responses.Add(new Response(Yield, [.. rows.Select(r => r.YieldPerGram ?? double.NaN)]));
        TrialTable.AddPolar(responses);
        return new TrialTable(new TrialData(
            [Names(Dyestuff, r => r.Dyestuff), Names(Salt, r => r.Salt), Numbers(SaltPerGram, r => Math.Round(r.SaltPerGram!.Value, 3)), Names(Alkali, r => r.Alkali), Numbers(FinalPh, r => r.FinalPh!.Value), Numbers(Temperature, r => r.TemperatureCelsius)], null),
            [.. responses.Where(r => r.Values.Any(double.IsFinite))]);

        FactorColumn Names(string name, Func<BatchFacts, string> of) => new(name, null, [.. rows.Select(of)]);
        FactorColumn Numbers(string name, Func<BatchFacts, double> of) => new(name, [.. rows.Select(of)], [.. rows.Select(r => of(r).ToString("0.###", CultureInfo.InvariantCulture))]);
    }
}
