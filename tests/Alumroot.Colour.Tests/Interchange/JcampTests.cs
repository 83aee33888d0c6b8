using System.Text;
using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Interchange;

namespace Alumroot.Colour.Tests.Interchange;

/// <summary>What JCAMP-DX allows beside the common (McDonald and Wilks 1988; the packing table from memory).</summary>
public class JcampTests
{
    [Theory]
    [InlineData("400+1-2+3", new double[] { 1, -2, 3 })]                       // PAC: the sign parts
    [InlineData("400 1.5E+02 -2e-1 7", new double[] { 150, -0.2, 7 })]         // AFFN with exponents
    [InlineData("400A2b3%E0", new double[] { 12, -23, -23, 50 })]              // SQZ and a difference of none
    [InlineData("400@S", new double[] { 0 })]                                  // once in all
    [InlineData("400B0U", new double[] { 20, 20, 20 })]                        // DUP after a value: three in all
    [InlineData("400A0KT", new double[] { 10, 12, 14 })]                       // DUP after a difference: the step is repeated
    [InlineData("400A0K2U", new double[] { 10, 32, 54, 76 })]
    [InlineData("400i0s1J", new double[] { -90 }, 90, 1)]                      // s is nine: 91 in all, then up by one
    [InlineData("400,1;2\t3", new double[] { 1, 2, 3 })]
    public void Packed_lines_are_unpacked(string line, double[] expected, int more = 0, int up = 0)
    {
        double[] all = [.. expected, .. Enumerable.Repeat(expected[^1], more), .. up > 0 ? [expected[^1] + up] : Array.Empty<double>()];
        var unpacker = new JcampUnpacker("x", 1000);
        Assert.Equal(400, unpacker.Line(1, line));
        Assert.Equal(all.Length, unpacker.Ordinates.Count);
        Assert.All(all.Zip(unpacker.Ordinates), p => Assert.Equal(p.First, p.Second, 1e-9));
    }

    [Fact]
    public void Labels_may_be_written_in_many_ways_and_comments_are_passed_over()
    {
        string text = """
            ##title= reversed  $$ a comment
            ##Jcamp-DX= 4.24
            ##Data_Type= UV/VIS SPECTRUM
            ##X-UNITS= nanometers
            ##yunits= transmittance
            ##XFACTOR=1
            ##YFACTOR=1
            ##FIRSTX=700
            ##LASTX=400
            ##NPOINTS=16
            $$ another
            ##XYDATA= (X++(Y..Y))
            700 10 20 30 40 50 60 70 80
            540 81 82 83 84 85 86 87 88
            ##END=
            """;
        ColourSample s = Read(text);
        Assert.Equal("reversed", s.Id);
        Assert.Equal(SpectrumKind.Transmittance, s.Kind);
        Assert.Equal(400, s.Spectrum!.Nanometres[0]);
        Assert.Equal(0.88, s.Spectrum.Values[0], 1e-9);
        Assert.Equal(0.10, s.Spectrum.Values[^1], 1e-9);
    }

    [Theory]
    [InlineData("1/CM", 25000, 14285.714285714286)]
    [InlineData("MICROMETERS", 0.4, 0.7)]
    public void Other_units_of_the_abscissa_become_nanometres(string units, double first, double last)
    {
        string x = FormattableString.Invariant($"{first}");
        string text = $"##TITLE=x\n##JCAMP-DX=5.01\n##XUNITS={units}\n##YUNITS=ABSORBANCE\n##XFACTOR=1\n##YFACTOR=1\n##FIRSTX={x}\n##LASTX={FormattableString.Invariant($"{last}")}\n##NPOINTS=41\n##XYDATA=(X++(Y..Y))\n{x} {string.Join(' ', Enumerable.Repeat("0.5", 41))}\n##END=\n";
        Spectrum s = Read(text).Spectrum!;
        Assert.Equal(400, s.Nanometres[0], 1e-6);
        Assert.Equal(700, s.Nanometres[^1], 1e-6);
    }

    [Fact]
    public void A_file_of_blocks_gives_a_sample_for_each()
    {
        string block = Encoding.UTF8.GetString(Given.Bytes("extract_sqz.jdx"));
        string text = "##TITLE=both\n##JCAMP-DX=4.24\n##DATA TYPE=LINK\n##BLOCKS=2\n" + block + block.Replace("synthetic dye extract", "another", StringComparison.Ordinal) + "##END=\n";
        ColourSample[] samples = [.. ((Import.Done)ColourFile.Read(Encoding.UTF8.GetBytes(text))).Document.Samples];
        Assert.Equal(["synthetic dye extract, 1 cm", "another, 1 cm"], samples.Select(s => s.Id));
        Assert.Equal(samples[0].Spectrum!.Values, samples[1].Spectrum!.Values);
    }

    [Fact]
    public void Kubelka_and_Munk_units_become_reflectance()
    {
        // K/S = 0.25 is a reflectance of one half: (1 - 0.5)² / (2 x 0.5).
        const string text = "##TITLE=x\n##JCAMP-DX=4.24\n##XUNITS=NANOMETERS\n##YUNITS=KUBELKA-MUNK\n##XFACTOR=1\n##YFACTOR=0.01\n##FIRSTX=400\n##LASTX=700\n##NPOINTS=31\n##XYDATA=(X++(Y..Y))\n400B5U1\n##END=\n";
        ColourSample s = Read(text);
        Assert.Equal(SpectrumKind.Reflectance, s.Kind);
        Assert.All(s.Spectrum!.Values, v => Assert.Equal(0.5, v, 1e-12));
    }

    [Theory]
    [InlineData("ARBITRARY UNITS", "0.5", true)]
    [InlineData("ARBITRARY UNITS", "500", false)]
    [InlineData("ABSORBANCE", "-0.02", true)]
    public void Values_without_a_unit_have_a_colour_only_when_they_can_be_shares(string units, string value, bool colour)
    {
        string text = $"##TITLE=x\n##JCAMP-DX=4.24\n##XUNITS=NANOMETERS\n##YUNITS={units}\n##XFACTOR=1\n##YFACTOR=1\n##FIRSTX=400\n##LASTX=700\n##NPOINTS=31\n##XYDATA=(X++(Y..Y))\n400 {string.Join(' ', Enumerable.Repeat(value, 31))}\n##END=\n";
        Assert.Equal(colour, Read(text).Shares is not null);
    }

    [Theory]
    [InlineData("ABSORBANCE", "-20")]
    [InlineData("ABSORBANCE", "40")]
    [InlineData("REFLECTANCE", "-0.2")]
    public void Values_that_cannot_be_are_refused(string units, string value)
    {
        string text = $"##TITLE=x\n##JCAMP-DX=4.24\n##XUNITS=NANOMETERS\n##YUNITS={units}\n##XFACTOR=1\n##YFACTOR=1\n##FIRSTX=400\n##LASTX=700\n##NPOINTS=31\n##XYDATA=(X++(Y..Y))\n400 {string.Join(' ', Enumerable.Repeat(value, 31))}\n##END=\n";
        Assert.Equal(FaultKind.Impossible, Assert.IsType<Import.Refused>(ColourFile.Read(Encoding.UTF8.GetBytes(text))).Fault.Kind);
    }

    private static ColourSample Read(string text)
    {
        Import import = ColourFile.Read(Encoding.UTF8.GetBytes(text));
        return import is Import.Refused { Fault: var f } ? throw new Xunit.Sdk.XunitException(f.ToString()) : ((Import.Done)import).Document.Samples.Single();
    }
}
