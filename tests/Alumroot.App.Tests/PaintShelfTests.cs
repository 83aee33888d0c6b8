using Alumroot.App.Paints;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Store;

namespace Alumroot.App.Tests;

/// <summary>Making a paint takes binders off the shelf. Stocks are counted by hand.</summary>
public sealed class PaintShelfTests
{
    private const string Watercolour = "/paints/recipe?pigment=rose&grams=20&medium=watercolour&fill=half-pan", Oil = "/paints/recipe?pigment=rose&grams=20&medium=oil";

    // 250 g came, 7.5 g went in: 242.5 g are left; taken back, 250 g.
    [Fact]
    public async Task The_one_lot_that_names_a_part_is_proposed_and_falls_and_comes_back()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        SubjectKey gum = Lot(studio, "Gum Arabic, kibbled", Grams(250)), honey = Lot(studio, "acacia honey", Grams(400));
        OpenStudio.Seen page = await studio.GetAsync(Watercolour);
        Assert.Contains("From the shelf: gum arabic", page.Text, StringComparison.Ordinal);
        Assert.Contains($"<option value=\"{gum}\" selected", page.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("From the shelf: water", page.Text, StringComparison.Ordinal);
        page = await studio.SendAsync(page.Forms.Single(f => f.Action == "/paints"), ("title", "rose, watercolour"), ("part-0", "20 g"), ("part-1", "7,5 g"), ("from-1", gum.ToString()));
        PaintMade made = studio.Store.Paint(SubjectKey.Paint(1))!.Made!;
        Assert.Equal((gum.ToString(), "gum arabic", 0.0075), (made.Uses[0].Lot, made.Uses[0].Amount.Name, made.Uses[0].Amount.SiValue));
        Assert.Single(made.Uses);
        Assert.Contains("from the shelf", page.Text, StringComparison.Ordinal);
        Assert.Equal((0.2425, 0.4), (studio.Store.Lot(gum)!.LeftSi!.Value, studio.Store.Lot(honey)!.LeftSi!.Value));
        page = await studio.GetAsync($"/shelf/{gum}");
        Assert.Contains("P-01 rose, watercolour", page.Text, StringComparison.Ordinal);
        Assert.Contains("href=\"/paints/P-01\"", page.Html, StringComparison.Ordinal);
        page = await studio.GetAsync("/paints/P-01");
        await studio.SendAsync(page.Forms.First(f => f.Action == "/paints/P-01/take-back"));
        Assert.Equal(0.25, studio.Store.Lot(gum)!.LeftSi);
        Assert.Empty(studio.Store.Check());
    }

    // 9.3 g of linseed oil at 0.93 g/mL are 10 mL of the bottle's 250.
    [Fact]
    public async Task A_lot_by_volume_falls_by_the_volume()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        SubjectKey oil = Lot(studio, "cold-pressed linseed oil", new Measured("amount", "250 mL", 0.00025, Measured.CubicMetre));
        OpenStudio.Seen page = await studio.GetAsync(Oil);
        page = await studio.SendAsync(page.Forms.Single(f => f.Action == "/paints"), ("title", "rose in oil"), ("part-0", "20 g"), ("part-1", "9.3 g"), ("from-1", oil.ToString()));
        Assert.StartsWith("/paints/P-01", page.Address, StringComparison.Ordinal);
        Assert.Equal(0.00024, studio.Store.Lot(oil)!.LeftSi!.Value, 1e-9);
        Assert.Equal(0, studio.Store.Lot(oil)!.UsesInOtherUnit);
        Assert.Contains("mL by its density", (await studio.GetAsync($"/shelf/{oil}")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Of_several_lots_none_is_proposed_and_a_packet_without_a_name_is_offered_everywhere()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        SubjectKey one = Lot(studio, "gum arabic, old", Grams(20)), other = Lot(studio, "gum arabic, new", Grams(100)), sack = Lot(studio, "the brown sack", Grams(100));
        Lot(studio, "clove oil", Grams(10));
        OpenStudio.Seen page = await studio.GetAsync(Watercolour);
        OpenStudio.Form form = page.Forms.Single(f => f.Action == "/paints");
        Assert.DoesNotContain("selected", page.Html[page.Html.IndexOf("id=\"from-1\"", StringComparison.Ordinal)..page.Html.IndexOf("id=\"part-2\"", StringComparison.Ordinal)].Replace("value=\"\" selected", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("From the shelf: glycerine", page.Text, StringComparison.Ordinal);
        // More than the lot holds is kept, since it was weighed, and said.
        page = await studio.SendAsync(form, ("title", "rose"), ("part-0", "20 g"), ("part-1", "24 g"), ("from-1", one.ToString()), ("part-2", "5 g"), ("from-2", sack.ToString()));
        Assert.Contains("More of lot-1 was used than came: -4 g left", page.Text, StringComparison.Ordinal);
        Assert.Equal("lot-1", Assert.Single(studio.Store.Check()).Where);
        Assert.True(studio.Store.Lot(sack)!.LeftSi < 0.1);
        Assert.Equal(0.1, studio.Store.Lot(other)!.LeftSi);
    }

    [Theory]
    [InlineData("from-1", "lot-9", "'lot-9' is not among the lots that could give it")]
    [InlineData("from-1", "lot-2", "'lot-2' is not among the lots that could give it")]
    [InlineData("kept-by-from", "lot-2", "lot-2 is named, but not how much of it was taken")]
    public async Task A_lot_that_does_not_fit_is_said_and_nothing_is_kept(string field, string lot, string said)
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        Lot(studio, "gum arabic", Grams(250));
        Lot(studio, "clove oil", Grams(10));
        OpenStudio.Seen page = await studio.SendAsync((await studio.GetAsync(Watercolour)).Forms.Single(f => f.Action == "/paints"), ("title", "rose"), ("part-0", "20 g"), ("part-1", "7 g"), ("kept-by", "clove oil"), (field, lot));
        Assert.Contains(said, page.Text, StringComparison.Ordinal);
        Assert.Empty(studio.Store.Paints());
    }

    [Theory]
    [InlineData("Gum arabic, kibbled", "gum arabic", true)]
    [InlineData("eggs, a dozen", "egg yolk", true)]
    [InlineData("long-oil alkyd", "its solvent", true)]
    [InlineData("whiting", "chalk", true)]
    [InlineData("gum tragacanth", "gum arabic", false)]
    [InlineData("acacia honey", "gum arabic", false)]
    public void A_packet_names_its_part(string title, string part, bool names) => Assert.Equal(names, PartNames.Names(title, part));

    private static Measured Grams(double grams) => new("amount", FormattableString.Invariant($"{grams} g"), grams / 1000, Measured.Kilogram);

    private static SubjectKey Lot(OpenStudio studio, string title, Measured amount)
    {
        DateTimeOffset at = DateTimeOffset.UtcNow;
        return ((AppendResult.Kept)studio.Store.AppendNew(SubjectClass.Lot, EntryId.New(at), new LotBought(LotClass.Binder, title, amount), at)).Entry.Subject;
    }
}
