using Alumroot.Colour.Colorimetry;
using CsCheck;

namespace Alumroot.Colour.Tests.Laws;

public class ColorimetryLaws
{
    private static readonly Gen<Lab> AnyLab = Gen.Select(Gen.Double[0, 100], Gen.Double[-120, 120], Gen.Double[-120, 120], (l, a, b) => new Lab(l, a, b));

    private static readonly ViewingCondition[] Conditions =
        [.. Illuminant.All.SelectMany(i => new[] { Observer.TwoDegrees, Observer.TenDegrees }.Select(o => new ViewingCondition(i, o)))];

    [Fact]
    public void Lab_and_back_is_the_same_colour() => AnyLab.Sample(lab =>
    {
        Lab back = Lab.From(lab.ToXyz(Srgb.White), Srgb.White);
        Lab turned = Lab.FromLch(lab.L, lab.Chroma, lab.HueDegrees);
        return Near(lab, back, 1e-8) && Near(lab, turned, 1e-9);
    });

    [Fact]
    public void A_difference_is_the_same_both_ways_and_none_from_itself() => Gen.Select(AnyLab, AnyLab).Sample((one, two) =>
        Math.Abs(Ciede2000.Of(one, two).DeltaE - Ciede2000.Of(two, one).DeltaE) < 1e-9 && Ciede2000.Of(one, one).DeltaE == 0 && Ciede2000.Of(one, two).DeltaE >= 0);

    [Fact]
    public void A_grey_is_grey_in_every_light_at_every_step()
    {
        foreach (ViewingCondition seen in Conditions)
            foreach (double step in (double[])[1, 2.5, 5, 7, 10, 20])
            {
                Spectrum grey = Spectrum.Regular(380, step, Enumerable.Repeat(0.4, (int)(400 / step) + 1));
                SpectralWeights weights = SpectralWeights.For(seen, grey);
                Lab lab = weights.LabOf(grey.ValueSpan);
                Assert.Equal(100, weights.White.Y, 1e-9);
                Assert.Equal(40, weights.Of(grey.ValueSpan).Y, 1e-9);
                Assert.Equal(0, lab.A, 1e-9);
                Assert.Equal(0, lab.B, 1e-9);
            }
    }

    [Fact]
    public void Missing_ends_are_held()
    {
        // ASTM E308: the weights of missing wavelengths go to the nearest one that was measured.
        foreach (int step in (int[])[5, 10])
        {
            double[] values = [.. Enumerable.Range(0, 300 / step + 1).Select(i => 0.2 + 0.5 * i * step / 300.0)];
            Spectrum part = Spectrum.Regular(400, step, values);
            double[] low = [.. Enumerable.Repeat(values[0], 20 / step)], high = [.. Enumerable.Repeat(values[^1], 80 / step)];
            Spectrum whole = Spectrum.Regular(380, step, [.. low, .. values, .. high]);
            Xyz one = SpectralWeights.For(ViewingCondition.Paint, part).Of(part.ValueSpan), two = SpectralWeights.For(ViewingCondition.Paint, whole).Of(whole.ValueSpan);
            double tolerance = step == 5 ? 1e-9 : 0.02;     // at 10 nm the curve between neighbours bends where the straight line begins
            Assert.Equal(two.X, one.X, tolerance);
            Assert.Equal(two.Y, one.Y, tolerance);
            Assert.Equal(two.Z, one.Z, tolerance);
        }
    }

    [Fact]
    public void A_cubic_is_summed_the_same_at_ten_nanometres_as_at_one()
    {
        // Lagrange curves through four points are exact for cubics; at the ends (three points) the observer sees nearly nothing.
        double Cubic(double nm) => 0.5 + 0.3 * Math.Pow((nm - 560) / 220, 3) - 0.2 * (nm - 560) / 220;
        Spectrum one = Spectrum.Regular(360, 1, Enumerable.Range(0, 421).Select(i => Cubic(360 + i)));
        Spectrum ten = Spectrum.Regular(360, 10, Enumerable.Range(0, 43).Select(i => Cubic(360 + 10 * i)));
        Xyz exact = SpectralWeights.For(ViewingCondition.Graphic, one).Of(one.ValueSpan), coarse = SpectralWeights.For(ViewingCondition.Graphic, ten).Of(ten.ValueSpan);
        Assert.Equal(exact.X, coarse.X, 1e-5);
        Assert.Equal(exact.Y, coarse.Y, 1e-5);
        Assert.Equal(exact.Z, coarse.Z, 1e-5);
    }

    [Fact]
    public void Uneven_wavelengths_give_the_same_as_even_ones()
    {
        (string _, Spectrum five) = Given.Reflectances(5)[4];
        // Every third wavelength of 5 nm left out: still closer than 10 nm on the whole.
        int[] kept = [.. Enumerable.Range(0, five.Count).Where(i => i % 3 != 1)];
        Spectrum uneven = Spectrum.Of(kept.Select(i => five.Nanometres[i]), kept.Select(i => five.Values[i]));
        Assert.Null(uneven.StepNanometres);
        Lab one = SpectralWeights.For(ViewingCondition.Paint, five).LabOf(five.ValueSpan), two = SpectralWeights.For(ViewingCondition.Paint, uneven).LabOf(uneven.ValueSpan);
        Assert.True(Ciede2000.Of(one, two).DeltaE < 0.25);
    }

    [Fact]
    public void Every_column_of_the_spectral_tables_has_a_source()
    {
        string[] named = [.. Reading.EmbeddedTables.Read("spectral_sources.csv").Rows.Select(r => r["series"])];
        Assert.Equal(Reading.EmbeddedTables.Read("observers.csv").Columns.Skip(1).Concat(Reading.EmbeddedTables.Read("illuminants.csv").Columns.Skip(1)), named);
    }

    [Fact]
    public void Every_middle_of_a_name_bears_its_own_name()
    {
        Assert.Equal(267, ColourNames.All.Count);
        Assert.All(ColourNames.All, c => Assert.Equal(c.Centre, ColourNames.Nearest(c.Centre).Colour.Centre));
        Assert.Equal("white", ColourNames.Nearest(new Lab(97, 0, 1)).Colour.Name);
        Assert.Equal("black", ColourNames.Nearest(new Lab(12, 0, 0)).Colour.Name);
    }

    private static bool Near(Lab one, Lab two, double tolerance) => Math.Abs(one.L - two.L) < tolerance && Math.Abs(one.A - two.A) < tolerance && Math.Abs(one.B - two.B) < tolerance;
}
