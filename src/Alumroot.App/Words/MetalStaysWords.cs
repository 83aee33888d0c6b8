using System.Globalization;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities.Writing;

namespace Alumroot.App.Words;

/// <summary>What to say when no amount of the alkali brings all the metal down.</summary>
public static class MetalStaysWords
{
    /// <summary>What happens, what it means, what to do.</summary>
    public static string Of(PlanOutcome.MetalStays stays)
    {
        ArgumentNullException.ThrowIfNull(stays);
        string share = (100 * stays.LeastDissolvedShare.Value).ToString("0", CultureInfo.InvariantCulture);
        return $"Cannot bring all the metal down with this alkali: at best, near pH {QuantityText.OfPh(stays.Ph)}, about {share} % of it stays in the liquid. Choose a final pH instead, or another alkali.";
    }
}
