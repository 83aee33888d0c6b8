using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Photograph;
using MathNet.Numerics.LinearAlgebra;

namespace Alumroot.Colour.Tests.Photograph;

/// <summary>Simulated photographs against their truth, and against the fit that the literature names, made by a general library.</summary>
public sealed class PhotoMeasurementTests
{
    private const int Photos = 60;

    private static readonly Lazy<IReadOnlyList<(SimulatedPhoto Photo, PhotoAnswer Answer)>> Measured = new(() =>
        [.. ParallelEnumerable.Range(1, Photos).AsOrdered().Select(seed => new SimulatedPhoto((ulong)seed)).Select(p => (p, PhotoMeasurement.Measure(p.Ask()).Answer!))]);

    [Fact]
    public void Colours_are_nearer_than_by_a_root_polynomial_alone()
    {
        // Finlayson, Mackiewicz and Hurlbert 2015, degree 2, least squares on the same patches, light taken as even; MathNet.Numerics solves it.
        double ours = 0, plain = 0;
        int n = 0;
        foreach ((SimulatedPhoto photo, PhotoAnswer answer) in Measured.Value)
        {
            Func<LinearRgb, Lab> fit = PlainFit(photo);
            foreach ((PhotoColour colour, (PhotoSwatch swatch, Lab truth)) in answer.Colours.Zip(photo.Swatches))
            {
                if (colour.IsClipped) continue;
                ours += Ciede2000.Of(colour.Colour, truth).DeltaE;
                plain += Ciede2000.Of(fit(PatchReading.Of(photo.Picture, swatch.Corners, 0.6)!.Value.Mean), truth).DeltaE;
                n++;
            }
        }
        Assert.True(n > 350);
        Assert.True(ours / n < 1.2, $"{ours / n:0.000}");
        Assert.True(ours < 0.6 * plain, $"{ours / n:0.000} against {plain / n:0.000}");
    }

    [Fact]
    public void Nine_truths_in_ten_lie_within_the_interval()
    {
        bool[] inside = [.. Measured.Value.SelectMany(m => m.Answer.Colours.Zip(m.Photo.Swatches, (c, s) => Ciede2000.Of(c.Colour, s.Truth).DeltaE <= c.IntervalDeltaE2000))];
        double share = inside.Count(i => i) / (double)inside.Length;
        Assert.InRange(share, 0.85, 0.95);
    }

    [Fact]
    public void Patches_told_from_the_others_are_as_far_off_as_is_said()
    {
        foreach ((SimulatedPhoto photo, PhotoAnswer answer) in Measured.Value)
        {
            double[] off = [.. answer.PatchesToldFromOthers.Zip(photo.Truths).Where(p => p.First is not null).Select(p => Ciede2000.Of(p.First!.Value, p.Second).DeltaE)];
            Assert.Equal(off.Average(), answer.LeftOutMeanDeltaE2000!.Value, 1e-9);
            Assert.Equal(off.Max(), answer.LeftOutMostDeltaE2000!.Value, 1e-9);
        }
    }

    [Fact]
    public void The_grid_is_found_from_its_edges()
    {
        foreach ((_, PhotoAnswer answer) in Measured.Value)
        {
            Assert.Equal(SimulatedPhoto.Columns, answer.Grid!.Columns);
            Assert.Equal(SimulatedPhoto.Grid.MarginShare, answer.Grid.MarginShare, 0.012);
            Assert.Equal(SimulatedPhoto.Grid.PatchShare + SimulatedPhoto.Grid.GapShare, answer.Grid.PatchShare + answer.Grid.GapShare, 0.004);
        }
    }

    [Fact]
    public void Strong_colours_that_the_file_cuts_off_are_told_within_their_interval()
    {
        (PhotoColour Colour, Lab Truth)[] cut = [.. ParallelEnumerable.Range(1, 60).AsOrdered().Select(seed => new SimulatedPhoto((ulong)seed, strong: true)).SelectMany(p => PhotoMeasurement.Measure(p.Ask()).Answer!.Colours.Zip(p.Swatches, (c, s) => (c, s.Truth))).Where(s => s.c.ClippedLow)];
        double[] off = [.. cut.Select(c => Ciede2000.Of(c.Colour.Colour, c.Truth).DeltaE)];
        Assert.True(cut.Length > 30, $"{cut.Length}");
        Assert.True(off.Average() < 3.4, $"{off.Average():0.00} over {cut.Length}");
        double inside = cut.Zip(off, (c, e) => e <= c.Colour.IntervalDeltaE2000).Count(i => i) / (double)cut.Length;
        Assert.InRange(inside, 0.85, 0.99);
    }

