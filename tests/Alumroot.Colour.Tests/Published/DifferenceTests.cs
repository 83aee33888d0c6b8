using Alumroot.Colour.Colorimetry;
using Alumroot.Quantities.Tables;

namespace Alumroot.Colour.Tests.Published;

public class DifferenceTests
{
    [Fact]
    public void All_34_published_pairs_of_CIEDE2000_agree_to_four_decimals()
    {
        // Sharma, Wu and Dalal 2005, table 1. Pair 14 has exactly opposite hues.
        Table pairs = Given.Table("ciede2000_pairs.csv");
        Assert.Equal(34, pairs.Rows.Count);
        foreach (TableRow p in pairs.Rows)
        {
            var one = new Lab(p.Number("L1"), p.Number("a1"), p.Number("b1"));
            var two = new Lab(p.Number("L2"), p.Number("a2"), p.Number("b2"));
            Assert.Equal(p.Number("deltaE00_published"), Math.Round(Ciede2000.Of(one, two).DeltaE, 4), 1e-9);
            Assert.Equal(p.Number("deltaE00_published"), Math.Round(Ciede2000.Of(two, one).DeltaE, 4), 1e-9);
        }
    }

    [Fact]
    public void CIE76_and_CIE94_agree_with_an_independent_reckoning()
    {
        // The example in the documentation of an open scientific library (from memory): 2.7335037, 1.6711191 and, by CIEDE2000, 1.6709303.
        var one = new Lab(48.99183622, -0.10561667, 400.65619925);
        var two = new Lab(50.65907324, -0.11671910, 402.82235718);
        ColourDifference d = ColourDifference.Between(one, two);
        Assert.Equal(2.7335037, d.DeltaE76, 1e-6);
        Assert.Equal(1.6711191, d.DeltaE94, 1e-6);
        Assert.Equal(1.6709303, d.DeltaE2000, 1e-6);
    }

    [Fact]
    public void The_parts_of_a_difference_make_the_whole()
    {
        var one = new Lab(63.0109, -31.0961, -5.8663);
        var two = new Lab(62.8187, -29.7946, -4.0864);
        ColourDifference d = ColourDifference.Between(one, two);
        Assert.Equal(d.DeltaE76, Math.Sqrt(d.DeltaL * d.DeltaL + d.DeltaChroma * d.DeltaChroma + d.DeltaHue * d.DeltaHue), 1e-12);
        Assert.Equal(d.DeltaE2000, Math.Sqrt(d.LightnessPart * d.LightnessPart + d.ChromaPart * d.ChromaPart + d.HuePart * d.HuePart + d.RotationPart), 1e-12);
        // Hue angles by hand: 190.68 and 187.81 degrees, so the hue falls.
        Assert.True(d.DeltaHue < 0);
    }
}
