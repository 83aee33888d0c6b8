using Alumroot.Numerics;

namespace Alumroot.Chemistry.Assimilation;

/// <summary>One whole path read at many strengths of what is poured: how well each fits all readings, how well all together, and one strength drawn from them.</summary>
/// <remarks>
/// Where the pH turns, the readings hold the place of the turn to a thousandth, a curved ridge in the space of the unknowns that a normal cannot follow. Along
/// the strength of what is poured the path only stretches, so this one unknown is taken out exactly, on a grid laid twice: over its span, then finely about the best.
/// </remarks>
internal sealed class StrengthGrid
{
    private const int Coarse = 41, Fine = 41;
    private readonly BenchCase _case;
    private readonly WholePath _path;
    private readonly BenchTruth _truth;
    private readonly double _middle;
    private readonly List<(double Z, double Log)> _points = [];

    internal StrengthGrid(BenchCase c, WholePath path, BenchTruth truth, double lowZ, double highZ)
    {
        (_case, _path, _truth) = (c, path, truth);
        _middle = c.PouredStrength(0);
        if (c.Log.Readings.Count == 0 || c.PouredStrength(lowZ) == c.PouredStrength(highZ))
        {
            _points.Add((0, -0.5 * 0 - Half(1, [])));
            return;
        }
        double step = (highZ - lowZ) / (Coarse - 1);
        for (int i = 0; i < Coarse; i++) Try(lowZ + i * step);
        double best = _points.MaxBy(p => p.Log).Z;
        for (int i = 0; i < Fine; i++) Try(best + (i - (Fine - 1) / 2 + 0.37) * 3 * step / Fine);
        _points.Sort((a, b) => a.Z.CompareTo(b.Z));
    }

    /// <summary>ln of the likelihood of all readings, over all strengths.</summary>
    internal double LogSum
    {
        get
        {
            if (_points.Count == 1) return _points[0].Log;
            double top = _points.Max(p => p.Log), sum = 0;
            for (int i = 1; i < _points.Count; i++) sum += Area(i, top);
            return top + Math.Log(sum / Math.Sqrt(2 * Math.PI));
        }
    }

    /// <summary>The strength that fits best, as a standard normal.</summary>
    internal double Best => _points.MaxBy(p => p.Log).Z;

    /// <summary>A strength, as a standard normal, at a share of the grid's whole weight.</summary>
    internal double Draw(double share)
    {
        if (_points.Count == 1) return _case.Log.Readings.Count == 0 ? Distributions.NormalQuantile(share) : 0;
        double top = _points.Max(p => p.Log), all = 0;
        for (int i = 1; i < _points.Count; i++) all += Area(i, top);
        double left = share * all;
        for (int i = 1; i < _points.Count; i++)
        {
            double area = Area(i, top);
            if (left <= area) return _points[i - 1].Z + (area > 0 ? left / area : 0) * (_points[i].Z - _points[i - 1].Z);
            left -= area;
        }
        return _points[^1].Z;
    }

    /// <summary>Distances of the readings at a strength, over the path's own.</summary>
    internal void Distances(double strength, Span<double> distance)
    {
        IReadOnlyList<BenchReading> readings = _case.Log.Readings;
        for (int k = 0; k < distance.Length; k++)
        {
            BenchReading r = readings[k];
            double at = _case.Log.PouredAt(r.Step, _case.SaltFirst) * strength;
            distance[k] = r.Value - r.Kind switch
            {
                ReadingKind.LnConductivity => _path.LnConductivityAt(at),
                ReadingKind.Temperature => _truth.Draw.CelsiusOff,
                _ => _path.PhAt(at) + _truth.Above(r.Kind),
            };
        }
    }

    private void Try(double z)
    {
        double[] distance = new double[_case.Log.Readings.Count];
        _points.Add((z, -0.5 * z * z - Half(_case.PouredStrength(z) / _middle, distance)));
    }

    private double Half(double strength, double[] distance)
    {
        if (distance.Length == 0) distance = new double[_case.Log.Readings.Count];
        Distances(strength, distance);
        _case.Log.Wave.Whiten(distance);
        return Misfit.Half(distance);
    }

    private double Area(int i, double top) => 0.5 * (Math.Exp(_points[i].Log - top) + Math.Exp(_points[i - 1].Log - top)) * (_points[i].Z - _points[i - 1].Z);
}
