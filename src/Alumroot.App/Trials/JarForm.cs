using System.Globalization;
using Alumroot.App.Colours;
using Alumroot.App.Studio;
using Alumroot.Colour.Colorimetry;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Trials;

/// <summary>What was read of a jar: what was typed, and what is wrong with it.</summary>
public sealed class JarForm
{
    /// <summary>Names of the fields; a result's field ends with its place among the results.</summary>
    public const string Jar = "jar", ColourField = "lab", Within = "within", Result = "result-", Again = "again", Note = "note";

    private const int LongestWords = 200, LongestNote = 2000;
    private const double MostWithin = 50;
    private readonly Dictionary<string, string> _troubles = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _typed = new(StringComparer.Ordinal);

    /// <summary>What is wrong, by field.</summary>
    public IReadOnlyDictionary<string, string> Troubles => _troubles;

    /// <summary>What stands in a field.</summary>
    public string? Typed(string field) => _typed.GetValueOrDefault(field);

    /// <summary>The reading; null when nothing was typed or something is wrong.</summary>
    public TrialJarRead? Document { get; private set; }

    /// <summary>The name of a result's field.</summary>
    public static string ResultField(int place) => Result + place.ToString(CultureInfo.InvariantCulture);

    /// <summary>Reads the form.</summary>
    /// <param name="trial">The trial.</param>
    /// <param name="typed">Text by field name; null or blank for nothing.</param>
    /// <param name="now">The time here.</param>
    public static JarForm Read(TrialState trial, Func<string, string?> typed, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(trial);
        ArgumentNullException.ThrowIfNull(typed);
        var form = new JarForm();
        foreach (string name in (string[])[Jar, ColourField, Within, Again, Note, .. Enumerable.Range(0, trial.ResultNames.Count).Select(ResultField)])
            if (typed(name) is { } text && !string.IsNullOrWhiteSpace(text)) form._typed[name] = text.Trim()[..Math.Min(text.Trim().Length, name == Note ? LongestNote : LongestWords)];
        form.ReadFields(trial, now);
        return form;
    }

    private void ReadFields(TrialState trial, DateTimeOffset now)
    {
        JarState? jar = int.TryParse(Typed(Jar), NumberStyles.None, CultureInfo.InvariantCulture, out int n) ? trial.Jars.FirstOrDefault(j => j.Jar.Order == n) : null;
        if (jar is null) _troubles[Jar] = $"Jar: '{Typed(Jar)}' is no jar of this trial. Write its number in the order of making.";
        Lab? colour = null;
        if (Typed(ColourField) is { } lab && (colour = LabReading.Of(lab)) is null) _troubles[ColourField] = $"Colour: '{lab}' is no colour. Write L*, a* and b* as three numbers, such as 52 38 21.";
        double? within = null;
        if (Typed(Within) is { } typed)
        {
            if (double.TryParse(typed.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double w) && w is > 0 and <= MostWithin) within = w;
            else _troubles[Within] = $"True within: '{typed}' is not a number above nothing and at most {MostWithin}. Write it like 1.5, or leave it empty.";
            if (Typed(ColourField) is null) _troubles[Within] = "True within: no colour stands beside it. Write the colour, or empty this field.";
        }
        var results = new List<TrialResult>();
        for (int i = 0; i < trial.ResultNames.Count; i++)
        {
            if (Typed(ResultField(i)) is not { } value) continue;
            (TrialResult? result, string? wrong) = ResultText.Read(trial.ResultNames[i], value);
            if (result is not null) results.Add(result);
            else _troubles[ResultField(i)] = wrong!;
        }
        (DateTimeOffset? ready, string? why) = LookAgain.Read(Typed(Again), now);
        if (why is not null) _troubles[Again] = why;
        if (_troubles.Count > 0 || (results.Count == 0 && colour is null && ready is null && Typed(Note) is null)) return;
        Document = new TrialJarRead(jar!.Jar.Order)
        {
            Results = results,
            Colour = colour is { } c ? new LabText(Math.Round(c.L, 2), Math.Round(c.A, 2), Math.Round(c.B, 2)) : null,
            WithinDeltaE2000 = colour is null ? null : within,
            ReadyAt = ready,
            Note = Typed(Note),
        };
    }
}
