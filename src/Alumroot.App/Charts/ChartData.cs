namespace Alumroot.App.Charts;

/// <summary>A line: its name at the right end, and its points from left to right.</summary>
/// <param name="Label">A word or two, written at the line's right end.</param>
/// <param name="X">Rising.</param>
/// <param name="Y">As many as X.</param>
public sealed record ChartSeries(string Label, IReadOnlyList<double> X, IReadOnlyList<double> Y);

/// <summary>A filled band between two lines over the same points.</summary>
/// <param name="X">Rising.</param>
/// <param name="Low">The lower edge.</param>
/// <param name="High">The upper edge.</param>
public sealed record ChartBand(IReadOnlyList<double> X, IReadOnlyList<double> Low, IReadOnlyList<double> High);

/// <summary>A dot with a word: a reading, or a place to watch.</summary>
/// <param name="X">Where.</param>
/// <param name="Y">How high.</param>
/// <param name="Label">A word or two beside it.</param>
/// <param name="HalfSpan">Half the resolution of a reading, drawn as an upright bar.</param>
public sealed record ChartMarker(double X, double Y, string Label, double? HalfSpan = null);

/// <summary>A value across the whole chart, drawn as a dotted line with a word.</summary>
/// <param name="Y">How high.</param>
/// <param name="Label">A word or two at its left end: "aim 6.5".</param>
public sealed record ChartLevel(double Y, string Label);
