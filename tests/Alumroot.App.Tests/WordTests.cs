using Alumroot.App.Output;
using Alumroot.App.Words;

namespace Alumroot.App.Tests;

/// <summary>How words, formulas and sources are printed.</summary>
public sealed class WordTests
{
    // Formulas as in the IUPAC Nomenclature of Inorganic Chemistry, 2005, IR-4.4 (from memory): the raised point before water.
    [Theory]
    [InlineData("KAl(SO4)2.12H2O", "KAl(SO₄)₂·12H₂O")]
    [InlineData("Na2CO3", "Na₂CO₃")]
    [InlineData("Al2(SO4)3.18H2O", "Al₂(SO₄)₃·18H₂O")]
    [InlineData("", "")]
    public void A_formula_has_low_counts_and_a_raised_point(string plain, string printed) =>
        Assert.Equal(printed, FormulaWords.Printed(plain));

    [Theory]
    [InlineData("keep at 50 to 70 C: hotter browns", "Keep at 50 to 70 °C: hotter browns.")]
    [InlineData("sulfate, 18 H2O", "Sulfate, 18 H₂O.")]
    [InlineData("vitamin C", "Vitamin C.")]
    [InlineData("", "")]
    public void A_text_of_the_tables_becomes_a_sentence(string text, string sentence) =>
        Assert.Equal(sentence, CatalogueWords.AsSentence(text));

    [Theory]
    [InlineData(474.372, "474.4")]
    [InlineData(2292.4, "2292")]
    [InlineData(5.654, "5.65")]
    [InlineData(0.38, "0.38")]
    [InlineData(-3, "\u22123")]
    public void A_number_has_no_needless_digits(double value, string text) => Assert.Equal(text, CatalogueWords.Number(value));

    [Fact]
    public void Sources_are_read_with_accents_and_nested_braces()
    {
        Source source = SourceList.Parse("""
            @book{key1,
              author = {{Deutsches Institut f{\"u}r Normung} and M{\'e}rim{\'e}e},
              title  = {Hardness of {W}ater \& more},
              year   = {1986},
              note   = {Not read}
            }
            """).Single();
        Assert.Equal("Deutsches Institut für Normung and Mérimée, Hardness of Water & more, 1986", source.Spelt);
        Assert.Equal("Not read", source.Note);
    }

    [Fact]
    public void The_built_in_sources_are_all_read_and_have_titles()
    {
        Assert.NotEmpty(SourceList.All);
        Assert.All(SourceList.All, source => Assert.NotEmpty(source.Title));
        Assert.Equal("no such key", SourceList.Spelt("no such key"));
    }

    [Fact]
    public void Lines_are_broken_between_words_and_a_long_word_stands_whole()
    {
        Assert.Equal(["one two", "three", "abcdefghijkl"], Columns.Wrapped("one two three abcdefghijkl", 8));
        string beside = Columns.Beside("a", string.Join(' ', Enumerable.Repeat("word", 30)), 4);
        Assert.StartsWith("a   word", beside, StringComparison.Ordinal);
        Assert.All(beside.Split('\n').Skip(1), line => Assert.StartsWith("    word", line, StringComparison.Ordinal));
    }
}
