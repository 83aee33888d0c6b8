using Alumroot.Chemistry.Constants;
using Alumroot.Chemistry.Equilibrium;
using Alumroot.Quantities.Tables;

namespace Alumroot.Chemistry.Planning;

/// <summary>The two ideas of what a fresh precipitate is.</summary>
public enum SolidIdea
{
    /// <summary>Hydroxides only.</summary>
    Hydroxide,

    /// <summary>Hydroxides and basic salts (basic sulfate, basic carbonate).</summary>
    BasicSalt,
}

/// <summary>Which solids may form within hours, by metal and by idea (Data/fresh_solids.csv).</summary>
internal static class FreshSolids
{
    private static readonly Lazy<(string Component, string Phase, bool Basic)[]> Rows = new(() => EmbeddedConstants.Table("fresh_solids.csv").Rows
        .Select(r => (r["component"], r["phase"], r["kind"] switch
        {
            "basic" => true,
            "plain" => false,
            var other => throw r.Wrong("kind", $"\"{other}\" is neither plain nor basic"),
        })).ToArray());

    /// <summary>Metals whose coming down makes the lake; calcium and magnesium count only where no other is there.</summary>
    internal static readonly string[] LakeMetals = ["Al+3", "FeIII+3", "FeII+2", "Cu+2", "Zn+2", "SnII+2"];

    internal static readonly string[] SoftMetals = ["Mg+2", "Ca+2"];

    internal static IEnumerable<AllowedPhase> For(SolidIdea idea) => Rows.Value
        .Where(r => idea == SolidIdea.BasicSalt || !r.Basic)
        .Select(r => new AllowedPhase(r.Phase, PhaseRule.MayForm));

    private static readonly Lazy<HashSet<string>> Basic = new(() => Rows.Value.Where(r => r.Basic).Select(r => r.Phase).ToHashSet(StringComparer.Ordinal));
    private static readonly Lazy<HashSet<string>> Plain = new(() => Rows.Value.Where(r => !r.Basic && r.Component != "Ca+2").Select(r => r.Phase).ToHashSet(StringComparer.Ordinal));

    internal static bool IsBasic(string phase) => Basic.Value.Contains(phase);

    internal static bool IsPlainMetal(string phase) => Plain.Value.Contains(phase);

    /// <summary>Moles of base that one mole of the metal takes to come down as hydroxide.</summary>
    internal static double BaseDemand(string metal) => metal switch { "Al+3" or "FeIII+3" => 3, _ => 2 };
}
