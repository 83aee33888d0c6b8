using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Interchange;

namespace Alumroot.Colour.Tests.Interchange;

/// <summary>Forty files, good and broken. The good ones were opened with independent open programs; the broken ones follow rules of our own (Data/files/expected.csv).</summary>
public class SampleFileTests
{
    /// <summary>What each broken file must be refused for: kind, and what the finding names.</summary>
    public static TheoryData<string, FaultKind, string> Broken => new()
    {
        { "bad_binary.cgats.txt", FaultKind.Binary, "" },
        { "bad_check.jdx", FaultKind.CheckValue, "137 100" },
        { "bad_decimal_comma.cgats.txt", FaultKind.DecimalComma, "S3 SPECTRAL_NM420" },
        { "bad_duplicate_field.cgats.txt", FaultKind.Duplicate, "SPECTRAL_NM400" },
        { "bad_empty.cgats.txt", FaultKind.Empty, "" },
        { "bad_entity_bomb.cxf", FaultKind.DocumentType, "" },
        { "bad_field_count.cgats.txt", FaultKind.FieldCount, "46 99" },
        { "bad_gap.csv", FaultKind.Gap, "" },
        { "bad_impossible_reflectance.cgats.txt", FaultKind.Impossible, "S4" },
        { "bad_missing_xunits.jdx", FaultKind.MissingLabel, "XUNITS" },
        { "bad_namespace.cxf", FaultKind.WrongNamespace, CxfReader.Namespace },
        { "bad_narrow_range.csv", FaultKind.NarrowRange, "450-600 400-700" },
        { "bad_no_end.cgats.txt", FaultKind.NoEnd, "END_DATA" },
        { "bad_no_end.jdx", FaultKind.NoEnd, "##END=" },
        { "bad_no_format.cgats.txt", FaultKind.NoFormat, "" },
        { "bad_no_start.cxf", FaultKind.NoStart, "StartWL" },
        { "bad_not_a_number.cgats.txt", FaultKind.NotANumber, "S1 SPECTRAL_NM390" },
        { "bad_npoints.jdx", FaultKind.PointCount, "61 70" },
        { "bad_same_id.cgats.txt", FaultKind.SameId, "S1" },
        { "bad_set_count.cgats.txt", FaultKind.SetCount, "4 7" },
        { "bad_short_row.cgats.txt", FaultKind.RowLength, "S2 43 46" },
        { "bad_spectrum_text.cxf", FaultKind.NotANumber, "400 nm" },
        { "bad_unclosed.cxf", FaultKind.BrokenXml, "" },
        { "bad_unknown_spec.cxf", FaultKind.UnknownSpecification, "CS9" },
        { "bad_wavelength_order.csv", FaultKind.WavelengthOrder, "" },
        { "bad_x_step.jdx", FaultKind.Abscissa, "455 450" },
    };

    [Theory, MemberData(nameof(Broken))]
    public void A_broken_file_is_refused_with_its_reason(string file, FaultKind kind, string names)
    {
        ImportFault fault = Assert.IsType<Import.Refused>(ColourFile.Read(Given.Bytes(file))).Fault;
        Assert.Equal(kind, fault.Kind);
        string told = $"{fault.Sample} {fault.Field} {fault.Found} {fault.Expected}";
        Assert.All(names.Split(' ', StringSplitOptions.RemoveEmptyEntries), word => Assert.Contains(word, told, StringComparison.Ordinal));
        Assert.InRange(fault.Line, 1, 1 + Given.Bytes(file).Count(b => b == '\n'));
    }

