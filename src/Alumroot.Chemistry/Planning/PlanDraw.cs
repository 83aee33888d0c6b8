using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Planning;

/// <summary>One possible truth about what the maker cannot know beforehand.</summary>
/// <param name="Idea">What the solid is.</param>
/// <param name="PlainShift">Shift of log10 K of the hydroxides.</param>
/// <param name="BasicShift">Shift of log10 K of the basic salts.</param>
/// <param name="Log10GasAtm">log10 of the carbon dioxide pressure that stirring and contact with air leave in the bath, atm.</param>
/// <param name="CelsiusOff">Error of the temperature.</param>
/// <param name="AcidPkShift">Shift of the pK of the plant's acid.</param>
/// <param name="AcidMilliequivalentsPerGram">Plant acid.</param>
/// <param name="FreeAcidShare">Free acid of the salt over the base its metal takes.</param>
/// <param name="HardnessFactor">True hardness over the stated one.</param>
/// <param name="WaterFactor">True water over the stated one.</param>
/// <param name="BasicEnthalpyShare">Enthalpy of the basic salts that lack one, as a share of what their hydroxide groups would have in the hydroxide.</param>
internal readonly record struct PlanDraw(
    SolidIdea Idea, double PlainShift, double BasicShift, double Log10GasAtm, double CelsiusOff, double AcidPkShift,
    double AcidMilliequivalentsPerGram, double FreeAcidShare, double HardnessFactor, double WaterFactor, double BasicEnthalpyShare)
{
    // Spans of what is not known, 90 %: the fresh solids +- 0.5 and +- 0.7 (docs/models/plan.md); temperature +- 3 C; measured water +- 3 %.
    internal const double PlainSd = 0.5 / Distributions.NormalHalfWidth90;
    internal const double BasicSd = 0.7 / Distributions.NormalHalfWidth90;
    private const double PkSd = 0.6 / Distributions.NormalHalfWidth90;
    internal const double CelsiusSd = 3 / Distributions.NormalHalfWidth90;
    private const double WaterSd = 0.03 / Distributions.NormalHalfWidth90;

    // Stirring and contact with air keep a fizzing bath between one atmosphere of gas and a few hundredths of it (our judgement).
    internal const double LeastLog10GasAtm = -2.5;

    // The measured start of an alum bath lies 0.3 to 0.8 below the computed one; free acid up to 1.5 % of the base accounts for it (docs/models/plan.md).
    private const double MostFreeAcidShare = 0.015;

    // No enthalpy is known for the basic aluminium sulfates. It is taken as half to all of what as many hydroxide groups have in the gel (-110.9 kJ/mol for three [phreeqc389]),
    // every value alike: less would not let the published madder recipes at 80 C [kirby2014] reach the pH they state.
    internal const double KilojoulePerHydroxideGroup = -110.876 / 3;

    // pK of the acid in the constants (Data/species.csv, HPlantacid).
    internal const double StandardAcidPk = 4.3;

    internal const int Axes = 10;

    /// <summary>Place of the gas pressure among the axes.</summary>
    internal const int GasAxis = 2;

    /// <summary>Place of the temperature's error among the axes.</summary>
    internal const int CelsiusAxis = 3;

    /// <summary>The middle truth of an idea.</summary>
    internal static PlanDraw Middle(SolidIdea idea, LakePlanInput input) =>
        new(idea, 0, 0, LeastLog10GasAtm / 2, 0, input.PlantAcidPk - StandardAcidPk, input.PlantAcidMilliequivalentsPerGram.Value, MostFreeAcidShare / 2, 1, 1, 0.75);

    /// <summary>The truth at a point of the unit cube.</summary>
    internal static PlanDraw At(SolidIdea idea, LakePlanInput input, ReadOnlySpan<double> u)
    {
        Span<double> z = stackalloc double[Axes];
        for (int a = 0; a < Axes; a++) z[a] = Distributions.NormalQuantile(u[a]);
        return From(idea, input, u, z);
    }

    /// <summary>The truth at a point of the space in which every unknown is a standard normal.</summary>
    internal static PlanDraw AtStandard(SolidIdea idea, LakePlanInput input, ReadOnlySpan<double> z)
    {
        Span<double> u = stackalloc double[Axes];
        for (int a = 0; a < Axes; a++) u[a] = Distributions.NormalFraction(z[a]);
        return From(idea, input, u, z);
    }

    /// <summary>A value from a median and its 5 and 95 % points, log-normal on each side (normal where a point is not above zero).</summary>
    internal static double Skewed(Estimate e, double u) => SkewedAtStandard(e, Distributions.NormalQuantile(u));

    /// <summary>The same at a standard normal.</summary>
    internal static double SkewedAtStandard(Estimate e, double standard)
    {
        double z = standard / Distributions.NormalHalfWidth90;
        double end = z < 0 ? e.Low : e.High;
        if (e.Value <= 0) return Math.Max(0, Math.Abs(z) * end);
        return end > 0 ? e.Value * Math.Pow(end / e.Value, Math.Abs(z)) : Math.Max(0, e.Value * (1 - Math.Abs(z)));
    }

    private static PlanDraw From(SolidIdea idea, LakePlanInput input, ReadOnlySpan<double> u, ReadOnlySpan<double> z)
    {
        double hardnessHalfSpan = input.HardnessIsAssumed ? 0.5 : 0.1;
        return new PlanDraw(idea,
            PlainSd * z[0],
            BasicSd * z[1],
            LeastLog10GasAtm * u[2],
            CelsiusSd * z[3],
            input.PlantAcidPk - StandardAcidPk + PkSd * z[4],
            SkewedAtStandard(input.PlantAcidMilliequivalentsPerGram, z[5]),
            MostFreeAcidShare * u[6],
            Math.Max(0.02, 1 + hardnessHalfSpan / Distributions.NormalHalfWidth90 * z[7]),
            1 + WaterSd * z[8],
            0.5 + 0.5 * u[9]);
    }
}
