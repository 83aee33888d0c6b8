using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Photograph;
using Alumroot.Numerics;

namespace Alumroot.Colour.Tests.Photograph;

/// <summary>A photograph with known truth: measured reflectances (reflectances.csv) in a tabulated light, seen by an invented camera, with uneven light, stray light, noise and sometimes contrast.</summary>
internal sealed class SimulatedPhoto
{
    internal const int Columns = 6, Rows = 4, Width = 800, Height = 600;

    // The target in its own frame, one unit wide: a dark frame with square patches.
    internal static readonly TargetGrid Grid = new(Columns, Rows, 0.045, 0.13, 0.026);
    private const double TargetHeight = 2 * 0.045 + 4 * 0.13 + 3 * 0.026;
    private static readonly double[] Greys = [0.9, 0.59, 0.36, 0.2, 0.09, 0.032];
    private static readonly string[] Lights = ["D50", "D65", "A", "F2", "F11", "LED-B3", "D55"];
    private static readonly Lazy<IReadOnlyList<double[]>> Measured = new(() => [.. Given.Reflectances(5).Select(r => r.Spectrum.Values.ToArray())]);

    private readonly SeededRandom _random;
    private readonly double[] _light;
    private readonly double[][] _eye;
    private readonly double[,] _matrix;
    private readonly double _exposure, _glare, _contrast, _slopeX, _slopeY, _corner;
    private readonly double[] _balance;

    internal SimulatedPhoto(ulong seed, int turn = 0, bool card = false, bool strong = false)
    {
        _random = new SeededRandom(seed);
        LightName = Lights[_random.NextBelow(Lights.Length)];
        Illuminant light = Illuminant.Find(LightName)!;
        _light = [.. Enumerable.Range(0, 81).Select(i => light.PowerAt(380 + 5 * i))];
        _eye = Camera();
        _matrix = ToScreen(_eye, _light, Between(0.7, 1));
        (_exposure, _glare, _contrast) = (0.9 * Math.Pow(2, Between(-0.6, 0.1)), Between(0.002, 0.01), _random.NextFraction() < 0.3 ? Between(0.05, 0.25) : 0);
        (_slopeX, _slopeY, _corner) = (Between(-0.2, 0.2), Between(-0.12, 0.12), Between(0, 0.2));
        _balance = [1 + 0.02 * _random.NextNormal(), 1, 1 + 0.02 * _random.NextNormal()];
        IReadOnlyList<double[]> all = Measured.Value;
        int[] order = [.. Enumerable.Range(0, all.Count).OrderBy(_ => _random.NextBits())];
        double[][] patches = [.. order.Take(18).Select(i => all[i]), .. Greys.Select(g => Flat(g))];
        Truths = [.. patches.Select(LabOf)];
        Target = Place(turn);
        var things = new List<(Quad Area, double[] Reflectance)> { (Target, Flat(0.03)) };
        for (int i = 0; i < patches.Length; i++) things.Add((Grid.Patch(Target, i), patches[i]));
        double swatchLeft = Target.Corners.Max(c => c.X) < 0.62 * Width ? 0.68 * Width : 0.06 * Width;
        for (int k = 0; k < 9; k++)
        {
            double[] a = all[order[18 + (k % 12)]], b = all[order[18 + ((k + 5) % 12)]];
            double share = Between(0, 0.4), x = swatchLeft + 75 * (k % 3), y = 150 + 85 * (k / 3);
            double[] mixed = strong ? Strong(k) : [.. a.Select((v, i) => (1 - share) * v + share * b[i])];
            var area = new Quad(new(x, y), new(x + 52, y + Between(-3, 3)), new(x + 52, y + 52), new(x + Between(-2, 2), y + 52));
            things.Add((area, mixed));
            Swatches.Add((new PhotoSwatch($"S{k + 1}", area), LabOf(mixed)));
        }
        if (card) things.Add((Card = new(new(80, 520), new(300, 521), new(300, 560), new(80, 560)), Flat(0.88)));
        Picture = Drawn(things);
    }

