using Alumroot.Studio.Journal;

namespace Alumroot.App.Tests;

/// <summary>Precautions, maker and sizes on labels: page and PDF. The rules are those of CLP as the tests of the paint room name them.</summary>
public sealed class LabelPageTests
{
    [Fact]
    public async Task Precautions_follow_the_hazards_on_page_and_paper_and_can_be_left_off()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        await Cloves(studio);
        OpenStudio.Seen page = await studio.GetAsync("/paints/labels?paint=P-01&width=74&height=52");
        foreach (string said in (string[])["Keep out of reach of children. P102", "Wear protective gloves. P280", "If skin irritation or rash occurs: Get medical advice/attention. P333+P313"]) Assert.Contains(said, page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Not everything fits", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("the European rules ask for a label", page.Text, StringComparison.Ordinal);
        byte[] file = await studio.BytesAsync("/pdf/labels?paint=P-01&width=74&height=52");
        string pdf = Squeezed(PdfReading.Text(file));
        // The code beside the sign, narrow as it is, reads back.
        (double left, double top, double w, double h) = PdfReading.Outlines(file)[0];
        Assert.Equal("P-01", PdfReading.Code(file, left, top, w, h));
        Assert.Contains("Keepoutofreachofchildren.", pdf, StringComparison.Ordinal);
        page = await studio.GetAsync("/paints/labels?paint=P-01&width=74&height=52&precautions=off");
        Assert.Contains("Statements of precaution, left off the label", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Keepoutofreach", Squeezed(PdfReading.Text(await studio.BytesAsync("/pdf/labels?paint=P-01&width=74&height=52&precautions=off"))), StringComparison.Ordinal);
    }

    // 62 by 42 mm is less than 52 by 74; signs of 10 mm are the least to 3 L and too small above.
    [Fact]
    public async Task A_label_or_sign_that_is_too_small_is_said()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        await Cloves(studio);
        OpenStudio.Seen page = await studio.GetAsync("/paints/labels?paint=P-01");
        Assert.Contains("if possible 52 by 74 mm (CLP, Annex I, 1.2.1.4); this one is 62 by 42 mm", page.Text, StringComparison.Ordinal);
        Assert.Contains("side of 10 mm: the least that is allowed", page.Text, StringComparison.Ordinal);
        page = await studio.GetAsync("/paints/labels?paint=P-01&net=4+L&width=105&height=74");
        Assert.DoesNotContain("mm is the least for such a package", page.Text, StringComparison.Ordinal);
        // A side of 23 mm is 32.6 from point to point.
        Assert.Contains("scale(0.326)", page.Html, StringComparison.Ordinal);
        page = await studio.GetAsync("/paints/labels?paint=P-01&net=4+L&width=62&height=30");
        Assert.Contains("23 mm is the least for such a package", page.Text, StringComparison.Ordinal);
        Assert.Contains("ask for a label of 74 by 105 mm", page.Text, StringComparison.Ordinal);
        // Where letters stay readable the signs are as the rules would like them: 16 mm, 22.7 from point to point.
        page = await studio.GetAsync("/paints/labels?paint=P-01&width=74&height=52&precautions=off");
        Assert.Contains("scale(0.227)", page.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("Its signs have a side", page.Text, StringComparison.Ordinal);
        page = await studio.GetAsync("/paints/labels?paint=P-01&net=4+L&width=105&height=74");
        Assert.DoesNotContain("the European rules ask for a label", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Who_makes_it_is_asked_once_and_stands_on_every_label()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        await Cloves(studio);
        Assert.Contains("maker's name, address and telephone are not on the label", (await studio.GetAsync("/paints/labels?paint=P-01")).Text, StringComparison.Ordinal);
        OpenStudio.Form form = (await studio.GetAsync("/studio")).Forms.Single(f => f.Action == "/studio/ways");
        OpenStudio.Seen page = await studio.SendAsync(form, ("scale", "a lot"), ("maker", "Heron Loft"));
        Assert.Contains("value=\"Heron Loft\"", page.Html, StringComparison.Ordinal);
        Assert.Null(studio.Store.State().Set.Maker);
        await studio.SendAsync(form, ("scale", "0.1 g"), ("maker", "Heron Loft"), ("maker-address", "Far Quay 3,\r\nSandmouth; tel. 0000 1"));
        Assert.Equal("0.1 g", studio.Store.State().Set.PlanFields["scale"]);
        page = await studio.GetAsync("/paints/labels?paint=P-01&width=74&height=52");
        Assert.Contains("Made by Heron Loft, Far Quay 3, Sandmouth; tel. 0000 1.", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("not on the label; the European", page.Text, StringComparison.Ordinal);
        Assert.Contains("HeronLoft", Squeezed(PdfReading.Text(await studio.BytesAsync("/pdf/labels?paint=P-01&width=74&height=52"))), StringComparison.Ordinal);
        SubjectKey lake = await PaintPageTests.LakeOf(studio, 20);
        Assert.Contains("Made by Heron Loft", (await studio.GetAsync($"/paints/labels?lake={lake}")).Text, StringComparison.Ordinal);
    }

    // 0.2 g of clove oil in 15.2 g are 1.3 %: H317.
    private static async Task Cloves(OpenStudio studio)
    {
        OpenStudio.Form form = (await studio.GetAsync("/paints/recipe?pigment=rose&grams=8&medium=watercolour&fill=tube-15ml")).Forms.Single(f => f.Action == "/paints");
        await studio.SendAsync(form, ("title", "Strong of cloves"), ("part-0", "8 g"), ("part-1", "7 g"), ("filled", "1"), ("kept-by", "clove oil"), ("kept-by-amount", "0.2 g"));
    }

    private static string Squeezed(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));
}
