namespace Alumroot.Chemistry.Assimilation;

/// <summary>How far readings stray. Widths are our judgement from common practice, no source, except where said.</summary>
/// <remarks>
/// A rounded reading is an interval. It is taken as a normal of the same variance, step squared over twelve, beside the noise of reading; with four or more
/// readings this is close, and it keeps the equations smooth. What strip or meter reads off in a whole batch is an unknown of its own.
/// </remarks>
internal static class ReadingNoise
{
    /// <summary>One strip reads off by a constant, nine in ten within 0.2.</summary>
    internal const double StripBiasSd = 0.2 / Numerics.Distributions.NormalHalfWidth90;

    /// <summary>A coloured liquor shifts all strips by up to a unit and more.</summary>
    internal const double ColouredBiasSd = 1.0;

    /// <summary>A meter that was set with two buffers reads off by a constant, nine in ten within 0.1: suspensions and hot baths are hard on electrodes.</summary>
    internal const double MeterBiasSd = 0.1 / Numerics.Distributions.NormalHalfWidth90;

    /// <summary>Relative spread of a conductivity: the formula is good to a tenth nine times in ten (docs/models/equilibrium.md), the meter's 25 C reference and the cell add to it.</summary>
    internal const double ConductivityLnSd = 0.08;

    /// <summary>Spread of a thermometer in a bath that cools while it is worked.</summary>
    internal const double ThermometerKelvin = 1.0;

    // Comparing colours, beyond the step itself, as a share of the step; and the flicker of a meter in a stirred suspension.
    private const double ColourShareOfStep = 0.3, MeterFlickerPh = 0.03;

    /// <summary>How far the equilibrium model strays along the path, in pH: a slow wave, alike at points that lie close together.</summary>
    internal const double ModelWaveSd = 0.08;

    /// <summary>Share of the whole addition over which that wave forgets itself.</summary>
    internal const double WaveLengthRatio = 0.2;

    // The measured first pH of alum baths lies 0.3 to 0.8 below the computed one [bp_tests]; free acid takes up a part, this the rest.
    private const double FirstPhScatter = 0.3;

    // Offset of the whole computed path: a little in a cold bath, more in a hot one, whose constants are extrapolated (docs/models/plan.md, limits).
    private const double ColdOffsetPh = 0.05, OffsetPhPerKelvin = 0.002;

    /// <summary>Standard deviation of one reading about what the bath is, apart from the constant bias; at the start with what the model does not know there.</summary>
    /// <param name="widthPh">Step, or the distance of the two colours between which it lay.</param>
    /// <param name="instrument">Strip or meter.</param>
    /// <param name="shareOfBase">Alkali in the bath over the alkali that throws all metal down: the start is poorly known.</param>
    internal static double PhSd(double widthPh, PhInstrument instrument, double shareOfBase)
    {
        double reading = ReaderSd(widthPh, instrument), start = FirstPhScatter * Math.Exp(-shareOfBase / 0.05);
        return Math.Sqrt(widthPh * widthPh / 12 + reading * reading + start * start);
    }

    /// <summary>Correlation of the model's wave at two points of the addition.</summary>
    internal static double WaveCorrelation(double distance) => Math.Exp(-Math.Abs(distance) / WaveLengthRatio);

    /// <summary>Standard deviation of the reader alone, without rounding.</summary>
    internal static double ReaderSd(double stepPh, PhInstrument instrument) => instrument == PhInstrument.Strip ? ColourShareOfStep * stepPh : MeterFlickerPh;

    /// <summary>Standard deviation of the model's offset in a bath of this temperature, in pH.</summary>
    internal static double ModelOffsetSd(double celsius) => ColdOffsetPh + OffsetPhPerKelvin * Math.Abs(celsius - 25);
}
