using Alumroot.App.Charts;

namespace Alumroot.App.Pages.Handbook;

/// <summary>Made-up lines that show the form of a chart. They are marked as examples where they are drawn.</summary>
internal static class Example
{
    private static readonly double[] Grams = [0, 2, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24];

    private static readonly double[] Ph = [3.3, 3.7, 3.9, 4.0, 4.1, 4.2, 4.3, 4.4, 4.7, 5.6, 6.5, 7.1, 7.6];

    private static readonly double[] Spread = [0.2, 0.2, 0.25, 0.3, 0.3, 0.35, 0.4, 0.5, 0.7, 0.9, 0.8, 0.6, 0.5];

    public static ChartSeries Middle { get; } = new("hydroxide", Grams, Ph);

    public static ChartSeries Second { get; } = new("basic sulfate", Grams, [3.3, 3.7, 3.9, 4.0, 4.2, 4.5, 4.9, 5.3, 5.9, 6.5, 7.1, 7.6, 8.0]);

    public static ChartBand Band90 { get; } = Band(1);

    public static ChartBand Band50 { get; } = Band(0.4);

    public static IReadOnlyList<ChartSeries> Samples { get; } = [.. new[] { -0.8, -0.45, -0.1, 0.3, 0.7 }.Select(Sample)];

    public static IReadOnlyList<ChartMarker> Markers { get; } = [new(10, 4.5, "strip 4.5", 0.25)];

    public static IReadOnlyList<ChartSeries> Amounts { get; } =
    [
        new("gas, L", Grams, [0, 0.1, 0.4, 0.8, 1.3, 1.8, 2.3, 2.8, 3.3, 3.8, 4.2, 4.5, 4.6]),
        new("solid, g", Grams, [0, 0, 0.1, 0.3, 0.5, 0.8, 1.0, 1.3, 1.5, 1.7, 1.8, 1.9, 1.9]),
    ];

    private static ChartBand Band(double share) =>
        new(Grams, [.. Ph.Zip(Spread, (ph, spread) => ph - spread * share)], [.. Ph.Zip(Spread, (ph, spread) => ph + spread * share)]);

    private static ChartSeries Sample(double share) => new("", Grams, [.. Ph.Zip(Spread, (ph, spread) => ph + spread * share)]);
}
