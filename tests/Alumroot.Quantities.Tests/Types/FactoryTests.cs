namespace Alumroot.Quantities.Tests.Types;

/// <summary>Every factory refuses what is not a number, not finite, or outside its stated range.</summary>
public class FactoryTests
{
    public static TheoryData<string, double, double> Ranges => new()
    {
        { nameof(Mass), 0, double.MaxValue },
        { nameof(Volume), 0, double.MaxValue },
        { nameof(AmountOfSubstance), 0, double.MaxValue },
        { nameof(Temperature), -273.15, 2000 },
        { nameof(TemperatureChange), -2500, 2500 },
        { nameof(Ph), -2, 16 },
        { nameof(Conductivity), 0, 1e7 },
        { nameof(Hardness), 0, 200 },
        { nameof(Fraction), 0, 1 },
        { nameof(Molality), 0, 1000 },
        { nameof(Pressure), 0, 10_000 },
        { nameof(AlkalinityOfLye), 0, 50 },
    };

    [Theory, MemberData(nameof(Ranges))]
    public void The_stated_ends_are_accepted_and_what_lies_beyond_is_refused(string type, double low, double high)
    {
        Assert.Equal(low, Make(type, low), 12);
        Assert.Equal(high, Make(type, high));
        double below = low == 0 ? -1e-9 : low - Math.Abs(low) * 1e-9;
        Assert.Throws<ArgumentOutOfRangeException>(() => Make(type, below));
        if (high < double.MaxValue) Assert.Throws<ArgumentOutOfRangeException>(() => Make(type, high * (1 + 1e-9)));
    }

    [Theory, MemberData(nameof(Ranges))]
    public void What_is_not_a_finite_number_is_refused(string type, double low, double high)
    {
        Assert.True(low < high);
        foreach (double bad in new[] { double.NaN, double.PositiveInfinity, double.NegativeInfinity })
            Assert.Throws<ArgumentOutOfRangeException>(() => Make(type, bad));
    }

    [Fact]
    public void Negative_zero_is_zero() =>
        Assert.Equal(0, BitConverter.DoubleToInt64Bits(Mass.FromGrams(-0.0).Grams));

    private static double Make(string type, double x) => type switch
    {
        nameof(Mass) => Mass.FromGrams(x).Grams,
        nameof(Volume) => Volume.FromMillilitres(x).Millilitres,
        nameof(AmountOfSubstance) => AmountOfSubstance.FromMoles(x).Moles,
        nameof(Temperature) => Temperature.FromCelsius(x).Celsius,
        nameof(TemperatureChange) => TemperatureChange.FromKelvin(x).Kelvin,
        nameof(Ph) => Ph.FromValue(x).Value,
        nameof(Conductivity) => Conductivity.FromMicrosiemensPerCentimetre(x).MicrosiemensPerCentimetre,
        nameof(Hardness) => Hardness.FromMillimolesPerLitre(x).MillimolesPerLitre,
        nameof(Fraction) => Fraction.FromRatio(x).Ratio,
        nameof(Molality) => Molality.FromMolesPerKilogram(x).MolesPerKilogram,
        nameof(Pressure) => Pressure.FromAtmospheres(x).Atmospheres,
        nameof(AlkalinityOfLye) => AlkalinityOfLye.FromMolesPerLitre(x).MolesPerLitre,
        _ => throw new ArgumentException(type),
    };
}
