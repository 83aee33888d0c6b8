using Alumroot.Numerics;
using Alumroot.Permanence.Fading;

namespace Alumroot.Permanence.Tests.Fading;

/// <summary>A light test with known truth: a sample of any published form beside blue wool references of first order that reach 1.7 at the doses of CIE 157 (two lights) or at doubled doses; readings with a sign or as lengths, strips with rates of their own.</summary>
internal sealed class SimulatedTest
{
    private static readonly double[][] Scales = [[0.22, 0.6, 1.5, 3.5, 8, 20, 50, 120], [0.3, 1, 3, 10, 30, 100, 300, 1100], [0.5, 1, 2, 4, 8, 16, 32, 64]];

    private readonly SeededRandom _random;
    private readonly bool _lengths;
    private readonly double _noise, _rate;
    private readonly int _strips;

    internal SimulatedTest(ulong seed)
    {
        _random = new SeededRandom(seed);
        double[] scale = Scales[_random.NextBelow(Scales.Length)];
        int below = 1 + _random.NextBelow(7);
        double share = Between(0.05, 0.95);
        Dose = Math.Exp((1 - share) * Math.Log(scale[below - 1]) + share * Math.Log(scale[below]));
        Class = below + share;
        Func<double, double> shape = Truth = Shape(_random.NextBelow(8));
        _lengths = _random.NextFraction() < 0.5;
        double[] noises = [0.1, 0.2, 0.3, 0.4, 0.6];
        _noise = noises[_random.NextBelow(_lengths ? 4 : 5)];
        double[] rates = [0, 0, 0.05, 0.1];
        _rate = rates[_random.NextBelow(4)];
        _strips = 2 + _random.NextBelow(4);
        int least = Math.Max(1, below - _random.NextBelow(3)), most = Math.Min(8, below + 1 + _random.NextBelow(3));
        double end = Math.Min(40 * Dose, scale[most - 1] * Between(1.5, 2.5));
        double[] doses = [0, .. Enumerable.Range(0, 13).Select(i => Dose / 20 * Math.Pow(20 * end / Dose, i / 12.0))];
        Series = [Read("sample", shape, doses), .. Enumerable.Range(least, most - least + 1).Select(number =>
        {
            double top = Between(20, 34), tau = -scale[number - 1] / Math.Log(1 - 1.7 / top);
            return Read($"BW{number}", h => top * (1 - Math.Exp(-h / tau)), doses);
        })];
    }

    internal double Dose { get; }

    internal double Class { get; }

    internal IReadOnlyList<FadingSeries> Series { get; }

    /// <summary>The true difference after a dose.</summary>
    internal Func<double, double> Truth { get; }

    private double Between(double low, double high) => low + (high - low) * _random.NextFraction();

    private FadingSeries Read(string name, Func<double, double> truth, double[] doses) => new(name, [.. Enumerable.Range(1, _strips).Select(strip =>
    {
        double own = Math.Exp(_rate * _random.NextNormal());
        double[] first = Three(), way = Three();
        double length = Math.Sqrt(way.Sum(w => w * w));
        return new FadingStrip($"{strip}", [.. doses.Select(dose =>
        {
            double change = truth(dose * own);
            if (dose == 0) return new FadingPoint(0, 0);
            if (!_lengths) return new FadingPoint(dose, change + _noise * _random.NextNormal());
            double[] now = Three();
            return new FadingPoint(dose, Math.Sqrt(Enumerable.Range(0, 3).Sum(c => Math.Pow(change * way[c] / length + _noise * (now[c] - first[c]), 2))));
        })]);
    })]);

    private double[] Three() => [_random.NextNormal(), _random.NextNormal(), _random.NextNormal()];

    private Func<double, double> Shape(int kind)
    {
        double top = Between(8, 30);
        switch (kind)
        {
            case 0:
                return AtDose(k => h => top * (1 - Math.Exp(-k * h)));
            case 1:
                double first = Between(2.2, 9), second = Between(6, 18), slower = Math.Exp(Between(1.1, 3.7));
                return AtDose(k => h => first * (1 - Math.Exp(-k * h)) + second * (1 - Math.Exp(-k / slower * h)));
            case 2:
                return h => Math.Min(top, 1.7 / Dose * h);
            case 3:
                double start = Between(2.2, 6), line = Math.Exp(Between(-3.9, -0.5));
                return AtDose(k => h => start * (1 - Math.Exp(-k * h)) + line * k * h);
            case 4:
                double power = Between(0.45, 0.95);
                return h => 1.7 * Math.Pow(h / Dose, power);
            case 5:
                double bend = Between(0.8, 2.2);
                return AtDose(k => h => top * (1 - Math.Exp(-Math.Pow(k * h, bend))));
            case 6:
                double stays = Math.Exp(Between(-5.3, -3.9)), goes = Between(0.3, 1.5);
                return AtDose(k => h => Math.Abs(Lightness(Opaque(stays + goes * Math.Exp(-k * h))) - Lightness(Opaque(stays + goes))));
            default:
                double absorbance = Between(0.4, 1.1), ground = Between(0.8, 0.9);
                return AtDose(k => h => Math.Abs(Lightness(ground * Math.Pow(10, -2 * Math.Log10(1 + (Math.Pow(10, absorbance) - 1) * Math.Pow(10, -k * h)))) - Lightness(ground * Math.Pow(10, -2 * absorbance))));
        }
    }

    /// <summary>The shape with the rate that makes 1.7 at the dose.</summary>
    private Func<double, double> AtDose(Func<double, Func<double, double>> make)
    {
        double low = 1e-6 / Dose, high = 1e4 / Dose;
        for (int i = 0; i < 200; i++)
        {
            double middle = Math.Sqrt(low * high);
            if (make(middle)(Dose) < 1.7) low = middle;
            else high = middle;
        }
        return make(Math.Sqrt(low * high));
    }

    private static double Opaque(double absorption) => 1 + absorption - Math.Sqrt(absorption * absorption + 2 * absorption);

    private static double Lightness(double y) => y > 216.0 / 24389 ? 116 * Math.Cbrt(y) - 16 : 24389.0 / 27 * y;
}
