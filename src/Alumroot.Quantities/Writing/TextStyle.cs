using Alumroot.Quantities.Units;

namespace Alumroot.Quantities.Writing;

/// <summary>How a studio likes its quantities written.</summary>
/// <param name="Units">Metric, or the kitchen's.</param>
/// <param name="Decimals">The decimal sign.</param>
/// <param name="Kitchen">Whose fluid ounces and quarts; Ask and Metric count as US.</param>
/// <param name="SpanWord">The word between the ends of a span.</param>
public sealed record TextStyle(UnitsShown Units = UnitsShown.Metric, DecimalSign Decimals = DecimalSign.Point, KitchenMeasures Kitchen = KitchenMeasures.Us, string SpanWord = "to")
{
    /// <summary>Metric, with a point.</summary>
    public static TextStyle Metric { get; } = new();

    /// <summary>Ounces, US fluid ounces and degrees Fahrenheit, with a point.</summary>
    public static TextStyle KitchenUs { get; } = new(UnitsShown.Kitchen);
}

/// <summary>Which units are shown.</summary>
public enum UnitsShown
{
    /// <summary>Grams, litres, degrees Celsius.</summary>
    Metric,

    /// <summary>Ounces, fluid ounces, degrees Fahrenheit.</summary>
    Kitchen,
}

/// <summary>The sign before the decimals.</summary>
public enum DecimalSign
{
    /// <summary>1.5</summary>
    Point,

    /// <summary>1,5</summary>
    Comma,
}