    [Fact]
    public void Every_broken_file_of_the_folder_is_tried()
    {
        string[] there = [.. Directory.EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "Data", "files"), "bad_*").Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal)];
        Assert.Equal(there, Broken.Select(t => t.Data.Item1).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("four_chips.cgats.txt", ColourFormat.Cgats, false)]
    [InlineData("four_chips_nm_percent.cgats.txt", ColourFormat.Cgats, true)]
    [InlineData("four_chips.ti3", ColourFormat.Cgats, false)]
    [InlineData("four_chips.cxf", ColourFormat.Cxf3, false)]
    [InlineData("tall.csv", ColourFormat.Csv, false)]
    [InlineData("wide_semicolon_comma.csv", ColourFormat.Csv, false)]
    public void The_same_four_chips_come_out_of_every_format(string file, ColourFormat format, bool assumed)
    {
        ColourDocument document = Read(file);
        Assert.Equal(format, document.Format);
        Assert.Equal(assumed, document.PercentAssumed);
        ColourSample[] samples = [.. document.Samples];
        Assert.Equal(4, samples.Length);
        Assert.Equal(["S1", "S2", "S3", "S4"], samples.Select(s => s.Id));
        ColourSample[] reference = [.. Read("four_chips.cgats.txt").Samples];
        for (int i = 0; i < 4; i++)
        {
            Assert.Equal(41, samples[i].Spectrum!.Count);
            Assert.Equal(10, samples[i].Spectrum!.StepNanometres!.Value, 1e-9);
            Assert.All(samples[i].Spectrum!.Values.Zip(reference[i].Spectrum!.Values), p => Assert.Equal(p.Second, p.First, 1e-9));
        }
        Assert.Equal(0.054, samples[0].Spectrum!.Values[0], 1e-9);
    }

    [Fact]
    public void The_Lab_that_a_file_states_is_the_Lab_of_its_spectrum()
    {
        // The files' Lab were reckoned by another program for D50 and the 2 degree observer from 5 nm data.
        foreach (string file in (string[])["four_chips.cgats.txt", "four_chips.cxf", "four_chips.ti3"])
            foreach (ColourSample s in Read(file).Samples)
                Assert.True(Ciede2000.Of(s.Lab!.Value, SpectralWeights.For(ViewingCondition.Graphic, s.Spectrum!).LabOf(s.Spectrum!.ValueSpan)).DeltaE < 0.15);
        Lab second = Read("four_chips.cgats.txt").Samples.ElementAt(1).Lab!.Value;
        Assert.Equal(new Lab(76.392, 2.299, 71.621), second);
    }

    [Fact]
    public void Lab_alone_two_tables_and_lamps_are_read()
    {
        ColourSample[] lab = [.. Read("lab_only_comment.cgats.txt").Samples];
        Assert.Equal([new Lab(50, -10.5, 23), new Lab(71.25, 0, -3)], lab.Select(s => s.Lab!.Value));
        Assert.Equal([1, 2], Read("two_tables.cgats.txt").Tables.Select(t => t.Samples.Count));
        Assert.Equal(18.4, Read("two_tables.cgats.txt").Tables[1].Samples[0].Xyz!.Value.Y);
        ColourSample spectrum = Assert.Single(Read("d50_10nm.sp").Samples);
        Assert.Equal(41, spectrum.Spectrum!.Count);
        ColourSample lamp = Assert.Single(Read("lamp.spdx").Samples);
        Assert.Equal(SpectrumKind.Emission, lamp.Kind);
        Assert.Equal(41, lamp.Spectrum!.Count);
    }

    [Theory]
    [InlineData("extract_affn.jdx")]
    [InlineData("extract_sqz.jdx")]
    [InlineData("extract_difdup.jdx")]
    [InlineData("extract_xypoints.jdx")]
    public void The_same_extract_comes_out_of_every_packing(string file)
    {
        // Decoded by an independent open reader to the same 61 values.
        ColourSample extract = Assert.Single(Read(file).Samples);
        Assert.Equal(SpectrumKind.Absorbance, extract.Kind);
        Assert.Equal(61, extract.Spectrum!.Count);
        Assert.Equal(0.0968, extract.Spectrum.Values[0], 1e-9);
        Assert.Equal(0.907, extract.Spectrum.LinearAt(450), 1e-9);
        Assert.Equal(0.907, extract.Spectrum.Values.Max(), 1e-9);
        Assert.Equal(5, extract.Spectrum.StepNanometres!.Value, 1e-9);
    }

    private static ColourDocument Read(string file)
    {
        Import import = ColourFile.Read(Given.Bytes(file));
        return import is Import.Refused { Fault: var f } ? throw new Xunit.Sdk.XunitException($"{file}: {f}") : ((Import.Done)import).Document;
    }
}
