using Alumroot.Quantities.Reading;
using Alumroot.Quantities.Units;
using CsCheck;

namespace Alumroot.Quantities.Tests.Reading;

/// <summary>Laws that hold for every text.</summary>
public class AnyTextTests
{
    private static readonly string[] Pieces =
        ["1", "5", "0", "12", "500", "999", ".", ",", "'", " ", "\u202F", "/", "-", "\u2212", "½", "e", "E9", "g", "kg", "oz", "lb", "L", "mL", "cup", "US", "uk", "°", "F", "C", "%", "ppm", "pH", "to", "and", "+", "±", "~", "about ", "cm3", "\0", "\uD83D", "µS/cm"];

    private static readonly Gen<string> Pieced = Gen.Int[0, Pieces.Length - 1].Array[0, 14].Select(a => string.Concat(a.Select(i => Pieces[i])));
    private static readonly Gen<string> Unicode = Gen.Char.Array[0, 60].Select(a => new string(a));

    private static readonly FieldRule<Mass> Powder = FieldRules.ReagentMass with { Powder = new PowderDensity(0.5, 1.2), Kitchen = KitchenMeasures.Us };

    private static void ReadEveryWay(string text)
    {
        Consistent(QuantityReader.ReadMass(text, FieldRules.ReagentMass));
        Consistent(QuantityReader.ReadMass(text, Powder));
        Consistent(QuantityReader.ReadVolume(text, FieldRules.Water));
        Consistent(QuantityReader.ReadTemperature(text, FieldRules.BathTemperature));
        Consistent(QuantityReader.ReadPh(text, FieldRules.Ph));
        Consistent(QuantityReader.ReadHardness(text, FieldRules.WaterHardness));
        Consistent(QuantityReader.ReadConductivity(text, FieldRules.Conductivity));
        Consistent(QuantityReader.ReadFraction(text, FieldRules.Purity));
        Consistent(QuantityReader.ReadAlkalinity(text, FieldRules.LyeAlkalinity));
        Consistent(QuantityReader.ReadNumber(text, FieldRules.PhStep));
    }

    private static void Consistent<T>(Parsed<T> parsed) where T : struct
    {
        Assert.True(parsed.Typed.Length <= QuantityReader.LongestText);
        if (parsed is not Parsed<T>.TwoReadings two) return;
        Assert.True(two.Readings.Count >= 2);
        Assert.NotEqual(two.First.Value, two.Second.Value);
    }

    [Fact]
    public void Reading_never_throws_on_pieces_of_quantities() => Pieced.Sample(ReadEveryWay, iter: 20_000);

    [Fact]
    public void Reading_never_throws_on_any_characters() => Unicode.Sample(ReadEveryWay, iter: 5_000);

    [Theory]
    [InlineData('5')]
    [InlineData(' ')]
    [InlineData(',')]
    [InlineData('\uD800')]
    [InlineData('½')]
    public void A_megabyte_of_anything_is_answered_at_once(char c) => ReadEveryWay(new string(c, 1_000_000));

    [Fact]
    public void Comma_and_point_are_the_same() =>
        Gen.Select(Gen.Int[0, 99999], Gen.Int[0, 99]).Sample((whole, hundredths) =>
        {
            string point = $"{whole}.{hundredths:00} g", comma = $"{whole},{hundredths:00} g";
            Parsed<Mass> a = QuantityReader.ReadMass(point, FieldRules.ReagentMass), b = QuantityReader.ReadMass(comma, FieldRules.ReagentMass);
            return a.ValueOrNull == b.ValueOrNull && a.GetType() == b.GetType();
        });

    [Fact]
    public void Each_of_two_readings_typed_anew_has_one_reading() =>
        Pieced.Sample(text =>
        {
            if (QuantityReader.ReadVolume(text, FieldRules.Water) is not Parsed<Volume>.TwoReadings two) return;
            foreach (Reading<Volume> reading in two.Readings)
                Assert.Equal(reading.Value.Millilitres, QuantityReader.ReadVolume(reading.Rewritten, FieldRules.Water).ValueOrNull!.Value.Millilitres, 1e-9 * reading.Value.Millilitres);
        }, iter: 20_000);
}
