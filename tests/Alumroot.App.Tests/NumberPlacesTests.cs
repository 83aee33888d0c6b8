using Alumroot.App.Charts;

namespace Alumroot.App.Tests;

/// <summary>Numbers of dots: laws of the plane only, so nothing outside is needed to check against.</summary>
public sealed class NumberPlacesTests
{
    private const double Size = 280;

    [Fact]
    public void Numbers_lie_on_no_dot_and_on_no_other_number_and_within_the_picture()
    {
        var chance = new Random(7);
        for (int run = 0; run < 40; run++)
        {
            (double X, double Y)[] dots = [.. Enumerable.Range(0, 1 + run).Select(_ => (Size * chance.NextDouble(), Size * chance.NextDouble()))];
            int[] digits = [.. dots.Select((_, i) => i < 9 ? 1 : 2)];
            IReadOnlyList<(double X, double Y)?> places = NumberPlaces.Of(dots, digits, Size, [(140, 140, 20, 8)]);
            Assert.Equal(dots.Length, places.Count);
            for (int i = 0; i < places.Count; i++)
            {
                if (places[i] is not { } place) continue;
                double half = 4.5 * digits[i];
                Assert.InRange(place.X, half, Size - half);
                Assert.InRange(place.Y, 7, Size - 7);
                Assert.False(Math.Abs(place.X - 140) < 20 + half && Math.Abs(place.Y - 140) < 15);
                Assert.DoesNotContain(dots, d => Math.Abs(d.X - place.X) < 6.5 + half && Math.Abs(d.Y - place.Y) < 6.5 + 7);
                for (int j = 0; j < i; j++)
                    Assert.False(places[j] is { } other && Math.Abs(other.X - place.X) < half + 4.5 * digits[j] && Math.Abs(other.Y - place.Y) < 14);
            }
        }
    }

    [Fact]
    public void A_lone_dot_has_its_number_close_by_and_a_crowd_leaves_some_without()
    {
        (double x, double y) = NumberPlaces.Of([(200, 80)], [1], Size, [])[0]!.Value;
        Assert.InRange(Math.Sqrt((x - 200) * (x - 200) + (y - 80) * (y - 80)), 8.5, 20);
        IReadOnlyList<(double X, double Y)?> crowd = NumberPlaces.Of([.. Enumerable.Repeat((140.0, 140.0), 300)], [.. Enumerable.Repeat(3, 300)], Size, []);
        Assert.Contains(crowd, p => p is null);
        Assert.Contains(crowd, p => p is not null);
    }
}