    internal string LightName { get; }

    internal Raster Picture { get; }

    internal Quad Target { get; }

    internal Quad Card { get; }

    internal IReadOnlyList<Lab> Truths { get; }

    internal List<(PhotoSwatch Swatch, Lab Truth)> Swatches { get; } = [];

    internal PhotoAsk Ask(Quad? target = null, TargetGrid? grid = null) => new(Picture, Truths, target ?? Target, grid, [.. Swatches.Select(s => s.Swatch)]);

    /// <summary>The light at a place, as a share of that in the middle.</summary>
    internal double LightAt(double px, double py)
    {
        double x = (px - Width / 2.0) / (Width / 2.0), y = (py - Height / 2.0) / (Width / 2.0);
        return Math.Exp(_slopeX * x + _slopeY * y) * (1 - _corner * (x * x + y * y) / 1.5625);
    }

    private static double[] Flat(double reflectance) => [.. Enumerable.Repeat(reflectance, 81)];

    private static Lab LabOf(double[] reflectance) => SpectralWeights.For(ViewingCondition.Graphic, Spectrum.Regular(380, 5, reflectance)).LabOf(reflectance);

    private double Between(double low, double high) => low + (high - low) * _random.NextFraction();

    /// <summary>A strong colour as a smooth step from dark to bright: yellows and oranges that rise, blue-greens and blues that fall.</summary>
    private double[] Strong(int place)
    {
        bool rises = place % 2 == 0;
        double low = Between(0.03, 0.06), high = Between(0.4, 0.85), middle = rises ? Between(480, 560) : Between(540, 600), width = rises ? -Between(10, 25) : Between(20, 35);
        return [.. Enumerable.Range(0, 81).Select(i => low + (high - low) / (1 + Math.Exp((380 + 5 * i - middle) / width)))];
    }

    /// <summary>Three bells with some cross-talk, none of them those of the standard observer.</summary>
    private double[][] Camera()
    {
        double red = Between(595, 612), green = Between(528, 545), blue = Between(450, 468), ripple = Between(0, 6.28);
        return
        [
            [.. Enumerable.Range(0, 81).Select(i => 380.0 + 5 * i).Select(w => (Bell(w, red, 28, 38) + 0.08 * Bell(w, green, 38, 40) + 0.03 * Bell(w, blue, 24, 30)) * Edge(w) * (1 + 0.05 * Math.Sin(w / 25 + ripple)))],
            [.. Enumerable.Range(0, 81).Select(i => 380.0 + 5 * i).Select(w => (Bell(w, green, 36, 40) + 0.1 * Bell(w, blue, 30, 30) + 0.08 * Bell(w, red, 30, 40)) * Edge(w))],
            [.. Enumerable.Range(0, 81).Select(i => 380.0 + 5 * i).Select(w => (Bell(w, blue, 24, 32) + 0.05 * Bell(w, green, 35, 40)) * Edge(w) * (1 + 0.05 * Math.Cos(w / 30 + ripple)))],
        ];

        static double Bell(double w, double middle, double below, double above) => Math.Exp(-0.5 * Math.Pow((w - middle) / (w < middle ? below : above), 2));

        static double Edge(double w) => w < 680 ? 1 : Math.Exp((680 - w) / 15);
    }

