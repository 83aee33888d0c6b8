using Alumroot.App.Trials;
using Alumroot.Trials.Design;
using CsCheck;

namespace Alumroot.App.Tests;

/// <summary>Factors and tables as people type and paste them.</summary>
public sealed class FactorLinesTests
{
    [Fact]
    public void Names_and_ranges_are_read()
    {
        (IReadOnlyList<Factor> factors, string? trouble) = FactorLines.Read("salt: potash-alum, aluminium-sulfate\n temp: 20 to 60 C in 3 \nto-ph: 5,5 to 7\n");
        Assert.Null(trouble);
        Assert.Equal(["potash-alum", "aluminium-sulfate"], Assert.IsType<Factor.Named>(factors[0]).Levels);
        Assert.Equal(("C", "20 40 60"), (Assert.IsType<Factor.Measured>(factors[1]).Unit, string.Join(' ', ((Factor.Measured)factors[1]).Values)));
        Assert.Equal([5.5, 7], Assert.IsType<Factor.Measured>(factors[2]).Values);
    }

    [Theory]
    [InlineData("salt potash-alum", "has no colon")]
    [InlineData("salt: alum", "needs two or more different settings")]
    [InlineData("salt: alum, alum", "needs two or more different settings")]
    [InlineData("temp: 60 to 20", "the smaller number stands first")]
    [InlineData("temp: 20 to 60 in 40", "the number of settings is 2 to 12")]
    [InlineData("a: x, y\na: x, z", "stands twice")]
    public void What_is_not_understood_is_told_with_its_line(string typed, string sentence) => Assert.Contains(sentence, FactorLines.Read(typed).Trouble, StringComparison.Ordinal);

    [Fact]
    public void Whatever_is_typed_is_factors_or_a_sentence() => Gen.String[Gen.Char[" :,;0123456789.toCin\nabc-"], 0, 60].Sample(typed =>
    {
        (IReadOnlyList<Factor> factors, string? trouble) = FactorLines.Read(typed);
        Assert.True(trouble is null || factors.Count == 0);
    });

    [Theory]
    [InlineData("ph,L\n3,50\n")]
    [InlineData("ph\tL\n3\t50")]
    [InlineData("ph;L\r\n3;50\r\n")]
    [InlineData("ph  L\n3   50")]
    public void A_table_is_pasted_from_anywhere(string typed)
    {
        Quantities.Tables.Table table = PastedTable.Read(typed);
        Assert.Equal(("3", "50"), (table.Rows[0]["ph"], table.Rows[0]["L"]));
    }
}
