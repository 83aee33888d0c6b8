using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Assimilation;

/// <summary>The usual mix-ups of a bench and how often each is met: our judgement, no source.</summary>
internal static class Hypotheses
{
    private const double OneOtherAlkali = 0.01, OneOtherSalt = 0.005, ColouredStrip = 0.03, NotTared = 0.01;

    /// <summary>All that can be told of this plan and these events, with probabilities that sum to 1; "as recorded" comes first.</summary>
    internal static IReadOnlyList<(BenchHypothesis Hypothesis, double Prior)> For(LakePlanInput plan, IReadOnlyList<BenchEvent> events, Workplace place)
    {
        var list = new List<(BenchHypothesis Hypothesis, double Prior)>();
        if (plan.Alkali.Unit == SubstanceUnit.Gram)
            foreach (string key in StatedPhCheck.Alkalis)
                if (key != plan.Alkali.Key) list.Add((new BenchHypothesis.OtherAlkali(SubstanceShelf.Find(key)!), OneOtherAlkali));
        if (StatedPhCheck.Salts.Contains(plan.Salts[0].Substance.Key, StringComparer.Ordinal))
            foreach (string key in StatedPhCheck.Salts)
                if (key != plan.Salts[0].Substance.Key) list.Add((new BenchHypothesis.OtherSalt(SubstanceShelf.Find(key)!), OneOtherSalt));
        if (events.Any(e => e is BenchEvent.PhRead { Instrument: PhInstrument.Strip } or BenchEvent.PhReadBetween { Instrument: PhInstrument.Strip }))
            list.Add((new BenchHypothesis.ColouredStrip(), ColouredStrip));
        BenchHypothesis[] bowls = [.. Bowls(plan, events, place)];
        foreach (BenchHypothesis b in bowls) list.Add((b, NotTared / bowls.Length));
        return [(new BenchHypothesis.AsRecorded(), 1 - list.Sum(h => h.Prior)), .. list];
    }

    private static IEnumerable<BenchHypothesis> Bowls(LakePlanInput plan, IReadOnlyList<BenchEvent> events, Workplace place)
    {
        foreach (Mass bowl in place.Bowls.Where(b => b.Grams > 0).Distinct())
        {
            for (int i = 0; i < plan.Salts.Count; i++)
                if (plan.Order == OrderOfAddition.SaltFirst && plan.Salts[i].Amount > bowl) yield return new BenchHypothesis.SaltBowlNotTared(i, bowl);
            int number = 0;
            foreach (BenchEvent e in events)
            {
                double? grams = e switch
                {
                    BenchEvent.AlkaliAdded a => plan.Alkali.Unit == SubstanceUnit.Gram ? a.Units : 0,
                    BenchEvent.SaltAdded s => s.Amount.Grams,
                    _ => null,
                };
                if (grams is null) continue;
                number++;
                if (grams > bowl.Grams) yield return new BenchHypothesis.PortionBowlNotTared(number, bowl);
            }
        }
    }
}
