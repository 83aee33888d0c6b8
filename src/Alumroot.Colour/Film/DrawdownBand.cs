using Alumroot.Quantities;

namespace Alumroot.Colour.Film;

/// <summary>One wavelength of a drawdown whose thickness is known: what it says for a thickness of 1, and of another film of the same paint.</summary>
public sealed class DrawdownBand
{
    private readonly Surface _surface;
    private readonly double _thickness;

    internal DrawdownBand(double nanometres, Drawdown read, Surface surface, double reading, double thickness)
    {
        (Nanometres, Read, _surface, _thickness) = (nanometres, read, surface, thickness);
        Measured = new FilmMeasurement(read, surface, reading);
    }

    /// <summary>The wavelength.</summary>
    public double Nanometres { get; }

    /// <summary>What the instrument showed.</summary>
    public Drawdown Read { get; }

    /// <summary>The film as it was measured.</summary>
    public FilmMeasurement Measured { get; }

    /// <summary>K for a thickness of 1; null when it is not known.</summary>
    public Estimate? Absorption =>
        Measured.Of(l => l.AbsorbedUnits / _thickness) is { } k ? NotBelowNothing(k) : Measured.Found is FilmFound.Clear { AbsorbedUnits: var clear } ? clear.Times(1 / _thickness) : null;

    /// <summary>S for a thickness of 1; null when it is not known.</summary>
    public Estimate? Scattering => Measured.Of(l => l.ScatteredUnits / _thickness) is { } s ? NotBelowNothing(s) : null;

    /// <summary>K/S; known of a film that hides, too.</summary>
    public Estimate? AbsorptionRatio =>
        Measured.Of(l => l.AbsorbedUnits / l.ScatteredUnits) is { } r ? NotBelowNothing(r) : Measured.Found is FilmFound.Hides { AbsorptionRatio: var hides } ? hides : null;

    /// <summary>What the instrument would show of another film of the same paint; null when K or S is not known.</summary>
    /// <param name="thickness">In the unit of the drawdown's own.</param>
    /// <param name="ground">What the instrument shows of the ground.</param>
    public Estimate? Over(double thickness, double ground) => Measured.Of(l => _surface.Measured(FilmOptics.Over(l.Times(thickness / _thickness), _surface.Inside(ground))));

    private static Estimate NotBelowNothing(Estimate e) => e with { Low = Math.Max(0, e.Low) };
}
