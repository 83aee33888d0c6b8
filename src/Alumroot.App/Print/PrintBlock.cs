namespace Alumroot.App.Print;

/// <summary>How loud words are.</summary>
public enum PrintTone
{
    /// <summary>What the sheet is about.</summary>
    Lead,

    /// <summary>Ordinary words.</summary>
    Body,

    /// <summary>Sources and remarks.</summary>
    Small,
}

/// <summary>A part of a sheet, the same for paper, page and PDF.</summary>
public abstract record PrintBlock
{
    private PrintBlock()
    {
    }

    /// <summary>A heading.</summary>
    /// <param name="Text">The words.</param>
    public sealed record Heading(string Text) : PrintBlock;

    /// <summary>A paragraph.</summary>
    /// <param name="Text">The words.</param>
    /// <param name="Tone">How loud.</param>
    public sealed record Words(string Text, PrintTone Tone = PrintTone.Body) : PrintBlock;

    /// <summary>Steps in order, or things without one.</summary>
    /// <param name="Lines">The words of each.</param>
    /// <param name="Numbered">Whether their order counts.</param>
    public sealed record Items(IReadOnlyList<string> Lines, bool Numbered) : PrintBlock;

    /// <summary>A table; an empty cell is a blank to write in.</summary>
    /// <param name="Name">What it holds.</param>
    /// <param name="Heads">The columns.</param>
    /// <param name="Shares">Width of each column as a share of the whole.</param>
    /// <param name="Rows">The cells, row by row.</param>
    public sealed record Grid(string Name, IReadOnlyList<string> Heads, IReadOnlyList<double> Shares, IReadOnlyList<IReadOnlyList<string>> Rows) : PrintBlock;

    /// <summary>Empty boxes to paint in, each with words below.</summary>
    /// <param name="Name">What they are for.</param>
    /// <param name="Captions">The words below each.</param>
    /// <param name="InARow">How many stand beside each other.</param>
    /// <param name="HeightMillimetres">How high each box is.</param>
    public sealed record Boxes(string Name, IReadOnlyList<string> Captions, int InARow, double HeightMillimetres) : PrintBlock;

    /// <summary>Patches of colour, each beside an empty half to paint the real one in.</summary>
    /// <param name="Name">What they are.</param>
    /// <param name="Colours">The colours.</param>
    /// <param name="InARow">How many stand beside each other.</param>
    /// <param name="HeightMillimetres">How high each patch is.</param>
    public sealed record Patches(string Name, IReadOnlyList<PrintPatch> Colours, int InARow, double HeightMillimetres) : PrintBlock;

    /// <summary>Something to mind.</summary>
    /// <param name="Text">The words.</param>
    public sealed record Mind(string Text) : PrintBlock;
}

/// <summary>A patch of colour on a sheet.</summary>
/// <param name="Hex">The colour as #rrggbb.</param>
/// <param name="Name">Its name: what a reader who cannot see it hears.</param>
/// <param name="Lines">The words below, line by line.</param>
public sealed record PrintPatch(string Hex, string Name, IReadOnlyList<string> Lines);
