using Alumroot.App.Words;
using Alumroot.Quantities;
using Alumroot.Quantities.Reading;
using Alumroot.Quantities.Units;
using Alumroot.Studio.Documents;

namespace Alumroot.App.Studio;

/// <summary>Reads what was typed for the record: a value with its unit, or the sentence that says why not.</summary>
/// <param name="Value">The value, or null.</param>
/// <param name="Trouble">Why it was not understood, or null.</param>
/// <param name="Remark">How it was read when that is worth saying, or null.</param>
public sealed record TypedAmount(Measured? Value, string? Trouble, string? Remark)
{
    private static readonly FieldRule<Mass> AnyMass = FieldRules.ReagentMass with { ZeroAllowed = true };
    private static readonly FieldRule<Volume> AnyVolume = FieldRules.Water with { ZeroAllowed = true };

    /// <summary>A mass, or a volume when its unit is one.</summary>
    public static TypedAmount Amount(string typed)
    {
        Parsed<Mass> mass = QuantityReader.ReadMass(typed, AnyMass);
        return mass is Parsed<Mass>.NotUnderstood { Reason: UnreadReason.WrongKindOfUnit, GivenKind: QuantityKind.Volume }
            ? From("Amount", QuantityReader.ReadVolume(typed, AnyVolume), v => Measured.Of("amount", typed, v))
            : From("Amount", mass, m => Measured.Of("amount", typed, m));
    }

    /// <summary>A pH read from a strip or meter.</summary>
    public static TypedAmount PhOf(string typed, string instrument) => From("pH", QuantityReader.ReadPh(typed, FieldRules.Ph), p => Measured.Of("ph", typed, p, instrument));

    /// <summary>A conductivity.</summary>
    public static TypedAmount ConductivityOf(string typed) => From("Conductivity", QuantityReader.ReadConductivity(typed, FieldRules.Conductivity), c => Measured.Of("conductivity", typed, c, "meter"));

    /// <summary>The temperature of a bath.</summary>
    public static TypedAmount TemperatureOf(string typed) => From("Temperature", QuantityReader.ReadTemperature(typed, FieldRules.BathTemperature), t => Measured.Of("temperature", typed, t));

    /// <summary>The smallest step of a scale.</summary>
    public static TypedAmount StepOfScale(string typed) => From("Step of the scale", QuantityReader.ReadMass(typed, FieldRules.ScaleStep), m => Measured.Of("step", typed, m));

    /// <summary>The smallest step of a strip or meter.</summary>
    public static TypedAmount StepOfPh(string typed) => From("Step of the pH", QuantityReader.ReadNumber(typed, FieldRules.PhStep), s => new Measured("step", typed, s, "1"));

    /// <summary>Texts with one meaning that may be taken in place of what was typed.</summary>
    public IReadOnlyList<string> Offers { get; private init; } = [];

    private static TypedAmount From<T>(string field, Parsed<T> parsed, Func<T, Measured> measured) where T : struct => parsed switch
    {
        Parsed<T>.Understood u => new TypedAmount(measured(u.Value), null, u.Restated is null ? null : ReadingWords.Restated(u.Typed, u.Restated)),
        Parsed<T>.TwoReadings two => new TypedAmount(null, ReadingWords.Trouble(field, two), null) { Offers = [.. two.Readings.Select(r => r.Rewritten)] },
        Parsed<T>.NotUnderstood not => new TypedAmount(null, ReadingWords.Trouble(field, not), null) { Offers = [.. not.Offers.Select(r => r.Rewritten)] },
        _ => new TypedAmount(null, null, null),
    };
}
