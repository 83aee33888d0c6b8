using Alumroot.Catalogue;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Trials.Spot;

namespace Alumroot.App.Trials.Spot;

/// <summary>What is believed of a lot on one metal, before its spot tests and after.</summary>
/// <param name="Metal">The metal.</param>
/// <param name="Salt">The salt of the row.</param>
/// <param name="Before">What the handbook says of its dyestuff.</param>
/// <param name="After">With the drops of this lot.</param>
/// <param name="Count">How many drops.</param>
/// <param name="Last">When the last was tried; null when none was.</param>
internal sealed record SpotVerdict(LakeMetal Metal, string Salt, SpotBelief Before, SpotBelief After, int Count, DateTimeOffset? Last)
{
    /// <summary>The row of drops, each salt with its metal.</summary>
    internal static IReadOnlyList<(SpotSalt Salt, LakeMetal Metal)> Row { get; } = [.. SpotSalt.All.Select(s => (s, MetalOf(s.Metal)))];

    /// <summary>The verdicts for every metal of the row.</summary>
    internal static IReadOnlyList<SpotVerdict> Of(LotState lot)
    {
        ArgumentNullException.ThrowIfNull(lot);
        IReadOnlyList<(DateTimeOffset At, SpotTested Test)> tests = TestsOf(lot);
        Dyestuff? dyestuff = lot.Bought?.PlanName is { } name ? CatalogueData.Embedded.FindDyestuff(name) : null;
        return [.. Row.Select(r => Of(r.Salt.Salt, r.Metal, dyestuff, tests))];
    }

    /// <summary>The spot tests of a lot that stand, in order of time.</summary>
    internal static IReadOnlyList<(DateTimeOffset At, SpotTested Test)> TestsOf(LotState lot) =>
        [.. lot.Entries.Where(e => e.Standing == Standing.Stands && e.Entry.Kind.Name == SpotTested.Name)
            .Select(e => (e.Entry.At, Document: (DocumentText.Read(e.Entry) as DocumentReading.Known)?.Document as SpotTested)).Where(t => t.Document is not null).Select(t => (t.At, t.Document!)).OrderBy(t => t.At)];

    /// <summary>The verdict of a lot on the shelf for one metal, if drops of it were tried; null otherwise.</summary>
    internal static SpotVerdict? Tried(StudioStore store, string? lot, LakeMetal metal) =>
        SubjectKey.TryRead(lot) is { Class: SubjectClass.Lot } key && store.Lot(key) is { } state ? Of(state).FirstOrDefault(v => v.Metal == metal && v.Count > 0) : null;

    /// <summary>What is said of a dyestuff on a metal, as a belief.</summary>
    internal static SpotBelief Said(Dyestuff? dyestuff, LakeMetal metal)
    {
        if (dyestuff is null) return SpotBelief.Before(null, "low");
        LakingFinding finding = dyestuff.WillTake(metal);
        return SpotBelief.Before(Enum.TryParse(finding.Strength.ToString(), out SpotStrength strength) ? strength : null, finding.Confidence.ToString());
    }

    private static SpotVerdict Of(string salt, LakeMetal metal, Dyestuff? dyestuff, IReadOnlyList<(DateTimeOffset At, SpotTested Test)> tests)
    {
        SpotBelief before = Said(dyestuff, metal);
        (DateTimeOffset At, SpotSight Sight, bool Doubtful)[] seen = [.. tests.SelectMany(t => t.Test.Drops.Where(d => d.Salt == salt).Select(d => (t.At, (SpotSight)d.Seen, SodaThrewColour(t.Test))))];
        return new SpotVerdict(metal, salt, before, before.AfterAll(seen.Select(s => (s.Sight, s.Doubtful))), seen.Length, seen.Length > 0 ? seen[^1].At : null);
    }

    /// <summary>Whether soda alone threw down colour in a row.</summary>
    internal static bool SodaThrewColour(SpotTested test) => test.Drops.Any(d => d.Salt == SpotDrop.SodaAlone && d.Seen is SpotSeen.MostLeft or SpotSeen.SomeLeft or SpotSeen.NoneLeft);

    private static LakeMetal MetalOf(string component) => component switch
    {
        "Al+3" => LakeMetal.Aluminium,
        "FeII+2" => LakeMetal.Iron,
        "Cu+2" => LakeMetal.Copper,
        "Ca+2" => LakeMetal.Calcium,
        _ => throw new ArgumentException($"'{component}' is no metal of a row of drops.", nameof(component)),
    };
}
