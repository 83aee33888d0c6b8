using System.Globalization;
using Alumroot.App.Bench;
using Alumroot.App.Colours;
using Alumroot.App.Paints;
using Alumroot.App.Requests;
using Alumroot.Studio;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Print.Sheets;

/// <summary>Which sheet an address means. Page and PDF ask here, so they cannot differ.</summary>
public sealed class SheetMaker(StudioStore store, PlanShelf plans, FootLine line)
{
    private const int MostPeople = 200, UsualPeople = 8;

    /// <summary>Sheets by the word of their address.</summary>
    public static IReadOnlyList<string> Names { get; } = ["batch-sheet", "bench-card", "swatch-card", "colour-card", "ladder-card", "recipe-card", "handout", "trial-sheet"];

    /// <summary>Makes a sheet; null when there is none.</summary>
    /// <param name="what">One of <see cref="Names"/>.</param>
    /// <param name="typed">The fields of the address.</param>
    public PrintSheet? Of(string what, Func<string, string?> typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        PrintSheet? sheet = what switch
        {
            "batch-sheet" => Lake(typed) is { } lake ? LakeSheets.Batch(lake) : null,
            "bench-card" => Lake(typed) is { } lake ? LakeSheets.Bench(lake) : null,
            "swatch-card" => Lake(typed) is { } lake ? LakeSheets.Swatch(lake) : null,
            "colour-card" => ColourSheets.Card(new ColourQuery(typed), LakeColour.All(store), Paper.Of(typed("paper"))),
            "ladder-card" => LadderSheets.Card(new PhRowRequest(typed)),
            "recipe-card" when SubjectKey.TryRead(typed("paint")) is { Class: SubjectClass.Paint } key => store.Paint(key) is { Made: { } made } paint ? PaintSheets.Made(paint, made) : null,
            "recipe-card" => Recipe(typed) is { } answer ? PaintSheets.Card(answer) : null,
            "handout" => Recipe(typed) is { } answer ? PaintSheets.Handout(answer, People(typed("people"))) : null,
            "trial-sheet" => SubjectKey.TryRead(typed("trial")) is { Class: SubjectClass.Trial } trial && store.Trial(trial) is { Begun: { } begun } state ? TrialSheets.Row(state, begun) : null,
            _ => null,
        };
        return sheet is null ? null : sheet with { Paper = Paper.Of(typed("paper")), Foot = line.Foot };
    }

    /// <summary>How many people; eight when nothing else is typed.</summary>
    public static int People(string? typed) => int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out int n) && n is >= 1 and <= MostPeople ? n : UsualPeople;

    private LakeInWork? Lake(Func<string, string?> typed) => LakesInWork.Find(store, plans, typed("lake") ?? "");

    private PaintAnswer? Recipe(Func<string, string?> typed) => new PaintRequest(typed, PaintFields.Label, PaintLake.Of(store, typed(PaintRequest.Lake)), PaintOwn.Of(store)).Answer;
}
