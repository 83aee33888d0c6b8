using System.Globalization;
using Alumroot.Quantities.Reading;
using Alumroot.Quantities.Units;

namespace Alumroot.App.Words;

/// <summary>Sentences about how a typed value was read, or why it could not be.</summary>
public static class ReadingWords
{
    /// <summary>"1,500 read as 1500 mL."</summary>
    public static string Restated(string typed, Restatement restated)
    {
        ArgumentNullException.ThrowIfNull(restated);
        return $"{typed} read as {Number(restated.Number)}{Unit(restated.UnitSymbol)}.";
    }

    /// <summary>Why a value with several meanings was not taken, and which they are.</summary>
    public static string Trouble<T>(string field, Parsed<T>.TwoReadings two) where T : struct
    {
        ArgumentNullException.ThrowIfNull(two);
        string choices = string.Join(" or ", two.Readings.Select(r => r.Rewritten));
        return $"{FieldNames.Of(field)}: {two.Typed} can mean {choices}. Which is it?";
    }

    /// <summary>Why a value was not understood, and what to write.</summary>
    public static string Trouble<T>(string field, Parsed<T>.NotUnderstood not) where T : struct
    {
        ArgumentNullException.ThrowIfNull(not);
        string name = FieldNames.Of(field);
        string kind = Kind<T>();
        string example = Example<T>();
        string part = not.Part ?? not.Typed;
        string offer = not.Offers.Count > 0 ? $" Did you mean {string.Join(" or ", not.Offers.Select(o => o.Rewritten))}?" : $" Write it like {example}.";
        return not.Reason switch
        {
            UnreadReason.Empty => $"{name}: nothing is typed.{offer}",
            UnreadReason.TooLong => $"{name}: the text is too long to be {kind}.{offer}",
            UnreadReason.NoNumber => $"{name}: there is no number in '{not.Typed}'.{offer}",
            UnreadReason.NumberUnreadable => $"{name}: '{part}' could not be read as a number.{offer}",
            UnreadReason.SpanTyped => $"{name}: '{not.Typed}' is a span, and one value is needed.{offer}",
            UnreadReason.PartsDoNotAdd => $"{name}: the parts of '{not.Typed}' do not add up to one value.{offer}",
            UnreadReason.MissingUnit => $"{name}: {not.Typed} of what? {Capital(kind)} needs its unit.{offer}",
            UnreadReason.UnknownUnit => not.NearestUnits.Count > 0 && not.Offers.Count == 0
                ? $"{name}: '{part}' is not a unit that is known here. The nearest is {not.NearestUnits[0]}."
                : $"{name}: '{part}' is not a unit that is known here.{offer}",
            UnreadReason.WrongKindOfUnit => $"{name}: '{not.Typed}' is {Kind(not.GivenKind)}, and {kind} is needed.{offer}",
            UnreadReason.Negative => $"{name}: '{not.Typed}' is below nothing.{offer}",
            UnreadReason.Zero => $"{name}: nothing at all is not enough.{offer}",
            UnreadReason.TooSmall => $"{name}: {not.Typed} is less than is sensible here (least {Limit(not)}).",
            UnreadReason.TooLarge => $"{name}: {not.Typed} is more than is sensible here (most {Limit(not)}).",
            UnreadReason.AboveBoiling => $"{name}: {not.Typed} is above boiling in °C.{offer}",
            _ => $"{name}: '{not.Typed}' could not be read.{offer}",
        };
    }

    private static string Limit<T>(Parsed<T>.NotUnderstood not) where T : struct => not.Limit is { } limit
        ? string.Format(CultureInfo.InvariantCulture, "{0}", limit).Replace("pH ", "", StringComparison.Ordinal)
        : Example<T>();

    private static string Kind<T>() => typeof(T).Name switch
    {
        "Mass" => "a weight",
        "Volume" => "a volume",
        "Temperature" => "a temperature",
        "Ph" => "a pH",
        "Hardness" => "a hardness",
        "Conductivity" => "a conductivity",
        "Fraction" => "a share in percent",
        "AlkalinityOfLye" => "a strength in mol/L",
        _ => "a number",
    };

    private static string Example<T>() => typeof(T).Name switch
    {
        "Mass" => "50 g or 1.8 oz",
        "Volume" => "2 L or 500 mL",
        "Temperature" => "60 C or 140 F",
        "Ph" => "6.5",
        "Hardness" => "14 dH or 250 ppm",
        "Conductivity" => "500 uS/cm",
        "Fraction" => "98 %",
        "AlkalinityOfLye" => "0.5 mol/L",
        _ => "0.5",
    };

    private static string Kind(QuantityKind? kind) => kind switch
    {
        QuantityKind.Mass => "a weight",
        QuantityKind.Volume => "a volume",
        QuantityKind.Temperature => "a temperature",
        QuantityKind.Acidity => "a pH",
        QuantityKind.Hardness => "a hardness",
        QuantityKind.Conductivity => "a conductivity",
        QuantityKind.Fraction => "a share",
        QuantityKind.Concentration => "a strength",
        _ => "something else",
    };

    private static string Unit(string symbol) => symbol.Length == 0 ? "" : " " + symbol;

    private static string Number(double x) => x.ToString("0.######", CultureInfo.InvariantCulture);

    private static string Capital(string s) => char.ToUpperInvariant(s[0]) + s[1..];
}
