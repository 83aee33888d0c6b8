using Alumroot.Quantities.Tables;

namespace Alumroot.Permanence.OtherTests;

/// <summary>Something that a test asks for.</summary>
/// <param name="Key">Its key, such as <c>powder</c>.</param>
/// <param name="Label">In plain words.</param>
/// <param name="Unit">Its unit; empty for a pure number, <c>Lab</c> for a colour.</param>
public sealed record TestInput(string Key, string Label, string Unit)
{
    /// <summary>Whether it is a colour, three numbers.</summary>
    public bool IsColour => Unit == "Lab";
}

/// <summary>What a result up to a limit means.</summary>
/// <param name="Upto">Results below this; infinite for the last.</param>
/// <param name="Words">In plain words.</param>
public sealed record TestBand(double Upto, string Words);

/// <summary>One of the tests a maker can do besides light: how it goes, what is read, and what the result means.</summary>
/// <param name="Key">Its key, such as <c>bleed-water</c>.</param>
/// <param name="Name">In plain words.</param>
/// <param name="Method">The standard it follows, simplified for a kitchen bench.</param>
/// <param name="Steps">What is done, in order.</param>
/// <param name="Inputs">What is weighed and read.</param>
/// <param name="Unit">Unit of the result.</param>
/// <param name="Bands">What results mean, by rising limit.</param>
public sealed record OtherTest(string Key, string Name, string Method, IReadOnlyList<string> Steps, IReadOnlyList<TestInput> Inputs, string Unit, IReadOnlyList<TestBand> Bands)
{
    /// <summary>Whether it is done on a paint; on a lake otherwise.</summary>
    public bool IsOfPaint { get; private init; }

    /// <summary>What is taken for it.</summary>
    public string Sample { get; private init; } = "";

    /// <summary>What lakes usually show.</summary>
    public string Typical { get; private init; } = "";

    /// <summary>What can hurt; empty when nothing does.</summary>
    public string Caution { get; private init; } = "";

    /// <summary>Key of the source.</summary>
    public string Source { get; private init; } = "";

    /// <summary>What of the source was seen.</summary>
    public string Place { get; private init; } = "";

    private string Formula { get; init; } = "";

    /// <summary>All tests, in the order of a bench: powder, paint, film.</summary>
    public static IReadOnlyList<OtherTest> All { get; } = [.. PermanenceTables.Read("other_tests.csv").Select(Of)];

    /// <summary>The test of a key; null when there is none.</summary>
    /// <param name="key">Its key.</param>
    public static OtherTest? Find(string? key) => All.FirstOrDefault(t => t.Key == key);

    /// <summary>What a result means.</summary>
    /// <param name="result">In the test's unit.</param>
    public string Meaning(double result) => Bands.First(b => result < b.Upto).Words;

    /// <summary>The result.</summary>
    /// <param name="values">What was read, in the order of <see cref="Inputs"/>; of two colours their CIE 1976 difference, once.</param>
    /// <returns>The result in the test's unit; null when the values cannot be: a division by nothing, more left than was there.</returns>
    public double? Reckon(IReadOnlyList<double> values) => TestFormula.Of(Formula, values);

    private static OtherTest Of(TableRow row) => new(
        row["key"], row["name"], row["method"], PermanenceTables.Parts(row["steps"]),
        [.. PermanenceTables.Parts(row["inputs"]).Select(i => i.Split('|')).Select(p => new TestInput(p[0], p[1], p[2]))], row["unit"],
        [.. PermanenceTables.Parts(row["bands"]).Select(b => b.Split('|')).Select(p => new TestBand(p[0].Length == 0 ? double.PositiveInfinity : double.Parse(p[0], System.Globalization.CultureInfo.InvariantCulture), p[1]))])
    {
        IsOfPaint = row["of"] == "paint",
        Sample = row["sample"],
        Typical = row["typical"],
        Caution = row["caution"],
        Source = row["source"],
        Place = row["where"],
        Formula = row["formula"],
    };
}
