using Alumroot.Quantities;

namespace Alumroot.Chemistry.Planning;

/// <summary>A mix-up that would explain a stated pH.</summary>
/// <param name="Instead">What would have been in the packet.</param>
/// <param name="Role">In place of the salt or of the alkali.</param>
/// <param name="Ph">pH that it would give.</param>
public sealed record MixUp(Substance Instead, SubstanceRole Role, Estimate Ph);

/// <summary>Tries the usual mix-ups of packets when a stated pH does not fit the masses.</summary>
public static class StatedPhCheck
{
    // The commonest first: soda of one name for soda of another, potash for caustic potash (needs of makers, as met in published recipes).
    internal static readonly string[] Alkalis = ["soda-ash", "soda-crystals", "baking-soda", "potash", "caustic-soda", "caustic-potash", "chalk"];
    internal static readonly string[] Salts = ["potash-alum", "ammonium-alum", "aluminium-sulfate", "aluminium-sulfate-14"];

    // A span of three units would explain nearly anything: the middle must lie near the stated pH too.
    private const double NearEnoughPh = 1.2;

    /// <summary>The mix-ups that explain the stated pH, the commonest first; empty when there is none or nothing is stated.</summary>
    public static IReadOnlyList<MixUp> WouldFit(LakePlanInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        var list = new List<MixUp>();
        if (input.StatedPh is not { } stated || input.Aim is not PlanAim.AlkaliAmount || input.Alkali.Unit != SubstanceUnit.Gram) return list;
        LakePlanInput bare = input with { StatedPh = null };
        foreach (string key in Alkalis)
            if (key != input.Alkali.Key) Try(bare with { Alkali = SubstanceShelf.Find(key)! }, SubstanceShelf.Find(key)!, SubstanceRole.Alkali);
        if (Salts.Contains(input.Salts[0].Substance.Key, StringComparer.Ordinal))
            foreach (string key in Salts)
                if (key != input.Salts[0].Substance.Key) Try(bare with { Salts = [new SaltPortion(SubstanceShelf.Find(key)!, input.Salts[0].Amount), .. input.Salts.Skip(1)] }, SubstanceShelf.Find(key)!, SubstanceRole.Salt);
        return list;

        void Try(LakePlanInput other, Substance instead, SubstanceRole role)
        {
            if (LakePlanner.Plan(other) is PlanOutcome.Planned { Plan: var plan } && plan.EndPh.Low <= stated.Value && stated.Value <= plan.EndPh.High && Math.Abs(plan.EndPh.Value - stated.Value) < NearEnoughPh)
                list.Add(new MixUp(instead, role, plan.EndPh));
        }
    }
}
