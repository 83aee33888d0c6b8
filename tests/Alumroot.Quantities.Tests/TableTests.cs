using Alumroot.Quantities.Tables;

namespace Alumroot.Quantities.Tests;

public class TableTests
{
    [Fact]
    public void Quoted_fields_comments_and_short_rows_are_read()
    {
        // RFC 4180 sections 2.5 to 2.7: quotes around commas, line breaks and doubled quotes.
        Table t = Table.Parse("t.csv", "# note\r\na,b,c\r\n\"x, \"\"y\"\"\",2.5,\"two\nlines\"\r\n1\n");
        Assert.Equal(["a", "b", "c"], t.Columns);
        Assert.Equal("x, \"y\"", t.Rows[0]["a"]);
        Assert.Equal(2.5, t.Rows[0].Number("b"));
        Assert.Equal("two\nlines", t.Rows[0]["c"]);
        Assert.Equal("", t.Rows[1]["c"]);
        Assert.Equal(5, t.Rows[1].Line);
    }

    [Fact]
    public void Another_separator_leaves_commas_to_the_fields()
    {
        Table t = Table.Parse("t.csv", "id;x\nS1;0,054\n\"a;b\";2\n", ';');
        Assert.Equal("0,054", t.Rows[0]["x"]);
        Assert.Equal("a;b", t.Rows[1]["id"]);
    }

    [Fact]
    public void A_wrong_number_names_file_line_and_column()
    {
        Table t = Table.Parse("constants.csv", "k\n1\n-5,0x\n".Replace(",", ".", StringComparison.Ordinal));
        var e = Assert.Throws<TableException>(() => t.Rows[1].Number("k"));
        Assert.Equal("constants.csv line 3, column k: \"-5.0x\" is not a number; write it like -5.0.", e.Message);
    }

    [Theory]
    [InlineData("", "the file is empty")]
    [InlineData("a,b\n1,2,3\n", "3 fields")]
    [InlineData("a\n\"open\n", "never closed")]
    [InlineData("a,a\n", "named twice")]
    public void Broken_text_is_said_not_crashed(string text, string part)
    {
        var e = Assert.Throws<TableException>(() => Table.Parse("t.csv", text));
        Assert.Contains(part, e.Message, StringComparison.Ordinal);
    }
}
