using System.Text;
using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Interchange;
using CsCheck;

namespace Alumroot.Colour.Tests.Interchange;

/// <summary>What is written is read back the same.</summary>
public class RoundTripTests
{
    private static readonly Gen<string> Names = Gen.String[Gen.Char[" abcXYZ019_-.\"'#&<>;äπ"], 1, 12].Select(s => s.Trim()).Where(s => s.Length > 0);

    private static readonly double[] Steps = [1, 2.5, 5, 10, 20];

    private static readonly Gen<Spectrum> Spectra = Gen.Select(Gen.Int[0, 4].Select(i => Steps[i]), Gen.Int[300, 400], Gen.Int[0, 1000]).SelectMany(g =>
    {
        int count = (int)Math.Ceiling((730 - g.Item2) / g.Item1);
        return Gen.Double[0, 1.2].Array[count].Select(v => Spectrum.Regular(g.Item2, g.Item1, v));
    });

    private static readonly Gen<ColourSample> Samples = Gen.Select(Names, Names, Spectra, Gen.Double[0, 100], Gen.Double[-90, 90], Gen.Double[-90, 90], (id, name, spectrum, l, a, b) =>
        new ColourSample(id) { Name = name, Spectrum = spectrum, Kind = SpectrumKind.Reflectance, Lab = new Lab(l, a, b), Xyz = new Xyz(l, a + 90, b + 90) });

    [Fact]
    public void Cgats() => Samples.Sample(s => Same(s, Back(CgatsWriter.Write(Document(s))), 0, true));

    [Fact]
    public void Cxf() => Samples.Sample(s => Same(s, Back(CxfWriter.Write(Document(s), "2026-01-15T09:00:00Z")), 1e-9, true));

    [Fact]
    public void Csv() => Samples.Sample(s => Same(s, Back(SpectralCsvWriter.Write([s])), 0, false));

    [Theory]
    [InlineData(JcampPacking.Free)]
    [InlineData(JcampPacking.Packed)]
    [InlineData(JcampPacking.Squeezed)]
    [InlineData(JcampPacking.Differences)]
    [InlineData(JcampPacking.DifferencesRepeated)]
    public void Jcamp_in_every_packing(JcampPacking packing) => Gen.Select(Samples, Gen.Bool).Sample((s, stepped) =>
    {
        // Steps of a tenth make runs of equal values and of equal differences.
        ColourSample written = stepped ? s with { Spectrum = s.Spectrum!.Map(v => Math.Round(v, 1)) } : s;
        ColourSample back = Back(JcampWriter.Write(written, packing));
        return back.Spectrum!.Count == written.Spectrum!.Count && back.Spectrum.Values.Zip(written.Spectrum.Values).All(p => Math.Abs(p.First - p.Second) < 1e-6)
            && back.Spectrum.Nanometres.Zip(written.Spectrum.Nanometres).All(p => Math.Abs(p.First - p.Second) < 1e-9);
    });

    [Fact]
    public void Several_tables_and_lamps_keep_what_they_are()
    {
        ColourDocument two = new(ColourFormat.Cgats, [new([new("a") { Lab = new Lab(50, 1, 2) }]), new([new("b") { Xyz = new Xyz(1, 2, 3) }, new("c") { Xyz = new Xyz(4, 5, 6) }])]);
        Assert.Equal([1, 2], Assert.IsType<Import.Done>(Read(CgatsWriter.Write(two))).Document.Tables.Select(t => t.Samples.Count));
        ColourSample lamp = new("lamp") { Kind = SpectrumKind.Emission, Spectrum = Spectrum.Regular(380, 5, Enumerable.Range(0, 81).Select(i => 40.0 + i)) };
        Assert.Equal(SpectrumKind.Emission, Back(CgatsWriter.Write(Document(lamp))).Kind);
        Assert.Equal(SpectrumKind.Emission, Back(CxfWriter.Write(Document(lamp), "2026-01-15T09:00:00Z")).Kind);
    }

    [Fact]
    public void Samples_that_do_not_fit_a_table_are_not_written()
    {
        ColourSample even = new("a") { Spectrum = Spectrum.Regular(380, 10, new double[41]) }, uneven = new("b") { Spectrum = Spectrum.Of([380, 400, 450], [1, 1, 1]) };
        Assert.Throws<ArgumentException>(() => CgatsWriter.Write(new ColourDocument(ColourFormat.Cgats, [new([even, uneven])])));
        Assert.Throws<ArgumentException>(() => CxfWriter.Write(Document(uneven), ""));
        Assert.Throws<ArgumentException>(() => JcampWriter.Write(uneven, JcampPacking.Free));
    }

    private static ColourDocument Document(ColourSample s) => new(ColourFormat.Cgats, [new ColourTable([s])]);

    private static Import Read(string text) => ColourFile.Read(Encoding.UTF8.GetBytes(text));

    private static ColourSample Back(string text)
    {
        Import import = Read(text);
        return import is Import.Refused { Fault: var f } ? throw new Xunit.Sdk.XunitException($"{f}\n{text}") : ((Import.Done)import).Document.Samples.Single();
    }

    private static bool Same(ColourSample one, ColourSample two, double tolerance, bool all) =>
        one.Id == two.Id && (!all || (one.Name == two.Name && one.Xyz == two.Xyz)) && one.Lab == two.Lab && one.Spectrum!.Values.SequenceEqual(two.Spectrum!.Values)
        && one.Spectrum.Nanometres.Zip(two.Spectrum.Nanometres).All(p => Math.Abs(p.First - p.Second) <= tolerance);
}
