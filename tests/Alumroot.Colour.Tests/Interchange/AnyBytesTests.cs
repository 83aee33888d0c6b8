using System.Text;
using Alumroot.Colour.Interchange;
using CsCheck;

namespace Alumroot.Colour.Tests.Interchange;

/// <summary>No bytes end in anything but a document or a finding: real files with bytes changed, cut out, doubled; and words of the formats thrown together.</summary>
public class AnyBytesTests
{
    private const int Rounds = 3000;

    private static readonly string[] Words =
    [
        "CGATS.17", "NUMBER_OF_FIELDS", "BEGIN_DATA_FORMAT", "END_DATA_FORMAT", "NUMBER_OF_SETS", "BEGIN_DATA", "END_DATA", "SAMPLE_ID", "LAB_L", "LAB_A", "LAB_B", "SPECTRAL_NM", "SPECTRAL_DEC",
        "SPECTRAL_NM400", "\"", "#", "1", "-0", "1e308", "1e999", "NaN", "Infinity", "99999999999", ",", ";", "\t", "\n", "\r", "##TITLE=x", "##XYDATA=(X++(Y..Y))", "##XYPOINTS=(XY..XY)", "##NPOINTS=3", "##FIRSTX=400",
        "##LASTX=700", "##XFACTOR=1", "##YFACTOR=1", "##XUNITS=NANOMETERS", "##YUNITS=ABSORBANCE", "##END=", "400A1J2S9", "s99999999", "%%%", "<", "<CxF xmlns=\"http://colorexchangeformat.com/CxF3-core\">", "</CxF>", "<Object/>", "&a;",
        "wavelength_nm", "L,a,b", "R400", "380;400;420", "\u0000", "\uFEFF",
    ];

    public static TheoryData<string> Files =>
        ["four_chips.cgats.txt", "lab_only_comment.cgats.txt", "two_tables.cgats.txt", "four_chips.ti3", "four_chips.cxf", "lamp.spdx", "extract_affn.jdx", "extract_sqz.jdx", "extract_difdup.jdx", "extract_xypoints.jdx", "tall.csv", "wide_semicolon_comma.csv"];

    [Theory, MemberData(nameof(Files))]
    public void A_damaged_file_is_read_or_refused(string file)
    {
        byte[] whole = Given.Bytes(file);
        Gen<byte[]> damaged = Gen.Select(Gen.Int[0, 3], Gen.Int[0, whole.Length - 1], Gen.Int[0, whole.Length - 1], Gen.Byte).Array[1, 4].Select(cuts => cuts.Aggregate(whole, Damage));
        damaged.Sample(Holds, iter: Rounds / 6);
    }

    [Fact]
    public void Words_of_the_formats_in_any_order_are_read_or_refused() =>
        Gen.Int[0, Words.Length - 1].Select(i => Words[i]).Array[0, 60].Select(w => Encoding.UTF8.GetBytes(string.Join(w.Length % 2 == 0 ? " " : "\n", w))).Sample(Holds, iter: Rounds);

    [Fact]
    public void Any_bytes_are_read_or_refused() => Gen.Byte.Array[0, 400].Sample(Holds, iter: Rounds);

    [Fact]
    public void What_is_too_large_or_too_deep_is_refused()
    {
        Assert.Equal(FaultKind.TooLarge, Assert.IsType<Import.Refused>(ColourFile.Read(new byte[ColourFile.MostBytes + 1])).Fault.Kind);
        string deep = "<CxF xmlns=\"http://colorexchangeformat.com/CxF3-core\">" + string.Concat(Enumerable.Repeat("<a>", 100_000));
        Assert.Equal(FaultKind.BrokenXml, Assert.IsType<Import.Refused>(ColourFile.Read(Encoding.UTF8.GetBytes(deep))).Fault.Kind);
        string repeats = "##TITLE=x\n##XUNITS=NANOMETERS\n##YUNITS=ABSORBANCE\n##XFACTOR=1\n##YFACTOR=1\n##FIRSTX=400\n##LASTX=700\n##NPOINTS=61\n##XYDATA=(X++(Y..Y))\n400A0s99999999\n##END=\n";
        Assert.Equal(FaultKind.TooLarge, Assert.IsType<Import.Refused>(ColourFile.Read(Encoding.UTF8.GetBytes(repeats))).Fault.Kind);
    }

    [Theory]
    [InlineData("<!DOCTYPE CxF SYSTEM \"file:///etc/hostname\"><CxF xmlns=\"http://colorexchangeformat.com/CxF3-core\"/>")]
    [InlineData("<!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/hostname\">]><CxF xmlns=\"http://colorexchangeformat.com/CxF3-core\">&e;</CxF>")]
    [InlineData("<!DOCTYPE x [<!ENTITY % p SYSTEM \"http://localhost/x\"> %p;]><CxF xmlns=\"http://colorexchangeformat.com/CxF3-core\"/>")]
    public void Nothing_outside_a_file_is_fetched(string text) =>
        Assert.Equal(FaultKind.DocumentType, Assert.IsType<Import.Refused>(ColourFile.Read(Encoding.UTF8.GetBytes(text))).Fault.Kind);

    private static byte[] Damage(byte[] from, (int Kind, int At, int To, byte Byte) cut)
    {
        int at = Math.Min(cut.At, from.Length), to = Math.Clamp(cut.To, at, from.Length);
        return cut.Kind switch
        {
            0 => [.. from[..at], cut.Byte, .. from[Math.Min(at + 1, from.Length)..]],
            1 => from[..at],
            2 => [.. from[..at], .. from[to..]],
            _ => [.. from[..to], .. from[at..]],
        };
    }

    private static bool Holds(byte[] bytes) => ColourFile.Read(bytes) switch
    {
        Import.Done d => d.Document.Samples.All(s => s.Spectrum is null || s.Spectrum.Values.All(double.IsFinite)),
        Import.Refused r => r.Fault.Line >= 1,
        _ => false,
    };
}
