namespace Alumroot.Quantities.Reading;

/// <summary>One meaning that a text can have.</summary>
/// <param name="Value">The value.</param>
/// <param name="Number">The number in the unit below.</param>
/// <param name="UnitSymbol">The unit, empty for a plain number.</param>
/// <param name="Rewritten">How to type it so that it has this meaning only.</param>
/// <param name="Bounds">Set when the way of measuring leaves a wide span.</param>
public sealed record Reading<T>(T Value, double Number, string UnitSymbol, string Rewritten, Bounds<T>? Bounds = null) where T : struct;

/// <summary>The ends of a span.</summary>
/// <param name="Low">The least it may be.</param>
/// <param name="High">The most it may be.</param>
public sealed record Bounds<T>(T Low, T High) where T : struct;

/// <summary>What was chosen for the maker, to be shown back: "1,500 read as 1500 mL".</summary>
/// <param name="Doubt">Why there was something to choose.</param>
/// <param name="Number">The number as understood.</param>
/// <param name="UnitSymbol">The unit as understood, empty for a plain number.</param>
public sealed record Restatement(Doubt Doubt, double Number, string UnitSymbol);

/// <summary>What can make a typed value ambiguous.</summary>
public enum Doubt
{
    /// <summary>One point or comma before exactly three digits: a decimal sign, or thousands.</summary>
    Separator,

    /// <summary>A cup, pint, quart, gallon, fluid ounce or spoon of one kitchen or another.</summary>
    Kitchen,

    /// <summary>A unit word with more than one use, such as gr (gram, grain) or a bare ppm.</summary>
    UnitWord,

    /// <summary>No unit was typed and the field's usual one was taken.</summary>
    UnitMissing,

    /// <summary>A share without its sign: 0.5 may be a half or half a percent.</summary>
    PercentOrRatio,

    /// <summary>A powder was measured by spoon or cup.</summary>
    PowderByVolume,
}

/// <summary>Why a text could not be used.</summary>
public enum UnreadReason
{
    /// <summary>Nothing was typed.</summary>
    Empty,

    /// <summary>Longer than any value can be.</summary>
    TooLong,

    /// <summary>There is no number where one was expected.</summary>
    NoNumber,

    /// <summary>The number is not written in any way that is known: 1.2.3, 12,34,567, 1 23, 3/0.</summary>
    NumberUnreadable,

    /// <summary>Two numbers with "to" or a dash between them: a span, where one value was asked for.</summary>
    SpanTyped,

    /// <summary>Several values that do not add up to one, such as 3 oz 1 lb: each must be in a smaller unit than the one before.</summary>
    PartsDoNotAdd,

    /// <summary>A number without its unit, where the unit matters.</summary>
    MissingUnit,

    /// <summary>A unit that nobody here knows.</summary>
    UnknownUnit,

    /// <summary>A known unit of something else, such as millilitres for a weight.</summary>
    WrongKindOfUnit,

    /// <summary>Below nothing, where that cannot be.</summary>
    Negative,

    /// <summary>Nothing, where something was asked for.</summary>
    Zero,

    /// <summary>Less than this field accepts.</summary>
    TooSmall,

    /// <summary>More than this field accepts.</summary>
    TooLarge,

    /// <summary>A bath hotter than boiling water.</summary>
    AboveBoiling,
}