    [Fact]
    public void Dust_and_a_gleam_are_left_out()
    {
        var photo = new SimulatedPhoto(7);
        PhotoAnswer clean = PhotoMeasurement.Measure(photo.Ask()).Answer!;
        Quad area = photo.Swatches[4].Swatch.Corners;
        Raster spoiled = Painted(photo.Picture, (x, y) => area.Holds(x, y) && (x + 3 * y) % 11 < 2 ? (byte)250 : null);
        PhotoAnswer dusty = PhotoMeasurement.Measure(photo.Ask() with { Picture = spoiled }).Answer!;
        Assert.True(Ciede2000.Of(clean.Colours[4].Colour, dusty.Colours[4].Colour).DeltaE < 0.4);
        Assert.InRange(dusty.Colours[4].LeftOutShare, 0.15, 0.25);
    }

    [Fact]
    public void Another_reference_is_refused()
    {
        for (ulong seed = 1; seed <= 12; seed++)
        {
            var photo = new SimulatedPhoto(seed);
            Lab[] turned = [.. photo.Truths.Reverse()];
            Assert.Equal(PhotoTrouble.NotThisTarget, PhotoMeasurement.Measure(photo.Ask() with { Truths = turned }).Trouble);
        }
    }

    [Fact]
    public void Corners_outside_or_crossed_are_refused()
    {
        var photo = new SimulatedPhoto(9);
        Quad t = photo.Target;
        Assert.Equal(PhotoTrouble.CornersUnfit, PhotoMeasurement.Measure(photo.Ask(new Quad(t.TopLeft, t.BottomRight, t.TopRight, t.BottomLeft))).Trouble);
        Assert.Equal(PhotoTrouble.CornersUnfit, PhotoMeasurement.Measure(photo.Ask(t with { TopLeft = new(-40, 10) })).Trouble);
        Assert.Equal(PhotoTrouble.TooFewPatches, PhotoMeasurement.Measure(photo.Ask(new Quad(new(10, 10), new(30, 10), new(30, 24), new(10, 24)))).Trouble);
    }

    [Fact]
    public void A_thing_outside_the_picture_is_named_and_changes_nothing_else()
    {
        PhotoAsk ask = new SimulatedPhoto(9).Ask();
        PhotoAnswer whole = PhotoMeasurement.Measure(ask).Answer!, more = PhotoMeasurement.Measure(ask with { Swatches = [.. ask.Swatches, new PhotoSwatch("far", new Quad(new(4000, 4000), new(4100, 4000), new(4100, 4100), new(4000, 4100)))] }).Answer!;
        Assert.Equal(["far"], more.Unread);
        Assert.Equal(whole.LightUnevenPercent, more.LightUnevenPercent);
        Assert.Equal(whole.Colours, more.Colours);
    }

    [Fact]
    public void A_white_sheet_that_burns_out_is_said_to_be_clipped()
    {
        var photo = new SimulatedPhoto(10);
        Quad area = photo.Swatches[0].Swatch.Corners;
        PhotoAnswer answer = PhotoMeasurement.Measure(photo.Ask() with { Picture = Painted(photo.Picture, (x, y) => area.Holds(x, y) ? (byte)255 : null) }).Answer!;
        Assert.True(answer.Colours[0].IsClipped);
        Assert.False(answer.Colours[0].ClippedLow);
        Assert.False(answer.Colours[1].IsClipped);
    }

    internal static Raster Painted(Raster picture, Func<int, int, byte?> paint)
    {
        var bytes = new byte[3 * picture.Width * picture.Height];
        for (int y = 0; y < picture.Height; y++)
        {
            picture.Row(y).CopyTo(bytes.AsSpan(3 * y * picture.Width));
            for (int x = 0; x < picture.Width; x++)
                if (paint(x, y) is { } value) bytes.AsSpan(3 * (y * picture.Width + x), 3).Fill(value);
        }
        return new Raster(picture.Width, picture.Height, bytes, picture.Colours);
    }

    private static Func<LinearRgb, Lab> PlainFit(SimulatedPhoto photo)
    {
        var rows = new List<double[]>();
        var truths = new List<double[]>();
        for (int i = 0; i < photo.Truths.Count; i++)
        {
            PatchReading reading = PatchReading.Of(photo.Picture, SimulatedPhoto.Grid.Patch(photo.Target, i), 0.6)!.Value;
            if (reading.IsClipped) continue;
            rows.Add(Terms(reading.Mean));
            Xyz xyz = photo.Truths[i].ToXyz(ColourNames.White);
            truths.Add([xyz.X, xyz.Y, xyz.Z]);
        }
        Matrix<double> factors = Matrix<double>.Build.DenseOfRowArrays(rows).QR().Solve(Matrix<double>.Build.DenseOfRowArrays(truths));
        return seen =>
        {
            Vector<double> v = factors.LeftMultiply(Vector<double>.Build.Dense(Terms(seen)));
            return Lab.From(new Xyz(v[0], v[1], v[2]), ColourNames.White);
        };

        static double[] Terms(LinearRgb s) => [s.R, s.G, s.B, Math.Sqrt(Math.Max(0, s.R * s.G)), Math.Sqrt(Math.Max(0, s.G * s.B)), Math.Sqrt(Math.Max(0, s.R * s.B))];
    }
}
