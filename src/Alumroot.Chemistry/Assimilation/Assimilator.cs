using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Assimilation;

/// <summary>Corrects a plan by what was poured and read at the bench. Pure and reproducible.</summary>
/// <remarks>The model, its sources and its limits are on docs/models/assimilation.md.</remarks>
public static class Assimilator
{
    // A case that cannot come within this many units of ln of the best is not fitted to the end.
    private const double Hopeless = 9;
    private const double RuledOut = 6;
    private const int GasLayers = 3, LooksAtMain = 12, LooksAtOthers = 5;

    /// <summary>Takes the events into account.</summary>
    /// <param name="plan">The plan's input, with the salt as weighed. With the alkali first and a pH for an aim, the alkali is what the events say went in.</param>
    /// <param name="events">What was done and read, in order.</param>
    /// <param name="place">What else is known of the workplace.</param>
    /// <exception cref="ArgumentException">There is no salt, a salt without mass, no water, or an alkali that gives no base.</exception>
    public static AssimilationOutcome Assimilate(LakePlanInput plan, IReadOnlyList<BenchEvent> events, Workplace? place = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(events);
        if (plan.Salts.Count == 0 || plan.Salts.Any(s => s.Amount.Grams <= 0)) throw new ArgumentException("each salt needs a mass above zero", nameof(plan));
        if (plan.Water.Litres <= 0) throw new ArgumentException("the water must be more than nothing", nameof(plan));
        if (plan.Alkali.BaseMolPerUnit <= 0) throw new ArgumentException("the alkali gives no base", nameof(plan));
        if (NotModelled(plan, events) is { } reason) return new AssimilationOutcome.NotModelled(reason);

        IReadOnlyList<(BenchHypothesis Hypothesis, double Prior)> hypotheses = Hypotheses.For(plan, events, place ?? new Workplace());
        var fits = new List<MapFit>();
        foreach ((BenchHypothesis hypothesis, double prior) in hypotheses)
        {
            bool main = hypothesis is BenchHypothesis.AsRecorded;
            double best = main ? double.NegativeInfinity : fits.Max(f => f.LogEvidence);
            foreach (BenchCase c in BenchCase.Of(hypothesis, prior, plan, events))
            {
                if (main && MapFit.Along(c, LooksAtMain) is { } fit)
                {
                    if (GasMatters(c)) fits.AddRange(c.InGasLayers(GasLayers).Select(layer => MapFit.InLayer(layer, fit, LooksAtMain)).OfType<MapFit>());
                    else fits.Add(fit);
                }
                // An idea of the solid that the readings have ruled out as recorded is not tried again under each mix-up: it is the level of the pH that decides it.
                else if (!main && fits.Where(f => f.Case.Idea == c.Idea && f.Case.Hypothesis is BenchHypothesis.AsRecorded && f.LogEvidence > best - RuledOut).MaxBy(f => f.LogEvidence) is { } like
                    && MapFit.From(c, like, LooksAtOthers, best - Hopeless) is { } other) fits.Add(other);
            }
            if (fits.Count == 0) return new AssimilationOutcome.NotSolved();
        }
        MapFit[] asRecorded = [.. fits.Where(f => f.Case.Hypothesis is BenchHypothesis.AsRecorded)];
        if (asRecorded.Length == 0) return new AssimilationOutcome.NotSolved();
        double[] shares = Evidence.Shares([.. fits.Select(f => f.LogEvidence)]);
        BenchCase mainCase = asRecorded.MaxBy(f => f.LogEvidence)!.Case;

        double poured = plan.Order == OrderOfAddition.SaltFirst ? events.OfType<BenchEvent.AlkaliAdded>().Sum(a => a.Units) : events.OfType<BenchEvent.SaltAdded>().Sum(s => s.Amount.Grams);
        double planned = plan.Order == OrderOfAddition.AlkaliFirst ? plan.Salts.Sum(s => s.Amount.Grams) : plan.Aim is PlanAim.AlkaliAmount a ? a.Units : mainCase.Stoichiometric;
        PlanAim aim = plan.Order == OrderOfAddition.AlkaliFirst && plan.Aim is PlanAim.AlkaliAmount ? new PlanAim.AlkaliAmount(planned) : plan.Aim;
        Guesses guesses = Guesses.Draw(fits, shares, new Reach(aim, planned, Math.Max(0, planned - poured)));
        if (guesses.All.Count == 0) return new AssimilationOutcome.NotSolved();
        var next = new NextStep(mainCase, plan with { Aim = aim }, guesses, poured, planned);

        double[] refined = Evidence.Shares([.. fits.Select(f => guesses.LogEvidence.GetValueOrDefault(f.Case, f.LogEvidence))]);
        WeighedHypothesis[] weighed = [.. hypotheses
            .Select(h => new WeighedHypothesis(h.Hypothesis, fits.Zip(refined).Where(p => p.First.Case.Hypothesis == h.Hypothesis).Sum(p => p.Second), h.Prior, null))
            .OrderByDescending(h => h.ProbabilityRatio)];
        (IReadOnlyList<WeighedHypothesis> told, Quarrel? quarrel) = QuarrelCheck.Check(plan, events, weighed, asRecorded);
        return new AssimilationOutcome.Assimilated(new BenchState
        {
            Pouring = plan.Order == OrderOfAddition.SaltFirst ? SubstanceRole.Alkali : SubstanceRole.Salt,
            PouredUnits = poured,
            RemainingUnits = next.Remaining,
            BeyondReachRatio = next.BeyondReachRatio,
            PhNow = guesses.Read(g => g.Ahead.PhNow),
            DissolvedMetalRatio = guesses.Read(g => g.Ahead.DissolvedNow),
            BasicSaltRatio = mainCase.Bath.IdeaMatters ? guesses.Share(g => g.Case.Idea == SolidIdea.BasicSalt) : null,
            Next = next.Next,
            Stop = next.Stop,
            Changes = Learned.Changes(mainCase, guesses, 1 - (double)PathBundle.WithHydroxide / PathBundle.Solved),
            Hypotheses = told,
            Quarrel = quarrel,
            UnsolvedRatio = guesses.UnsolvedRatio,
        });
    }

    /// <summary>Below this pH there is no carbonate to speak of that gas could hold.</summary>
    private static bool GasMatters(BenchCase c) => c.Log.Readings.Any(r => r.IsPh && r.Value > 4.7);

    private static WhyNotModelled? NotModelled(LakePlanInput plan, IReadOnlyList<BenchEvent> events)
    {
        if (plan.Order == OrderOfAddition.SaltFirst) return events.Any(e => e is BenchEvent.SaltAdded) ? WhyNotModelled.SaltDuringAlkali : null;
        if (plan.Aim is PlanAim.AllMetalDown) return WhyNotModelled.AllDownWithAlkaliFirst;
        int lastAlkali = -1, firstSalt = events.Count;
        for (int i = events.Count - 1; i >= 0; i--)
        {
            if (events[i] is BenchEvent.AlkaliAdded && lastAlkali < 0) lastAlkali = i;
            if (events[i] is BenchEvent.SaltAdded) firstSalt = i;
        }
        if (lastAlkali < 0) return WhyNotModelled.NoAlkaliYet;
        return lastAlkali > firstSalt ? WhyNotModelled.AlkaliDuringSalt : null;
    }
}
