using Alumroot.App.Words;
using Alumroot.Colour.Colorimetry;

namespace Alumroot.App.Tests;

/// <summary>Words of hue by where a* and b* point (CIELAB: +a* red, -a* green, +b* yellow, -b* blue), also over a wide turn.</summary>
public sealed class ColourWordTests
{
    [Theory]
    [InlineData(-6.8, 49.8, 36.8, 24.2, "redder")]
    [InlineData(-6.8, 49.8, 28.6, -13.6, "redder")]
    [InlineData(-6.8, 49.8, -3.2, -17.7, "bluer")]
    [InlineData(-6.8, 49.8, -25.3, 1.0, "greener")]
    [InlineData(2.5, 0, 0, -2.5, "bluer")]
    [InlineData(40, 10, 35, 30, "yellower")]
    [InlineData(35, 30, 40, 10, "redder")]
    [InlineData(-30, 10, -20, 40, "yellower")]
    [InlineData(10, -40, 40, -20, "redder")]
    [InlineData(40, -20, 10, -40, "bluer")]
    [InlineData(40, 5, 40, -15, "bluer")]
    public void The_word_is_the_hue_that_came_nearer(double a, double b, double a2, double b2, string word)
    {
        var first = new Lab(50, a, b);
        Assert.EndsWith(word, ColourWords.Of(first, ColourDifference.Between(first, new Lab(50, a2, b2))), StringComparison.Ordinal);
    }
}
