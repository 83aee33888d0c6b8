using Alumroot.Chemistry.Planning;

namespace Alumroot.App.Words;

/// <summary>What makes a span wide, in words that follow "mostly".</summary>
public static class CauseWords
{
    /// <summary>The words for a cause.</summary>
    public static string Of(SpanCause cause) => cause switch
    {
        SpanCause.KindOfSolid => "which kind of solid comes down",
        SpanCause.SolubilityOfSolid => "how soluble the fresh solid is",
        SpanCause.GasHeld => "how much gas is still in the bath when it is read",
        SpanCause.PlantAcid => "the plant's own acid",
        SpanCause.AlkaliStrength => "the strength of the alkali",
        SpanCause.SaltStrength => "the strength of the salt",
        SpanCause.Hardness => "the hardness of the water",
        SpanCause.FreeAcid => "free acid in the salt",
        _ => "the temperature of the bath",
    };
}
