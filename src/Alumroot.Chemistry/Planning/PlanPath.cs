namespace Alumroot.Chemistry.Planning;

/// <summary>One computed addition: what is in the pot after so much titrant.</summary>
internal sealed class PlanPath(int phases)
{
    private double[] _phaseMol = new double[64 * Math.Max(phases, 1)];

    internal int Count { get; private set; }

    internal double[] X { get; private set; } = new double[64];

    internal double[] Ph { get; private set; } = new double[64];

    internal double[] GasMol { get; private set; } = new double[64];

    internal double[] DissolvedFraction { get; private set; } = new double[64];

    internal double[] SolidGrams { get; private set; } = new double[64];

    internal double[] IonicStrength { get; private set; } = new double[64];

    internal void Add(double x, double ph, double gasMol, double dissolved, double solidGrams, double ionicStrength, ReadOnlySpan<double> phaseMol)
    {
        if (Count == X.Length)
        {
            X = Grow(X);
            Ph = Grow(Ph);
            GasMol = Grow(GasMol);
            DissolvedFraction = Grow(DissolvedFraction);
            SolidGrams = Grow(SolidGrams);
            IonicStrength = Grow(IonicStrength);
            _phaseMol = Grow(_phaseMol);
        }
        (X[Count], Ph[Count], GasMol[Count], DissolvedFraction[Count], SolidGrams[Count], IonicStrength[Count]) = (x, ph, gasMol, dissolved, solidGrams, ionicStrength);
        phaseMol.CopyTo(_phaseMol.AsSpan(Count * phases));
        Count++;
    }

    internal double LastX => X[Count - 1];

    /// <summary>A curve's value at x, straight between points, level beyond the ends.</summary>
    internal double At(double[] y, double x)
    {
        int i = Segment(x);
        double t = Share(i, x);
        return y[i] + t * (y[i + 1] - y[i]);
    }

    internal double PhaseMolAt(int phase, double x)
    {
        int i = Segment(x);
        double t = Share(i, x);
        double a = _phaseMol[i * phases + phase], b = _phaseMol[(i + 1) * phases + phase];
        return a + t * (b - a);
    }

    /// <summary>Where pH first reaches a value; negative infinity when it is above from the start, positive infinity when it never gets there.</summary>
    internal double FirstAtPh(double ph)
    {
        if (Ph[0] >= ph) return double.NegativeInfinity;
        for (int i = 1; i < Count; i++)
            if (Ph[i] >= ph) return X[i - 1] + (ph - Ph[i - 1]) / (Ph[i] - Ph[i - 1]) * (X[i] - X[i - 1]);
        return double.PositiveInfinity;
    }

    /// <summary>Where no more than this share of the metal is left in solution, for the first time.</summary>
    internal double FirstWithDissolvedBelow(double fraction)
    {
        for (int i = 0; i < Count; i++)
        {
            if (DissolvedFraction[i] > fraction) continue;
            if (i == 0) return X[0];
            double a = DissolvedFraction[i - 1], b = DissolvedFraction[i];
            return X[i - 1] + (a - fraction) / (a - b) * (X[i] - X[i - 1]);
        }
        return double.PositiveInfinity;
    }

    private int Segment(double x)
    {
        int low = 0, high = Count - 1;
        while (high - low > 1)
        {
            int mid = (low + high) >> 1;
            if (X[mid] <= x) low = mid;
            else high = mid;
        }
        return low;
    }

    private double Share(int i, double x) => Math.Clamp((x - X[i]) / (X[i + 1] - X[i]), 0, 1);

    private static double[] Grow(double[] a)
    {
        Array.Resize(ref a, a.Length * 2);
        return a;
    }
}
