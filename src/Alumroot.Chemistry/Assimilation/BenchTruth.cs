using Alumroot.Chemistry.Planning;
using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Assimilation;

/// <summary>The unknowns in the space in which each is a standard normal before any reading: those of a plan's draw, then these.</summary>
internal static class Axis
{
    internal const int AlkaliStrength = PlanDraw.Axes;
    internal const int SaltStrength = PlanDraw.Axes + 1;

    /// <summary>Unknowns that change the chemistry; those after it only shift what is read.</summary>
    internal const int Chemical = PlanDraw.Axes + 2;
    internal const int StripBias = Chemical;
    internal const int MeterBias = Chemical + 1;
    internal const int ModelOffset = Chemical + 2;
    internal const int Count = Chemical + 3;
}

/// <summary>One of equal layers into which the span of the gas pressure is cut.</summary>
/// <remarks>Near the aim much gas buffers the bath and little does not: two hills for one normal. Within a layer it is one.</remarks>
/// <param name="Number">From 0, the highest pressure.</param>
/// <param name="Of">Number of layers.</param>
internal readonly record struct GasLayer(int Number, int Of)
{
    /// <summary>The standard normal of the whole span for one of the layer.</summary>
    internal double Within(double z) => Of == 1 ? z : Distributions.NormalQuantile(Math.Clamp((Number + Distributions.NormalFraction(z)) / Of, 1e-6, 1 - 1e-6));
}

/// <summary>One possible truth about a bath at the bench.</summary>
/// <param name="Draw">What a plan does not know either.</param>
/// <param name="AlkaliStrength">True strength of the alkali over the nominal one.</param>
/// <param name="SaltStrength">True strength of the salt over the nominal one.</param>
/// <param name="StripBiasPh">What strips read above the truth.</param>
/// <param name="MeterBiasPh">What the meter reads above the truth.</param>
/// <param name="ModelOffsetPh">True pH less the computed one, all along the path.</param>
internal readonly record struct BenchTruth(PlanDraw Draw, double AlkaliStrength, double SaltStrength, double StripBiasPh, double MeterBiasPh, double ModelOffsetPh)
{
    internal static BenchTruth At(SolidIdea idea, GasLayer gas, LakePlanInput input, double stripBiasSd, ReadOnlySpan<double> z)
    {
        Span<double> draw = stackalloc double[PlanDraw.Axes];
        z[..PlanDraw.Axes].CopyTo(draw);
        draw[PlanDraw.GasAxis] = gas.Within(z[PlanDraw.GasAxis]);
        Estimate salt = input.Salts[0].Substance.Strength;
        return new BenchTruth(
            PlanDraw.AtStandard(idea, input, draw),
            PlanDraw.SkewedAtStandard(input.Alkali.Strength, z[Axis.AlkaliStrength]),
            PlanDraw.SkewedAtStandard(salt, z[Axis.SaltStrength]),
            stripBiasSd * z[Axis.StripBias],
            ReadingNoise.MeterBiasSd * z[Axis.MeterBias],
            ReadingNoise.ModelOffsetSd(input.Temperature.Celsius) * z[Axis.ModelOffset]);
    }

    /// <summary>What a reading of this kind shows above the computed pH.</summary>
    internal double Above(ReadingKind kind) => ModelOffsetPh + (kind == ReadingKind.Strip ? StripBiasPh : MeterBiasPh);
}
