using System.Globalization;
using Alumroot.Chemistry.Planning;

namespace Alumroot.App.Pages.Lakes;

/// <summary>How fine a scale a plan needs.</summary>
/// <param name="StepGrams">The coarsest step that still hits the aim within a tenth of a pH.</param>
/// <param name="OwnStepGrams">The step of the maker's own scale.</param>
public sealed record ScaleNeed(double StepGrams, double OwnStepGrams)
{
    private static readonly double[] Steps = [10, 5, 1, 0.5, 0.1, 0.05, 0.01];

    /// <summary>Whether the maker's own scale is fine enough.</summary>
    public bool Enough => OwnStepGrams <= StepGrams * (1 + 1e-9);

    /// <summary>The step needed as text.</summary>
    public string StepText => StepGrams.ToString("0.###", CultureInfo.InvariantCulture);

    /// <summary>The own step as text.</summary>
    public string OwnStepText => OwnStepGrams.ToString("0.###", CultureInfo.InvariantCulture);

    /// <summary>What a plan needs: a tenth of a pH near the aim, or a hundredth of the amount where the pH hardly moves; a poured alkali leaves only the salt to weigh.</summary>
    public static ScaleNeed Of(LakePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        bool weighed = plan.Input.Alkali.Unit == SubstanceUnit.Gram;
        double fine = weighed && plan.AlkaliPerTenthPh.Value is > 0 and < double.PositiveInfinity and var perTenth ? perTenth : 0.01 * (weighed ? plan.Alkali.Value : plan.Salts[0].Grams);
        return new ScaleNeed(Steps.FirstOrDefault(s => s <= fine * 1.0001, Steps[^1]), plan.Input.ScaleStep.Grams);
    }
}
