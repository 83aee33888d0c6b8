using Alumroot.App.Studio;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Tests;

/// <summary>The invented studio: whole, told honestly, and the same at whatever time it is opened.</summary>
public sealed class DemoRecordTests
{
    private static readonly DateTimeOffset Now = new(2026, 7, 14, 9, 30, 0, TimeSpan.FromHours(2));

    [Fact]
    public void It_holds_lakes_at_all_stages_failures_among_them_and_nothing_lies_in_the_future()
    {
        IReadOnlyList<Entry> entries = DemoRecord.At(Now);
        Assert.All(entries, e => Assert.True(e.At <= Now, $"{e.Id} lies in the future"));
        Assert.All(entries, e => Assert.IsType<DocumentReading.Known>(DocumentText.Read(e)));
        Assert.Equal(entries.Count, entries.Select(e => e.Id).Distinct().Count());
        string[] stages = [.. entries.Where(e => e.Subject.Class == SubjectClass.Batch).GroupBy(e => e.Subject).Select(g => SubjectLine.Of(g.Key, [.. g]).Stage)];
        Assert.Equal(16, stages.Length);
        Assert.Equal("reading", TrialState.Of(SubjectKey.Trial(1), entries.Where(e => e.Subject == SubjectKey.Trial(1))).Stage);
        foreach (string stage in new[] { "extracting", "thrown-down", "washing", "drying", "dry-cake", "pigment", "given-up" }) Assert.Contains(stage, stages);
    }

    [Fact]
    public void At_another_time_it_is_the_same_moved() => Assert.Equal(
        DemoRecord.At(Now).Select(e => (e.Id.Text, e.Kind)).OrderBy(e => e.Text, StringComparer.Ordinal),
        DemoRecord.At(Now.AddDays(40)).Select(e => (e.Id.Text, e.Kind)).OrderBy(e => e.Text, StringComparer.Ordinal));

    [Fact]
    public void The_studio_that_opens_with_it_is_sound_and_no_lot_is_below_nothing()
    {
        using DemoStudio demo = DemoStudio.Open(TimeProvider.System);
        Assert.DoesNotContain(demo.Store.Check(), f => f.Level != Alumroot.Studio.Integrity.FindingLevel.Note);
        Assert.All(demo.Store.List(kind: SubjectClass.Lot), l => Assert.False(demo.Store.Lot(l.Subject)!.BelowNothing, l.Title));
    }

    [Fact]
    public void It_has_paints_one_with_a_swatch_and_a_label_with_a_sign_and_one_used_up()
    {
        using DemoStudio demo = DemoStudio.Open(TimeProvider.System);
        IReadOnlyList<PaintState> paints = demo.Store.Paints();
        Assert.Equal([PaintState.There, PaintState.Gone], paints.Select(p => p.Stage));
        Assert.All(paints[0].Colours, c => Assert.Equal(SwatchState.Painted, c.State));
        // Its coat over black and white can be read, and both paints took gum from the shelf: 250 less 2.6 and 1.2 g.
        IReadOnlyList<App.Colours.LakeColour> colours = App.Colours.LakeColour.All(demo.Store);
        App.Colours.KeptDrawdown coat = Assert.Single(App.Colours.KeptDrawdown.Of(colours));
        Assert.NotNull(new Colour.Film.ThreeBandHiding(coat.Read!).TimesToHide);
        LotState gum = demo.Store.Lot(SubjectKey.TryRead(paints[0].Made!.Uses.Single().Lot)!.Value)!;
        Assert.Equal(0.2462, gum.LeftSi!.Value, 1e-9);
        Assert.Equal(DemoStudio.Name, demo.Store.State().Set.Maker);
        Print.Labels.LabelContent label = Print.Labels.LabelContent.OfPaint(paints[0], demo.Store, null)!;
        Assert.Equal("GHS07", label.Hazards.Single().Pictogram);
        // Each took from a lake that was pigment by then, and no more than there was.
        foreach (PaintState paint in paints)
        {
            BatchState lake = demo.Store.Batch(SubjectKey.TryRead(paint.Made!.Lakes.Single().Lake)!.Value)!;
            Assert.True(demo.Store.PigmentLeftKg(lake) > 0);
            Assert.True(lake.Taken[^1].At < paint.At);
            // What was weighed is near what its recipe says.
            App.Requests.PaintRequest recipe = App.Paints.PaintAddress.Read(paint.Made.RecipeAddress!, demo.Store)!;
            Assert.All(recipe.Answer!.Recipe.Parts.Zip(paint.Made.Parts), p => Assert.InRange(1000 * p.Second.SiValue, 0.7 * p.First.Grams.Value, 1.4 * p.First.Grams.Value));
        }
    }
}
