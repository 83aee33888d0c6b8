using Alumroot.Quantities.Units;

namespace Alumroot.Quantities.Writing;

/// <summary>Quantities as people read them: a number with sensible digits and its unit. No words but the units' own.</summary>
/// <remarks>Three significant digits unless a scale step is given; never a digit that the scale does not show. Whole numbers keep all their digits.</remarks>
public static class QuantityText
{
    private const int SensibleDigits = 3;

    /// <summary>A mass: 19.7 g, 12.5 kg; in a kitchen 1.76 oz, 1 lb 3.2 oz.</summary>
    /// <param name="mass">The mass.</param>
    /// <param name="style">How the studio writes; metric when null.</param>
    /// <param name="scaleStep">The smallest step of the scale it is weighed on, when known. A mass below half a step is written as "&lt; 0.1 g".</param>
    public static string Of(Mass mass, TextStyle? style = null, Mass? scaleStep = null)
    {
        style ??= TextStyle.Metric;
        if (style.Units == UnitsShown.Metric)
        {
            bool kilograms = mass.Grams >= 10_000 && scaleStep is null;
            return kilograms
                ? WithUnit(Rounding.Nearest(mass.Kilograms, Rounding.SensibleStep(mass.Kilograms, SensibleDigits)), "kg", style)
                : OnScale(mass.Grams, scaleStep?.Grams ?? 0, "g", style);
        }
        double step = OunceStep(mass, scaleStep);
        decimal ounces = decimal.Parse(Rounding.Nearest(mass.Ounces, step), System.Globalization.CultureInfo.InvariantCulture);
        if (ounces < 16 || mass.Grams > LargestCompoundGrams) return OnScale(mass.Ounces, scaleStep is null ? 0 : step, "oz", style);
        decimal pounds = Math.Floor(ounces / 16);
        return $"{WithUnit(Rounding.Nearest((double)pounds, 1), "lb", style)} {WithUnit(Rounding.Nearest((double)(ounces - 16 * pounds), step), "oz", style)}";
    }

    /// <summary>A predicted mass with its span: "19.7 g (18.4 to 21.6)", the ends rounded outward.</summary>
    /// <param name="grams">The estimate in grams.</param>
    /// <param name="style">How the studio writes; metric when null.</param>
    /// <param name="scaleStep">The smallest step of the scale, when known.</param>
    public static string OfMass(Estimate grams, TextStyle? style = null, Mass? scaleStep = null)
    {
        style ??= TextStyle.Metric;
        bool metric = style.Units == UnitsShown.Metric;
        bool kilograms = metric && scaleStep is null && Math.Abs(grams.Value) >= 10_000;
        Unit unit = UnitTable.Get(QuantityKind.Mass, kilograms ? "kg" : metric ? "g" : "oz");
        double step = metric || scaleStep is null ? (scaleStep?.Grams ?? 0) : OunceStep(Mass.FromGrams(Math.Abs(grams.Value)), scaleStep);
        return Spanned(grams.Times(1 / unit.ToBase), step, unit.Symbol, style);
    }

    /// <summary>A volume: 750 mL, 1.25 L; in a kitchen 6.76 US fl oz, 2.11 US qt.</summary>
    public static string Of(Volume volume, TextStyle? style = null)
    {
        style ??= TextStyle.Metric;
        Unit unit = VolumeUnit(volume.Millilitres, style);
        double number = unit.FromBase(volume.Millilitres);
        return WithUnit(Rounding.Nearest(number, Rounding.SensibleStep(number, SensibleDigits)), unit.Symbol, style);
    }

    /// <summary>A predicted volume with its span, the ends rounded outward.</summary>
    public static string OfVolume(Estimate millilitres, TextStyle? style = null)
    {
        style ??= TextStyle.Metric;
        Unit unit = VolumeUnit(Math.Abs(millilitres.Value), style);
        return Spanned(millilitres.Times(1 / unit.ToBase), 0, unit.Symbol, style);
    }

    /// <summary>A temperature: 60 °C, in a kitchen 140 °F.</summary>
    /// <param name="temperature">The temperature.</param>
    /// <param name="style">How the studio writes; metric when null.</param>
    /// <param name="stepDegrees">The smallest step shown, in the degrees shown.</param>
    public static string Of(Temperature temperature, TextStyle? style = null, double stepDegrees = 1)
    {
        style ??= TextStyle.Metric;
        return style.Units == UnitsShown.Metric
            ? WithUnit(Rounding.Nearest(temperature.Celsius, stepDegrees), "°C", style)
            : WithUnit(Rounding.Nearest(temperature.Fahrenheit, stepDegrees), "°F", style);
    }

