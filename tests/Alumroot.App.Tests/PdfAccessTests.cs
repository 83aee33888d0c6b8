using Alumroot.App.Print.Labels;
using Alumroot.App.Print.Pdf;
using Alumroot.Paint.Labels;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics.Colors;
using UglyToad.PdfPig.Tokens;

namespace Alumroot.App.Tests;

/// <summary>What a reader aloud finds in the PDF files, and the hazard signs on labels, read back with a program of its own (PdfPig). What is asked is in ISO 32000-1, 14.7 to 14.9, and in ISO 14289-1; both from memory.</summary>
public sealed class PdfAccessTests
{
    private const string Card = "/pdf/recipe-card?pigment=madder+lake&grams=20&medium=watercolour&fill=half-pan";

    [Fact]
    public async Task A_sheet_is_marked_titled_in_a_language_and_its_words_are_tagged_in_order()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        using PdfDocument pdf = PdfDocument.Open(await studio.BytesAsync(Card));
        DictionaryToken catalog = pdf.Structure.Catalog.CatalogDictionary;
        Assert.Equal("en", Text(pdf, catalog, "Lang"));
        Assert.Equal("Madder lake, watercolour", pdf.Information.Title);
        Assert.Equal(BooleanToken.True, Entry(pdf, Dictionary(pdf, catalog, "MarkInfo"), "Marked"));
        Assert.Equal(BooleanToken.True, Entry(pdf, Dictionary(pdf, catalog, "ViewerPreferences"), "DisplayDocTitle"));
        Assert.All(pdf.GetPages(), p => Assert.Equal("S", ((NameToken)Entry(pdf, p.Dictionary, "Tabs")!).Data));
        string[] tags = [.. Tags(pdf, Dictionary(pdf, catalog, "StructTreeRoot"))];
        Assert.Equal("H1", tags.First(t => t is not ("Document" or "Part" or "Sect")));
        foreach (string tag in (string[])["P", "L", "LI", "Lbl", "LBody", "Table", "TR", "TH", "TD"]) Assert.Contains(tag, tags);
        // A head cell says whether it heads a column or a row: five columns, and a row for each part.
        string[] scopes = [.. Elements(pdf, Dictionary(pdf, catalog, "StructTreeRoot")).Where(e => Entry(pdf, e, "S") is NameToken { Data: "TH" }).Select(e => ((NameToken)Entry(pdf, Dictionary(pdf, e, "A"), "Scope")!).Data)];
        Assert.Equal(Enumerable.Repeat("Column", 5).Concat(Enumerable.Repeat("Row", 5)), scopes);
        // Every letter is in tagged content or an artifact.
        Assert.All(pdf.GetPages(), p => Assert.Equal(p.Letters.Count, p.GetMarkedContents().Sum(m => m.Letters.Count)));
    }

    [Fact]
    public async Task Every_font_is_embedded()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        using PdfDocument pdf = PdfDocument.Open(await studio.BytesAsync(Card));
        int fonts = 0;
        foreach (var page in pdf.GetPages())
            foreach (IToken font in Dictionary(pdf, Dictionary(pdf, page.Dictionary, "Resources"), "Font").Data.Values)
            {
                var made = (DictionaryToken)Resolved(pdf, font)!;
                DictionaryToken described = Entry(pdf, made, "DescendantFonts") is ArrayToken inner ? (DictionaryToken)Resolved(pdf, inner.Data[0])! : made;
                DictionaryToken descriptor = Dictionary(pdf, described, "FontDescriptor");
                Assert.True(descriptor.Data.ContainsKey("FontFile2") || descriptor.Data.ContainsKey("FontFile3"));
                // Letters have their meaning: by a table, or by one of the encodings that every reader knows.
                Assert.True(made.Data.ContainsKey("ToUnicode") || Entry(pdf, made, "Encoding") is NameToken { Data: "WinAnsiEncoding" });
                fonts++;
            }
        Assert.InRange(fonts, 2, 20);
    }

    [Fact]
    public void Every_pictogram_of_the_table_is_drawn() =>
        Assert.All(LabelHazards.Known.SelectMany(s => LabelHazards.Of(new Dictionary<string, double> { [s] = 100 })).Select(h => h.Pictogram).Where(p => p.Length > 0), p => Assert.NotNull(HazardSign.Of(p)));

    // A square on its point with a red frame, a black symbol on white, at least 1 cm² (CLP, Annex I, 1.2.1, from memory).
    [Theory]
    [InlineData("jar", 62, 42)]
    [InlineData("tube", 75, 28)]
    [InlineData("pan", 44, 30)]
    [InlineData("stick", 68, 28)]
    public void A_sign_stands_whole_on_the_label_in_red_and_keeps_clear_of_words_and_code(string kind, double width, double height)
    {
        LabelHazard[] hazards = [.. LabelHazards.Of(new Dictionary<string, double> { ["clove oil"] = 1.5 })];
        var content = new LabelContent("Strong of cloves", ["Pigment: natural lake of madder on aluminium hydroxide.", "Watercolour: gum arabic, honey.", "Lot P-01."], hazards, "P-01");
        var layout = LabelLayout.Of(content, width, height);
        Assert.True(layout.Fits, kind);
        LabelSign sign = Assert.Single(layout.Signs);
        Assert.True(layout.SignMillimetres * layout.SignMillimetres / 2 >= 100);
        Assert.InRange(sign.LeftMillimetres, 0, width - layout.SignMillimetres);
        Assert.InRange(sign.TopMillimetres, 0, height - layout.SignMillimetres);
        Assert.All(layout.Lines, l => Assert.True(l.LeftMillimetres + TextMeasure.WidthMillimetres(l.Words, l.Points, l.Strong) <= sign.LeftMillimetres, l.Words));
        Assert.True(layout.CodeSideMillimetres == 0 || layout.CodeTopMillimetres + layout.CodeSideMillimetres <= sign.TopMillimetres || sign.LeftMillimetres + layout.SignMillimetres <= layout.CodeLeftMillimetres);
        using PdfDocument pdf = PdfDocument.Open(new LabelSheet([content], new LabelGrid(Print.Paper.A4, width, height, 10, 10, 3, 3), 1, 0, Outlined: true).Pdf());
        PdfRectangle red = Assert.Single(pdf.GetPage(1).Paths, p => p.IsFilled && p.FillColor is RGBColor { R: > 0.8, G: < 0.2, B: < 0.2 }).GetBoundingRectangle()!.Value;
        const double points = 72 / 25.4;
        Assert.Equal(layout.SignMillimetres, red.Width / points, 0.01);
        Assert.Equal(10 + sign.LeftMillimetres, red.Left / points, 0.01);
        // The figure is read aloud by its code.
        Assert.Contains("GHS07, exclamation mark", Alternatives(pdf, Dictionary(pdf, pdf.Structure.Catalog.CatalogDictionary, "StructTreeRoot")));
    }

    [Fact]
    public void Three_signs_fit_a_jar_and_a_label_too_small_says_so()
    {
        LabelHazard[] hazards = [.. LabelHazards.Of(new Dictionary<string, double> { ["borax"] = 3, ["clove oil"] = 2, ["white spirit"] = 25 })];
        Assert.Equal("Danger", Words.LabelWords.SignalWord(hazards));
        var content = new LabelContent("Casein", ["Casein: casein, borax."], hazards, "P-01");
        Assert.Equal(["GHS08", "GHS07", "GHS02"], LabelLayout.Of(content, 90, 60).Signs.Select(s => s.Sign.Code));
        Assert.True(LabelLayout.Of(content, 90, 60).Fits);
        Assert.False(LabelLayout.Of(content, 30, 12).Fits);
    }

    private static IToken? Resolved(PdfDocument pdf, IToken? token) => token is IndirectReferenceToken reference ? pdf.Structure.GetObject(reference.Data).Data : token;

    private static IToken? Entry(PdfDocument pdf, DictionaryToken dictionary, string name) => dictionary.Data.TryGetValue(name, out IToken? token) ? Resolved(pdf, token) : null;

    private static DictionaryToken Dictionary(PdfDocument pdf, DictionaryToken dictionary, string name) => Assert.IsType<DictionaryToken>(Entry(pdf, dictionary, name));

    private static string? Text(PdfDocument pdf, DictionaryToken dictionary, string name) => Entry(pdf, dictionary, name) switch { StringToken s => s.Data, HexToken h => h.Data, _ => null };

    private static IEnumerable<DictionaryToken> Elements(PdfDocument pdf, DictionaryToken element)
    {
        yield return element;
        IEnumerable<IToken?> kids = Entry(pdf, element, "K") switch { ArrayToken array => array.Data.Select(t => Resolved(pdf, t)), { } one => [one], _ => [] };
        foreach (DictionaryToken kid in kids.OfType<DictionaryToken>().SelectMany(k => Elements(pdf, k))) yield return kid;
    }

    private static IEnumerable<string> Tags(PdfDocument pdf, DictionaryToken root) => Elements(pdf, root).Select(e => (Entry(pdf, e, "S") as NameToken)?.Data).OfType<string>();

    private static IEnumerable<string> Alternatives(PdfDocument pdf, DictionaryToken root) => Elements(pdf, root).Select(e => Text(pdf, e, "Alt")).OfType<string>();
}
