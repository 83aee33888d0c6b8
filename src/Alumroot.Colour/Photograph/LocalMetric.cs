using Alumroot.Colour.Colorimetry;

namespace Alumroot.Colour.Photograph;

/// <summary>The straight coordinates near one colour in which a small step is as long as CIEDE2000 says; its turning term is left out.</summary>
internal readonly struct LocalMetric
{
    // L* has its own scale; a* and b* are mixed by a matrix that shortens along chroma and across it, and turns nothing.
    private readonly double _l, _aa, _ab, _ba, _bb;
    private readonly Lab _at;

    internal LocalMetric(Lab at)
    {
        double stretch = Ciede2000.Stretch(at.Chroma);
        var stretched = new Lab(at.L, stretch * at.A, at.B);
        (double sl, double sc, double sh) = Ciede2000.Weights(at.L, stretched.Chroma, stretched.HueDegrees);
        (double cos, double sin) = stretched.Chroma < 1e-6 ? (1, 0) : (stretched.A / stretched.Chroma, stretched.B / stretched.Chroma);
        _at = at;
        _l = 1 / sl;
        _aa = stretch * (cos * cos / sc + sin * sin / sh);
        _ab = cos * sin * (1 / sc - 1 / sh);
        _ba = stretch * _ab;
        _bb = sin * sin / sc + cos * cos / sh;
    }

    /// <summary>The colour it stands at.</summary>
    internal Lab At => _at;

    /// <summary>Coordinates of a small step in Lab.</summary>
    internal (double L, double A, double B) Step(double dl, double da, double db) => (_l * dl, _aa * da + _ab * db, _ba * da + _bb * db);

    /// <summary>The colour a step away.</summary>
    internal Lab After(double l, double a, double b)
    {
        double det = _aa * _bb - _ab * _ba;
        return new Lab(_at.L + l / _l, _at.A + (a * _bb - b * _ab) / det, _at.B + (b * _aa - a * _ba) / det);
    }

    /// <summary>Three rows of three: how the coordinates answer to X, Y, Z as shares of a white.</summary>
    internal void FillSlopes(Xyz white, Span<double> rows)
    {
        Xyz xyz = _at.ToXyz(white);
        double fx = Lab.SignalSlope(xyz.X / white.X) / white.X, fy = Lab.SignalSlope(xyz.Y / white.Y) / white.Y, fz = Lab.SignalSlope(xyz.Z / white.Z) / white.Z;
        // L* = 116 fy, a* = 500 (fx - fy), b* = 200 (fy - fz), each less a constant.
        for (int k = 0; k < 3; k++)
        {
            (double dl, double da, double db) = k switch { 0 => (0, 500 * fx, 0.0), 1 => (116 * fy, -500 * fy, 200 * fy), _ => (0, 0, -200 * fz) };
            (rows[k], rows[3 + k], rows[6 + k]) = Step(dl, da, db);
        }
    }
}
