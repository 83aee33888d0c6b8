using System.Text.Json;
using Alumroot.App.Colours;
using Alumroot.App.Paints;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Tests;

/// <summary>What stays on the slab, preservatives, cost of the parts, and swatches of a paint, as a browser without script sees them.</summary>
public sealed class PaintKeepingTests
{
    private const string Recipe = "/paints/recipe?pigment=madder+lake&grams=20&oil-absorption=65&density=2.2&medium=watercolour&fill=half-pan";

    // 10 % stays behind: for the same pans 1 / 0.9 of everything is weighed (mass balance).
    [Fact]
    public async Task Amounts_for_a_number_are_scaled_up_by_the_loss()
    {
        double with = await Grams("10"), without = await Grams("0");
        Assert.Equal(without / 0.9, with, 1e-3 * with);
        await using OpenStudio studio = await OpenStudio.StartAsync();
        Assert.Contains("scaled up 1.05 times (1.02 to 1.14), since 5 % (2 to 12) stays on slab and muller (a judgement, from memory", (await studio.GetAsync("/paints/recipe?medium=watercolour&fill=half-pan&count=12")).Text, StringComparison.Ordinal);
        Assert.Contains("scaled up 1.11 times, since 10 % stays on slab and muller (as you say)", (await studio.GetAsync("/paints/recipe?medium=watercolour&fill=half-pan&count=12&loss=10")).Text, StringComparison.Ordinal);

        static async Task<double> Grams(string loss)
        {
            Verbs.Command run = await Verbs.Command.Of(["paint", "--medium", "watercolour", "--fill", "half-pan", "--count", "12", "--loss", loss, "--json"]);
            return JsonDocument.Parse(run.Data).RootElement.GetProperty("pigment_g").GetDouble();
        }
    }

