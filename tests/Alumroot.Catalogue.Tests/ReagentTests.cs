namespace Alumroot.Catalogue.Tests;

public class ReagentTests
{
    private static readonly CatalogueData Data = CatalogueData.Embedded;

    [Fact]
    public void Molar_masses_are_the_sums_of_atomic_weights() =>
        Assert.All(Data.Reagents.Where(r => r.MolarMassGramsPerMole is not null), r =>
            Assert.Equal(FormulaMass.Of(r.Formula), r.MolarMassGramsPerMole!.Value, 0.02));

    [Fact]
    public void Water_free_masses_differ_by_the_water_of_the_formula() =>
        Assert.All(Data.Reagents.Where(r => r.HydrateWaters is not null && r.MolarMassGramsPerMole is not null), r =>
            Assert.Equal(
                r.HydrateWaters!.Value.Value * 18.015,
                r.MolarMassGramsPerMole!.Value - r.AnhydrousGramsPerMole!.Value,
                0.01));

    [Fact]
    public void What_a_mole_delivers_is_what_its_charge_and_formula_say()
    {
        // Electroneutrality of the delivered ions; molecules carry none.
        var charges = new Dictionary<string, int>(StringComparer.Ordinal)
        {
            ["K"] = 1,
            ["Na"] = 1,
            ["NH4"] = 1,
            ["H"] = 1,
            ["Mg"] = 2,
            ["Ca"] = 2,
            ["Cu"] = 2,
            ["Zn"] = 2,
            ["Fe(II)"] = 2,
            ["Sn(II)"] = 2,
            ["Al"] = 3,
            ["Fe(III)"] = 3,
            ["Cl"] = -1,
            ["OH"] = -1,
            ["HCO3"] = -1,
            ["acetate"] = -1,
            ["SO4"] = -2,
            ["CO3"] = -2,
            ["tartrate"] = -2,
            ["oxalate"] = -2,
            ["citrate"] = -3,
            ["H2O"] = 0,
            ["NH3"] = 0,
        };
        Assert.All(Data.Reagents, r => Assert.Equal(0, r.Delivers.Sum(d => charges[d.Component] * d.MolesPerMole), 9));
    }

    [Fact]
    public void Base_needed_is_the_charge_of_the_metal()
    {
        // Al3+ and Fe3+ take three hydroxides, the two-valued metals two; one is already there in the basic diacetate.
        var hydroxides = new Dictionary<string, int>(StringComparer.Ordinal)
        {
            ["Al"] = 3,
            ["Fe(III)"] = 3,
            ["Fe(II)"] = 2,
            ["Cu"] = 2,
            ["Zn"] = 2,
            ["Sn(II)"] = 2,
            ["Mg"] = 2,
            ["OH"] = -1,
        };
        Assert.All(Data.Reagents.Where(r => r.BaseNeededMolesPerMole is not null), r => Assert.Equal(
            r.Delivers.Sum(d => hydroxides.GetValueOrDefault(d.Component) * d.MolesPerMole),
            r.BaseNeededMolesPerMole!.Value,
            9));
    }

    [Theory]
    [InlineData("potash-alum", "soda-ash", 0.3351)]
    [InlineData("potash-alum", "soda-crystals", 0.9048)]
    [InlineData("aluminium-sulfate", "soda-ash", 0.4771)]
    [InlineData("aluminium-sulfate-14", "soda-ash", 0.5350)]
    [InlineData("copper-sulfate", "potash", 0.5535)]
    [InlineData("potash-alum", "baking-soda", 0.5313)]
    public void Exact_ratios_follow_from_the_catalogue(string salt, string alkali, double gramsPerGram)
    {
        // Worked by hand from the formula masses: 2 KAl(SO4)2.12H2O take 3 Na2CO3, so 3 x 105.988 / (2 x 474.372) = 0.3351.
        Reagent s = Data.FindReagent(salt)!;
        Reagent a = Data.FindReagent(alkali)!;
        double moles = s.BaseNeededMolesPerMole!.Value / a.BaseGivenMolesPerMole!.Value;
        Assert.Equal(gramsPerGram, moles * a.MolarMassGramsPerMole!.Value / s.MolarMassGramsPerMole!.Value, 4);
    }

    [Fact]
    public void Percentages_and_hydrates_are_sane() =>
        Assert.All(Data.Reagents, r =>
        {
            Assert.InRange(r.PurityPercent?.Low ?? 50, 40, 102);
            Assert.InRange(r.PurityPercent?.High ?? 100, 60, 103);
            Assert.InRange(r.HydrateWaters?.Low ?? 0, 0, 18);
            Assert.InRange(r.HydrateWaters?.High ?? 0, 0, 18);
        });

    [Fact]
    public void A_refused_reagent_has_reason_and_instead_and_no_amounts() =>
        Assert.All(Data.Reagents, r =>
        {
            bool refused = r.Stance == Stance.Refused;
            Assert.Equal(refused, r.RefusalReason.Length > 0);
            Assert.Equal(refused, r.UseInstead.Length > 0);
            if (!refused) return;
            Assert.Null(r.MolarMassGramsPerMole);
            Assert.Null(r.PurityPercent);
            Assert.Null(r.BaseNeededMolesPerMole);
            Assert.Null(r.BaseGivenMolesPerMole);
            Assert.Null(r.SolubilityGramsPer100GramsWater(20));
            Assert.Empty(r.Delivers);
            Assert.NotEmpty(r.CautionKeys);
        });

    [Theory]
    [InlineData("dichromate")]
    [InlineData("chrome alum")]
    [InlineData("sugar of lead")]
    [InlineData("methanol")]
    [InlineData("mercury")]
    [InlineData("arsenic")]
    public void What_must_not_be_planned_is_refused(string name) =>
        Assert.All(Data.ReagentsNamed(name), r => Assert.Equal(Stance.Refused, r.Stance));

    [Fact]
    public void A_hazard_that_refuses_at_every_strength_refuses_the_reagent() =>
        Assert.All(Data.Hazards.Where(h => h.Stance == Stance.Refused && h.StrengthFromPercent is null), h =>
            Assert.All(h.ReagentKeys, k => Assert.Equal(Stance.Refused, Data.FindReagent(k)!.Stance)));

    [Theory]
    [InlineData("potash-alum", "potash-alum")]
    [InlineData("Potash Alum", "potash-alum")]
    [InlineData("potassium-alum-dodecahydrate", "potash-alum")]
    [InlineData("bluestone", "copper-sulfate")]
    [InlineData("copperas", "iron-sulfate")]
    [InlineData("sal soda", "soda-crystals")]
    public void One_name_finds_its_reagent(string name, string key) =>
        Assert.Equal([key], Data.ReagentsNamed(name).Select(r => r.Key));

    [Fact]
    public void Doubtful_names_give_all_that_bear_them()
    {
        // "Alum" and "soda" on a packet name several substances: common practice, the commonest silent mistake in recipes.
        string[] alums = [.. Data.ReagentsNamed("alum").Select(r => r.Key)];
        Assert.Contains("potash-alum", alums);
        Assert.Contains("ammonium-alum", alums);
        Assert.Contains("aluminium-sulfate", alums);
        Assert.Equal(["soda-ash", "soda-monohydrate", "soda-crystals"], Data.ReagentsNamed("washing soda").Select(r => r.Key));
        Assert.Empty(Data.ReagentsNamed("unheard of"));
        Assert.Empty(Data.ReagentsNamed(" - "));
    }
}
