namespace Alumroot.Chemistry.Assimilation;

/// <summary>The path of one truth from now on: pH and dissolved metal after so many more units as weighed.</summary>
/// <param name="whole">The whole path.</param>
/// <param name="strength">Strength of what is poured, over the path's own.</param>
/// <param name="now">Where the bath stands on the path's axis.</param>
/// <param name="perUnit">Path's axis for one unit as weighed.</param>
/// <param name="offset">The model's offset, in pH.</param>
/// <param name="waveNow">The model's wave here, in pH; it fades ahead.</param>
/// <param name="ofPlan">Units of the whole addition.</param>
internal sealed class PathAhead(WholePath whole, double strength, double now, double perUnit, double offset, double waveNow, double ofPlan)
{
    private readonly double _scale = strength * perUnit, _now = now * strength;

    internal double PhNow => PhAt(0);

    internal double DissolvedNow => DissolvedAt(0);

    internal double LastUnits => Math.Max(0, (whole.LastUnits - _now) / _scale);

    /// <summary>pH after so many more units; level beyond the end.</summary>
    internal double PhAt(double units) => whole.PhAt(_now + units * _scale) + offset + waveNow * ReadingNoise.WaveCorrelation(units / ofPlan);

    internal double DissolvedAt(double units) => whole.DissolvedAt(_now + units * _scale);

    /// <summary>Units until a pH is reached: zero when it is already, infinite when it never is.</summary>
    internal double UntilPh(double ph)
    {
        double sign = whole.Rising ? 1 : -1;
        return whole.UntilPh(_now, x => sign * (PhAt((x - _now) / _scale) - ph)) / _scale;
    }

    /// <summary>Units until all metal is down, or until the least is left when it never is.</summary>
    internal (double Units, bool Reached) UntilDown() => whole.UntilDown(_now) is var (units, reached) ? (units / _scale, reached) : default;
}
