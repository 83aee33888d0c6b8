using Alumroot.App.Requests;
using Alumroot.App.Words;

namespace Alumroot.App.Print.Sheets;

/// <summary>The sheet of a row of jars at several pH.</summary>
internal static class LadderSheets
{
    /// <summary>What goes into each jar, with blanks for what is read; null when there is no row.</summary>
    public static PrintSheet? Card(PhRowRequest asked) => asked.Plan is not { } plan ? null : new PrintSheet(SheetWords.LadderCard(asked.Dyestuff?.Name),
    [
        new PrintBlock.Words(PhRowWords.Sentence(asked, plan), PrintTone.Lead),
        new PrintBlock.Items(PhRowWords.Steps(asked, plan), Numbered: true),
        new PrintBlock.Grid(PhRowWords.Table, PhRowWords.CardHeads, [2, 4, 2, 4, 3, 3, 5], [.. plan.Jars.Select(j => PhRowWords.CardCells(j, asked, plan))]),
        new PrintBlock.Mind(PhRowWords.Mind),
        .. asked.Assumed.Select(a => new PrintBlock.Words($"Taken: {a}.", PrintTone.Small)),
    ]);
}
