using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Tests.Planning;

/// <summary>Amounts that follow from formula masses alone.</summary>
public class StoichiometryTests
{
    /// <summary>Grams of alkali for a gram of salt that just make the hydroxide. Source: IUPAC 2021 conventional atomic weights, worked by hand for each pair (2 KAl(SO4)2.12H2O + 3 Na2CO3 and so on).</summary>
    [Theory]
    [InlineData("potash-alum", "soda-ash", 0.3351)]
    [InlineData("potash-alum", "soda-crystals", 0.9048)]
    [InlineData("potash-alum", "soda-monohydrate", 0.3921)]
    [InlineData("potash-alum", "potash", 0.4370)]
    [InlineData("potash-alum", "baking-soda", 0.5313)]
    [InlineData("potash-alum", "caustic-soda", 0.2529)]
    [InlineData("potash-alum", "slaked-lime", 0.2343)]
    [InlineData("potash-alum", "chalk", 0.3165)]
    [InlineData("ammonium-alum", "soda-ash", 0.3507)]
    [InlineData("aluminium-sulfate", "soda-ash", 0.4771)]
    [InlineData("aluminium-sulfate-16", "soda-ash", 0.5044)]
    [InlineData("aluminium-sulfate-14", "soda-ash", 0.5350)]
    [InlineData("aluminium-chloride", "soda-ash", 0.6585)]
    [InlineData("aluminium-acetate", "soda-ash", 0.6539)]
    [InlineData("iron-sulfate", "potash", 0.4971)]
    [InlineData("iron-chloride", "soda-ash", 0.9802)]
    [InlineData("copper-sulfate", "soda-ash", 0.4245)]
    [InlineData("zinc-sulfate", "soda-ash", 0.3686)]
    [InlineData("tin-chloride", "soda-ash", 0.4697)]
    [InlineData("epsom-salt", "soda-ash", 0.4300)]
    public void Alkali_for_a_gram_of_salt(string salt, string alkali, double grams)
    {
        LakePlan plan = Baths.Plan(Baths.Of(salt, 100, alkali, 5, 25, new PlanAim.AlkaliAmount(grams * 100)));
        Assert.Equal(grams, plan.StoichiometricAlkali / 100, 4);
    }

    /// <summary>Litres of carbon dioxide from 100 g of potash alum and the soda that makes hydroxide. Source: ideal gas at 1 atm (SI gas constant), 0.3162 mol.</summary>
    [Theory]
    [InlineData("soda-ash", 20, 7.61)]
    [InlineData("soda-ash", 60, 8.64)]
    [InlineData("soda-ash", 80, 9.16)]
    [InlineData("baking-soda", 20, 15.2)]
    [InlineData("baking-soda", 60, 17.3)]
    public void Gas_of_a_full_neutralisation(string alkali, double celsius, double litres)
    {
        double grams = alkali == "soda-ash" ? 33.51 : 53.13;
        LakePlan plan = Baths.Plan(Baths.Of("potash-alum", 100, alkali, 5, celsius, new PlanAim.AlkaliAmount(grams)));
        Assert.Equal(litres, plan.AllGasLitres, 0.006 * litres);
    }

    /// <summary>Source: 2 NaHCO3 = Na2CO3 + H2O + CO2 with formula masses 84.0066 and 105.988: complete loss 36.92 %, and 1/(84.0066 (1 - loss)) mol of base a gram whatever the loss.</summary>
    [Theory]
    [InlineData(0.0, 0.01190)]
    [InlineData(0.20, 0.01488)]
    [InlineData(0.3692, 0.01887)]
    public void Home_baked_soda_gives_its_base(double loss, double molPerGram)
    {
        Substance soda = SubstanceShelf.HomeBakedSoda(Fraction.FromRatio(loss));
        Assert.Equal(molPerGram, soda.BaseMolPerUnit, 5);
        Assert.Equal(0.3692, SubstanceShelf.CompleteBakingLoss, 4);
        double gas = soda.CarbonDioxideMolPerUnit / soda.BaseMolPerUnit;
        Assert.InRange(gas, 0.4999, 1.0001);
    }

    /// <summary>Source: 105.988 / 286.138 = 37.04 % soda in the decahydrate, 85.47 % in the monohydrate.</summary>
    [Theory]
    [InlineData(10, 0.3704)]
    [InlineData(1, 0.8547)]
    [InlineData(0, 1.0)]
    public void A_hydrate_thins_the_soda(double waters, double share)
    {
        Substance ash = SubstanceShelf.Find("soda-ash")!;
        Assert.Equal(share, SubstanceShelf.WithHydrate(ash, waters).BaseMolPerUnit / ash.BaseMolPerUnit, 4);
    }

    [Fact]
    public void Purity_scales_what_a_gram_brings()
    {
        Substance alum = SubstanceShelf.Find("potash-alum")!;
        Assert.Equal(0.98 * alum.MolPerUnit("Al+3"), SubstanceShelf.WithPurity(alum, Fraction.FromPercent(98)).MolPerUnit("Al+3"), 12);
    }

    /// <summary>Caustic potash pellets are reckoned as 87 % pure; a stated purity takes the place of that, it does not come on top.</summary>
    [Fact]
    public void A_stated_purity_replaces_the_usual_one()
    {
        Substance pellets = SubstanceShelf.Find("caustic-potash")!;
        Assert.Equal(pellets.BaseMolPerUnit, SubstanceShelf.WithPurity(pellets, Fraction.FromPercent(87)).BaseMolPerUnit, 12);
        Assert.Equal(1 / 56.105, SubstanceShelf.WithPurity(pellets, Fraction.FromPercent(100)).BaseMolPerUnit, 1e-6);
    }
}
