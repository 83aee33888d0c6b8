using Alumroot.App.Bench;
using Alumroot.App.Requests;
using Alumroot.Chemistry.Planning;
using Alumroot.Colour.Colorimetry;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Trials;

/// <summary>What a batch was made of and what came of it, as weighed and read; where nothing was read, as planned.</summary>
/// <param name="Key">The batch.</param>
/// <param name="At">When it began.</param>
/// <param name="Request">Its plan as it was typed.</param>
/// <param name="Input">Its plan as it was understood.</param>
public sealed record BatchFacts(SubjectKey Key, DateTimeOffset At, PlanRequest Request, LakePlanInput Input)
{
    /// <summary>The dyestuff's key; "none" for the white ground.</summary>
    public string Dyestuff { get; private init; } = "none";

    /// <summary>The salt's key, with that of a second salt.</summary>
    public string Salt => string.Join(" + ", Input.Salts.Select(s => s.Substance.Key));

    /// <summary>The alkali's key.</summary>
    public string Alkali => Input.Alkali.Key;

    /// <summary>Dry dyestuff; null for the white ground.</summary>
    public double? DryGrams { get; private init; }

    /// <summary>Salt that went in.</summary>
    public double SaltGrams { get; private init; }

    /// <summary>Alkali that went in, in its own unit; null when none was recorded.</summary>
    public double? AlkaliUnits { get; private init; }

    /// <summary>The pH at the end; null when it was neither read nor aimed at.</summary>
    public double? FinalPh { get; private init; }

    /// <summary>Whether that pH was read.</summary>
    public bool PhIsRead { get; private init; }

    /// <summary>The bath's temperature.</summary>
    public double TemperatureCelsius { get; private init; }

    /// <summary>The dry pigment; null when it was not weighed.</summary>
    public double? PigmentGrams { get; private init; }

    /// <summary>The latest colour of each state.</summary>
    public IReadOnlyDictionary<SwatchState, SwatchRead> Colours { get; private init; } = new Dictionary<SwatchState, SwatchRead>();

    /// <summary>The lots that it was made from.</summary>
    public IReadOnlyDictionary<LotClass, string> Lots { get; private init; } = new Dictionary<LotClass, string>();

    /// <summary>Salt for each gram of dry dyestuff.</summary>
    public double? SaltPerGram => DryGrams is > 0 and var dry ? SaltGrams / dry : null;

    /// <summary>Pigment from each gram of dry dyestuff.</summary>
    public double? YieldPerGram => DryGrams is > 0 and var dry && PigmentGrams is { } pigment ? pigment / dry : null;

    /// <summary>The facts of a batch; null when its plan cannot be read.</summary>
    public static BatchFacts? Of(BatchState batch)
    {
        ArgumentNullException.ThrowIfNull(batch);
        if (batch.Plan is not { } plan || PlanRequest.FromAddress(plan.PlanAddress) is not { } request || PlanReader.Read(request) is not { Input: { } input } answer) return null;
        (BatchStep Step, Act Act)[] done = [.. batch.Taken.Select(t => (t.Step, Acts.Of(t.Step)))];
        double? Sum(Act act, string unit, double factor) => Values(act, unit) is { Length: > 0 } all ? all.Sum(v => v.SiValue) * factor : null;
        Measured[] Values(Act act, string unit) => [.. done.Where(d => d.Act == act).SelectMany(d => d.Step.Values).Where(v => v.Name == "amount" && v.SiUnit == unit)];
        double? read = done.Where(d => d.Act == (input.Order == OrderOfAddition.AlkaliFirst ? Acts.SaltRead : Acts.AlkaliRead)).SelectMany(d => d.Step.Values).LastOrDefault(v => v.Name == "ph")?.SiValue;
        double? warmth = done.SelectMany(d => d.Step.Values).LastOrDefault(v => v.Name == "temperature")?.SiValue - 273.15;
        double? dry = input.DryDyestuff?.Grams;
        return new BatchFacts(batch.Key, batch.Entries[0].Entry.At, request, input)
        {
            Dyestuff = answer.Dyestuff?.Key ?? "none",
            // Fresh plants are weighed wet; what is dry of them is known from the plan alone.
            DryGrams = dry is null ? null : request[PlanFields.Fresh] is null ? Sum(Acts.DyestuffIn, Measured.Kilogram, 1000) ?? dry : dry,
            SaltGrams = Sum(Acts.SaltIn, Measured.Kilogram, 1000) ?? input.Salts[0].Amount.Grams,
            AlkaliUnits = input.Alkali.Unit == SubstanceUnit.Gram ? Sum(Acts.AlkaliIn, Measured.Kilogram, 1000) : Sum(Acts.AlkaliIn, Measured.CubicMetre, 1e6),
            FinalPh = read ?? (input.Aim as PlanAim.ToPh)?.Ph.Value,
            PhIsRead = read is not null,
            TemperatureCelsius = Math.Round(warmth ?? input.Temperature.Celsius, 1),
            PigmentGrams = batch.Stage is < BatchStage.DryCake or BatchStage.GivenUp ? null : Cake(done) ?? 1000 * batch.PigmentKg,
            Colours = batch.Entries.Where(e => e.Standing == Standing.Stands).Select(e => (DocumentText.Read(e.Entry) as DocumentReading.Known)?.Document).OfType<SwatchRead>().GroupBy(s => s.State).ToDictionary(g => g.Key, g => g.Last()),
            Lots = LotsOf(plan, done),
        };
    }

    /// <summary>A colour as the engine takes it.</summary>
    public static Lab Of(LabText lab)
    {
        ArgumentNullException.ThrowIfNull(lab);
        return new Lab(lab.LabL, lab.LabA, lab.LabB);
    }

    // The dry cake, so that what grinding and sieving lose does not look like yield; without its weight the latest there is.
    private static double? Cake(IReadOnlyList<(BatchStep Step, Act Act)> done) =>
        1000 * done.Where(d => d.Act == Acts.DryDone || d.Act == Acts.DryWeighed).SelectMany(d => d.Step.Values).LastOrDefault(v => v is { Name: "amount", SiUnit: Measured.Kilogram })?.SiValue;

    // What was taken from the shelf counts before what the plan meant.
    private static Dictionary<LotClass, string> LotsOf(BatchPlanned plan, IReadOnlyList<(BatchStep Step, Act Act)> done)
    {
        var lots = plan.Lots.GroupBy(l => l.Role).ToDictionary(g => g.Key, g => g.Last().Lot);
        foreach ((BatchStep step, Act _) in done)
            if (step.Uses.Count > 0 && step.Step switch { StepKind.Extract => LotClass.Dyestuff, StepKind.Salt => LotClass.Salt, StepKind.Alkali => LotClass.Alkali, _ => (LotClass?)null } is { } role) lots[role] = step.Uses[^1].Lot;
        return lots;
    }
}
