namespace Alumroot.Catalogue.Tests;

public class DyestuffTests
{
    private static readonly CatalogueData Data = CatalogueData.Embedded;

    [Fact]
    public void Content_is_a_percentage_and_its_range_is_in_order() =>
        Assert.All(Data.Dyestuffs.Where(d => d.ContentPercentOfDry is not null), d =>
        {
            Assert.InRange(d.ContentPercentOfDry!.Value.Low, 0.01, d.ContentPercentOfDry.Value.High);
            Assert.InRange(d.ContentPercentOfDry.Value.High, 0.01, 100);
            Assert.NotEmpty(d.ContentOf);
        });

    [Fact]
    public void Temperatures_are_those_of_a_water_bath() =>
        Assert.All(Data.Dyestuffs, d =>
        {
            Assert.InRange(d.ExtractionCelsius ?? 60, 10, 100);
            Assert.InRange(d.TemperatureLimitCelsius ?? 100, d.ExtractionCelsius ?? 10, 100);
        });

    [Fact]
    public void Madder_stands_as_the_reference_sheets_have_it()
    {
        // Making and Knowing Project, Columbia University, madder sheet 2022: 30 mL and 0.5 g potash alum per gram, 70 °C.
        Dyestuff madder = Data.FindDyestuff("madder")!;
        Assert.Equal("Rubia tinctorum", madder.Species);
        Assert.Equal(70, madder.ExtractionCelsius);
        Assert.Equal(30, madder.WaterMillilitresPerGram!.Value.Value);
        Assert.Equal(0.5, madder.SaltGramsPerGramDry!.Value.Value);
        Assert.Contains("75330", madder.ColourIndexNumbers);
    }

    [Fact]
    public void Cochineal_content_is_that_of_the_encyclopaedia()
    {
        // General encyclopaedia, article on cochineal: 17 to 24 % carminic acid.
        Dyestuff cochineal = Data.FindDyestuff("cochineal")!;
        Assert.Equal(17, cochineal.ContentPercentOfDry!.Value.Low);
        Assert.Equal(24, cochineal.ContentPercentOfDry.Value.High);
    }

    [Theory]
    [InlineData("madder", LakeMetal.Aluminium, LakingAnswer.TakesWell)]
    [InlineData("beetroot", LakeMetal.Aluminium, LakingAnswer.DoesNotTake)]
    [InlineData("barberry", LakeMetal.Aluminium, LakingAnswer.HardlyTakes)]
    [InlineData("turmeric", LakeMetal.Aluminium, LakingAnswer.TakesPartly)]
    [InlineData("safflower-red", LakeMetal.Iron, LakingAnswer.NotKnown)]
    [InlineData("gamboge", LakeMetal.Aluminium, LakingAnswer.NotMadeHere)]
    public void Will_it_take_is_answered(string key, LakeMetal metal, LakingAnswer answer)
    {
        // Chelating groups after Schweppe 1993 and Cardon 2007 (from memory): ortho-hydroxyketones take, betalains do not.
        LakingFinding finding = Data.FindDyestuff(key)!.WillTake(metal);
        Assert.Equal(answer, finding.Answer);
        Assert.NotEmpty(finding.Reason);
    }

    [Fact]
    public void A_better_metal_is_named_only_when_it_is_better()
    {
        // Galls give an iron black and hardly anything with aluminium: common practice of ink making.
        Assert.Equal(LakeMetal.Iron, Data.FindDyestuff("galls")!.WillTake(LakeMetal.Aluminium).BetterMetal);
        Assert.Null(Data.FindDyestuff("galls")!.WillTake(LakeMetal.Iron).BetterMetal);
        Assert.All(Data.Dyestuffs, d => Assert.All(Enum.GetValues<LakeMetal>(), m =>
        {
            LakingFinding f = d.WillTake(m);
            Assert.True(f.BetterMetal is not { } better || d.On(better).Strength > f.Strength);
        }));
    }

    [Fact]
    public void A_verdict_drawn_from_structure_is_trusted_less_than_one_from_practice()
    {
        Dyestuff weld = Data.FindDyestuff("weld")!;
        Assert.Equal(Confidence.High, weld.WillTake(LakeMetal.Aluminium).Confidence);
        Assert.Equal(Confidence.Medium, weld.WillTake(LakeMetal.Tin).Confidence);
        Assert.Equal(Confidence.Low, Data.FindDyestuff("woodruff-dyers")!.WillTake(LakeMetal.Tin).Confidence);
    }

    [Fact]
    public void A_refused_dyestuff_has_reason_and_instead_and_others_have_neither() =>
        Assert.All(Data.Dyestuffs, d =>
        {
            bool refused = d.Stance == Stance.Refused;
            Assert.Equal(refused, d.RefusalReason.Length > 0);
            Assert.Equal(refused, d.UseInstead.Length > 0);
            Assert.Equal(refused, Data.FindPlantHazard(d.Key)!.Severity == Severity.Refuse);
        });

    [Fact]
    public void Verdicts_stand_in_the_order_of_the_metals() =>
        Assert.All(Data.Dyestuffs, d => Assert.Equal(Enum.GetValues<LakeMetal>(), d.Laking.Select(v => v.Metal)));

    [Fact]
    public void A_dye_that_no_metal_takes_down_has_no_iron_hue_but_its_own()
    {
        // Indigo is blue without any metal (Cardon 2007, from memory).
        Dyestuff indigo = Data.FindDyestuff("indigo")!;
        Assert.All(indigo.Laking, v => Assert.Equal(LakingStrength.None, v.Strength));
    }
}