    /// <summary>A pH without the word: 6.5.</summary>
    /// <param name="ph">The pH.</param>
    /// <param name="style">How the studio writes; metric when null.</param>
    /// <param name="step">The smallest step shown, such as that of the strip.</param>
    public static string Of(Ph ph, TextStyle? style = null, double step = 0.1) =>
        WithUnit(Rounding.Nearest(ph.Value, step), "", style ?? TextStyle.Metric);

    /// <summary>A predicted pH with its span: "6.5 (6.2 to 6.9)", the ends rounded outward.</summary>
    public static string OfPh(Estimate ph, TextStyle? style = null, double step = 0.1) =>
        Spanned(ph, step, "", style ?? TextStyle.Metric);

    /// <summary>Hardness of water in German degrees: 14 °dH.</summary>
    public static string Of(Hardness hardness, TextStyle? style = null) =>
        WithUnit(Rounding.Nearest(hardness.GermanDegrees, hardness.GermanDegrees < 10 ? 0.1 : 1), "°dH", style ?? TextStyle.Metric);

    /// <summary>A conductivity: 200 µS/cm, 12.3 mS/cm.</summary>
    public static string Of(Conductivity conductivity, TextStyle? style = null)
    {
        bool milli = conductivity.MicrosiemensPerCentimetre >= 10_000;
        double number = milli ? conductivity.MillisiemensPerCentimetre : conductivity.MicrosiemensPerCentimetre;
        return WithUnit(Rounding.Nearest(number, Rounding.SensibleStep(number, SensibleDigits)), milli ? "mS/cm" : "µS/cm", style ?? TextStyle.Metric);
    }

    /// <summary>A part of a whole in percent: 98 %, 36.9 %.</summary>
    public static string Of(Fraction fraction, TextStyle? style = null)
    {
        string percent = Rounding.Nearest(fraction.Percent, Rounding.SensibleStep(fraction.Percent, SensibleDigits));
        return WithUnit(percent.Contains('.', StringComparison.Ordinal) ? percent.TrimEnd('0').TrimEnd('.') : percent, "%", style ?? TextStyle.Metric);
    }

    /// <summary>Any predicted number with its span in a unit that the caller names.</summary>
    /// <param name="estimate">The estimate, in the unit named.</param>
    /// <param name="unitSymbol">The unit's symbol; empty for a plain number.</param>
    /// <param name="style">How the studio writes; metric when null.</param>
    /// <param name="step">The smallest step shown; three significant digits of the value when 0.</param>
    public static string Of(Estimate estimate, string unitSymbol, TextStyle? style = null, double step = 0) =>
        Spanned(estimate, step, unitSymbol, style ?? TextStyle.Metric);

    private const double LargestCompoundGrams = 1e9;

    private static Unit VolumeUnit(double millilitres, TextStyle style)
    {
        if (style.Units == UnitsShown.Metric) return UnitTable.Get(QuantityKind.Volume, millilitres < 999.5 ? "mL" : "L");
        string kitchen = style.Kitchen == KitchenMeasures.Imperial ? "imperial" : "US";
        Unit quart = UnitTable.Get(QuantityKind.Volume, kitchen + " qt");
        return millilitres < quart.ToBase * 0.999 ? UnitTable.Get(QuantityKind.Volume, kitchen + " fl oz") : quart;
    }

    /// <summary>Decimals of an ounce that do not pretend more than the scale shows: a 0.1 g scale gives hundredths of an ounce.</summary>
    private static double OunceStep(Mass mass, Mass? scaleStep) => scaleStep is { Grams: > 0 } step
        ? Math.Pow(10, Math.Ceiling(Math.Log10(step.Ounces)))
        : mass.Ounces >= 16 ? 0.1 : Rounding.SensibleStep(mass.Ounces, SensibleDigits);

    private static string OnScale(double number, double step, string symbol, TextStyle style)
    {
        if (step <= 0) return WithUnit(Rounding.Nearest(number, Rounding.SensibleStep(number, SensibleDigits)), symbol, style);
        bool tooLittle = number > 0 && number < step / 2;
        return tooLittle ? "< " + WithUnit(Rounding.Nearest(step, step), symbol, style) : WithUnit(Rounding.Nearest(number, step), symbol, style);
    }

    private static string Spanned(Estimate estimate, double step, string symbol, TextStyle style)
    {
        if (step <= 0) step = Rounding.SensibleStep(estimate.Value, SensibleDigits);
        string value = WithUnit(Rounding.Nearest(estimate.Value, step), symbol, style);
        if (estimate.Low == estimate.High) return value;
        return $"{value} ({WithUnit(Rounding.Down(estimate.Low, step), "", style)} {style.SpanWord} {WithUnit(Rounding.Up(estimate.High, step), "", style)})";
    }

    private static string WithUnit(string number, string symbol, TextStyle style)
    {
        string signed = style.Decimals == DecimalSign.Comma ? number.Replace('.', ',') : number;
        return symbol.Length == 0 ? signed : $"{signed} {symbol}";
    }
}
