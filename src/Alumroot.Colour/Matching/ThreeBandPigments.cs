using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Film;
using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Colour.Matching;

/// <summary>Pigments for a mixture by their three bands, each with draws of what it might be: its readings moved by their repeat, its K and S by how far three bands depart from a spectrum.</summary>
/// <remarks>The departures were set on one half of the simulated pigments and are tested on the other; docs/models/match.md.</remarks>
public static class ThreeBandPigments
{
    /// <summary>How many times each pigment is drawn.</summary>
    public const int Draws = 200;

    // Standard deviation of the logarithm of K and of S of each band from a drawdown; set so that shares and colours of each half of the simulated pigments are held nine times in ten.
    private const double DrawdownLogUnits = 0.12;

    // Standard deviation of the reflectance of a hiding layer in each band; set in the same way.
    private const double HidingShare = 0.03;

    // Below this a reflectance says only that the film is very dark.
    private const double Darkest = 1e-3;

    /// <summary>How much lakes scatter beside one another, nine times in ten: the spread of the simulated pigments, invented, no source.</summary>
    public static Estimate ScatteringOfLakes { get; } = new(1, 0.45, 2.2);

    // Nine in ten draws of three equal normal errors lie within this many of their standard deviations (chi, three degrees of freedom).
    private const double NineInTenOfThree = 2.5003;

    /// <summary>A pigment by a drawdown over black and white; null when a band hides, is clear, or is out of range.</summary>
    /// <param name="key">What it is called.</param>
    /// <param name="read">The colours.</param>
    /// <param name="surface">The surface of film and grounds.</param>
    /// <param name="readingHalfWidthShare">Nine readings in ten lie so near the truth, as a reflectance.</param>
    /// <param name="seed">Seed of its draws.</param>
    public static ShelfPigment? OfDrawdown(string key, ColourDrawdown read, Surface surface, double readingHalfWidthShare, ulong seed)
    {
        ArgumentNullException.ThrowIfNull(read);
        IReadOnlyList<double>[] bands = [ThreeBand.Reflectances(read.OverBlack), ThreeBand.Reflectances(read.Black), ThreeBand.Reflectances(read.OverWhite), ThreeBand.Reflectances(read.White)];
        Layer?[] known = [.. Enumerable.Range(0, ThreeBand.Nanometres.Count).Select(i => Film(i, _ => 0))];
        if (!Array.TrueForAll(known, k => k is not null)) return null;
        var random = new SeededRandom(seed);
        double sd = readingHalfWidthShare / Distributions.NormalHalfWidth90;
        return new ShelfPigment(key, [.. known.Select(k => k!.Value)])
        {
            // A draw that no film answers to says only that the film is as it is known.
            Drawn = [.. Enumerable.Range(0, Draws).Select(_ => (IReadOnlyList<Layer>)[.. known.Select((k, i) => Moved(Film(i, _ => sd * random.NextNormal()) ?? k!.Value, random, DrawdownLogUnits))])],
        };

        Layer? Film(int band, Func<int, double> off) =>
            new FilmMeasurement(new Drawdown(bands[0][band] + off(0), bands[1][band] + off(1), bands[2][band] + off(2), bands[3][band] + off(3)), surface, readingHalfWidthShare).Found is FilmFound.Known { Film: var film } ? film : null;
    }

    /// <summary>A pigment by the colour of a layer that hides, which tells K/S alone; its scattering is a guess with a span.</summary>
    /// <param name="key">What it is called.</param>
    /// <param name="colour">The colour.</param>
    /// <param name="withinDeltaE">Nine times in ten the true colour is no farther.</param>
    /// <param name="scattering">S beside that of the others.</param>
    /// <param name="surface">The surface of the layer.</param>
    /// <param name="seed">Seed of its draws.</param>
    public static ShelfPigment OfHidingLayer(string key, Lab colour, double withinDeltaE, Estimate scattering, Surface surface, ulong seed)
    {
        var random = new SeededRandom(seed);
        double sd = withinDeltaE / NineInTenOfThree, logSd = Math.Log(scattering.High / scattering.Low) / (2 * Distributions.NormalHalfWidth90);
        return new ShelfPigment(key, [.. ThreeBand.AbsorptionRatios(colour, surface).Select(r => new Layer(r * scattering.Value, scattering.Value))]) { Drawn = [.. Enumerable.Range(0, Draws).Select(_ => Draw())] };

        IReadOnlyList<Layer> Draw()
        {
            double s = scattering.Value * Math.Exp(logSd * random.NextNormal());
            return [.. ThreeBand.Reflectances(Off(colour, sd, random)).Select(r => new Layer(s * FilmOptics.AbsorptionRatio(Math.Clamp(surface.Inside(r + HidingShare * random.NextNormal()), Darkest, 1)), s))];
        }
    }

    private static Layer Moved(Layer film, SeededRandom random, double sd) =>
        new(film.AbsorbedUnits * Math.Exp(sd * random.NextNormal()), film.ScatteredUnits * Math.Exp(sd * random.NextNormal()));

    /// <summary>A colour moved in lightness, chroma and hue, each by as much as counts alike in CIEDE2000.</summary>
    private static Lab Off(Lab colour, double sd, SeededRandom random)
    {
        (double sl, double sc, double sh) = Ciede2000.Weights(colour.L, colour.Chroma, colour.HueDegrees);
        double l = sd * sl * random.NextNormal(), c = sd * sc * random.NextNormal(), h = sd * sh * random.NextNormal();
        (double sin, double cos) = Math.SinCos(colour.HueDegrees * Math.PI / 180);
        return new Lab(Math.Clamp(colour.L + l, 0, 100), colour.A + c * cos - h * sin, colour.B + c * sin + h * cos);
    }
}
