using Alumroot.Quantities;

namespace Alumroot.Chemistry.Assimilation;

/// <summary>What a pH was read with.</summary>
public enum PhInstrument
{
    /// <summary>Paper or plastic strip compared with a colour row.</summary>
    Strip,

    /// <summary>Glass electrode.</summary>
    Meter,
}

/// <summary>Something that was done or read at the bench, in the order in which it happened. Closed: nobody adds another kind.</summary>
public abstract record BenchEvent
{
    private BenchEvent() { }

    /// <summary>Alkali went into the bath.</summary>
    /// <param name="Units">Grams or millilitres of this portion, as weighed or measured.</param>
    public sealed record AlkaliAdded(double Units) : BenchEvent;

    /// <summary>Salt went into the bath, when the salt is what goes in last. With two salts: both together, in the plan's proportion.</summary>
    /// <param name="Amount">Mass of this portion, as weighed.</param>
    public sealed record SaltAdded(Mass Amount) : BenchEvent;

    /// <summary>The pH was read.</summary>
    /// <param name="Ph">What was read.</param>
    /// <param name="StepPh">Smallest step of the strip or meter, in pH.</param>
    /// <param name="Instrument">Strip or meter.</param>
    public sealed record PhRead(Ph Ph, double StepPh, PhInstrument Instrument) : BenchEvent;

    /// <summary>The pH lay between two colours of the row.</summary>
    /// <param name="Low">The lower colour.</param>
    /// <param name="High">The higher colour.</param>
    /// <param name="Instrument">Strip or meter.</param>
    public sealed record PhReadBetween(Ph Low, Ph High, PhInstrument Instrument) : BenchEvent;

    /// <summary>The conductivity of the bath was read.</summary>
    /// <param name="Conductivity">What the meter shows, referred to 25 °C as meters do.</param>
    public sealed record ConductivityRead(Conductivity Conductivity) : BenchEvent;

    /// <summary>The bath's temperature was read; the last one replaces the plan's.</summary>
    /// <param name="Temperature">What was read.</param>
    public sealed record TemperatureRead(Temperature Temperature) : BenchEvent;
}

/// <summary>What is known of the workplace beside the plan.</summary>
public sealed record Workplace
{
    /// <summary>Empty masses of the bowls and boats that stand about; a weighing may hold one by mistake.</summary>
    public IReadOnlyList<Mass> Bowls { get; init; } = [];
}
