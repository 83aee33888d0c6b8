using System.Net;
using Alumroot.App.Print;
using Alumroot.App.Print.Pdf;
using Alumroot.Paint.Labels;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Tests;

/// <summary>Sheets and labels: the PDF says what the page says, keeps within the paper, and its code reads back.</summary>
public sealed class PrintedTests
{
    private const string Recipe = "pigment=madder+lake&grams=20&medium=watercolour&fill=half-pan&colour=cochineal";

    [Theory]
    [InlineData("batch-sheet", "a4")]
    [InlineData("bench-card", "letter")]
    [InlineData("swatch-card", "a6")]
    public async Task Sheets_of_a_lake_say_the_same_on_paper_and_page(string what, string paper)
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        SubjectKey lake = await PaintPageTests.LakeOf(studio, 20);
        await SameOnBoth(studio, $"{what}?lake={lake}&paper={paper}", Paper.Of(paper), lake.ToString());
    }

    [Theory]
    [InlineData("recipe-card?" + Recipe, "gum arabic")]
    [InlineData("recipe-card?" + Recipe + "&paper=a6", "gum arabic")]
    [InlineData("handout?" + Recipe + "&people=12", "for 12")]
    [InlineData("ladder-card?dyestuff=weld", "vinegar")]
    public async Task Sheets_of_a_recipe_say_the_same_on_paper_and_page(string query, string said)
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        string text = await SameOnBoth(studio, query, Paper.Of(query.Contains("a6", StringComparison.Ordinal) ? "a6" : "a4"), null);
        Assert.Contains(said, text, StringComparison.Ordinal);
    }

    // Twelve people with 20 g each: 240 g, twelve slabs, six mullers for two each.
    [Fact]
    public async Task A_handout_is_scaled_for_all()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        string text = (await studio.GetAsync("/print/handout?" + Recipe + "&people=12")).Text;
        Assert.Contains("240 g", text, StringComparison.Ordinal);
        Assert.Contains("dust mask 1 12", text, StringComparison.Ordinal);
        Assert.Contains("muller shared 6", text, StringComparison.Ordinal);
        Assert.Contains("ask a licensed professional", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("jar", 62, 42)]
    [InlineData("tube", 75, 28)]
    [InlineData("pan", 44, 30)]
    [InlineData("stick", 68, 28)]
    public async Task Every_label_of_a_paint_fits_and_its_code_reads_back(string kind, double width, double height)
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        await MadeOf(studio);
        OpenStudio.Seen page = await studio.GetAsync($"/paints/labels?paint=P-01&kind={kind}");
        Assert.DoesNotContain("Not everything fits", page.Text, StringComparison.Ordinal);
        byte[] pdf = await Bytes(studio, $"/pdf/labels?paint=P-01&kind={kind}");
        string text = PdfReading.Text(pdf);
        // What a label names (the practice of ASTM D4236 and CLP as the issue lists it): name, composition, colour index name, binder, preservative, lot.
        foreach (string said in (string[])["Rose", "skies", "Rubia", "tinctorum", "Natural", "Red", "gum", "arabic", "clove", "P-01", "eugenol."]) Assert.Contains(said, text, StringComparison.Ordinal);
        (double left, double top, double w, double h) = PdfReading.Outlines(pdf)[0];
        Assert.Equal((10, 10, width, height), (Math.Round(left, 1), Math.Round(top, 1), Math.Round(w, 1), Math.Round(h, 1)));
        Assert.Equal("P-01", PdfReading.Code(pdf, left, top, w, h));
        Assert.True(PdfReading.KeepsWithinThePaper(pdf));
        Assert.Contains("judged by someone licensed", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sizes_are_free_and_what_does_not_fit_is_said()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        await MadeOf(studio);
        byte[] pdf = await Bytes(studio, "/pdf/labels?paint=P-01&width=50,5&height=40&left=7&top=12,5&across=2&down=0&copies=30&skip=2&paper=letter");
        (double left, double top, double w, double h) = PdfReading.Outlines(pdf)[0];
        // The third place of the first row, by hand: 7 + 2 (50.5 + 2) = 112.
        Assert.Equal((112, 12.5, 50.5, 40), (Math.Round(left, 1), Math.Round(top, 1), Math.Round(w, 1), Math.Round(h, 1)));
        // By hand: four across end at 7 + 4 x 50.5 + 3 x 2 = 215 of 215.9 mm, six down at 252.5 of 279.4 mm; 2 + 30 places take two papers of 24.
        Assert.Equal(2, PdfReading.Size(pdf).Pages);
        Assert.Contains("Not everything fits", (await studio.GetAsync("/paints/labels?paint=P-01&width=20&height=10")).Text, StringComparison.Ordinal);
        Assert.Contains("'tall' does not do", (await studio.GetAsync("/paints/labels?paint=P-01&height=tall")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_jar_of_pigment_has_a_label_too()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        SubjectKey lake = await PaintPageTests.LakeOf(studio, 20);
        byte[] pdf = await Bytes(studio, $"/pdf/labels?lake={lake}");
        Assert.Contains("20.0 g", PdfReading.Text(pdf), StringComparison.Ordinal);
        (double left, double top, double w, double h) = PdfReading.Outlines(pdf)[0];
        Assert.Equal(lake.ToString(), PdfReading.Code(pdf, left, top, w, h));
    }

    // CLP: borax from 0.3 % (Annex VI, note of the 17th adaptation), eugenol from 0.1 % as EUH208 and from 1 % as H317 (Annex II and Table 3.4.5, from memory).
    [Theory]
    [InlineData("borax", 0.29, "")]
    [InlineData("borax", 0.3, "H360FD")]
    [InlineData("clove oil", 0.3, "EUH208")]
    [InlineData("clove oil", 1.2, "H317")]
    [InlineData("phenoxyethanol", 0.8, "")]
    [InlineData("phenoxyethanol", 4, "H318")]
    [InlineData("gum arabic", 30, "")]
    public void Hazards_follow_from_contents(string content, double percent, string codes) =>
        Assert.Equal(codes, string.Join(' ', LabelHazards.Of(new Dictionary<string, double> { [content] = percent }).Select(h => h.Code)));

    [Fact]
    public void A_long_sheet_runs_over_pages_and_stays_within_them()
    {
        var sheet = new PrintSheet("A long sheet", [new PrintBlock.Grid("many", ["one", "two"], [1, 1], [.. Enumerable.Range(1, 90).Select(n => (IReadOnlyList<string>)[$"row{n}", n % 3 == 0 ? "" : "pneumonoultramicroscopicsilicovolcanoconiosis and so on and so on"])])]) { Code = "26-001", Paper = Paper.A6 };
        byte[] pdf = PdfSheet.Of(sheet);
        Assert.True(PdfReading.KeepsWithinThePaper(pdf));
        Assert.InRange(PdfReading.Size(pdf).Pages, 3, 30);
        string text = PdfReading.Text(pdf);
        Assert.All(Enumerable.Range(1, 90), n => Assert.Contains($"row{n}", text, StringComparison.Ordinal));
        Assert.Equal("26-001", PdfReading.Code(pdf));
    }

    private static async Task<string> SameOnBoth(OpenStudio studio, string query, Paper paper, string? code)
    {
        OpenStudio.Seen page = await studio.GetAsync("/print/" + query);
        byte[] pdf = await Bytes(studio, "/pdf/" + query);
        (double width, double height, _) = PdfReading.Size(pdf);
        Assert.Equal(paper.WidthMillimetres, width, 0.1);
        Assert.Equal(paper.HeightMillimetres, height, 0.1);
        Assert.True(PdfReading.KeepsWithinThePaper(pdf));
        string text = PdfReading.Text(pdf), said = Squeezed(text);
        string[] words = [.. page.Html[page.Html.IndexOf("<article", StringComparison.Ordinal)..page.Html.IndexOf("</article>", StringComparison.Ordinal)].Split('<').Select(p => WebUtility.HtmlDecode(p[(p.IndexOf('>', StringComparison.Ordinal) + 1)..]).Trim()).Where(p => p.Length > 0 && p is not ("to fill in" or "Mind:"))];
        Assert.True(words.Length > 12);
        // The second the sheet was printed at may differ.
        Assert.All(words.Where(w => !w.Contains("Printed", StringComparison.Ordinal)), w => Assert.Contains(Squeezed(w), said, StringComparison.Ordinal));
        if (code is not null) Assert.Equal(code, PdfReading.Code(pdf));
        return text;
    }

    private static string Squeezed(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    private static async Task MadeOf(OpenStudio studio)
    {
        SubjectKey lake = await PaintPageTests.LakeOf(studio, 20);
        OpenStudio.Seen page = await studio.GetAsync($"/paints/recipe?lake={lake}&grams=8&medium=watercolour&fill=half-pan");
        await studio.SendAsync(page.Forms.Single(f => f.Action == "/paints"), ("title", "Rose for skies"), ("part-0", "8 g"), ("part-1", "3.2 g"), ("part-4", "6 g"), ("filled", "4"), ("kept-by", "clove oil"));
    }

    private static Task<byte[]> Bytes(OpenStudio studio, string path) => studio.BytesAsync(path);
}
