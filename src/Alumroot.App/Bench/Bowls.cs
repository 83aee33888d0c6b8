using System.Globalization;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Bench;

/// <summary>Notices a bowl that was left on the scale.</summary>
internal static class Bowls
{
    // A weight is taken for the plan with a bowl when it lies as near to their sum as a kitchen scale and a hand are good for (our judgement).
    private const double NearShare = 0.03, NearGrams = 1, FarTooMuch = 1.5;

    /// <summary>What could be meant by a weight that looks wrong; null when nothing is to be asked.</summary>
    /// <param name="grams">The weight typed.</param>
    /// <param name="plannedGrams">The weight planned.</param>
    /// <param name="studio">Whose bowls are known.</param>
    public static BowlQuestion? Ask(double grams, double plannedGrams, StudioState studio)
    {
        if (plannedGrams <= 0) return null;
        BowlWeighed? bowl = studio.Bowls.Where(b => Fits(grams, plannedGrams + Grams(b))).OrderBy(b => Math.Abs(grams - plannedGrams - Grams(b))).FirstOrDefault();
        if (bowl is not null) return new BowlQuestion(bowl, grams - Grams(bowl));
        return grams > FarTooMuch * plannedGrams ? new BowlQuestion(null, null) : null;
    }

    /// <summary>A bowl by its name.</summary>
    public static BowlWeighed? Find(string? name, StudioState studio) => studio.Bowls.FirstOrDefault(b => string.Equals(b.Bowl, name, StringComparison.OrdinalIgnoreCase));

    /// <summary>What is left when the bowl is taken off, with words that say so.</summary>
    public static Measured Off(Measured gross, BowlWeighed bowl)
    {
        double net = gross.SiValue - bowl.Empty.SiValue;
        return gross with { Typed = string.Create(CultureInfo.InvariantCulture, $"{net * 1000:0.###} g ({gross.Typed} less bowl {bowl.Bowl})"), SiValue = Math.Round(net, 9) };
    }

    private static double Grams(BowlWeighed bowl) => bowl.Empty.SiValue * 1000;

    private static bool Fits(double grams, double sum) => Math.Abs(grams - sum) <= Math.Max(NearGrams, NearShare * sum);
}

/// <summary>A weight that looks wrong.</summary>
/// <param name="Bowl">The bowl that may still be in it; null when it is only far more than planned.</param>
/// <param name="NetGrams">What would be left without the bowl.</param>
public sealed record BowlQuestion(BowlWeighed? Bowl, double? NetGrams);
