using System.Globalization;
using Alumroot.App.Trials.Spot;
using Alumroot.Catalogue;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Trials.Spot;

namespace Alumroot.App.Tests;

/// <summary>The spot test over HTTP: drops by eye and by photograph, what they change on the lot and in a plan; and its solutions against the plan engine.</summary>
public sealed class SpotTestTests
{
    private const string Plan = "/lakes/plan?salt=potash-alum&salt-amount=50+g&alkali=soda-ash&dyestuff=madder&dry=100+g&water=3+L&temp=60+C&to-ph=6.5&vessel=20+L";

    [Fact]
    public async Task Drops_are_kept_with_the_lot_and_seen_in_a_plan_that_uses_it()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        Assert.Contains("There is none on the shelf yet", (await studio.GetAsync("/trials/spot")).Text, StringComparison.Ordinal);
        SubjectKey lot = Lot(studio, "madder");
        OpenStudio.Seen page = await studio.GetAsync($"/trials/spot?lot={lot}");
        Assert.Contains("Potash alum 5 g 2 about 3", page.Text, StringComparison.Ordinal);
        Assert.Contains("Copper kills water life", page.Text, StringComparison.Ordinal);
        OpenStudio.Form form = page.Forms.Single(f => f.Action == "/trials/spot");
        page = await studio.SendAsync(form, ("lot", $"{lot}"), ("seen-none", "Nothing"));
        Assert.Contains("say of at least one drop", page.Text, StringComparison.Ordinal);
        Assert.Empty(SpotVerdict.TestsOf(studio.Store.Lot(lot)!));
        page = await studio.SendAsync(form, ("lot", $"{lot}"), ("seen-none", "Nothing"), ("seen-potash-alum", "Pale"), ("seen-iron-sulfate", "NoneLeft"), ("note", "old roots"));
        Assert.StartsWith($"/shelf/{lot}", page.Address, StringComparison.Ordinal);
        Assert.Contains("aluminium 1 takes well, 82 in a hundred", page.Text, StringComparison.Ordinal);
        Assert.Contains("spot test: soda alone, stays clear, nothing falls; Potash alum, pale solid", page.Text, StringComparison.Ordinal);

        // Bayes by hand: 0.01 x 0.62, 0.04 x 0.30, 0.13 x 0.08, 0.82 x 0.03 are as 0.0062 to 0.0120 to 0.0104 to 0.0246; moderate or strong 0.0350 of 0.0532.
        SpotVerdict aluminium = SpotVerdict.Of(studio.Store.Lot(lot)!).Single(v => v.Metal == LakeMetal.Aluminium);
        Assert.Equal(0.0350 / 0.0532, aluminium.After.LakeChanceShare, 1e-9);
        page = await studio.GetAsync($"{Plan}&dyestuff-lot={lot}");
        Assert.Contains("Spot test of this lot on aluminium (1 drop", page.Text, StringComparison.Ordinal);
        Assert.Contains("a lake of some use 66 in a hundred", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Spot test of this lot", (await studio.GetAsync(Plan)).Text, StringComparison.Ordinal);

        // Taken back, the lot is believed as before.
        page = await studio.GetAsync($"/shelf/{lot}");
        await studio.SendAsync(page.Forms.First(f => f.Action == $"/shelf/{lot}/take-back"));
        Assert.All(SpotVerdict.Of(studio.Store.Lot(lot)!), v => Assert.Equal(0, v.Count));
        Assert.Empty(studio.Store.Check());
    }

