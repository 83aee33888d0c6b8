using System.Text.RegularExpressions;
using Alumroot.Quantities.Units;

namespace Alumroot.Quantities.Reading;

/// <summary>Reads what a person typed as a quantity. Tolerant of the ways people write, strict about what is truly ambiguous; never throws on any text.</summary>
/// <remarks>For text typed by a person. Numbers in files are written with a point and a fixed unit and need none of this. How it reads: docs/models/quantities.md.</remarks>
public static partial class QuantityReader
{
    /// <summary>Texts longer than this are not read.</summary>
    public const int LongestText = 100;

    /// <summary>A mass: 50 g, 1.8 oz, 1 lb 3 oz.</summary>
    public static Parsed<Mass> ReadMass(string? typed, FieldRule<Mass> rule) =>
        Read(typed, rule, new Interpreter<Mass>(QuantityKind.Mass, Mass.FromGrams, m => m.Grams, rule));

    /// <summary>A volume: 2 L, 500 ml, 2 US qt.</summary>
    public static Parsed<Volume> ReadVolume(string? typed, FieldRule<Volume> rule) =>
        Read(typed, rule, new Interpreter<Volume>(QuantityKind.Volume, Volume.FromMillilitres, v => v.Millilitres, rule));

    /// <summary>A temperature: 60 °C, 140F; degrees Celsius when no unit is typed.</summary>
    public static Parsed<Temperature> ReadTemperature(string? typed, FieldRule<Temperature> rule) =>
        Read(typed, rule, new Interpreter<Temperature>(QuantityKind.Temperature, Temperature.FromCelsius, t => t.Celsius, rule));

    /// <summary>A pH: 6.5, pH 6,5.</summary>
    public static Parsed<Ph> ReadPh(string? typed, FieldRule<Ph> rule) =>
        Read(typed is null || typed.Length > LongestText ? typed : PhWord().Replace(typed, ""), rule, new Interpreter<Ph>(QuantityKind.Acidity, Ph.FromValue, p => p.Value, rule), typed);

    /// <summary>Hardness of water: 14 °dH, 250 ppm, 25 °fH; German degrees when no unit is typed.</summary>
    public static Parsed<Hardness> ReadHardness(string? typed, FieldRule<Hardness> rule) =>
        Read(typed, rule, new Interpreter<Hardness>(QuantityKind.Hardness, Hardness.FromMillimolesPerLitre, h => h.MillimolesPerLitre, rule));

    /// <summary>A conductivity: 200 µS/cm, 1.2 mS; microsiemens per centimetre when no unit is typed.</summary>
    public static Parsed<Conductivity> ReadConductivity(string? typed, FieldRule<Conductivity> rule) =>
        Read(typed, rule, new Interpreter<Conductivity>(QuantityKind.Conductivity, Conductivity.FromMicrosiemensPerCentimetre, c => c.MicrosiemensPerCentimetre, rule));

    /// <summary>A part of a whole: 98 %, or 98 or 0.98 where only one of them is usual.</summary>
    public static Parsed<Fraction> ReadFraction(string? typed, FieldRule<Fraction> rule) =>
        Read(typed, rule, new Interpreter<Fraction>(QuantityKind.Fraction, Fraction.FromRatio, f => f.Ratio, rule));

    /// <summary>The strength of a lye: 0.5 mol/L, 500 mmol/L, 0.5 N; moles per litre when no unit is typed.</summary>
    public static Parsed<AlkalinityOfLye> ReadAlkalinity(string? typed, FieldRule<AlkalinityOfLye> rule) =>
        Read(typed, rule, new Interpreter<AlkalinityOfLye>(QuantityKind.Concentration, AlkalinityOfLye.FromMolesPerLitre, a => a.MolesPerLitre, rule));

    /// <summary>A plain number, such as the step of a strip.</summary>
    public static Parsed<double> ReadNumber(string? typed, FieldRule<double> rule) =>
        Read(typed, rule, new Interpreter<double>(QuantityKind.Number, x => x, x => x, rule));

    private static Parsed<T> Read<T>(string? typed, FieldRule<T> rule, Interpreter<T> interpreter, string? asTyped = null) where T : struct
    {
        ArgumentNullException.ThrowIfNull(rule);
        asTyped ??= typed ?? "";
        if (asTyped.Length > LongestText)
            return string.IsNullOrWhiteSpace(asTyped)
                ? new Parsed<T>.NotUnderstood(UnreadReason.Empty, "")
                : new Parsed<T>.NotUnderstood(UnreadReason.TooLong, asTyped[..LongestText]);
        if (string.IsNullOrWhiteSpace(asTyped)) return new Parsed<T>.NotUnderstood(UnreadReason.Empty, asTyped);
        return interpreter.Interpret(PlainText.Clean(typed ?? ""), asTyped);
    }

    [GeneratedRegex(@"^\s*pH\s*[:=]?\s*|\s*pH\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex PhWord();
}
