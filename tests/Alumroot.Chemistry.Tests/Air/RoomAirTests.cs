using Alumroot.Chemistry.Air;
using Alumroot.Quantities;
using CsCheck;

namespace Alumroot.Chemistry.Tests.Air;

public sealed class RoomAirTests
{
    [Fact]
    public void A_mole_of_gas_takes_its_published_volume()
    {
        // CODATA molar volume of the ideal gas at 273.15 K and 101.325 kPa: 22.413 969 54 L/mol.
        Assert.Equal(22.41396954, RoomAir.MolarVolumeLitres(Temperature.FromCelsius(0)), 7);
        // NIOSH Pocket Guide, introduction: conversions at 25 °C and one atmosphere use 24.45 L/mol.
        Assert.Equal(24.45, RoomAir.MolarVolumeLitres(Temperature.FromCelsius(25)), 0.03);
    }

    // NIOSH Pocket Guide, conversion factors at 25 °C to three digits, with molar masses rounded to one place: 1 ppm ethanol = 1.89, isopropanol 2.46, acetone 2.38 mg/m3 (read in the guide's tables, from memory).
    [Theory]
    [InlineData(46.07, 1.89)]
    [InlineData(60.10, 2.46)]
    [InlineData(58.08, 2.38)]
    public void Parts_per_million_and_milligrams_agree_with_the_guide(double molarMass, double milligrams)
    {
        RoomShare share = RoomAir.AllEvaporated(1, molarMass, Volume.FromLitres(20_000), Temperature.FromCelsius(25));
        Assert.Equal(milligrams, share.MilligramsPerCubicMetre / share.Ppm, 0.01);
    }

    [Fact]
    public void An_aired_room_never_holds_more_than_the_shut_one_and_tends_to_what_leaves_over_what_is_replaced() =>
        Gen.Select(Gen.Double[0.1, 500], Gen.Double[0.05, 20], Gen.Double[0.01, 48], Gen.Double[2, 300]).Sample((gramsPerHour, changes, hours, cubicMetres) =>
        {
            Volume room = Volume.FromLitres(1000 * cubicMetres);
            var air = Temperature.FromCelsius(20);
            double shut = RoomAir.VentilatedPpm(gramsPerHour, 46.07, room, air, 0, hours);
            double aired = RoomAir.VentilatedPpm(gramsPerHour, 46.07, room, air, changes, hours);
            double steady = RoomAir.VentilatedPpm(gramsPerHour, 46.07, room, air, changes, double.PositiveInfinity);
            double expectedSteady = 1e6 * gramsPerHour / 46.07 * 24.0552 / (changes * room.Litres);
            return aired <= shut * (1 + 1e-9) && aired <= steady * (1 + 1e-9) && Math.Abs(steady / expectedSteady - 1) < 1e-4
                && Math.Abs(shut - RoomAir.AllEvaporated(gramsPerHour * hours / 46.07, 46.07, room, air).Ppm) <= 1e-9 * shut;
        });

    // Over ethanol at 20 °C (44 mmHg = 5.87 kPa, NIOSH Pocket Guide) the air is inside the explosive range of 3.3 to 19 %.
    [Fact]
    public void Air_over_alcohol_can_burn() => Assert.InRange(RoomAir.SaturatedPpm(5.87) / 10_000, 3.3, 19);

    // pKa 9.25 at 25 °C: half is free there, a hundredth two units below.
    [Theory]
    [InlineData(9.25, 0.5)]
    [InlineData(7.25, 1 / 101.0)]
    [InlineData(11.25, 100 / 101.0)]
    public void Free_ammonia_follows_its_acid_constant(double ph, double share) => Assert.Equal(share, GasSources.FreeAmmoniaShare(ph, 9.25), 9);
}
