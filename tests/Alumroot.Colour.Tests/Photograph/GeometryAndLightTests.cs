using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Photograph;
using CsCheck;

namespace Alumroot.Colour.Tests.Photograph;

public sealed class GeometryAndLightTests
{
    private static readonly Gen<Quad> AnyQuad = Gen.Select(Gen.Double[-30, 30].Array[8], Gen.Double[40, 2000], Gen.Double[40, 2000])
        .Select((d, w, h) => new Quad(new(d[0], d[1]), new(w + 100 + d[2], d[3]), new(w + 100 + d[4], h + 100 + d[5]), new(d[6], h + 100 + d[7])));

    [Fact]
    public void A_map_from_the_square_meets_the_corners_and_keeps_lines_straight() => AnyQuad.Sample(q =>
    {
        Homography map = Homography.FromUnitSquare(q)!;
        Assert.Equal(0, map.At(0, 0).DistanceTo(q.TopLeft), 1e-6);
        Assert.Equal(0, map.At(1, 0).DistanceTo(q.TopRight), 1e-6);
        Assert.Equal(0, map.At(1, 1).DistanceTo(q.BottomRight), 1e-6);
        Assert.Equal(0, map.At(0, 1).DistanceTo(q.BottomLeft), 1e-6);
        PixelPoint a = map.At(0.1, 0.8), b = map.At(0.4, 0.5), c = map.At(0.8, 0.1);
        double bend = (b.X - a.X) * (c.Y - a.Y) - (b.Y - a.Y) * (c.X - a.X);
        Assert.Equal(0, bend / (a.DistanceTo(c) * a.DistanceTo(c)), 1e-9);
    });

    [Fact]
    public void Points_of_a_map_give_the_map_back() => AnyQuad.Sample(q =>
    {
        Homography map = Homography.FromUnitSquare(q)!;
        PixelPoint[] from = [.. Enumerable.Range(0, 12).Select(i => new PixelPoint(i % 4 / 3.0, i / 4 / 2.0))];
        Homography again = Homography.Fit(from, [.. from.Select(p => map.At(p.X, p.Y))])!;
        Assert.Equal(0, again.At(0.37, 0.61).DistanceTo(map.At(0.37, 0.61)), 1e-6);
    });

    [Fact]
    public void A_step_in_the_local_metric_is_as_long_as_CIEDE2000_says() => Gen.Select(Gen.Double[15, 90], Gen.Double[-60, 60], Gen.Double[-60, 60], Gen.Double[-1, 1].Array[3]).Sample((l, a, b, step) =>
    {
        // The turning term that the metric leaves out counts for blues of some strength only (Sharma, Wu and Dalal 2005).
        var at = new Lab(l, a, b);
        if (at.Chroma < 2 || (at.HueDegrees is > 215 and < 335 && at.Chroma > 8)) return;
        Lab to = new LocalMetric(at).After(0.2 * step[0], 0.2 * step[1], 0.2 * step[2]);
        double length = 0.2 * Math.Sqrt(step[0] * step[0] + step[1] * step[1] + step[2] * step[2]);
        Assert.Equal(length, Ciede2000.Of(at, to).DeltaE, 0.04 * length + 1e-4);
    });

    [Fact]
    public void The_light_is_read_from_the_surround()
    {
        for (ulong seed = 300; seed < 306; seed++)
        {
            var photo = new SimulatedPhoto(seed);
            LightField field = LightField.From(SurroundCell.Of(photo.Picture, [photo.Target, .. photo.Swatches.Select(s => s.Swatch.Corners)], out _), photo.Picture.Width, photo.Picture.Height);
            Assert.False(field.IsEven);
            var middle = new PixelPoint(400, 300);
            foreach (PixelPoint p in (PixelPoint[])[new(60, 60), new(700, 520), new(200, 300), new(600, 200)])
            {
                // Stray light and contrast lie between light and picture, so the share is near and not equal.
                double told = field.At(p).G / field.At(middle).G, truth = photo.LightAt(p.X, p.Y) / photo.LightAt(middle.X, middle.Y);
                Assert.Equal(1, Math.Log(told) / Math.Log(truth), Math.Max(0.35, 0.02 / Math.Abs(Math.Log(truth))));
            }
        }
    }

    [Fact]
    public void A_motley_ground_is_not_taken_for_a_surround()
    {
        var random = new Numerics.SeededRandom(4);
        var bytes = new byte[3 * 400 * 300];
        for (int y = 0; y < 300; y++)
            for (int x = 0; x < 400; x++)
                for (int c = 0; c < 3; c++) bytes[3 * (400 * y + x) + c] = (byte)(40 + ((x / 20 * 37 + y / 20 * 91 + c * 53) * 29 % 160) + random.NextBelow(3));
        var picture = new Raster(400, 300, bytes, PixelColours.Srgb);
        Assert.True(LightField.From(SurroundCell.Of(picture, [], out _), 400, 300).IsEven);
    }

    [Fact]
    public void A_card_bounds_a_colour_and_nothing_else_does()
    {
        int inside = 0, all = 0;
        for (ulong seed = 400; seed < 412; seed++)
        {
            var photo = new SimulatedPhoto(seed, card: true);
            PhotoSwatch[] swatches = [.. photo.Swatches.Select(s => s.Swatch)];
            PhotoAnswer byCard = CardMeasurement.Measure(photo.Picture, photo.Card, 0.88, swatches), bare = CardMeasurement.Measure(photo.Picture, null, null, swatches);
            Assert.All(bare.Colours, c => Assert.Null(c.IntervalDeltaE2000));
            Assert.Equal(CorrectionKind.Card, byCard.Kind);
            foreach ((PhotoColour colour, (_, Lab truth)) in byCard.Colours.Zip(photo.Swatches))
            {
                all++;
                if (Ciede2000.Of(colour.Colour, truth).DeltaE <= colour.IntervalDeltaE2000) inside++;
            }
        }
        Assert.InRange((double)inside / all, 0.85, 1);
    }
}
