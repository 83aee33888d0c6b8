using Alumroot.App.Words;

namespace Alumroot.App.Tests;

/// <summary>The part of CommonMark 0.31 (headings, lists, code, emphasis) that the model pages use, and pipe tables. Cases from memory of that text.</summary>
public sealed class ProseTests
{
    [Fact]
    public void A_page_is_read_block_by_block()
    {
        IReadOnlyList<ProseBlock> blocks = Prose.Blocks("""
            # Name

            First line
            and second.
            - one
            - two
              goes on

            1. first
            2. second

            | a | b |
            |---|---|
            | 1 | 2 |

                m = 2 s

            ```
            x = 1
            ```
            """);
        Assert.Equal(new ProseBlock.Heading(1, "Name"), blocks[0]);
        Assert.Equal(new ProseBlock.Paragraph("First line and second."), blocks[1]);
        Assert.Equal(["one", "two goes on"], Assert.IsType<ProseBlock.Items>(blocks[2]).Texts);
        Assert.True(Assert.IsType<ProseBlock.Items>(blocks[3]).Numbered);
        var table = Assert.IsType<ProseBlock.Table>(blocks[4]);
        Assert.Equal(["a", "b"], table.Header);
        Assert.Equal(["1", "2"], Assert.Single(table.Rows));
        Assert.Equal(new ProseBlock.Formula("m = 2 s"), blocks[5]);
        Assert.Equal(new ProseBlock.Formula("x = 1"), blocks[6]);
        Assert.Equal(7, blocks.Count);
    }

    [Fact]
    public void Marks_inside_a_line_are_found_and_a_lone_star_is_a_star() =>
        Assert.Equal(
            [(ProseMark.None, "a "), (ProseMark.Strong, "b"), (ProseMark.None, " "), (ProseMark.Stress, "c"), (ProseMark.None, " "), (ProseMark.Code, "d*e"), (ProseMark.None, " "), (ProseMark.None, "page"), (ProseMark.None, " 2 * 3")],
            Prose.Pieces("a **b** *c* `d*e` [page](x.md) 2 * 3"));

    [Fact]
    public void Every_model_page_is_built_in_and_reads_whole()
    {
        Assert.NotEmpty(ModelPages.Names);
        foreach (string name in ModelPages.Names)
        {
            IReadOnlyList<ProseBlock> page = ModelPages.Find(name)!;
            Assert.IsType<ProseBlock.Heading>(page[0]);
            Assert.NotEqual(name, ModelPages.TitleOf(name));
            Assert.DoesNotContain(page.OfType<ProseBlock.Paragraph>(), p => p.Text.StartsWith('#') || p.Text.StartsWith('|'));
        }
        Assert.Null(ModelPages.Find("nothing"));
    }
}
