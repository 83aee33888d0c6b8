using Alumroot.Paint.Arithmetic;
using Alumroot.Paint.Recipes;
using Alumroot.Quantities;
using CsCheck;

namespace Alumroot.Paint.Tests;

/// <summary>Laws that hold for every recipe, whatever the pigment.</summary>
public sealed class RecipeLaws
{
    private static readonly Gen<PaintAsk> AnyAsk = Gen.Select(Gen.Int[0, Medium.All.Count - 1], Gen.Double[0.5, 500], Gen.Double[15, 120], Gen.Double[1.4, 4.5], Gen.Double[0, 0.3], Gen.Bool)
        .Select((m, g, oil, d, doubt, honey) => new PaintAsk(Medium.All[m], g, new Estimate(oil, oil * (1 - doubt), oil * (1 + doubt)), new Estimate(d, d * (1 - doubt / 2), d * (1 + doubt / 2)), honey));

    [Fact]
    public void Mass_and_volume_add_up_and_spans_hold_their_values() => AnyAsk.Sample(ask =>
    {
        PaintRecipe r = PaintRecipe.For(ask);
        Assert.Equal(ask.PigmentGrams, r.Parts[0].Grams.Value, 1e-9 * ask.PigmentGrams);
        Assert.Equal(r.WetMillilitres.Value, r.Parts.Sum(p => p.Millilitres.Value), 1e-6 * r.WetMillilitres.Value);
        Assert.InRange(r.DryMillilitres.Value, 0, r.WetMillilitres.Value + 1e-9);
        Assert.InRange(r.VolumeFraction.Value, 0, 1);
        Assert.InRange(r.CriticalFraction.Value, 0, 1);
        Assert.All(r.Parts, p => Assert.True(p.Grams.Low <= p.Grams.Value && p.Grams.Value <= p.Grams.High && p.Grams.Low >= 0, p.Name));
    });

    [Fact]
    public void Twice_the_pigment_is_twice_of_everything() => AnyAsk.Sample(ask =>
    {
        PaintRecipe one = PaintRecipe.For(ask), two = PaintRecipe.For(ask with { PigmentGrams = 2 * ask.PigmentGrams });
        foreach ((PaintPart a, PaintPart b) in one.Parts.Zip(two.Parts)) Assert.Equal(2 * a.Grams.Value, b.Grams.Value, 1e-9 * b.Grams.Value + 1e-12);
        Assert.Equal(one.VolumeFraction.Value, two.VolumeFraction.Value, 1e-9);
    });

    [Fact]
    public void The_film_has_the_ratio_of_its_medium() => AnyAsk.Sample(ask =>
    {
        // By definition: pigment volume concentration over the critical one (Asbeck and Van Loo 1949). Pastel and encaustic go by mass.
        if (ask.Medium.Key is "soft-pastel" or "encaustic") return;
        PaintRecipe r = PaintRecipe.For(ask);
        Assert.Equal(Math.Min(ask.Medium.RatioTypical * r.CriticalFraction.Value, 0.98), r.VolumeFraction.Value, 1e-9);
    });

    [Fact]
    public void A_mixture_of_one_pigment_is_that_pigment_and_the_order_does_not_matter() => Gen.Select(Gen.Double[1, 50], Gen.Double[10, 120], Gen.Double[1.4, 4.5]).Array[1, 5].Sample(parts =>
    {
        DryPigment[] pigments = [.. parts.Select(p => new DryPigment(p.Item1, p.Item2, p.Item3))];
        DryPigment mixed = DryPigment.Mixed(pigments), turned = DryPigment.Mixed([.. pigments.Reverse()]);
        Assert.Equal(mixed.OilGramsPer100, turned.OilGramsPer100, 1e-9 * mixed.OilGramsPer100);
        Assert.Equal(mixed.GramsPerMillilitre, turned.GramsPerMillilitre, 1e-9);
        if (pigments.Length == 1) Assert.Equal(pigments[0].CriticalFraction(), mixed.CriticalFraction(), 1e-12);
        Assert.InRange(mixed.CriticalFraction(), pigments.Min(p => p.CriticalFraction()) - 1e-3, pigments.Max(p => p.CriticalFraction()) + 1e-3);
    });

    [Fact]
    public void Twenty_grams_of_lake_in_linseed_at_the_critical_share()
    {
        // Worked by hand: OA 60, density 2.1: 1 / (1 + 60 * 2.1 / 93.5) = 0.42597; binder 12.834 ml.
        var lake = new DryPigment(20, 60, 2.1);
        Assert.Equal(0.42597, lake.CriticalFraction(), 5);
        Assert.Equal(12.834, PigmentVolume.For(lake, 1).BinderMillilitres, 3);
    }

    [Fact]
    public void A_pan_filled_five_times_holds_what_is_left_of_five_pours()
    {
        // After n pours to the brim a pan holds 1 - s^n; counted here pour by pour.
        var paste = new WatercolourPaste(new DryPigment(20, 60, 2.1), 11.2, 3.6, 3.2, 21.6, 0.05);
        double dry = 0, wet = 0;
        for (int i = 0; i < paste.PoursToFill; i++)
        {
            double pour = 2 - dry;
            wet += pour;
            dry += pour * (1 - paste.ShrinkageFraction);
        }
        Assert.Equal(wet, paste.WetMillilitresPerPan(2), 1e-9);
        Assert.True(dry >= 0.95 * 2);
    }
}
