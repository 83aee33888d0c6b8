using Alumroot.Colour.Colorimetry;

namespace Alumroot.Colour.Tests.Published;

public class AdaptationTests
{
    // Bradford from D65 to D50 with the white points of ASTM E308: the matrix printed in the literature of ICC profiles (from memory).
    private static readonly double[][] D65ToD50 =
    [
        [1.0478112, 0.0228866, -0.0501270],
        [0.0295424, 0.9904844, -0.0170491],
        [-0.0092345, 0.0150436, 0.7521316],
    ];

    private static readonly Xyz D65 = new(95.047, 100, 108.883), D50 = new(96.422, 100, 82.521);

    [Theory]
    [InlineData(1, 0, 0)]
    [InlineData(0, 1, 0)]
    [InlineData(0, 0, 1)]
    [InlineData(41.2, 21.3, 1.9)]
    public void Bradford_is_the_matrix_in_print(double x, double y, double z)
    {
        Xyz adapted = ChromaticAdaptation.Bradford.Adapt(new Xyz(x, y, z), D65, D50);
        double[] expected = [.. D65ToD50.Select(r => r[0] * x + r[1] * y + r[2] * z)];
        Assert.Equal(expected[0], adapted.X, 1e-6 * Math.Max(1, x));
        Assert.Equal(expected[1], adapted.Y, 1e-6 * Math.Max(1, x));
        Assert.Equal(expected[2], adapted.Z, 1e-6 * Math.Max(1, x));
    }

    [Fact]
    public void Both_transforms_turn_white_into_white_and_back()
    {
        foreach (ChromaticAdaptation method in (ChromaticAdaptation[])[ChromaticAdaptation.Bradford, ChromaticAdaptation.Cat16])
        {
            Xyz white = method.Adapt(D65, D65, D50);
            Assert.Equal(D50.X, white.X, 1e-9);
            Assert.Equal(D50.Z, white.Z, 1e-9);
            var colour = new Xyz(20, 12, 5);
            Xyz back = method.Adapt(method.Adapt(colour, D65, D50), D50, D65);
            Assert.Equal(colour.X, back.X, 1e-9);
            Assert.Equal(colour.Y, back.Y, 1e-9);
            Assert.Equal(colour.Z, back.Z, 1e-9);
        }
    }

    [Fact]
    public void Cat16_answers_the_equal_energy_white_with_equal_cones()
    {
        // Li and others 2017: the rows of the matrix add to one, so that equal energy gives equal signals.
        Xyz grey = ChromaticAdaptation.Cat16.Adapt(new Xyz(50, 50, 50), new Xyz(100, 100, 100), D65);
        Assert.Equal(D65.X / 2, grey.X, 1e-4);
        Assert.Equal(D65.Y / 2, grey.Y, 1e-4);
        Assert.Equal(D65.Z / 2, grey.Z, 1e-4);
    }
}