    /// <summary>Soda alone that throws down colour halves what the salts' drops count.</summary>
    [Fact]
    public async Task Hard_water_makes_a_row_doubtful()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        SubjectKey lot = Lot(studio, null);
        OpenStudio.Form form = (await studio.GetAsync($"/trials/spot?lot={lot}")).Forms.Single(f => f.Action == "/trials/spot");
        OpenStudio.Seen page = await studio.SendAsync(form, ("lot", $"{lot}"), ("seen-none", "SomeLeft"), ("seen-potash-alum", "NoneLeft"));
        Assert.Contains("lime of hard water", page.Text, StringComparison.Ordinal);
        // Of a dyestuff unknown to the handbook each strength has a quarter; likelihoods to the power of a half.
        double[] roots = [Math.Sqrt(0.01), Math.Sqrt(0.04), Math.Sqrt(0.18), Math.Sqrt(0.62)];
        Assert.Equal((roots[2] + roots[3]) / roots.Sum(), SpotVerdict.Of(studio.Store.Lot(lot)!)[0].After.LakeChanceShare, 1e-9);
    }

    /// <summary>The photograph of the guide stands in for a tile: its areas are known, so what is kept must follow from their colours by Beer's law.</summary>
    [Fact]
    public async Task Areas_of_a_photograph_are_read_as_drops()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        SubjectKey lot = Lot(studio, "madder");
        OpenStudio.Seen page = await studio.GetAsync("/colours");
        page = await studio.UploadAsync(page.Forms.First(f => f.Action == "/colours/photo"), await File.ReadAllBytesAsync(Path.Combine(AppContext.BaseDirectory, "Photo", "photo.jpg"), TestContext.Current.CancellationToken), "photo.jpg");
        Assert.Contains("These are drops of a spot test", page.Text, StringComparison.Ordinal);
        page = await studio.GetAsync($"/trials/spot?lot={lot}&photo={page.Address.Split('?')[0].Split('/')[3]}");
        OpenStudio.Form form = page.Forms.Single(f => f.Action == "/trials/spot");
        Assert.Contains("bare tile and the drop with soda alone are needed", (await studio.SendAsync(form, ("lot", $"{lot}"), ("drop-potash-alum", "2"))).Text, StringComparison.Ordinal);
        await studio.SendAsync(form, ("lot", $"{lot}"), ("tile", "1"), ("drop-none", "2"), ("drop-potash-alum", "2"), ("solid-potash-alum", "3"), ("drop-iron-sulfate", "1"), ("solid-iron-sulfate", "3"));
        SpotTested kept = SpotVerdict.TestsOf(studio.Store.Lot(lot)!).Single().Test;
        Assert.Single(kept.Photos);
        // A drop that looks like the liquor has all of its colour; one that looks like the tile has none.
        Assert.Equal(1, kept.Drops.Single(d => d.Salt == "potash-alum").LeftShare!.Value, 1e-3);
        SpotDrop iron = kept.Drops.Single(d => d.Salt == "iron-sulfate");
        Assert.Equal(0, iron.LeftShare!.Value, 1e-3);
        Assert.NotNull(iron.Solid);
    }

    /// <summary>The drops of soda, in the proportions of the tile but by the litre, bring the metal down by the plan engine (itself tested against published recipes): the pH ends between 5 and 9.5, and less than a twentieth of the metal stays.</summary>
    [Theory]
    [InlineData("potash-alum")]
    [InlineData("copper-sulfate")]
    public void The_soda_reckoned_for_a_drop_brings_the_metal_down(string key)
    {
        SpotSalt salt = SpotSalt.All.Single(s => s.Salt == key);
        const double drops = 10_000;
        double grams = salt.DropCount * drops * SpotSalt.MillilitresPerDrop / 100 * salt.GramsPer100Millilitres, soda = SpotDrops.Soda1Percent(salt) * drops * SpotSalt.MillilitresPerDrop / 100 * SpotSalt.SodaGramsPer100Millilitres;
        PlanOutcome outcome = LakePlanner.Plan(new LakePlanInput
        {
            Water = Volume.FromMillilitres(SpotSalt.LiquorDropCount * drops * SpotSalt.MillilitresPerDrop),
            Salts = [new SaltPortion(SubstanceShelf.Find(key)!, Mass.FromGrams(grams))],
            Alkali = SubstanceShelf.Find("soda-ash")!,
            Aim = new PlanAim.AlkaliAmount(soda),
        });
        LakePlan plan = Assert.IsType<PlanOutcome.Planned>(outcome).Plan;
        Assert.InRange(plan.EndPh.Value, 5, 9.5);
        // Alum: three moles of base to one of aluminium (Al(OH)3), soda has two: 474.4 g/mol and 105.99 g/mol give 0.335 g soda a gram.
        if (key == "potash-alum") Assert.Equal(1.5 * 105.99 / 474.4, soda / grams, 0.005);
    }

    [Fact]
    public void What_is_seen_bears_the_same_names_in_record_and_engine()
    {
        Assert.Equal(Enum.GetNames<SpotSight>(), Enum.GetNames<SpotSeen>());
        Assert.All(SpotSalt.All, s => Assert.NotNull(CatalogueData.Embedded.FindReagent(s.Salt)));
        Assert.All(SpotSalt.All, s => Assert.True(SubstanceShelf.Find(s.Salt)!.MolPerUnit(s.Metal) > 0, string.Create(CultureInfo.InvariantCulture, $"{s.Salt}")));
    }

    private static SubjectKey Lot(OpenStudio studio, string? planName)
    {
        studio.Store.AppendNew(SubjectClass.Lot, EntryId.New(DateTimeOffset.Now), new LotBought(LotClass.Dyestuff, "chopped root", new Measured("amount", "500 g", 0.5, "kg")) { PlanName = planName }, DateTimeOffset.Now);
        return studio.Store.List(kind: SubjectClass.Lot).Single().Subject;
    }
}
