using System.Globalization;
using Alumroot.App.Bench;
using Alumroot.App.Pages.Lakes;
using Alumroot.App.Words;
using Alumroot.Chemistry.Planning;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Print.Sheets;

/// <summary>The sheets of a lake.</summary>
internal static class LakeSheets
{
    private const int MostCautions = 5, SwatchInARow = 3;
    private const double SwatchHeight = 34;

    /// <summary>The plan and what happened.</summary>
    public static PrintSheet Batch(LakeInWork lake) => new(SheetWords.BatchSheet(lake.State),
    [
        new PrintBlock.Words(PlanNumbers.Held(lake.State.Plan?.Title ?? ""), PrintTone.Lead),
        new PrintBlock.Words(SheetWords.Stage(lake.State)),
        new PrintBlock.Grid(SheetWords.PlannedActual, SheetWords.PlannedActualHeads, [3, 4, 3], [.. StepTable.Of(lake).Select(r => (IReadOnlyList<string>)[r.What, Or(r.Planned), Or(r.Actual)])]),
        new PrintBlock.Heading(SheetWords.Kept),
        new PrintBlock.Items([.. lake.State.Entries.Where(e => e.Standing == Standing.Stands).Select(e => $"{TimeWords.Entry(e.Entry.At)}  {EntryWords.Of(e.Entry)}")], Numbered: false),
    ])
    { Code = lake.State.Key.ToString() };

    /// <summary>What to weigh and to read at the bench, with blanks.</summary>
    public static PrintSheet? Bench(LakeInWork lake)
    {
        if (lake.Answer is not { AmountsWithheld: false, Plan: { } plan } answer) return null;
        PlanNumbers numbers = lake.Numbers;
        return new PrintSheet(SheetWords.BenchCard(lake.State),
        [
            new PrintBlock.Words(PlanNumbers.Held(lake.State.Plan!.Title), PrintTone.Lead),
            new PrintBlock.Grid(SheetWords.InOrderOfUse, SheetWords.AmountHeads, [4, 3, 3, 4, 3], [.. BenchAmount.Of(plan, numbers).Select(a => (IReadOnlyList<string>)[a.What, a.Amount, Or(a.Span), a.With, ""])]),
            new PrintBlock.Words($"Vessel at least {numbers.Vessel(plan.LeastVesselLitres)}. After each portion {AlkaliHandling.Wait(plan.Input.Alkali)}."),
            new PrintBlock.Grid(SheetWords.Portions, SheetWords.PortionHeads, [3, 3, 4, 3], [.. PortionRows.Of(plan, numbers).Select(p => (IReadOnlyList<string>)[$"{p.Number}. {p.Add}", p.Sum, p.Span is null ? p.Ph : $"{p.Ph} ({p.Span})", ""])]),
            new PrintBlock.Grid(SheetWords.Washes, SheetWords.WashHeads, [3, 4, 3], [.. plan.Washes.Select(w => (IReadOnlyList<string>)[w.Number == 0 ? "before" : $"{w.Number}. {numbers.Roughly(w.WaterMillilitres)}", numbers.Number(w.MicrosiemensPerCm25, "").Line, ""])]),
            .. answer.Cautions.Take(MostCautions).Select(c => new PrintBlock.Mind(c.Text)),
            new PrintBlock.Words(SheetWords.Reckoned, PrintTone.Small),
        ])
        { Code = lake.State.Key.ToString() };
    }

    /// <summary>Boxes to paint the colour in.</summary>
    public static PrintSheet Swatch(LakeInWork lake) => new(SheetWords.SwatchCard(lake.State),
    [
        new PrintBlock.Words(PlanNumbers.Held(lake.State.Plan?.Title ?? ""), PrintTone.Lead),
        new PrintBlock.Words(SheetWords.SwatchHow),
        new PrintBlock.Boxes(SheetWords.SwatchBoxes, SheetWords.SwatchCaptions, SwatchInARow, SwatchHeight),
        new PrintBlock.Grid(SheetWords.SwatchNotes, SheetWords.SwatchNoteHeads, [3, 4], [.. SheetWords.SwatchNoteRows.Select(r => (IReadOnlyList<string>)[r, ""])]),
    ])
    { Code = lake.State.Key.ToString() };

    private static string Or(string? text) => string.IsNullOrEmpty(text) ? "–" : text;
}