    // 12 g went in and 10.8 came off: 10 % stayed behind, and the next recipe reckons with it.
    [Fact]
    public async Task The_makers_own_weighing_takes_the_place_of_the_judgement()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Form form = (await studio.GetAsync(Recipe)).Forms.Single(f => f.Action == "/paints");
        OpenStudio.Seen page = await studio.SendAsync(form, ("title", "x"), ("part-0", "8 g"), ("part-1", "4 g"), ("came-off", "13 g"));
        Assert.Contains("13 g is more than the 12.0 g that went in", page.Text, StringComparison.Ordinal);
        page = await studio.SendAsync(form, ("title", "x"), ("part-0", "8 g"), ("part-1", "4 g"), ("came-off", "10.8 g"), ("filled", "4"));
        Assert.Contains("10.8 g; 10 % stayed or dried away", page.Text, StringComparison.Ordinal);
        Assert.Contains("10 % (4 to 24) is taken to stay on slab and muller (by your one weighing)", (await studio.GetAsync(Recipe)).Text, StringComparison.Ordinal);
        // An older paint that was never weighed says nothing of it.
        Assert.Single(PaintOwn.Of(studio.Store).Losses);
        Assert.Null(PaintOwn.LostFraction(new PaintMade("old", "oil") { Parts = [new Measured("pigment", "3 g", 0.003, Measured.Kilogram)] }));
    }

    [Theory]
    [InlineData("&preservative=potassium-sorbate&paste-ph=8", "Does nothing here: it works up to pH 6")]
    [InlineData("", "Of its acid 24 % is free there (5 to 65)")]
    [InlineData("&preservative=sodium-benzoate", "hold a strip to the paste")]
    [InlineData("&preservative=rosemary", "'Preservative rosemary' is not known")]
    [InlineData("&preservative=Formaldehyde", "Will not reckon with 'Formaldehyde' as a preservative")]
    [InlineData("&preservative=phenol", "Will not reckon with 'phenol'")]
    [InlineData("&preservative=none", "Keeps, assumed 2 to 4 weeks cold")]
    [InlineData("", "dissolve 1.0 g in 99 g of water")]
    [InlineData("&preservative=clove-oil", "drop")]
    [InlineData("&loss=95", "'Stays on slab and muller, percent 95' is not a number from nothing and at most 90")]
    public async Task A_preservative_is_weighed_and_held_against_the_pH(string fields, string said)
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        Assert.Contains(said, (await studio.GetAsync(Recipe + fields)).Text, StringComparison.Ordinal);
    }

    // 0.2 g of clove oil in 15 g of paint are 1.32 %: above 1 % it is H317 with GHS07 and Warning (CLP, Table 3.4.5, from memory); the usual 0.3 % would be EUH208 alone.
    [Fact]
    public async Task A_weighed_preservative_tells_the_statement_the_signal_word_and_the_sign()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Form form = (await studio.GetAsync(Recipe)).Forms.Single(f => f.Action == "/paints");
        await studio.SendAsync(form, ("title", "Strong of cloves"), ("part-0", "8 g"), ("part-1", "7 g"), ("kept-by", "clove oil"), ("kept-by-amount", "0.2 g"));
        OpenStudio.Seen page = await studio.GetAsync("/paints/labels?paint=P-01");
        Assert.Contains("Warning", page.Text, StringComparison.Ordinal);
        Assert.Contains("H317, pictogram GHS07", page.Text, StringComparison.Ordinal);
        Assert.Contains("aria-label=\"Pictogram GHS07, exclamation mark\"", page.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("Not everything fits", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_preservative_of_which_nothing_is_known_is_said_on_the_page_of_its_label()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Form form = (await studio.GetAsync(Recipe)).Forms.Single(f => f.Action == "/paints");
        await studio.SendAsync(form, ("title", "x"), ("part-0", "8 g"), ("kept-by", "rosemary extract"));
        Assert.Contains("Nothing is known here of the hazards of 'rosemary extract'", (await studio.GetAsync("/paints/labels?paint=P-01")).Text, StringComparison.Ordinal);
        await studio.SendAsync((await studio.GetAsync(Recipe)).Forms.Single(f => f.Action == "/paints"), ("title", "y"), ("part-0", "8 g"), ("kept-by", "potassium sorbate"));
        Assert.DoesNotContain("Nothing is known here", (await studio.GetAsync("/paints/labels?paint=P-02")).Text, StringComparison.Ordinal);
    }

    // 0.1 g of clove oil in 12 g of paint are 0.83 %, below 1; once 4 g of water have dried out of the pan, 0.1 in 8.1 g are 1.2 %.
    [Theory]
    [InlineData("half-pan", "H317")]
    [InlineData("tube-15ml", "EUH208")]
    public async Task What_dries_in_its_pan_is_labelled_without_its_water(string vessel, string code)
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Form form = (await studio.GetAsync(Recipe.Replace("half-pan", vessel, StringComparison.Ordinal))).Forms.Single(f => f.Action == "/paints");
        await studio.SendAsync(form, ("title", "x"), ("part-0", "5 g"), ("part-1", "3 g"), ("part-4", "4 g"), ("filled", "2"), ("kept-by", "clove oil"), ("kept-by-amount", "0.1 g"));
        Assert.Contains(code, (await studio.GetAsync("/paints/labels?paint=P-01")).Text, StringComparison.Ordinal);
    }

    // 250 g of gum for 11.00 and 20 g of pigment for 12: each pan costs (12 + 11 x gum / 250) / pans.
    [Fact]
    public async Task Binders_of_the_shelf_are_in_the_cost_of_each()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        DateTimeOffset at = DateTimeOffset.UtcNow;
        studio.Store.AppendNew(SubjectClass.Lot, EntryId.New(at), new LotBought(LotClass.Binder, "Gum arabic, kibbled", new Measured("amount", "250 g", 0.25, Measured.Kilogram)) { Cost = "11,00 the bag" }, at);
        OpenStudio.Seen page = await studio.GetAsync(Recipe + "&cost=12&loss=0");
        using JsonDocument verb = JsonDocument.Parse((await Verbs.Command.Of(["paint", "--grams", "20", "--oil-absorption", "65", "--density", "2.2", "--medium", "watercolour", "--fill", "half-pan", "--loss", "0", "--json"])).Data);
        double gum = verb.RootElement.GetProperty("components").EnumerateArray().First(p => p.GetProperty("name").GetString() == "gum arabic").GetProperty("g").GetProperty("value").GetDouble();
        string each = Words.PaintFigures.Of((12 + 11 * gum / 250) / verb.RootElement.GetProperty("filled").GetDouble());
        Assert.Contains($"cost of each {each} ", page.Text, StringComparison.Ordinal);
        Assert.Contains("pigment, gum arabic; no price for glycerine, honey", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_painted_swatch_belongs_to_the_paint_and_ends_the_way_of_its_lake()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        SubjectKey lake = await PaintPageTests.LakeOf(studio, 20);
        DateTimeOffset at = DateTimeOffset.UtcNow;
        studio.Store.Append(new SwatchRead(SwatchState.Ground, new LabText(51.6, 35, 10.9)) { WithinDeltaE2000 = 1.3 }.ToEntry(EntryId.New(at), lake, at));
        OpenStudio.Seen page = await studio.GetAsync($"/paints/recipe?lake={lake}&grams=8&medium=watercolour");
        page = await studio.SendAsync(page.Forms.Single(f => f.Action == "/paints"), ("title", "Rose for skies"), ("part-0", "8 g"), ("part-1", "3 g"));
        OpenStudio.Form form = page.Forms.Single(f => f.Action == "/colours/typed");
        page = await studio.SendAsync(form, ("lab", "rose"));
        Assert.Contains("'rose' is no Lab", page.Text, StringComparison.Ordinal);
        page = await studio.SendAsync(form, ("lab", "44,0 41,2 17"), ("note", "two washes"));
        Assert.StartsWith("/paints/P-01", page.Address, StringComparison.Ordinal);
        Assert.Contains("L* 44, a* 41, b* 17", page.Text, StringComparison.Ordinal);
        Assert.Equal(SwatchState.Painted, studio.Store.Paint(SubjectKey.Paint(1))!.Colours.Single().State);
        page = await studio.GetAsync($"/lakes/{lake}");
        Assert.Contains("P-01 Madder, painted", page.Text, StringComparison.Ordinal);
        Assert.Contains("From the one before", page.Text, StringComparison.Ordinal);
        IReadOnlyList<LakeColour> all = LakeColour.All(studio.Store);
        Assert.Equal(2, all.Count);
        Assert.Contains("P-01", (await studio.GetAsync($"/colours/compare?a={all[0].Id}&b={all[1].Id}")).Text, StringComparison.Ordinal);
        Assert.Contains("P-01 Madder, painted", (await studio.GetAsync("/colours")).Text, StringComparison.Ordinal);
        // Taken back, it is gone from the way, too.
        page = await studio.GetAsync("/paints/P-01");
        await studio.SendAsync(page.Forms.First(f => f.Action == "/paints/P-01/take-back"));
        Assert.Single(LakeColour.Way(studio.Store.Batch(lake)!, studio.Store));
        Assert.Empty(studio.Store.Check());
    }

    [Fact]
    public async Task An_area_of_a_photograph_can_be_a_paints()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        await studio.SendAsync((await studio.GetAsync(Recipe)).Forms.Single(f => f.Action == "/paints"), ("title", "Rose for skies"), ("part-0", "8 g"));
        byte[] picture = await File.ReadAllBytesAsync(Path.Combine(AppContext.BaseDirectory, "Photo", "photo.jpg"), TestContext.Current.CancellationToken);
        OpenStudio.Seen page = await studio.UploadAsync((await studio.GetAsync("/colours")).Forms.First(f => f.Action == "/colours/photo"), picture, "photo.jpg");
        Assert.Contains("P-01 Rose for skies", page.Text, StringComparison.Ordinal);
        page = await studio.SendAsync(page.Forms.First(f => f.Action == "/colours/keep"), ("thing", "1"), ("lake", "P-01"), ("state", "wet"));
        Assert.StartsWith("/paints/P-01", page.Address, StringComparison.Ordinal);
        SwatchRead read = studio.Store.Paint(SubjectKey.Paint(1))!.Colours.Single();
        // A paint is read painted, whatever was chosen beside it.
        Assert.Equal(SwatchState.Painted, read.State);
        Assert.Single(read.Photos);
        Assert.Contains("Not kept", (await studio.SendAsync((await studio.GetAsync($"/colours/photo/{read.Photos[0]}")).Forms.First(f => f.Action == "/colours/keep"), ("thing", "1"), ("lake", "P-09"), ("state", "dry"))).Text, StringComparison.Ordinal);
    }
}
