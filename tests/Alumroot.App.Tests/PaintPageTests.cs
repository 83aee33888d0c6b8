using System.Net;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Tests;

/// <summary>Paint as a browser without script makes it: recipe, record, stock, label, sheet.</summary>
public sealed class PaintPageTests
{
    private const string Plan = "/lakes/plan?salt=potash-alum&salt-amount=50+g&alkali=soda-ash&dyestuff=madder&dry=100+g&water=3+L&temp=60+C&to-ph=6.5&vessel=20+L";
    private const string Watercolour = "/paints/recipe?pigment=madder+lake&grams=20&oil-absorption=65&density=2.2&medium=watercolour&fill=half-pan&colour=madder";

    [Fact]
    public async Task A_recipe_is_its_address_and_says_what_the_verb_says()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Seen page = await studio.GetAsync(Watercolour);
        Verbs.Command verb = await Verbs.Command.Of(["paint", "--pigment", "madder lake", "--grams", "20", "--oil-absorption", "65", "--density", "2.2", "--medium", "watercolour", "--fill", "half-pan", "--colour", "madder"]);
        string gum = verb.Data.Split('\n').First(l => l.TrimStart().StartsWith("gum arabic", StringComparison.Ordinal)).Split(' ', StringSplitOptions.RemoveEmptyEntries)[2];
        Assert.Contains($"gum arabic {gum}", page.Text, StringComparison.Ordinal);
        Assert.Contains("madder and its kin: works", page.Text, StringComparison.Ordinal);
        Assert.Contains("madder and its kin: works", verb.Data, StringComparison.Ordinal);
        // Spans and where numbers come from stand beside them.
        Assert.Contains("measured", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("is taken as 60", page.Text, StringComparison.Ordinal);
        Assert.Contains("is taken as 60", (await studio.GetAsync("/paints/recipe?grams=20&medium=oil")).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/paints/recipe?medium=oil&grams=twenty", "not a number above nothing")]
    [InlineData("/paints/recipe?medium=oil", "Give either the pigment in hand")]
    [InlineData("/paints/recipe?medium=oils&grams=2", "The nearest is 'oil'")]
    [InlineData("/paints/recipe?medium=oil&grams=2&colour=sky", "neither a dyestuff of the handbook nor a kind of colour")]
    [InlineData("/paints/recipe?medium=oil&grams=2&pigment=chrome+yellow", "chromates")]
    [InlineData("/paints/labels?paint=P-77", "There is no paint 'P-77'")]
    [InlineData("/paints/P-77", "There is no \"P-77\" here")]
    [InlineData("/print/recipe-card?grams=2", "There is nothing to print here")]
    public async Task What_is_wrong_is_said(string address, string said)
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        Assert.Contains(said, (await studio.GetAsync(address)).Text, StringComparison.Ordinal);
    }

    // 20 g of madder lake in drying oil from a cake of 60 % water: 50 g of cake, and all 30 g of water leave (mass balance).
    [Fact]
    public async Task A_wet_cake_is_weighed_and_its_water_counted()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Seen page = await studio.GetAsync("/paints/recipe?grams=50&cake-water=60&medium=oil");
        Assert.Contains("Weigh 50.0 g of the wet cake: it holds 20.0 g of pigment and 30.0 g of water", page.Text, StringComparison.Ordinal);
        Assert.Contains("about 30.0 g in all", page.Text, StringComparison.Ordinal);
        page = await studio.GetAsync("/paints/recipe?grams=60&medium=soft-pastel");
        Assert.Contains("Test row first: three strengths", page.Text, StringComparison.Ordinal);
        Assert.Contains("2 50.0 30.0 30.0", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_paint_takes_from_its_lake_and_gives_back_when_taken_back()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        SubjectKey lake = await LakeOf(studio, 20);
        OpenStudio.Seen page = await studio.GetAsync($"/paints/recipe?lake={lake}&grams=8&medium=watercolour&fill=half-pan");
        Assert.Contains("the pigment of the lake becomes less by it", page.Text, StringComparison.Ordinal);
        page = await studio.SendAsync(page.Forms.Single(f => f.Action == "/paints"), ("title", "Rose for skies"), ("part-0", "8,4 g"), ("part-1", "3.2 g"), ("part-2", "1 g"), ("part-3", "1 g"), ("part-4", "6 g"), ("filled", "4"), ("where", "box 2"), ("kept-by", "clove oil"));
        Assert.StartsWith("/paints/P-01", page.Address, StringComparison.Ordinal);
        PaintState paint = studio.Store.Paint(SubjectKey.Paint(1))!;
        Assert.Equal(0.0084, paint.Made!.Lakes.Single().Amount.SiValue, 1e-9);
        Assert.Equal(0.0116, studio.Store.PigmentLeftKg(studio.Store.Batch(lake)!)!.Value, 1e-9);
        Assert.Contains("Pigment left: 11.6 g", (await studio.GetAsync($"/lakes/{lake}")).Text, StringComparison.Ordinal);
        Assert.Contains("11.6 g", (await studio.GetAsync("/lakes")).Text, StringComparison.Ordinal);
        Assert.Contains("4 half-pans in box 2", (await studio.GetAsync("/paints")).Text, StringComparison.Ordinal);

        // Used up, and then the making is taken back: the pigment is there again.
        page = await studio.SendAsync(page.Forms.First(f => f.Action == "/paints/P-01/used-up"));
        Assert.Contains("used up", page.Text, StringComparison.Ordinal);
        page = await studio.SendAsync(page.Forms.Last(f => f.Action == "/paints/P-01/take-back"));
        Assert.Equal(0.02, studio.Store.PigmentLeftKg(studio.Store.Batch(lake)!)!.Value, 1e-9);
        Assert.Null(studio.Store.Paint(SubjectKey.Paint(1))!.Made);
        Assert.Empty(studio.Store.Check());
        Assert.Contains("P-01", (await studio.GetAsync("/find?q=skies")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_same_form_sent_twice_makes_one_paint_and_a_wrong_weight_makes_none()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Form form = (await studio.GetAsync(Watercolour)).Forms.Single(f => f.Action == "/paints");
        OpenStudio.Seen page = await studio.SendAsync(form, ("title", "x"), ("part-0", "much"));
        Assert.Contains("'much' is no weight", page.Text, StringComparison.Ordinal);
        Assert.Empty(studio.Store.Paints());
        await studio.SendAsync(form, ("title", "x"), ("part-0", "20 g"));
        page = await studio.SendAsync(form, ("title", "x"), ("part-0", "20 g"));
        Assert.Single(studio.Store.Paints());
        Assert.Equal(HttpStatusCode.OK, page.Status);
    }

    /// <summary>A lake with so many grams of ground pigment.</summary>
    internal static async Task<SubjectKey> LakeOf(OpenStudio studio, double grams)
    {
        await studio.SendAsync((await studio.GetAsync(Plan)).Forms.First(f => f.Action == "/lakes"));
        SubjectKey lake = studio.Store.List(kind: SubjectClass.Batch).Single().Subject;
        var weighed = new Measured("amount", FormattableString.Invariant($"{grams} g"), grams / 1000, Measured.Kilogram);
        DateTimeOffset at = DateTimeOffset.UtcNow;
        studio.Store.Append(new BatchStep(StepKind.Grind) { Act = "ground", Values = [weighed], Ended = true }.ToEntry(EntryId.New(at), lake, at));
        return lake;
    }
}
