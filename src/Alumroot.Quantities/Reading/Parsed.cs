using Alumroot.Quantities.Units;

namespace Alumroot.Quantities.Reading;

/// <summary>What came of reading a typed value: one of three cases, and nobody can add a fourth. Holds data only; the words are made elsewhere.</summary>
/// <typeparam name="T">The quantity that was asked for.</typeparam>
public abstract record Parsed<T> where T : struct
{
    private Parsed(string typed) => Typed = typed;

    /// <summary>What was typed, cut to <see cref="QuantityReader.LongestText"/> characters.</summary>
    public string Typed { get; }

    /// <summary>The value, when there is exactly one.</summary>
    public T? ValueOrNull => this is Understood understood ? understood.Value : null;

    /// <summary>The text has one meaning.</summary>
    /// <param name="Value">The value.</param>
    /// <param name="Typed">What was typed.</param>
    /// <param name="Restated">Set when something was chosen for the maker and must be shown back to her, else null.</param>
    /// <param name="Bounds">Set when the way of measuring leaves a wide span, as with a spoon of powder.</param>
    public sealed record Understood(T Value, string Typed, Restatement? Restated = null, Bounds<T>? Bounds = null) : Parsed<T>(Typed);

    /// <summary>The text has two meanings or more, and only the maker knows which.</summary>
    /// <param name="Readings">Two or more, likeliest first.</param>
    /// <param name="Doubt">What makes it ambiguous.</param>
    /// <param name="Typed">What was typed.</param>
    public sealed record TwoReadings(IReadOnlyList<Reading<T>> Readings, Doubt Doubt, string Typed) : Parsed<T>(Typed)
    {
        /// <summary>The first meaning.</summary>
        public Reading<T> First => Readings[0];

        /// <summary>The second meaning.</summary>
        public Reading<T> Second => Readings[1];
    }

    /// <summary>The text has no usable meaning here.</summary>
    /// <param name="Reason">Why not.</param>
    /// <param name="Typed">What was typed.</param>
    public sealed record NotUnderstood(UnreadReason Reason, string Typed) : Parsed<T>(Typed)
    {
        /// <summary>The piece of the text that is to blame, where one is: the unit that is not known, the number that is not one.</summary>
        public string? Part { get; init; }

        /// <summary>For a wrong kind of unit: what its unit measures.</summary>
        public QuantityKind? GivenKind { get; init; }

        /// <summary>For a value that is too small or too large: the nearest value that is accepted.</summary>
        public T? Limit { get; init; }

        /// <summary>Readings to offer, likeliest first; empty when there is nothing to offer.</summary>
        public IReadOnlyList<Reading<T>> Offers { get; init; } = [];

        /// <summary>For an unknown unit: symbols of units that are written nearly so.</summary>
        public IReadOnlyList<string> NearestUnits { get; init; } = [];
    }
}
