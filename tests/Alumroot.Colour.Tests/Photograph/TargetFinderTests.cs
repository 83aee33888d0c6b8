using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Photograph;

namespace Alumroot.Colour.Tests.Photograph;

public sealed class TargetFinderTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void A_target_is_found_however_it_is_turned(int turn)
    {
        for (ulong seed = 100; seed < 106; seed++)
        {
            var photo = new SimulatedPhoto(seed + (ulong)(10 * turn), turn);
            FoundTarget? found = TargetFinder.Find(photo.Picture, photo.Truths, null);
            Assert.NotNull(found);
            // Its first patch lies in the first patch, its last in the last.
            foreach (int index in (int[])[0, 5, 18, 23])
            {
                PixelPoint truth = SimulatedPhoto.Grid.Patch(photo.Target, index).Middle;
                Assert.True(found.Grid.Patch(found.Corners, index).Middle.DistanceTo(truth) < 3, $"seed {seed} turn {turn} patch {index}");
            }
            PhotoAnswer given = PhotoMeasurement.Measure(photo.Ask()).Answer!, sought = PhotoMeasurement.Measure(photo.Ask(found.Corners, found.Grid)).Answer!;
            double apart = given.Colours.Zip(sought.Colours, (a, b) => Ciede2000.Of(a.Colour, b.Colour).DeltaE).Average();
            Assert.True(apart < 0.3, $"seed {seed} turn {turn}: {apart:0.00}");
        }
    }

    [Fact]
    public void Where_there_is_no_target_none_is_found()
    {
        var photo = new SimulatedPhoto(200);
        Quad around = photo.Target.Scaled(1.1);
        Raster bare = PhotoMeasurementTests.Painted(photo.Picture, (x, y) => around.Holds(x, y) ? (byte)160 : null);
        Assert.Null(TargetFinder.Find(bare, photo.Truths, null));
        Assert.Null(TargetFinder.Find(new Raster(40, 30, new byte[3 * 40 * 30], PixelColours.Srgb), photo.Truths, null));
    }

    [Fact]
    public void Swatches_and_a_strip_of_card_are_proposed_in_reading_order()
    {
        var photo = new SimulatedPhoto(17, card: true);
        IReadOnlyList<Quad> things = ThingFinder.Find(photo.Picture, photo.Target, 24);
        Assert.Equal(10, things.Count);
        for (int i = 0; i < 9; i++) Assert.True(things[i].Middle.DistanceTo(photo.Swatches[i].Swatch.Corners.Middle) < 4);
        Assert.All(things[9].Corners, c => Assert.True(photo.Card.Holds(c.X, c.Y)));
    }

    [Fact]
    public void Strong_colours_that_the_file_cuts_off_are_proposed_too()
    {
        for (ulong seed = 1; seed <= 12; seed++)
        {
            var photo = new SimulatedPhoto(seed, strong: true);
            IReadOnlyList<Quad> things = ThingFinder.Find(photo.Picture, photo.Target, 24);
            Assert.All(photo.Swatches, s => Assert.Contains(things, t => t.Middle.DistanceTo(s.Swatch.Corners.Middle) < 4));
        }
    }

    [Fact]
    public void A_target_with_other_colours_is_not_taken_for_this_one()
    {
        var photo = new SimulatedPhoto(201);
        Lab[] others = [.. photo.Truths.Select((_, i) => photo.Truths[(7 * i + 5) % photo.Truths.Count])];
        Assert.Null(TargetFinder.Find(photo.Picture, others, null));
    }
}
