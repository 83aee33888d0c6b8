using System.Globalization;
using System.Text.RegularExpressions;
using Alumroot.App.Requests;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;
using Alumroot.Quantities.Units;
using Alumroot.Quantities.Writing;

namespace Alumroot.App.Words;

/// <summary>The numbers of a plan in the studio's units, and the same in the other units beside them.</summary>
public sealed partial class PlanNumbers
{
    private readonly TextStyle _style, _other;
    private readonly Mass _step;

    private PlanNumbers(TextStyle style, TextStyle other, Mass step) => (_style, _other, _step) = (style, other, step);

    /// <summary>For a plan, by the units that its request asks for.</summary>
    public static PlanNumbers For(PlanAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        TextStyle style = StyleOf(answer.Request);
        TextStyle other = style with { Units = style.Units == UnitsShown.Metric ? UnitsShown.Kitchen : UnitsShown.Metric };
        return new PlanNumbers(style, other, answer.Input?.ScaleStep ?? Mass.FromGrams(0.1));
    }

    /// <summary>Metric unless the request asks for the kitchen's units; whose cups as the request says.</summary>
    public static TextStyle StyleOf(PlanRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        bool kitchen = string.Equals(request[PlanFields.Units], "kitchen", StringComparison.OrdinalIgnoreCase);
        KitchenMeasures whose = request[PlanFields.Kitchen]?.ToLowerInvariant() is "imperial" or "uk" ? KitchenMeasures.Imperial : KitchenMeasures.Us;
        return new TextStyle(kitchen ? UnitsShown.Kitchen : UnitsShown.Metric, Kitchen: whose);
    }

    /// <summary>What is weighed, no finer than the scale shows.</summary>
    public Shown Weighed(Estimate grams) => Shown.From(QuantityText.OfMass(grams, _style, _step));

    /// <summary>What is weighed, in the other units, without its span.</summary>
    public string WeighedElsewhere(double grams) => QuantityText.Of(Mass.FromGrams(grams), _other, _step);

    /// <summary>A mass that no scale limits.</summary>
    public Shown Mass90(Estimate grams)
    {
        bool metric = _style.Units == UnitsShown.Metric;
        Estimate shown = metric ? grams : grams.Times(Mass.FromGrams(1).Ounces);
        return Shown.From(QuantityText.Of(shown, metric ? "g" : "oz", _style, Step(shown)));
    }

    /// <summary>A volume with its span.</summary>
    public Shown Volume90(Estimate millilitres) => Shown.From(Bare(QuantityText.OfVolume(Coarse(millilitres), _style)));

    /// <summary>A plain volume.</summary>
    public string Poured(double millilitres) => Bare(QuantityText.Of(Volume.FromMillilitres(millilitres), _style));

    /// <summary>A volume that is not known, or not measured, better than to two figures.</summary>
    public string Roughly(double millilitres) => TwoFigures(QuantityText.Of(Volume.FromMillilitres(millilitres), _style), Math.Round);

    /// <summary>The least vessel, rounded up to two figures at most and to halves of a litre or quart.</summary>
    public string Vessel(double litres) => TwoFigures(QuantityText.Of(Volume.FromLitres(VesselLitres(litres)), _style), Math.Ceiling);

    /// <summary>A plain volume in the other units.</summary>
    public string PouredElsewhere(double millilitres) => QuantityText.Of(Volume.FromMillilitres(millilitres), _other);

    /// <summary>An amount of alkali: weighed, or poured when it is a solution.</summary>
    public Shown Alkali(Estimate units, Substance alkali)
    {
        ArgumentNullException.ThrowIfNull(alkali);
        return alkali.Unit == SubstanceUnit.Gram ? Weighed(units) : Volume90(units);
    }

    /// <summary>The same in the other units.</summary>
    public string AlkaliElsewhere(double units, Substance alkali)
    {
        ArgumentNullException.ThrowIfNull(alkali);
        return alkali.Unit == SubstanceUnit.Gram ? WeighedElsewhere(units) : PouredElsewhere(units);
    }

