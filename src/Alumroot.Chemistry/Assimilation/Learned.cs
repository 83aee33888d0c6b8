using Alumroot.Chemistry.Planning;
using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Assimilation;

/// <summary>What the readings changed in what was assumed.</summary>
internal static class Learned
{
    private const double Noticed = 0.5;

    internal static IReadOnlyList<LearnedChange> Changes(BenchCase main, Guesses guesses, double priorBasic)
    {
        var list = new List<LearnedChange>();
        if (main.Log.Readings.Count == 0) return list;
        Guess[] same = [.. guesses.All.Where(g => g.Case.Hypothesis is BenchHypothesis.AsRecorded)];
        if (same.Length == 0) return list;
        LakePlanInput input = main.Input;
        Add(Unknown.PlantAcidAmount, 5, t => t.Draw.AcidMilliequivalentsPerGram);
        Add(Unknown.PlantAcidPk, 4, t => PlanDraw.StandardAcidPk + t.Draw.AcidPkShift);
        Add(Unknown.AlkaliStrength, Axis.AlkaliStrength, t => t.AlkaliStrength);
        Add(Unknown.SaltStrength, Axis.SaltStrength, t => t.SaltStrength);
        Add(Unknown.HydroxideSolubility, 0, t => t.Draw.PlainShift);
        Add(Unknown.BasicSaltSolubility, 1, t => t.Draw.BasicShift);
        Add(Unknown.GasHeld, 2, t => t.Draw.Log10GasAtm);
        Add(Unknown.FreeAcid, 6, t => t.Draw.FreeAcidShare);
        Add(Unknown.Hardness, 7, t => t.Draw.HardnessFactor);
        Add(Unknown.Water, 8, t => t.Draw.WaterFactor);
        Add(Unknown.Temperature, PlanDraw.CelsiusAxis, t => t.Draw.CelsiusOff);
        Add(Unknown.StripBias, Axis.StripBias, t => t.StripBiasPh);
        Add(Unknown.MeterBias, Axis.MeterBias, t => t.MeterBiasPh);
        if (main.Bath.IdeaMatters)
        {
            double now = same.Where(g => g.Case.Idea == SolidIdea.BasicSalt).Sum(g => g.Weight) / same.Sum(g => g.Weight);
            double shift = (now - priorBasic) / Math.Sqrt(priorBasic * (1 - priorBasic));
            if (Math.Abs(shift) >= Noticed) list.Add(new LearnedChange(Unknown.KindOfSolid, Estimate.Exact(priorBasic), Estimate.Exact(now), shift));
        }
        return [.. list.OrderByDescending(c => Math.Abs(c.ShiftFactor))];

        void Add(Unknown what, int axis, Func<BenchTruth, double> read)
        {
            Span<double> z = stackalloc double[Axis.Count];
            double middle = read(main.At(z));
            z[axis] = -Distributions.NormalHalfWidth90;
            double low = read(main.At(z));
            z[axis] = Distributions.NormalHalfWidth90;
            double high = read(main.At(z));
            if (low == high) return;
            Estimate now = Guesses.Read(same, g => read(g.Truth));
            double end = now.Value < middle ? Math.Min(low, high) : Math.Max(low, high);
            double shift = (now.Value - middle) / Math.Max(Math.Abs(end - middle), 1e-12) * Distributions.NormalHalfWidth90;
            if (Math.Abs(shift) >= Noticed) list.Add(new LearnedChange(what, new Estimate(middle, Math.Min(low, high), Math.Max(low, high)), now, shift));
        }
    }
}
