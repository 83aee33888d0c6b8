using Alumroot.Chemistry.Constants;
using Alumroot.Chemistry.Titration;
using Alumroot.Quantities.Tables;
using CsCheck;

namespace Alumroot.Chemistry.Tests.Properties;

/// <summary>Whatever stands in a file, reading it gives a table or a message that points at the place, never anything else.</summary>
public class ReadingProperties(ITestOutputHelper output)
{
    private const string Signs = "0123456789.-+*=,:()\"# \nABCHNOSaeglntIeE\u00B7\u00B5";

    private static readonly string[] Names = [.. EmbeddedConstants.TableNames];
    private static readonly string[] Texts = [.. Names.Select(Text)];
    private static readonly Gen<(int Table, int Place, int Cut, string Put)> Damage = Gen.Select(Gen.Int[0, 3], Gen.Int[0, 100_000], Gen.Int[0, 12], Gen.String[Gen.Char[Signs], 0, 6]);

    [Fact]
    public void Random_text_is_no_set_of_constants() =>
        Gen.String[Gen.Char[Signs], 0, 300].Sample(text => Refused(() => ConstantSet.Read(Table.Parse("a", text), Table.Parse("b", text), Table.Parse("c", text), Table.Parse("d", text))), iter: 3000);

    [Fact]
    public void A_damaged_table_is_read_or_refused_with_its_place() =>
        Damage.Sample(d => Refused(() =>
        {
            string[] texts = [.. Texts];
            string whole = texts[d.Table];
            int at = d.Place % whole.Length;
            texts[d.Table] = whole[..at] + d.Put + whole[Math.Min(whole.Length, at + d.Cut)..];
            ConstantSet.Read(Table.Parse(Names[0], texts[0]), Table.Parse(Names[1], texts[1]), Table.Parse(Names[2], texts[2]), Table.Parse(Names[3], texts[3]));
        }), output.WriteLine, iter: 1500);

    [Fact]
    public void Cases_are_read_or_refused_with_their_place()
    {
        Gen<string> word = Gen.OneOf<string>("sodium-carbonate", "potassium-alum-dodecahydrate", "Calcite", "air", "vented", "closed", "25", "-1", "1e400", "NaN", "=", "=0.1", "", " ", "\"", ",", "-");
        word.Array[0, 14].Sample(words => Refused(() =>
        {
            string row = string.Join(',', words.Chunk(2).Select(w => string.Concat(w)));
            CaseTable.Read(Table.Parse("cases.csv", "case,temperature_c,gas,start_water_kg,start_reagents_mol,titrant,solids_allowed\n" + row), EmbeddedConstants.Set);
        }), output.WriteLine, iter: 3000);
    }

    [Theory]
    [InlineData("x,25,closed,1,sodium-carbonate=0.1,,", null)]
    [InlineData("x,25,open,1,sodium-carbonate=0.1,,", "gas")]
    [InlineData("x,101,closed,1,sodium-carbonate=0.1,,", "temperature_c")]
    [InlineData("x,25,closed,0,sodium-carbonate=0.1,,", "start_water_kg")]
    [InlineData("x,25,closed,1,sodium-carbonate,,", "start_reagents_mol")]
    [InlineData("x,25,closed,1,sodium-carbonate=-1,,", "start_reagents_mol")]
    [InlineData("x,25,closed,1,unobtainium=1,,", "start_reagents_mol")]
    [InlineData("x,25,closed,1,sodium-carbonate=0.1,unobtainium,", "titrant")]
    [InlineData("x,25,closed,1,sodium-carbonate=0.1,,Unobtainite", "solids_allowed")]
    public void A_wrong_field_is_named(string row, string? column)
    {
        Table table = Table.Parse("cases.csv", "case,temperature_c,gas,start_water_kg,start_reagents_mol,titrant,solids_allowed\n" + row);
        if (column is null)
        {
            Assert.Single(CaseTable.Read(table, EmbeddedConstants.Set));
            return;
        }
        TableException refused = Assert.Throws<TableException>(() => CaseTable.Read(table, EmbeddedConstants.Set));
        Assert.Equal((2, column), (refused.Line, refused.Column));
    }

    [Fact]
    public void A_formula_is_counted_or_refused()
    {
        Gen.String[Gen.Char["HOCNaSl()0123456789:.II\u00B7-+ "], 0, 24].Sample(text =>
        {
            try
            {
                IReadOnlyDictionary<string, double> counts = ChemicalFormula.Count(text);
                Assert.All(counts.Values, n => Assert.True(double.IsFinite(n) && n >= 0));
                return "counted";
            }
            catch (FormatException) { return "refused"; }
        }, output.WriteLine, iter: 20_000);
    }

    [Fact]
    public void A_reaction_is_read_or_refused()
    {
        Gen.String[Gen.Char["+-*0123456789.eENa HO"], 0, 24].Sample(text =>
        {
            try
            {
                Assert.All(Reaction.Parse(text).Terms, t => Assert.True(double.IsFinite(t.Coefficient) && t.Component.Length > 0));
                return "read";
            }
            catch (FormatException) { return "refused"; }
        }, output.WriteLine, iter: 20_000);
    }

    [Theory]
    [InlineData("KAl(SO4)2(H2O)12", "K=1 Al=1 S=2 O=20 H=24")]
    [InlineData("CaSO4:2H2O", "Ca=1 S=1 O=6 H=4")]
    [InlineData("Fe(II)SO4(H2O)7", "FeII=1 S=1 O=11 H=14")]
    [InlineData("(K2CO3)2(H2O)3", "K=4 C=2 O=9 H=6")]
    [InlineData("Al(OH)Acetate2", "Al=1 O=1 H=1 Acetate=2")]
    public void A_formula_counts_its_elements(string formula, string expected) =>
        Assert.Equal(expected, string.Join(' ', ChemicalFormula.Count(formula).Select(e => FormattableString.Invariant($"{e.Key}={e.Value}"))));

    private static string Refused(Action read)
    {
        try
        {
            read();
            return "read";
        }
        catch (TableException refused)
        {
            Assert.True(refused.Line >= 1 && refused.Table.Length > 0);
            return "refused";
        }
    }

    private static string Text(string table)
    {
        using Stream stream = typeof(EmbeddedConstants).Assembly.GetManifestResourceStream(table)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