    /// <summary>A pH with its span.</summary>
    public Shown Ph90(Estimate ph) => Shown.From(QuantityText.OfPh(ph, _style));

    /// <summary>The temperature of the bath.</summary>
    public string Warm(Temperature temperature) => QuantityText.Of(temperature, _style);

    /// <summary>Any other number with its span and a sensible step.</summary>
    public Shown Number(Estimate value, string unit) => Shown.From(QuantityText.Of(value, unit, _style, Step(value)));

    /// <summary>Water that is enough to dissolve: rounded up to two figures, since more does no harm.</summary>
    public static double Enough(double millilitres)
    {
        if (millilitres <= 0) return 0;
        double step = Math.Pow(10, Math.Max(0, Math.Floor(Math.Log10(millilitres)) - 1));
        return Math.Ceiling(millilitres / step - 1e-9) * step;
    }

    /// <summary>The least vessel, rounded up to what is sold: halves of a litre to five, then litres.</summary>
    public static double VesselLitres(double litres)
    {
        double step = litres <= 5 ? 0.5 : litres <= 50 ? 1 : 5;
        return Math.Ceiling(litres / step - 1e-9) * step;
    }

    /// <summary>A share in whole percent, "less than 1 %" below that.</summary>
    public static string Percent(double share) => share < 0.005 ? "less than 1\u00A0%" : string.Create(CultureInfo.InvariantCulture, $"{100 * share:0}\u00A0%");

    /// <summary>A share with its span: "a sixth to all" is said as "17 to 100 %".</summary>
    public static string PercentSpan(Estimate share)
    {
        string low = Whole(Math.Floor(100 * share.Low)), high = Whole(Math.Ceiling(100 * share.High));
        return low == high ? $"{low}\u00A0%" : $"{low} to {high}\u00A0%";

        static string Whole(double percent) => Math.Clamp(percent, 0, 100).ToString("0", CultureInfo.InvariantCulture);
    }

    /// <summary>A number without the noughts that only fill its decimals: "3.00 L" is "3 L".</summary>
    public static string Bare(string text) => Noughts().Replace(text, m => m.Groups["kept"].Value);

    /// <summary>The same words with each number held on one line with its unit.</summary>
    public static string Held(string text) => NumberAndUnit().Replace(text, "\u00A0");

    // One figure of half the span, two where the first is a 1 or a 2; two figures of an exact value.
    private static double Step(Estimate e)
    {
        double half = e.High > e.Low ? (e.High - e.Low) / 2 : Math.Abs(e.Value);
        if (half <= 0 || !double.IsFinite(half)) return 1;
        double power = Math.Pow(10, Math.Floor(Math.Log10(half)));
        double step = half / power < 3 || e.High <= e.Low ? power / 10 : power;
        return e.Value == 0 ? step : Math.Max(step, Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(e.Value))) - 2));
    }

    private static string TwoFigures(string text, Func<double, double> round)
    {
        Shown shown = Shown.From(text);
        if (!double.TryParse(shown.Value, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) || number <= 0) return text;
        double step = Math.Pow(10, Math.Floor(Math.Log10(number)) - 1);
        double rounded = round(number / step - (round == Math.Ceiling ? 1e-9 : 0)) * step;
        return $"{rounded.ToString("0.######", CultureInfo.InvariantCulture)}{(shown.Unit is null ? "" : " " + shown.Unit)}";
    }

    private static Estimate Coarse(Estimate millilitres)
    {
        double step = Step(millilitres);
        return new Estimate(Math.Round(millilitres.Value / step) * step, Math.Floor(millilitres.Low / step) * step, Math.Ceiling(millilitres.High / step) * step);
    }

    [GeneratedRegex(@"(?<=\d) (?=(?:g|kg|oz|lb|mL|L|US|imperial|°C|°F|°dH|%|µS/cm|mS/cm)\b|[°%µ])")]
    private static partial Regex NumberAndUnit();

    [GeneratedRegex(@"(?<=\d)(?:\.0+|(?<kept>\.\d*?[1-9])0+)(?!\d)")]
    private static partial Regex Noughts();
}
