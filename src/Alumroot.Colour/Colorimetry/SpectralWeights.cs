namespace Alumroot.Colour.Colorimetry;

/// <summary>Weights that turn a spectrum with given wavelengths into tristimulus values under one condition.</summary>
/// <remarks>
/// <para>Steps of 1 nm and 5 nm on whole multiples: the plain sum of the tables (CIE 015:2018), from 380 nm or from the spectrum's first wavelength if that is lower, to 780 nm.</para>
/// <para>Every other spacing: the values are laid by Lagrange curves between four neighbours (three in the end intervals) and summed every nanometre from 360 to 780 nm, the weights of ASTM E2022.</para>
/// <para>Missing ends are held at the first and last value (ASTM E308, from memory).</para>
/// </remarks>
public sealed class SpectralWeights
{
    private const int LastSummedNanometres = 780, PlainFirstNanometres = 380;
    private const double Same = 0.02;

    private readonly double[] _x, _y, _z;

    private SpectralWeights(double[] x, double[] y, double[] z)
    {
        double scale = 100 / y.Sum();
        (_x, _y, _z) = (Scaled(x, scale), Scaled(y, scale), Scaled(z, scale));
        White = new Xyz(_x.Sum(), _y.Sum(), _z.Sum());
    }

    /// <summary>The perfect diffuser by the same sum; Y = 100.</summary>
    public Xyz White { get; }

    /// <summary>The number of wavelengths that the weights are for.</summary>
    public int Count => _x.Length;

    /// <summary>The weights for X at each wavelength; those of a colour of value 1 everywhere add to the white.</summary>
    public ReadOnlySpan<double> X => _x;

    /// <summary>The weights for Y at each wavelength.</summary>
    public ReadOnlySpan<double> Y => _y;

    /// <summary>The weights for Z at each wavelength.</summary>
    public ReadOnlySpan<double> Z => _z;

    /// <summary>The weights for a spectrum's own wavelengths.</summary>
    public static SpectralWeights For(ViewingCondition condition, Spectrum spectrum)
    {
        ArgumentNullException.ThrowIfNull(condition);
        ArgumentNullException.ThrowIfNull(spectrum);
        IReadOnlyList<double> at = spectrum.Nanometres;
        int step = spectrum.StepNanometres is { } even && (Math.Abs(even - 1) < Same / at.Count || Math.Abs(even - 5) < Same / at.Count) ? (int)Math.Round(even) : 0;
        bool plain = step > 0 && Math.Abs(at[0] - step * Math.Round(at[0] / step)) < Same;
        return plain ? Plain(condition, (int)Math.Round(at[0]), step, at.Count) : Interpolating(condition, at);
    }

    /// <summary>Tristimulus values of a spectrum's values.</summary>
    /// <param name="values">One for each wavelength that the weights are for.</param>
    public Xyz Of(ReadOnlySpan<double> values)
    {
        if (values.Length != _x.Length) throw new ArgumentException("The weights are for another number of wavelengths.", nameof(values));
        double x = 0, y = 0, z = 0;
        for (int i = 0; i < values.Length; i++)
        {
            x += _x[i] * values[i];
            y += _y[i] * values[i];
            z += _z[i] * values[i];
        }
        return new Xyz(x, y, z);
    }

    /// <summary>CIELAB of a spectrum's values.</summary>
    public Lab LabOf(ReadOnlySpan<double> values) => Lab.From(Of(values), White);

    private static SpectralWeights Plain(ViewingCondition condition, int first, int step, int count)
    {
        var sum = new Adder(condition, count);
        int least = Math.Max(Math.Clamp(first, Observer.FirstNanometres, PlainFirstNanometres), LeastOf(condition));
        for (int at = (least + step - 1) / step * step; at <= MostOf(condition); at += step) sum.Add(at, Math.Clamp((at - first) / step, 0, count - 1), 1);
        return sum.Done();
    }

    private static SpectralWeights Interpolating(ViewingCondition condition, IReadOnlyList<double> nodes)
    {
        var sum = new Adder(condition, nodes.Count);
        Span<double> share = stackalloc double[4];
        for (int at = LeastOf(condition), k = 0; at <= MostOf(condition); at++)
        {
            while (k < nodes.Count - 2 && nodes[k + 1] <= at) k++;
            if (at <= nodes[0]) sum.Add(at, 0, 1);
            else if (at >= nodes[^1]) sum.Add(at, nodes.Count - 1, 1);
            else
            {
                int low = Math.Max(0, k - 1), high = Math.Min(nodes.Count - 1, k + 2);
                Lagrange(nodes, low, high, at, share);
                for (int i = low; i <= high; i++) sum.Add(at, i, share[i - low]);
            }
        }
        return sum.Done();
    }

    private static void Lagrange(IReadOnlyList<double> nodes, int low, int high, double at, Span<double> share)
    {
        for (int i = low; i <= high; i++)
        {
            double p = 1;
            for (int j = low; j <= high; j++)
                if (j != i) p *= (at - nodes[j]) / (nodes[i] - nodes[j]);
            share[i - low] = p;
        }
    }

    private static int LeastOf(ViewingCondition condition) => Math.Max(Observer.FirstNanometres, (int)Math.Ceiling(condition.Light.FirstNanometres));

    private static int MostOf(ViewingCondition condition) => Math.Min(LastSummedNanometres, (int)Math.Floor(condition.Light.LastNanometres));

    private static double[] Scaled(double[] weights, double scale) => Array.ConvertAll(weights, w => w * scale);

    private sealed class Adder(ViewingCondition condition, int count)
    {
        private readonly double[] _x = new double[count], _y = new double[count], _z = new double[count];

        internal void Add(int nanometres, int index, double share)
        {
            double power = share * condition.Light.PowerAt(nanometres);
            Xyz matching = condition.Eye.MatchingAt(nanometres);
            _x[index] += power * matching.X;
            _y[index] += power * matching.Y;
            _z[index] += power * matching.Z;
        }

        internal SpectralWeights Done() => new(_x, _y, _z);
    }
}
