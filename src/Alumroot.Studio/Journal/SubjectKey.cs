using System.Globalization;
using System.Text.RegularExpressions;

namespace Alumroot.Studio.Journal;

/// <summary>What an entry can be about.</summary>
public enum SubjectClass
{
    /// <summary>One making of a lake.</summary>
    Batch,

    /// <summary>One purchase or harvest on the shelf.</summary>
    Lot,

    /// <summary>One making of a paint.</summary>
    Paint,

    /// <summary>Strips laid in the light together.</summary>
    Exposure,

    /// <summary>One row of jars.</summary>
    Trial,

    /// <summary>The studio itself: its bowls and its ways.</summary>
    Studio,
}

/// <summary>What an entry is about: batch <c>26-014</c>, the fourteenth of 2026, lot <c>lot-7</c>, paint <c>P-07</c>, exposure <c>E-03</c>, trial <c>T-05</c>, or the <c>studio</c>. Immutable.</summary>
public readonly partial record struct SubjectKey : IComparable<SubjectKey>
{
    private const string StudioWord = "studio";

    private SubjectKey(SubjectClass kind, int year, int count) => (Class, Year, Count) = (kind, year, count);

    /// <summary>The studio itself.</summary>
    public static SubjectKey Studio { get; } = new(SubjectClass.Studio, 0, 0);

    /// <summary>Batch, lot, paint, exposure, trial or the studio.</summary>
    public SubjectClass Class { get; }

    /// <summary>The last two digits of the year of a batch; 0 for others.</summary>
    public int Year { get; }

    /// <summary>The count within the year, or of all of its kind.</summary>
    public int Count { get; }

    /// <summary>The key of a batch.</summary>
    /// <param name="year">A year; its last two digits count.</param>
    /// <param name="count">From 1 to 999 999.</param>
    public static SubjectKey Batch(int year, int count) => new(SubjectClass.Batch, year % 100, InRange(count));

    /// <summary>The key of a lot.</summary>
    /// <param name="count">From 1 to 999 999.</param>
    public static SubjectKey Lot(int count) => new(SubjectClass.Lot, 0, InRange(count));

    /// <summary>The key of a paint.</summary>
    /// <param name="count">From 1 to 999 999.</param>
    public static SubjectKey Paint(int count) => new(SubjectClass.Paint, 0, InRange(count));

    /// <summary>The key of an exposure.</summary>
    /// <param name="count">From 1 to 999 999.</param>
    public static SubjectKey Exposure(int count) => new(SubjectClass.Exposure, 0, InRange(count));

    /// <summary>The key of a trial.</summary>
    /// <param name="count">From 1 to 999 999.</param>
    public static SubjectKey Trial(int count) => new(SubjectClass.Trial, 0, InRange(count));

    /// <summary>Reads a key; null when the text is none.</summary>
    public static SubjectKey? TryRead(string? text)
    {
        if (text is null) return null;
        if (text == StudioWord) return Studio;
        if (BatchShape().Match(text) is { Success: true } batch) return Positive(batch.Groups[2].Value) is { } count ? Batch(Number(batch.Groups[1].Value), count) : null;
        if (LotShape().Match(text) is { Success: true } lot) return Positive(lot.Groups[1].Value) is { } count ? Lot(count) : null;
        if (PaintShape().Match(text) is { Success: true } paint) return Positive(paint.Groups[1].Value) is { } count ? Paint(count) : null;
        if (ExposureShape().Match(text) is { Success: true } exposure) return Positive(exposure.Groups[1].Value) is { } count ? Exposure(count) : null;
        if (TrialShape().Match(text) is { Success: true } trial) return Positive(trial.Groups[1].Value) is { } count ? Trial(count) : null;
        return null;
    }

    /// <summary>Earlier keys first, batches before lots before paints before exposures before trials, the studio last.</summary>
    public int CompareTo(SubjectKey other) => (Class, Year, Count).CompareTo((other.Class, other.Year, other.Count));

    /// <summary>The key as it is written.</summary>
    public override string ToString() => Class switch
    {
        SubjectClass.Studio => StudioWord,
        SubjectClass.Lot => string.Create(CultureInfo.InvariantCulture, $"lot-{Count}"),
        SubjectClass.Paint => string.Create(CultureInfo.InvariantCulture, $"P-{Count:00}"),
        SubjectClass.Exposure => string.Create(CultureInfo.InvariantCulture, $"E-{Count:00}"),
        SubjectClass.Trial => string.Create(CultureInfo.InvariantCulture, $"T-{Count:00}"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{Year:00}-{Count:000}"),
    };

    /// <summary>Whether the first comes before the second.</summary>
    public static bool operator <(SubjectKey left, SubjectKey right) => left.CompareTo(right) < 0;

    /// <summary>Whether the first comes after the second.</summary>
    public static bool operator >(SubjectKey left, SubjectKey right) => left.CompareTo(right) > 0;

    /// <summary>Whether the first does not come after the second.</summary>
    public static bool operator <=(SubjectKey left, SubjectKey right) => left.CompareTo(right) <= 0;

    /// <summary>Whether the first does not come before the second.</summary>
    public static bool operator >=(SubjectKey left, SubjectKey right) => left.CompareTo(right) >= 0;

    private static int InRange(int count) => count is >= 1 and <= 999_999 ? count : throw new ArgumentOutOfRangeException(nameof(count));

    private static int? Positive(string digits) => Number(digits) is > 0 and var n ? n : null;

    private static int Number(string digits) => int.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\A([0-9]{2})-([0-9]{3,6})\z")]
    private static partial Regex BatchShape();

    [GeneratedRegex(@"\Alot-([0-9]{1,6})\z")]
    private static partial Regex LotShape();

    [GeneratedRegex(@"\AP-([0-9]{2,6})\z")]
    private static partial Regex PaintShape();

    [GeneratedRegex(@"\AE-([0-9]{2,6})\z")]
    private static partial Regex ExposureShape();

    [GeneratedRegex(@"\AT-([0-9]{2,6})\z")]
    private static partial Regex TrialShape();
}
