using Alumroot.Quantities.Units;
using CsCheck;

namespace Alumroot.Quantities.Tests.Types;

public class UnitTableTests
{
    [Fact]
    public void Every_unit_converts_there_and_back() =>
        Gen.Select(Gen.Int[0, UnitTable.All.Count - 1].Select(i => UnitTable.All[i]), Gen.Double[0, 1e5]).Sample((unit, x) =>
            Math.Abs(unit.FromBase(unit.InBase(x)) - x) <= 1e-9 * (1 + x));

    [Fact]
    public void Every_spelling_finds_its_unit_and_every_unit_names_its_source()
    {
        foreach (Unit unit in UnitTable.All)
        {
            Assert.Contains(unit, UnitTable.Find(unit.Kind, unit.Symbol));
            Assert.Contains(unit, UnitTable.Find(unit.Kind, unit.Name));
            Assert.NotEmpty(unit.Source);
            Assert.NotEmpty(unit.Where);
        }
    }

    [Fact]
    public void Only_kitchen_words_and_gr_have_several_meanings()
    {
        IEnumerable<string> ambiguous = UnitTable.All
            .SelectMany(u => UnitTable.Find(u.Kind, u.Symbol).Count > 1 ? [u.Symbol] : Array.Empty<string>());
        Assert.Empty(ambiguous);
        Assert.Equal(["US cup", "imperial cup", "metric cup"], UnitTable.Find(QuantityKind.Volume, "cups").Select(u => u.Symbol));
        Assert.Equal(["g", "grain"], UnitTable.Find(QuantityKind.Mass, "gr").Select(u => u.Symbol));
    }

    [Theory]
    [InlineData(QuantityKind.Conductivity, "μS/cm", "µS/cm")]
    [InlineData(QuantityKind.Conductivity, "uS", "µS/cm")]
    [InlineData(QuantityKind.Volume, "cm³", "mL")]
    [InlineData(QuantityKind.Hardness, "° dH", "°dH")]
    [InlineData(QuantityKind.Hardness, "mg per L CaCO₃", "ppm CaCO3")]
    [InlineData(QuantityKind.Temperature, "degrees Fahrenheit", "°F")]
    [InlineData(QuantityKind.Fraction, "per cent", "%")]
    public void Signs_blanks_and_capitals_do_not_count(QuantityKind kind, string spelling, string symbol) =>
        Assert.Equal(symbol, Assert.Single(UnitTable.Find(kind, spelling)).Symbol);

    [Fact]
    public void An_unknown_symbol_is_said() =>
        Assert.Throws<KeyNotFoundException>(() => UnitTable.Get(QuantityKind.Mass, "furlong"));
}
