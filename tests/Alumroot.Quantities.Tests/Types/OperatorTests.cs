using CsCheck;

namespace Alumroot.Quantities.Tests.Types;

/// <summary>Operators exist only where the sum means something, and then they obey arithmetic.</summary>
public class OperatorTests
{
    private static readonly Gen<Mass> Masses = Gen.Double[0, 1e6].Select(Mass.FromGrams);

    [Fact]
    public void What_is_added_can_be_taken_away_again() =>
        Gen.Select(Masses, Masses).Sample((a, b) => Math.Abs(((a + b) - b).Grams - a.Grams) <= 1e-9 * (1 + a.Grams + b.Grams));

    [Fact]
    public void Taking_away_more_than_there_is_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Mass.FromGrams(50) - Mass.FromGrams(62));

    [Fact]
    public void A_ratio_times_the_divisor_gives_the_dividend() =>
        Gen.Select(Masses, Gen.Double[1e-3, 1e6].Select(Mass.FromGrams)).Sample((a, b) => Math.Abs((b * (a / b)).Grams - a.Grams) <= 1e-12 * (1 + a.Grams));

    [Fact]
    public void A_rise_leads_from_one_temperature_to_the_other() =>
        Gen.Select(Gen.Double[-40, 120], Gen.Double[-40, 120]).Sample((a, b) =>
        {
            Temperature from = Temperature.FromCelsius(a), to = Temperature.FromCelsius(b);
            return Math.Abs((from + (to - from)).Celsius - b) < 1e-10 && Math.Abs((to - (to - from)).Celsius - a) < 1e-10;
        });

    [Fact]
    public void Order_follows_size() =>
        Gen.Select(Gen.Double[0, 10], Gen.Double[0, 10]).Sample((a, b) =>
            Math.Sign(Mass.FromGrams(a).CompareTo(Mass.FromGrams(b))) == Math.Sign(a.CompareTo(b))
            && Mass.FromGrams(a) < Mass.FromGrams(b) == a < b
            && Mass.FromGrams(a) >= Mass.FromGrams(b) == a >= b);

    [Fact]
    public void A_fraction_takes_its_part() =>
        Assert.Equal(49, (Fraction.FromPercent(98) * Mass.FromGrams(50)).Grams, 12);

    [Fact]
    public void Lye_times_volume_is_acid_taken_up() =>
        Assert.Equal(0.125, (AlkalinityOfLye.FromMolesPerLitre(0.5) * Volume.FromMillilitres(250)).Moles, 12);
}
