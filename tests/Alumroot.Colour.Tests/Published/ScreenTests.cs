using System.Globalization;
using Alumroot.Colour.Colorimetry;
using Alumroot.Quantities.Tables;

namespace Alumroot.Colour.Tests.Published;

public class ScreenTests
{
    private static readonly Xyz IccWhite = new(96.42, 100, 82.49);

    [Theory]
    // The primaries of sRGB in the D50 space of ICC profiles (values shown by colour-managed programs, from memory).
    [InlineData(255, 0, 0, 54.29, 80.81, 69.89)]
    [InlineData(0, 255, 0, 87.82, -79.27, 80.99)]
    [InlineData(0, 0, 255, 29.57, 68.30, -112.03)]
    [InlineData(255, 255, 255, 100, 0, 0)]
    [InlineData(119, 119, 119, 50.03, 0, 0)]
    public void Screen_colours_have_their_known_Lab(int red, int green, int blue, double l, double a, double b)
    {
        var colour = new Srgb((byte)red, (byte)green, (byte)blue, true);
        Xyz d50 = ChromaticAdaptation.Bradford.Adapt(colour.ToXyz(), Srgb.White, IccWhite);
        Lab lab = Lab.From(d50, IccWhite);
        Assert.Equal(l, lab.L, 0.05);
        Assert.Equal(a, lab.A, 0.1);
        Assert.Equal(b, lab.B, 0.1);
        Assert.Equal(colour, Srgb.From(d50, IccWhite));
    }

    [Fact]
    public void The_middles_of_colour_names_have_the_screen_colours_reckoned_elsewhere()
    {
        // iscc_screen.csv: by an open scientific library from the Munsell notations; Lab is rounded to 0.01 there.
        Table table = Given.Table("iscc_screen.csv");
        Assert.Equal(267, table.Rows.Count);
        int flags = 0;
        foreach (TableRow row in table.Rows)
        {
            NamedColour named = ColourNames.All[(int)row.Number("number") - 1];
            Srgb screen = Srgb.From(named.Centre.ToXyz(ColourNames.White), ColourNames.White);
            bool inGamut = row["in_srgb_gamut"] == "yes";
            if (screen.InGamut != inGamut) flags++;
            if (!inGamut || !screen.InGamut) continue;
            byte[] expected = [.. Enumerable.Range(0, 3).Select(i => byte.Parse(row["srgb_hex"].AsSpan(1 + 2 * i, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture))];
            Assert.InRange(Math.Abs(expected[0] - screen.Red), 0, 1);
            Assert.InRange(Math.Abs(expected[1] - screen.Green), 0, 1);
            Assert.InRange(Math.Abs(expected[2] - screen.Blue), 0, 1);
        }
        Assert.InRange(flags, 0, 2);
    }

    [Fact]
    public void A_colour_too_strong_for_the_screen_keeps_hue_and_lightness()
    {
        int clipped = 0;
        foreach (NamedColour named in ColourNames.All)
        {
            Srgb screen = Srgb.From(named.Centre.ToXyz(ColourNames.White), ColourNames.White);
            if (screen.InGamut) continue;
            clipped++;
            Lab wanted = Lab.From(ChromaticAdaptation.Bradford.Adapt(named.Centre.ToXyz(ColourNames.White), ColourNames.White, Srgb.White), Srgb.White);
            Lab shown = Lab.From(screen.ToXyz(), Srgb.White);
            Assert.Equal(wanted.L, shown.L, 0.5);
            Assert.True(shown.Chroma < wanted.Chroma);
            double turn = Math.Abs(shown.HueDegrees - wanted.HueDegrees);
            Assert.True(Math.Min(turn, 360 - turn) * Math.PI / 180 * shown.Chroma < 0.8, $"{named.Name}: hue {wanted.HueDegrees} became {shown.HueDegrees}");
        }
        Assert.InRange(clipped, 50, 70);
    }
}
