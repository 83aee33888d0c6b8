namespace Alumroot.Catalogue.Tests;

public class ProcessFactTests
{
    private static readonly CatalogueData Data = CatalogueData.Embedded;

    [Fact]
    public void Figures_are_in_order_and_have_a_unit() =>
        Assert.All(Data.ProcessFacts, f =>
        {
            double[] figures = [.. new[] { f.Low, f.Value, f.High }.OfType<double>()];
            Assert.Equal(figures.Order(), figures);
            Assert.Equal(figures.Length > 0, f.Unit.Length > 0);
            if (f.Unit.StartsWith("percent", StringComparison.Ordinal)) Assert.All(figures, x => Assert.InRange(x, 0, 100));
        });

    [Fact]
    public void A_fact_says_something() =>
        Assert.All(Data.ProcessFacts, f => Assert.True(f.Value is not null || f.Low is not null || f.Statement.Length + f.Why.Length > 0, f.Key));

    [Fact]
    public void Baking_soda_loses_36_9_percent()
    {
        // 2 NaHCO3 -> Na2CO3 + H2O + CO2: 1 - 105.988 / (2 x 84.0066), from IUPAC 2021 atomic weights.
        ProcessFact fact = Data.FindProcessFact("soda-home")!;
        Assert.Equal(100 * (1 - FormulaMass.Of("Na2CO3") / (2 * FormulaMass.Of("NaHCO3"))), fact.Value!.Value, 0.05);
        Assert.Contains("computed", fact.Citation.SourceKeys);
    }

    [Fact]
    public void Shares_of_soda_follow_from_the_formulas()
    {
        ProcessFact fact = Data.FindProcessFact("soda-crystal-share")!;
        Assert.Equal(100 * FormulaMass.Of("Na2CO3") / FormulaMass.Of("Na2CO3·10H2O"), fact.Value!.Value, 0.01);
        Assert.Equal(100 * FormulaMass.Of("Na2CO3") / FormulaMass.Of("Na2CO3·H2O"), fact.High!.Value, 0.05);
    }

    [Fact]
    public void Gas_of_a_hundred_grams_of_alum_is_the_ideal_gas_volume()
    {
        // Ideal gas at 20 °C and 1 atm: 24.06 L/mol; 1.5 mol per mol of potash alum.
        double litres = 1.5 * 100 / FormulaMass.Of("KAl(SO4)2·12H2O") * 24.06;
        Assert.Equal(litres, Data.FindProcessFact("gas-volume")!.Value!.Value, 0.05);
    }

    [Fact]
    public void Exact_ratio_of_soda_to_alum_is_the_stoichiometric_one()
    {
        double exact = 100 * 1.5 * FormulaMass.Of("Na2CO3") / FormulaMass.Of("KAl(SO4)2·12H2O");
        Assert.Equal(exact, Data.FindProcessFact("ratio-alum-soda")!.Value!.Value, 0.05);
    }

    [Fact]
    public void Baking_time_follows_from_the_published_constants()
    {
        // Wu and Shih 1993: first order, Ea 105.8 kJ/mol, A 6.7e12 per minute; time to 99 % at 150 °C.
        double rate = 6.7e12 * Math.Exp(-105800 / (8.314462618 * 423.15));
        Assert.Equal(Math.Log(100) / rate, Data.FindProcessFact("soda-home-kinetics")!.Value!.Value, 0.5);
    }

    [Fact]
    public void The_usual_rules_are_there()
    {
        // Values as in the sheets and books named by each row's source.
        Assert.Equal(0.5, Data.FindProcessFact("alum-per-dye")!.Value);
        Assert.Equal(6.5, Data.FindProcessFact("end-ph")!.Value);
        Assert.Equal(4.4, Data.FindProcessFact("foam-height")!.Value);
        Assert.Equal(0.38, Data.FindProcessFact("yield-per-alum")!.Value);
        Assert.Equal(40, Data.FindProcessFact("dry-temp")!.Value);
        Assert.Equal(12, Data.FindProcessFact("settle")!.Value);
    }
}