    /// <summary>What a camera does inside: a matrix to its screen colours that keeps white, fitted to some reflectances, and here only in part.</summary>
    private static double[,] ToScreen(double[][] eye, double[] light, double share)
    {
        var normal = new double[9];
        var right = new double[3][];
        for (int c = 0; c < 3; c++) right[c] = new double[3];
        foreach (double[] r in Measured.Value)
        {
            double[] raw = Raw(eye, light, r);
            Srgb screen = Srgb.From(LabOf(r).ToXyz(ColourNames.White), ColourNames.White);
            double[] wanted = [Decoded(screen.Red / 255.0), Decoded(screen.Green / 255.0), Decoded(screen.Blue / 255.0)];
            for (int i = 0; i < 3; i++)
                for (int j = 0; j < 3; j++)
                {
                    normal[3 * i + j] += raw[i] * raw[j];
                    right[j][i] += raw[i] * wanted[j];
                }
        }
        DenseCholesky.Factor(normal, 3);
        var matrix = new double[3, 3];
        for (int c = 0; c < 3; c++)
        {
            DenseCholesky.SolveLower(normal, right[c], 3);
            DenseCholesky.SolveUpper(normal, right[c], 3);
            double sum = right[c].Sum();
            for (int j = 0; j < 3; j++) matrix[c, j] = share * right[c][j] / sum + (c == j ? 1 - share : 0);
        }
        return matrix;
    }

    private static double[] Raw(double[][] eye, double[] light, double[] reflectance) =>
        [.. eye.Select(s => s.Select((v, i) => v * light[i] * reflectance[i]).Sum() / s.Select((v, i) => v * light[i]).Sum())];

    private Quad Place(int turn)
    {
        double wide = turn % 2 == 0 ? 300 : 210, left = Between(40, 120), top = Between(110, 170), lean = Between(-14, 14), pinch = Between(-8, 8);
        double high = wide * (turn % 2 == 0 ? TargetHeight : 1 / TargetHeight);
        PixelPoint[] seen = [new(left, top + lean), new(left + wide, top), new(left + wide + pinch, top + high), new(left + pinch, top + high - lean / 2)];
        return new(seen[turn % 4], seen[(1 + turn) % 4], seen[(2 + turn) % 4], seen[(3 + turn) % 4]);
    }

    private Raster Drawn(List<(Quad Area, double[] Reflectance)> things)
    {
        var pixels = new byte[3 * Width * Height];
        double[] ground = Developed(Flat(0.42)), stray = [.. ground.Select(v => v * _glare)];
        var colours = things.ConvertAll(t => (t.Area, Seen: Developed(t.Reflectance), Left: (int)t.Area.Corners.Min(c => c.X), Right: (int)t.Area.Corners.Max(c => c.X) + 1, Top: (int)t.Area.Corners.Min(c => c.Y), Bottom: (int)t.Area.Corners.Max(c => c.Y) + 1));
        for (int y = 0; y < Height; y++)
            for (int x = 0; x < Width; x++)
            {
                double[] seen = ground;
                for (int k = colours.Count - 1; k >= 0; k--)
                {
                    var c = colours[k];
                    if (x < c.Left || x > c.Right || y < c.Top || y > c.Bottom || !c.Area.Holds(x, y)) continue;
                    seen = c.Seen;
                    break;
                }
                double light = LightAt(x, y) * (1 + 0.012 * Noise());
                for (int c = 0; c < 3; c++)
                {
                    double v = Encoded(Math.Clamp(light * seen[c] + stray[c] + 0.0012 * Noise(), 0, 1));
                    v = (1 - _contrast) * v + _contrast * v * v * (3 - 2 * v);
                    pixels[3 * (y * Width + x) + c] = (byte)Math.Round(255 * v);
                }
            }
        return new Raster(Width, Height, pixels, PixelColours.Srgb);
    }

    // A sum of three even draws is near enough to normal and quick.
    private double Noise() => 2 * (_random.NextFraction() + _random.NextFraction() + _random.NextFraction() - 1.5);

    private double[] Developed(double[] reflectance)
    {
        double[] raw = Raw(_eye, _light, reflectance);
        return [.. Enumerable.Range(0, 3).Select(c => _exposure * _balance[c] * (_matrix[c, 0] * raw[0] + _matrix[c, 1] * raw[1] + _matrix[c, 2] * raw[2]))];
    }

    private static double Encoded(double v) => v <= 0.0031308 ? 12.92 * v : 1.055 * Math.Pow(v, 1 / 2.4) - 0.055;

    private static double Decoded(double v) => v <= 0.04045 ? v / 12.92 : Math.Pow((v + 0.055) / 1.055, 2.4);
}
