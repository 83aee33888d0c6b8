using Alumroot.Studio.Documents;

namespace Alumroot.App.Bench;

/// <summary>What an act records.</summary>
public enum ActValue
{
    /// <summary>Only that it was done.</summary>
    Nothing,

    /// <summary>A weight, or a volume of something poured.</summary>
    Amount,

    /// <summary>A weight or volume, if it was measured.</summary>
    AmountIfMeasured,

    /// <summary>A pH, if it could be read.</summary>
    Ph,

    /// <summary>A conductivity, if it was measured.</summary>
    Conductivity,

    /// <summary>How long to wait.</summary>
    Wait,

    /// <summary>Grams on each sieve.</summary>
    Sieves,

    /// <summary>A dilution row.</summary>
    Row,
}

/// <summary>One thing that is done at the bench and kept as one entry.</summary>
/// <param name="Name">As the entry names it.</param>
/// <param name="Step">The step it belongs to.</param>
/// <param name="Value">What it records.</param>
/// <param name="Ends">Whether the step is done with it.</param>
public sealed record Act(string Name, StepKind Step, ActValue Value, bool Ends = false);

/// <summary>All acts of the bench, in the order of the work. The form names one; what it means is decided here.</summary>
public static class Acts
{
    /// <summary>The dyestuff goes into the water.</summary>
    public static Act DyestuffIn { get; } = new("dyestuff-in", StepKind.Extract, ActValue.Amount);

    /// <summary>The colour is drawn out for a while.</summary>
    public static Act DrawOut { get; } = new("draw-out", StepKind.Extract, ActValue.Wait);

    /// <summary>The liquor is strained off the plant.</summary>
    public static Act Strained { get; } = new("strained", StepKind.Extract, ActValue.Amount);

    /// <summary>Another bath of the same plant.</summary>
    public static Act AnotherBath { get; } = new("another-bath", StepKind.Extract, ActValue.Nothing);

    /// <summary>A dilution row of the liquor is read.</summary>
    public static Act RowRead { get; } = new("row-read", StepKind.Extract, ActValue.Row);

    /// <summary>The liquor's pH.</summary>
    public static Act LiquorRead { get; } = new("liquor-read", StepKind.Extract, ActValue.Ph, Ends: true);

    /// <summary>The salt, or a portion of it, goes in.</summary>
    public static Act SaltIn { get; } = new("salt-in", StepKind.Salt, ActValue.Amount);

    /// <summary>The second salt goes in.</summary>
    public static Act SecondSaltIn { get; } = new("second-salt-in", StepKind.Salt, ActValue.Amount);

    /// <summary>The pH after the salt.</summary>
    public static Act SaltRead { get; } = new("salt-read", StepKind.Salt, ActValue.Ph);

    /// <summary>Nothing more of the salt.</summary>
    public static Act SaltDone { get; } = new("salt-done", StepKind.Salt, ActValue.Nothing, Ends: true);

    /// <summary>The alkali is weighed into its water.</summary>
    public static Act AlkaliDissolved { get; } = new("alkali-dissolved", StepKind.Alkali, ActValue.Amount);

    /// <summary>Alkali goes into the bath.</summary>
    public static Act AlkaliIn { get; } = new("alkali-in", StepKind.Alkali, ActValue.Amount);

    /// <summary>The pH after alkali.</summary>
    public static Act AlkaliRead { get; } = new("alkali-read", StepKind.Alkali, ActValue.Ph);

    /// <summary>Nothing more of the alkali.</summary>
    public static Act AlkaliDone { get; } = new("alkali-done", StepKind.Alkali, ActValue.Nothing, Ends: true);

    /// <summary>The lake is left to sink.</summary>
    public static Act Settle { get; } = new("settle", StepKind.Settle, ActValue.Wait);

    /// <summary>The clear liquid is drawn off.</summary>
    public static Act DrawnOff { get; } = new("drawn-off", StepKind.Settle, ActValue.AmountIfMeasured, Ends: true);

    /// <summary>Fresh water is filled up.</summary>
    public static Act WashIn { get; } = new("wash-in", StepKind.Wash, ActValue.Amount);

    /// <summary>The lake sinks again.</summary>
    public static Act WashSettle { get; } = new("wash-settle", StepKind.Wash, ActValue.Wait);

    /// <summary>The conductivity of the washings.</summary>
    public static Act WashRead { get; } = new("wash-read", StepKind.Wash, ActValue.Conductivity);

    /// <summary>Washed enough.</summary>
    public static Act WashDone { get; } = new("wash-done", StepKind.Wash, ActValue.Nothing, Ends: true);

    /// <summary>Poured on the cloth.</summary>
    public static Act FilterOn { get; } = new("filter-on", StepKind.Filter, ActValue.Wait);

    /// <summary>Taken off the cloth.</summary>
    public static Act FilterOff { get; } = new("filter-off", StepKind.Filter, ActValue.AmountIfMeasured, Ends: true);

    /// <summary>The drying cake is weighed.</summary>
    public static Act DryWeighed { get; } = new("dry-weighed", StepKind.Dry, ActValue.Amount);

    /// <summary>The cake dries on.</summary>
    public static Act DryOn { get; } = new("dry-on", StepKind.Dry, ActValue.Wait);

    /// <summary>The cake is dry.</summary>
    public static Act DryDone { get; } = new("dry-done", StepKind.Dry, ActValue.AmountIfMeasured, Ends: true);

    /// <summary>Ground, and weighed.</summary>
    public static Act Ground { get; } = new("ground", StepKind.Grind, ActValue.AmountIfMeasured, Ends: true);

    /// <summary>Sieved, each fraction weighed.</summary>
    public static Act Sieved { get; } = new("sieved", StepKind.Sieve, ActValue.Sieves, Ends: true);

    /// <summary>Left unsieved.</summary>
    public static Act NotSieved { get; } = new("not-sieved", StepKind.Sieve, ActValue.Nothing, Ends: true);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Act> All { get; } =
    [
        DyestuffIn, DrawOut, Strained, AnotherBath, RowRead, LiquorRead, SaltIn, SecondSaltIn, SaltRead, SaltDone, AlkaliDissolved, AlkaliIn, AlkaliRead, AlkaliDone, Settle, DrawnOff,
        WashIn, WashSettle, WashRead, WashDone, FilterOn, FilterOff, DryWeighed, DryOn, DryDone, Ground, Sieved, NotSieved,
    ];

    private static readonly Dictionary<string, Act> ByName = All.ToDictionary(a => a.Name, StringComparer.Ordinal);

    /// <summary>An act by its name; null when there is none.</summary>
    public static Act? Find(string? name) => name is null ? null : ByName.GetValueOrDefault(name);

    /// <summary>The act that a step's entry says, or the one that its values amount to when it was written without one.</summary>
    public static Act Of(BatchStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        if (Find(step.Act) is { } named) return named;
        bool amount = step.Values.Any(v => v.Name == "amount");
        return step.Step switch
        {
            StepKind.Extract => Strained,
            StepKind.Salt => amount ? SaltIn : SaltRead,
            StepKind.Alkali => step.Values.Any(v => v.Name == "ph") || !amount ? AlkaliRead : AlkaliIn,
            StepKind.Settle => Settle,
            StepKind.Wash => step.Values.Any(v => v.Name == "conductivity") || !amount ? WashRead : WashIn,
            StepKind.Filter => FilterOn,
            StepKind.Dry => DryWeighed,
            StepKind.Grind => Ground,
            _ => Sieved,
        };
    }
}
