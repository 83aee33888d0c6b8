using System.Globalization;
using Alumroot.App.Paints;
using Alumroot.App.Studio;
using Alumroot.App.Trials;
using Alumroot.App.Words;
using Alumroot.Catalogue;
using Alumroot.Paint.Labels;
using Alumroot.Paint.Recipes;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Print.Labels;

/// <summary>What stands on a label.</summary>
/// <param name="Name">The maker's own name for it.</param>
/// <param name="Lines">What it is made of, content, lot, date, in order.</param>
/// <param name="Hazards">Statements that follow from what is in it.</param>
/// <param name="Code">What the QR code says: the number of the record.</param>
public sealed record LabelContent(string Name, IReadOnlyList<string> Lines, IReadOnlyList<LabelHazard> Hazards, string Code)
{
    // What goes in without being weighed, as the recipe advises it; percent by mass.
    private static readonly Dictionary<string, double> UsualPercent = new(StringComparer.OrdinalIgnoreCase) { ["potassium sorbate"] = 0.2, ["clove oil"] = 0.3, ["phenoxyethanol"] = 0.8, ["thymol"] = 0.1, ["isothiazolinones"] = 0.0015 };

    /// <summary>The preservative, when nothing is known of its hazards; null otherwise.</summary>
    public string? UnknownPreservative { get; private init; }

    /// <summary>Statements of precaution that follow from the hazards.</summary>
    public IReadOnlyList<LabelPrecaution> Precautions { get; init; } = [];

    /// <summary>What one vessel holds in millilitres; null when it is not known.</summary>
    public double? CapacityMillilitres { get; private init; }

    /// <summary>The label of a paint, from its record.</summary>
    /// <param name="paint">The paint.</param>
    /// <param name="store">The record, for its lakes.</param>
    /// <param name="net">What one vessel holds, as typed; null for what the vessel is made for.</param>
    public static LabelContent? OfPaint(PaintState paint, StudioStore store, string? net)
    {
        ArgumentNullException.ThrowIfNull(paint);
        ArgumentNullException.ThrowIfNull(store);
        if (paint.Made is not { } made) return null;
        BatchState[] lakes = [.. made.Lakes.Select(l => SubjectKey.TryRead(l.Lake)).OfType<SubjectKey>().Select(store.Batch).OfType<BatchState>()];
        var medium = Medium.Find(made.Medium);
        PaintFill? vessel = made.Filled.Count > 0 ? PaintFill.Of(made.Filled[0].What) : null;
        IReadOnlyList<LabelHazard> hazards = LabelHazards.Of(Percents(made));
        string[] binder = [.. made.Parts.Skip(1).Select(p => p.Name).Where(n => !n.StartsWith("water", StringComparison.Ordinal))];
        return new LabelContent(
            made.Title,
            [
                .. lakes.Select(Pigment),
                binder.Length > 0 ? LabelWords.Binder(medium?.Name ?? made.Medium, binder) : "",
                made.Preservative is { } kept ? LabelWords.Preservative(kept) : "",
                LabelWords.Net(net ?? (vessel is { } fill ? $"{fill.Millilitres.ToString("0.#", CultureInfo.InvariantCulture)} mL" : "")),
                LabelWords.Lot(paint.Key, made.Lakes.Select(l => l.Lake), paint.At),
                LabelWords.Maker(store.State().Set),
            ],
            hazards, paint.Key.ToString())
        {
            Precautions = LabelPrecautions.For(hazards),
            CapacityMillilitres = net is not null && TypedAmount.Amount(net).Value is { SiUnit: Measured.CubicMetre } holds ? 1e6 * holds.SiValue : vessel?.Millilitres,
            UnknownPreservative = made.Preservative is { } named && !LabelHazards.Known.Any(k => named.Contains(k, StringComparison.OrdinalIgnoreCase)) ? named : null,
        }.Tidy();
    }

    /// <summary>The label of a jar of pigment, from the record of its lake.</summary>
    public static LabelContent OfLake(BatchState lake, StudioStore store, string? net)
    {
        ArgumentNullException.ThrowIfNull(lake);
        ArgumentNullException.ThrowIfNull(store);
        string left = net ?? (lake.PigmentKg is { } kg ? $"{PaintFigures.Of(1000 * kg)} g" : "");
        DateTimeOffset at = lake.Taken.Count > 0 ? lake.Taken[^1].At : lake.Entries[0].Entry.At;
        return new LabelContent($"{lake.Plan?.Dyestuff ?? "White ground"} lake", [Pigment(lake), LabelWords.Net(left), LabelWords.Lot(lake.Key, [], at), LabelWords.Dust, LabelWords.Maker(store.State().Set)], [], lake.Key.ToString()).Tidy();
    }

    /// <summary>The labels of a trial's jars, in the order of making; none when its design was taken back.</summary>
    public static IReadOnlyList<LabelContent> OfTrial(TrialState trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        return trial.Begun is not { } begun ? [] :
            [.. trial.Jars.Select(j => new LabelContent(LabelWords.Jar(trial.Key, j.Jar.Order), [.. begun.Factors.Select((_, i) => KeptTrialWords.Setting(begun, j.Jar, i)), KeptTrialWords.Amounts(j.Jar), LabelWords.Lot(trial.Key, [], trial.At)], [], LabelledJar.Code(trial.Key, j.Jar.Order)).Tidy())];
    }

    private static string Pigment(BatchState lake) => LabelWords.Pigment(lake.Plan, PaintLake.DyestuffOf(lake));

    private LabelContent Tidy() => this with { Lines = [.. Lines.Where(l => l.Length > 0)] };

    private static Dictionary<string, double> Percents(PaintMade made)
    {
        // What dries in its pan or as a stick is handed on without its water, and the rest counts for more.
        bool dry = made.Filled.Count > 0 && PaintFill.Of(made.Filled[0].What) is { } fill && (fill.Refilled || fill.Name == "stick");
        double all = made.Parts.Where(p => p.SiUnit == Measured.Kilogram && !(dry && p.Name.StartsWith("water", StringComparison.Ordinal))).Sum(p => p.SiValue);
        var percents = new Dictionary<string, double>(StringComparer.OrdinalIgnoreCase);
        foreach (Measured part in made.Parts.Where(p => p.SiUnit == Measured.Kilogram && all > 0)) percents[part.Name == "its solvent" ? "white spirit" : part.Name] = 100 * part.SiValue / all;
        if (made is { Preservative: { } weighed, PreservativeAmount: { SiUnit: Measured.Kilogram } amount } && all > 0)
        {
            foreach (string name in UsualPercent.Keys.Where(n => weighed.Contains(n, StringComparison.OrdinalIgnoreCase))) percents[name] = percents.GetValueOrDefault(name) + 100 * amount.SiValue / (all + amount.SiValue);
        }
        else if (made.Preservative is { } kept)
            foreach ((string name, double percent) in UsualPercent)
                if (kept.Contains(name, StringComparison.OrdinalIgnoreCase)) percents[name] = percents.GetValueOrDefault(name) + percent;
        return percents;
    }
}
