using System.Globalization;
using Alumroot.App.Colours;
using Alumroot.Colour.Colorimetry;
using Alumroot.Permanence.OtherTests;
using Alumroot.Quantities.Reading;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Permanence;

/// <summary>One of the other tests, filled in: what was typed, what is wrong with it, and the result.</summary>
public sealed class TestForm
{
    /// <summary>Names of the fields that are not the test's own.</summary>
    public const string Of = "of", Note = "note";

    private const int LongestNote = 500;
    private static readonly FieldRule<double> Any = new(0, 0.001, 10_000, 1_000_000) { ZeroAllowed = true };
    private readonly Dictionary<string, string> _troubles = new(StringComparer.Ordinal);

    /// <summary>What is wrong, by field.</summary>
    public IReadOnlyDictionary<string, string> Troubles => _troubles;

    /// <summary>The result; null when something is wrong.</summary>
    public TestDone? Document { get; private set; }

    /// <summary>What it was done on; null when that is wrong.</summary>
    public SubjectKey? Subject { get; private set; }

    /// <summary>The name of a field of a test.</summary>
    public static string Field(TestInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        return $"v-{input.Key}";
    }

    /// <summary>Reads the form, or the address that asks again.</summary>
    /// <param name="test">Which test.</param>
    /// <param name="typed">Text by field name; null for a blank one.</param>
    /// <param name="store">Where lakes and paints are looked up.</param>
    public static TestForm Read(OtherTest test, Func<string, string?> typed, StudioStore store)
    {
        ArgumentNullException.ThrowIfNull(test);
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(store);
        var form = new TestForm();
        form.ReadFields(test, typed, store);
        return form;
    }

    private void ReadFields(OtherTest test, Func<string, string?> typed, StudioStore store)
    {
        if (SubjectKey.TryRead(typed(Of)) is { Class: SubjectClass.Batch or SubjectClass.Paint } key && store.EntriesOf(key).Count > 0) Subject = key;
        else _troubles[Of] = typed(Of) is { } of ? $"Done on: there is no '{of}' here. Write the number of a lake or paint, such as 26-014 or P-07." : "Done on: nothing is typed. Write the number of a lake or paint, such as 26-014 or P-07.";
        var numbers = new List<double>();
        var colours = new List<Lab>();
        var values = new List<Measured>();
        foreach (TestInput input in test.Inputs)
        {
            string field = Field(input);
            if (typed(field) is not { } text)
            {
                _troubles[field] = $"{input.Label}: nothing is typed.";
                continue;
            }
            if (input.IsColour)
            {
                if (LabReading.Of(text) is { } lab) colours.Add(lab);
                else _troubles[field] = $"{input.Label}: '{text}' is no Lab. Write three numbers, such as 46.2 23 13.5.";
                continue;
            }
            (double? number, string? trouble) = NumberField.Read(text, input.Label, Any, input.Unit.Length > 0 ? [" " + input.Unit, input.Unit] : []);
            if (trouble is not null) _troubles[field] = trouble;
            else if (number is { } n)
            {
                numbers.Add(n);
                values.Add(new Measured(input.Key, text, n, input.Unit.Length > 0 ? input.Unit : "1"));
            }
        }
        if (colours is [var a, var b])
        {
            numbers.Add(ColourDifference.Between(a, b).DeltaE76);
            values.AddRange(test.Inputs.Zip([a, b]).Select(p => new Measured(p.First.Key, string.Create(CultureInfo.InvariantCulture, $"{p.Second.L:0.##} {p.Second.A:0.##} {p.Second.B:0.##}"), 0, "Lab")));
        }
        if (_troubles.Count > 0) return;
        if (test.Reckon(numbers) is not { } result)
        {
            _troubles[Field(test.Inputs[0])] = "These values cannot be: more would be left than there was, or something is divided by nothing. Look whether two fields were changed about.";
            return;
        }
        Document = new TestDone(test.Key, Math.Round(result, 4), test.Unit) { Values = values, Note = typed(Note) is { } note ? note[..Math.Min(note.Length, LongestNote)] : null };
    }
}
