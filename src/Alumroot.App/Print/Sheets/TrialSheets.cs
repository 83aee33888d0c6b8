using System.Globalization;
using Alumroot.App.Words;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Print.Sheets;

/// <summary>The sheet of a trial: its row of jars for the bench.</summary>
internal static class TrialSheets
{
    private const int SwatchesInARow = 4;
    private const double SwatchHeight = 15;

    /// <summary>What goes into each jar, blanks for what was done and read, and a box for each swatch.</summary>
    public static PrintSheet Row(TrialState trial, TrialBegun begun)
    {
        bool amounts = trial.Jars.Any(j => j.Jar.Amounts.Count > 0);
        return new PrintSheet(SheetWords.TrialSheet(trial),
        [
            new PrintBlock.Words(SheetWords.TrialLead(trial, begun), PrintTone.Lead),
            new PrintBlock.Grid(
                SheetWords.TrialRow, [SheetWords.JarHead, .. begun.Factors.Select(KeptTrialWords.Head), .. amounts ? [SheetWords.AmountHead] : (string[])[], SheetWords.DoneHead],
                [1.3, .. begun.Factors.Select(_ => 2.4), .. amounts ? [4.5] : (double[])[], 1.6],
                [.. trial.Jars.Select(j => (IReadOnlyList<string>)[Number(j), .. begun.Factors.Select((f, i) => f.Settings[j.Jar.Levels[i]]), .. amounts ? [KeptTrialWords.Amounts(j.Jar)] : (string[])[], ""])]),
            new PrintBlock.Words(SheetWords.TrialHow),
            new PrintBlock.Heading(SheetWords.ReadHeading),
            new PrintBlock.Grid(
                SheetWords.TrialReadings, [SheetWords.JarHead, .. trial.ResultNames.Select(KeptTrialWords.Result), SheetWords.ColourHead, SheetWords.RemarkHead],
                [1.3, .. trial.ResultNames.Select(_ => 2.4), 3, 3],
                [.. trial.Jars.Select(j => (IReadOnlyList<string>)[Number(j), .. trial.ResultNames.Select(n => j.Results.TryGetValue(n, out TrialResult? r) ? r.Value.Typed : ""), j.Colour?.Colour is { } c ? SwatchWords.Numbers(new(c.LabL, c.LabA, c.LabB)) : "", ""])]),
            new PrintBlock.Boxes(SheetWords.TrialSwatches, [.. trial.Jars.Select(j => LabelWords.Jar(trial.Key, j.Jar.Order))], SwatchesInARow, SwatchHeight),
            new PrintBlock.Mind(SheetWords.TrialCaution),
            .. amounts ? [new PrintBlock.Words(SheetWords.Reckoned, PrintTone.Small)] : (PrintBlock[])[],
        ])
        { Code = trial.Key.ToString() };
    }

    private static string Number(JarState jar) => jar.Jar.Block > 1 ? string.Create(CultureInfo.InvariantCulture, $"{jar.Jar.Order}, day {jar.Jar.Block}") : jar.Jar.Order.ToString(CultureInfo.InvariantCulture);
}
