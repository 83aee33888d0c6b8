using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Assimilation;

/// <summary>One hypothesis with one idea of the solid: the bath as it would then be, and the log as it would then read.</summary>
internal sealed class BenchCase
{
    // Largest step between two solutions of a path, as a share of the whole addition.
    private const double LargestStep = 0.2;
    private readonly double[] _salts, _perUnit;

    private BenchCase(BenchHypothesis hypothesis, SolidIdea idea, GasLayer gas, double prior, LakePlanInput input, BathModel bath, double stoichiometric, BenchLog log)
    {
        (Hypothesis, Idea, Gas, Prior, Input, Bath, Stoichiometric, Log) = (hypothesis, idea, gas, prior, input, bath, stoichiometric, log);
        _salts = bath.AllSalts();
        _perUnit = bath.AlkaliPerUnit();
    }

    internal BenchHypothesis Hypothesis { get; }

    internal SolidIdea Idea { get; }

    internal GasLayer Gas { get; }

    /// <summary>Probability before any reading.</summary>
    internal double Prior { get; }

    internal LakePlanInput Input { get; }

    internal BathModel Bath { get; }

    /// <summary>Alkali that brings all metal down as hydroxide and neutralises the middle plant acid, units.</summary>
    internal double Stoichiometric { get; }

    internal BenchLog Log { get; }

    internal bool SaltFirst => Input.Order == OrderOfAddition.SaltFirst;

    internal double StripBiasSd => Hypothesis is BenchHypothesis.ColouredStrip ? ReadingNoise.ColouredBiasSd : ReadingNoise.StripBiasSd;

    internal double ModelOffsetSd => ReadingNoise.ModelOffsetSd(Input.Temperature.Celsius);

    /// <summary>The cases of a hypothesis: one, or one for each idea of the solid.</summary>
    internal static IEnumerable<BenchCase> Of(BenchHypothesis hypothesis, double prior, LakePlanInput plan, IReadOnlyList<BenchEvent> events)
    {
        LakePlanInput input = Applied(hypothesis, plan, events);
        // The water is that of the plan's own packets, whatever was in them.
        double saltWater = LakePlanner.DissolvingWater(plan.Salts.Sum(s => s.Amount.Grams), plan.SaltSolubilityGramsPer100g, 4);
        double alkaliWater = plan.Alkali.Unit == SubstanceUnit.Millilitre ? 0 : LakePlanner.DissolvingWater(1, plan.AlkaliSolubilityGramsPer100g, 8);
        var bath = new BathModel(input, saltWater, alkaliWater);
        double stoichiometric = Math.Max((bath.BaseForMetal + bath.BaseForAcid) / input.Alkali.BaseMolPerUnit, 1e-9);
        double byPlan = hypothesis is BenchHypothesis.AsRecorded ? stoichiometric : new BathModel(plan, saltWater, alkaliWater) is var own ? Math.Max((own.BaseForMetal + own.BaseForAcid) / plan.Alkali.BaseMolPerUnit, 1e-9) : 0;
        BenchLog log = BenchLog.Of(events, input, byPlan, hypothesis);
        const double hydroxide = (double)PathBundle.WithHydroxide / PathBundle.Solved;
        if (!bath.IdeaMatters) return [new BenchCase(hypothesis, SolidIdea.Hydroxide, new GasLayer(0, 1), prior, input, bath, stoichiometric, log)];
        return
        [
            new BenchCase(hypothesis, SolidIdea.Hydroxide, new GasLayer(0, 1), prior * hydroxide, input, bath, stoichiometric, log),
            new BenchCase(hypothesis, SolidIdea.BasicSalt, new GasLayer(0, 1), prior * (1 - hydroxide), input, bath, stoichiometric, log),
        ];
    }

    /// <summary>The same case cut in layers of the gas pressure.</summary>
    internal IEnumerable<BenchCase> InGasLayers(int layers) =>
        Enumerable.Range(0, layers).Select(i => new BenchCase(Hypothesis, Idea, new GasLayer(i, layers), Prior / layers, Input, Bath, Stoichiometric, Log));

    /// <summary>The same case when only so many readings had been taken.</summary>
    internal BenchCase Until(int readings) => readings >= Log.Readings.Count ? this : new BenchCase(Hypothesis, Idea, Gas, Prior, Input, Bath, Stoichiometric, Log.Until(readings));

    /// <summary>The truth at a point of the standard space.</summary>
    internal BenchTruth At(ReadOnlySpan<double> z) => BenchTruth.At(Idea, Gas, Input, StripBiasSd, z);

    /// <summary>The axis of the strength of what is poured.</summary>
    internal int PouredAxis => SaltFirst ? Axis.AlkaliStrength : Axis.SaltStrength;

    /// <summary>Strength of what is poured at a standard normal.</summary>
    internal double PouredStrength(double z) => PlanDraw.SkewedAtStandard(SaltFirst ? Input.Alkali.Strength : Input.Salts[0].Substance.Strength, z);

    /// <summary>What makes up the bath: the liquor, all the salts and one unit of alkali, in mol of each component.</summary>
    internal (double[] Liquor, double[] Salts, double[] PerUnit) Parts(BenchTruth t)
    {
        double[] liquor = Bath.Liquor(t.Draw), salts = [.. _salts], perUnit = [.. _perUnit];
        Bath.AddFreeAcid(salts, t.Draw);
        for (int j = 0; j < salts.Length; j++)
        {
            salts[j] *= t.SaltStrength;
            perUnit[j] *= t.AlkaliStrength;
        }
        return (liquor, salts, perUnit);
    }

    /// <summary>How many solutions lie between two steps of the log, so that gas leaves as it does in a bath that is stirred.</summary>
    internal int Substeps(int step)
    {
        double alkali = (Log.Alkali[step] - Log.Alkali[step - 1]) / Stoichiometric, salt = Log.SaltShare[step] - Log.SaltShare[step - 1];
        return Math.Clamp((int)Math.Ceiling((alkali + salt) / LargestStep), 1, 40);
    }

    private static LakePlanInput Applied(BenchHypothesis hypothesis, LakePlanInput plan, IReadOnlyList<BenchEvent> events)
    {
        LakePlanInput input = events.OfType<BenchEvent.TemperatureRead>().LastOrDefault() is { } read ? plan with { Temperature = read.Temperature } : plan;
        return hypothesis switch
        {
            BenchHypothesis.OtherAlkali a => input with { Alkali = a.Instead },
            BenchHypothesis.OtherSalt s => input with { Salts = [new SaltPortion(s.Instead, input.Salts[0].Amount), .. input.Salts.Skip(1)] },
            BenchHypothesis.SaltBowlNotTared b => input with { Salts = [.. input.Salts.Select((s, i) => i == b.SaltNumber ? s with { Amount = Mass.FromGrams(s.Amount.Grams - b.Bowl.Grams) } : s)] },
            _ => input,
        };
    }
}
