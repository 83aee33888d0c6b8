using Alumroot.App.Colours;
using Alumroot.App.Words;

namespace Alumroot.App.Print.Sheets;

/// <summary>The sheet of colours that were read.</summary>
internal static class ColourSheets
{
    private const int MostPatches = 60, InARow = 3, InARowOfACard = 2;
    private const double HeightMillimetres = 22, HeightOnACard = 16;

    /// <summary>The colours that an address wants, each beside an empty half; null when there are none.</summary>
    /// <param name="asked">Which.</param>
    /// <param name="all">All of the record.</param>
    /// <param name="paper">The paper.</param>
    public static PrintSheet? Card(ColourQuery asked, IReadOnlyList<LakeColour> all, Paper paper)
    {
        IReadOnlyList<LakeColour> found = asked.From(all);
        if (found.Count == 0) return null;
        bool card = paper == Paper.A6;
        return new PrintSheet(SheetWords.ColourCard(asked.Words),
        [
            new PrintBlock.Words(SheetWords.ColourCardHow),
            new PrintBlock.Patches(SheetWords.ColourCardCount(Math.Min(found.Count, MostPatches), found.Count), [.. found.Take(MostPatches).Select(c => new PrintPatch(c.Screen.Hex, c.Name, SheetWords.Patch(c)))], card ? InARowOfACard : InARow, card ? HeightOnACard : HeightMillimetres),
            new PrintBlock.Words(SheetWords.ColourCardNumbers, PrintTone.Small),
        ]);
    }
}
