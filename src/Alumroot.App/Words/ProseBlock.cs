namespace Alumroot.App.Words;

/// <summary>One block of a page of prose.</summary>
public abstract record ProseBlock
{
    private ProseBlock()
    {
    }

    /// <summary>A heading.</summary>
    /// <param name="Level">1 for the page's name, 2 and 3 below it.</param>
    /// <param name="Text">Its words.</param>
    public sealed record Heading(int Level, string Text) : ProseBlock;

    /// <summary>A paragraph.</summary>
    /// <param name="Text">Its words with inline marks.</param>
    public sealed record Paragraph(string Text) : ProseBlock;

    /// <summary>A list.</summary>
    /// <param name="Texts">Its items with inline marks.</param>
    /// <param name="Numbered">Whether the order counts.</param>
    public sealed record Items(IReadOnlyList<string> Texts, bool Numbered) : ProseBlock;

    /// <summary>A table.</summary>
    /// <param name="Header">The column names.</param>
    /// <param name="Rows">Its rows with inline marks.</param>
    public sealed record Table(IReadOnlyList<string> Header, IReadOnlyList<IReadOnlyList<string>> Rows) : ProseBlock;

    /// <summary>Lines kept as they stand: a formula.</summary>
    /// <param name="Text">The lines.</param>
    public sealed record Formula(string Text) : ProseBlock;
}
