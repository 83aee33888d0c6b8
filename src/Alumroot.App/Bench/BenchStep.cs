using Alumroot.Studio.Documents;

namespace Alumroot.App.Bench;

/// <summary>The one thing to do now.</summary>
/// <param name="Act">What is kept when it is done.</param>
/// <param name="Line">Which step: "Alkali, portion 4 of 6".</param>
/// <param name="Figure">The large words: "Add 3.0 g".</param>
/// <param name="Pad">How it is answered.</param>
public sealed record BenchStep(Act Act, string Line, string Figure, BenchPad Pad)
{
    /// <summary>One or two lines under the figure: why, with what, what to expect.</summary>
    public IReadOnlyList<string> Why { get; init; } = [];

    /// <summary>A caution for this step; null when there is none.</summary>
    public string? Mind { get; init; }

    /// <summary>When a wait is over; null when nothing is waited for.</summary>
    public DateTimeOffset? ReadyAt { get; init; }

    /// <summary>Other acts that are possible here, each a plain button.</summary>
    public IReadOnlyList<BenchChoice> Also { get; init; } = [];

    /// <summary>Whether the addition is to stop here.</summary>
    public bool StopHere { get; init; }

    /// <summary>Which lot an amount is taken from; null when none was chosen.</summary>
    public string? Lot { get; init; }

    /// <summary>A quarrel between a reading and the masses; null when there is none.</summary>
    public string? Quarrel { get; init; }

    /// <summary>What could explain it, each with the plan that would follow.</summary>
    public IReadOnlyList<BenchExplanation> Explanations { get; init; } = [];
}

/// <summary>Another act that is possible.</summary>
/// <param name="Act">The act.</param>
/// <param name="Label">The button's words.</param>
public sealed record BenchChoice(Act Act, string Label);

/// <summary>What could explain a reading.</summary>
/// <param name="Label">"It was soda crystals".</param>
/// <param name="PlanAddress">The plan with this taken as true; null when only a check is possible.</param>
public sealed record BenchExplanation(string Label, string? PlanAddress);

/// <summary>How a step is answered. Closed: nobody adds another kind.</summary>
public abstract record BenchPad
{
    private BenchPad()
    {
    }

    /// <summary>The planned amount in one tap, or another.</summary>
    /// <param name="Planned">As one would type it: "3.1 g"; null when nothing is planned.</param>
    /// <param name="Button">"Added 3.1 g".</param>
    /// <param name="Label">What is asked for in the field for another amount.</param>
    public sealed record Amount(string? Planned, string Button, string Label) : BenchPad
    {
        /// <summary>Whether it is weighed, so that a bowl may have to be taken off.</summary>
        public bool Weighed { get; init; } = true;

        /// <summary>Whether it can be left unmeasured; the words of that button.</summary>
        public string? Skip { get; init; }
    }

    /// <summary>A pH by the strip's own steps, or typed.</summary>
    /// <param name="Keys">The likeliest readings.</param>
    public sealed record Reading(IReadOnlyList<ReadingKey> Keys) : BenchPad;

    /// <summary>How long to wait.</summary>
    /// <param name="Keys">Usual times.</param>
    /// <param name="Label">What is asked for in the field for another time.</param>
    public sealed record Wait(IReadOnlyList<WaitKey> Keys, string Label) : BenchPad;

    /// <summary>A conductivity, typed.</summary>
    /// <param name="Label">What is asked for.</param>
    public sealed record Meter(string Label) : BenchPad;

    /// <summary>Only that it was done.</summary>
    /// <param name="Button">The words of the button.</param>
    public sealed record Done(string Button) : BenchPad;

    /// <summary>Grams on each sieve.</summary>
    /// <param name="Names">The sieves by their openings in micrometres, the widest first, and the pan.</param>
    public sealed record Sieves(IReadOnlyList<string> Names) : BenchPad;

    /// <summary>A dilution row, typed.</summary>
    /// <param name="Label">What is asked for.</param>
    public sealed record Row(string Label) : BenchPad;

    /// <summary>Nothing more to do.</summary>
    public sealed record Nothing : BenchPad;
}

/// <summary>One reading to tap.</summary>
/// <param name="Text">"5.5".</param>
/// <param name="Expected">Whether it lies where the reading is expected.</param>
public sealed record ReadingKey(string Text, bool Expected);

/// <summary>One time to tap.</summary>
/// <param name="Label">"1 hour".</param>
/// <param name="Minutes">How long.</param>
public sealed record WaitKey(string Label, int Minutes);
