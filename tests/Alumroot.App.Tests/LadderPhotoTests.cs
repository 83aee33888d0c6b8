using System.Globalization;
using System.Text.RegularExpressions;
using Alumroot.App.Trials;
using Alumroot.Browser.Tests;
using Alumroot.Colour.Colorimetry;

namespace Alumroot.App.Tests;

/// <summary>A pH ladder from one photograph of its glasses.</summary>
public sealed partial class LadderPhotoTests
{
    // Two forms with a pKa of 6.5; what light each glass leaves over is mixed by the share of each form (Henderson and Hasselbalch), in light and not in absorbance, so the step comes out near and not at 6.5.
    [Fact]
    public async Task The_glasses_of_a_photograph_become_a_row_and_its_step_is_found()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        double[] ph = [3, 4, 5, 5.5, 6, 6.5, 7, 7.5, 8, 9];
        Lab sour = new(72, 34, 22), alkaline = new(64, -18, 26);
        Lab[] glasses = [.. ph.Select(p => 1 / (1 + Math.Pow(10, 6.5 - p))).Select(share => new Lab(sour.L + share * (alkaline.L - sour.L), sour.A + share * (alkaline.A - sour.A), sour.B + share * (alkaline.B - sour.B)))];
        (Lab, Lab)[] pairs = [.. Enumerable.Range(0, 5).Select(i => (glasses[2 * i], glasses[2 * i + 1]))];
        OpenStudio.Seen page = await studio.GetAsync("/colours");
        page = await studio.UploadAsync(page.Forms.Single(f => f.Action == "/colours/photo"), StripPicture.Png([], pairs), "glasses.png");
        Assert.Contains("These are glasses of a pH ladder", page.Text, StringComparison.Ordinal);
        (string Area, string Colour)[] areas = [.. Hidden().Matches(page.Html).Select(m => (m.Groups[1].Value, m.Groups[2].Value))];
        Assert.Equal(10, areas.Length);
        // Areas are numbered in their own order; each gets the pH of the glass it is nearest to.
        string query = string.Join('&', areas.Select(a => $"lab-{a.Area}={Uri.EscapeDataString(a.Colour)}&ph-{a.Area}={ph[Nearest(a.Colour)].ToString(CultureInfo.InvariantCulture).Replace('.', ',')}"));
        page = await studio.GetAsync($"/trials/ladder?{query}");
        Match step = Turns().Match(page.Text);
        Assert.True(step.Success, page.Text[..Math.Min(900, page.Text.Length)]);
        Assert.InRange(double.Parse(step.Groups[1].Value, CultureInfo.InvariantCulture), 5.9, 7.1);
        Assert.Contains("ph,L,a,b", page.Text, StringComparison.Ordinal);

        int Nearest(string colour)
        {
            double[] lab = [.. colour.Split(',').Select(v => double.Parse(v, CultureInfo.InvariantCulture))];
            return Enumerable.Range(0, glasses.Length).MinBy(i => Math.Pow(glasses[i].L - lab[0], 2) + Math.Pow(glasses[i].A - lab[1], 2) + Math.Pow(glasses[i].B - lab[2], 2));
        }
    }

    [Fact]
    public void Areas_without_a_pH_are_left_out_and_a_pH_that_is_none_is_told_by_its_row()
    {
        var typed = new Dictionary<string, string> { ["ph-1"] = "3,5", ["lab-1"] = "50,10,20", ["lab-2"] = "60,1,2", ["ph-3"] = " ", ["lab-3"] = "1,2,3" };
        Assert.Equal("ph,L,a,b\n3.5,50,10,20\n", LadderAreas.Table(name => typed.GetValueOrDefault(name)));
        Assert.Null(LadderAreas.Table(_ => null));
    }

    [GeneratedRegex("<input type=\"hidden\" name=\"lab-([0-9]+)\" value=\"([^\"]+)\"")]
    private static partial Regex Hidden();

    [GeneratedRegex(@"it turns near pH ([0-9.]+)")]
    private static partial Regex Turns();
}
