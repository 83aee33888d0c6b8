namespace Alumroot.Catalogue.Tests;

public class PlantAcidTests
{
    private static readonly CatalogueData Data = CatalogueData.Embedded;

    [Fact]
    public void Priors_are_positive_wide_and_in_order() =>
        Assert.All(Data.PlantAcids, p =>
        {
            Assert.InRange(p.AcidMeqPerGramDry.Low, 0.001, p.AcidMeqPerGramDry.Value);
            Assert.InRange(p.AcidMeqPerGramDry.High, p.AcidMeqPerGramDry.Value, 5);
            Assert.True(p.AcidMeqPerGramDry.High > 1.5 * p.AcidMeqPerGramDry.Low, p.Key);
            Assert.InRange(p.FirstPka, 2.5, 6);
            Assert.InRange(p.SecondPka ?? 6, p.FirstPka, 9);
            Assert.InRange(p.FirstShare, 0, 1);
            Assert.Equal(p.SecondPka is null, p.FirstShare == 1);
        });

    [Fact]
    public void Berry_prior_covers_bilberry()
    {
        // Bilberry of central Bosnia: 1.0 g acid (as citric, 64.04 g per mole of acid) and 11.2 g soluble solids per 100 g.
        double meqPerGramSolids = 1.0 / 64.04 * 1000 / 11.2;
        Assert.Equal(1.394, meqPerGramSolids, 3);
        Inside("berry", meqPerGramSolids);
    }

    [Theory]
    [InlineData(0.85)]
    [InlineData(0.87)]
    public void Calyx_prior_covers_roselle(double waterShare)
    {
        // Wong and others 2002: 2.42 g per 100 g fresh as malic acid (67.04 g per mole of acid); 85 to 87 % water (Salinas Moreno and others 2021).
        Inside("calyx", 2.42 / 67.04 * 1000 / 100 / (1 - waterShare));
    }

    [Fact]
    public void Insect_prior_covers_the_two_first_protons_of_carminic_acid()
    {
        // 17 to 24 % carminic acid, C22H20O13 = 492.39 g/mol, pKa 3.39 and 5.78 (J. Solution Chemistry 2012).
        Inside("insect", 2 * 170 / 492.39);
        Inside("insect", 2 * 240 / 492.39);
    }

    [Fact]
    public void Wood_prior_covers_the_hardwoods()
    {
        // Jahan Latibari and others 1997: 0.0046 to 0.1481 meq of NaOH per gram of wood.
        Assert.True(Data.FindPlantAcid("wood")!.AcidMeqPerGramDry.Low >= 0.0046);
        Inside("wood", 0.1481);
    }

    private static void Inside(string acidClass, double meqPerGram)
    {
        var span = Data.FindPlantAcid(acidClass)!.AcidMeqPerGramDry;
        Assert.InRange(meqPerGram, span.Low, span.High);
    }
}
