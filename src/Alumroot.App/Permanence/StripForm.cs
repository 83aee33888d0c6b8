using System.Globalization;
using Alumroot.App.Bench;
using Alumroot.App.Colours;
using Alumroot.Colour.Colorimetry;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Permanence;

/// <summary>One strip of an exposure: its sample, its number and the names of its fields.</summary>
/// <param name="Sample">The sample.</param>
/// <param name="Strip">Which strip, from 1.</param>
/// <param name="Place">Its place among all strips, from 0.</param>
internal sealed record StripPlace(ExposedSample Sample, int Strip, int Place)
{
    internal string CoveredField => string.Create(CultureInfo.InvariantCulture, $"covered-{Place}");

    internal string ExposedField => string.Create(CultureInfo.InvariantCulture, $"exposed-{Place}");

    /// <summary>"26-014", or "26-014, strip 2" where there are several.</summary>
    internal string Name => Sample.Strips == 1 ? Sample.Name : string.Create(CultureInfo.InvariantCulture, $"{Sample.Name}, strip {Strip}");

    /// <summary>All strips of an exposure in the order of its samples.</summary>
    internal static IReadOnlyList<StripPlace> Of(ExposureState exposure)
    {
        var places = new List<StripPlace>();
        foreach (ExposedSample sample in exposure.Begun?.Samples ?? [])
            for (int strip = 1; strip <= sample.Strips; strip++) places.Add(new StripPlace(sample, strip, places.Count));
        return places;
    }
}

/// <summary>Strips read by an instrument and typed: two colours for each.</summary>
internal sealed class StripForm
{
    /// <summary>Names of the fields that are not a strip's.</summary>
    internal const string Next = "next", Note = "note";

    private const double MostDays = 3650;
    private readonly Dictionary<string, string> _troubles = new(StringComparer.Ordinal);

    /// <summary>What is wrong, by field.</summary>
    internal IReadOnlyDictionary<string, string> Troubles => _troubles;

    /// <summary>The reading; null when something is wrong.</summary>
    internal ExposureRead? Document { get; private set; }

    /// <summary>Reads what was typed.</summary>
    /// <param name="exposure">Whose strips.</param>
    /// <param name="typed">Text by field name; null for a blank one.</param>
    /// <param name="now">The time.</param>
    internal static StripForm Read(ExposureState exposure, Func<string, string?> typed, DateTimeOffset now)
    {
        var form = new StripForm();
        var strips = new List<StripRead>();
        foreach (StripPlace place in StripPlace.Of(exposure))
        {
            Lab? covered = form.Colour(typed(place.CoveredField), place.CoveredField, $"{place.Name}, covered half"), exposed = form.Colour(typed(place.ExposedField), place.ExposedField, $"{place.Name}, half in the light");
            if (exposed is null && covered is not null) form._troubles[place.ExposedField] = $"{place.Name}: the covered half is typed, the half in the light is not. Type both, or only the half in the light.";
            if (exposed is { } e) strips.Add(new StripRead(place.Sample.Name, place.Strip, Text(e)) { Covered = covered is { } c ? Text(c) : null, WithinDeltaE2000 = LabReading.InstrumentUnits });
        }
        if (strips.Count == 0 && form._troubles.Count == 0) form._troubles[StripPlace.Of(exposure) is [var first, ..] ? first.ExposedField : Note] = "No strip was read. Type L*, a*, b* of one half in the light at least.";
        DateTimeOffset? next = form.NextLook(typed(Next), now);
        if (form._troubles.Count == 0) form.Document = new ExposureRead(strips) { How = "instrument, typed", ReadyAt = next, Note = typed(Note) };
        return form;
    }

    /// <summary>When to look again; a trouble when the text is no time.</summary>
    internal static (DateTimeOffset? At, string? Trouble) NextLookOf(string? typed, DateTimeOffset now) =>
        typed is null ? (null, null)
        : WaitText.Read(typed) is { } span && span.TotalDays <= MostDays ? (now + span, null)
        : (null, $"Look again after: '{typed}' is no time. Write it like 2 days.");

    /// <summary>How long to wait for the next look: as long as it has lain so far, so that doses double.</summary>
    internal static string NextWait(ExposureState exposure, DateTimeOffset now)
    {
        double days = Math.Max(1, (now - exposure.At).TotalDays);
        return string.Create(CultureInfo.InvariantCulture, $"{Math.Round(days)} days");
    }

    internal static LabText Text(Lab lab) => new(Math.Round(lab.L, 2), Math.Round(lab.A, 2), Math.Round(lab.B, 2));

    private DateTimeOffset? NextLook(string? typed, DateTimeOffset now)
    {
        (DateTimeOffset? at, string? trouble) = NextLookOf(typed, now);
        if (trouble is not null) _troubles[Next] = trouble;
        return at;
    }

    private Lab? Colour(string? typed, string field, string name)
    {
        if (typed is null) return null;
        if (LabReading.Of(typed) is { } lab) return lab;
        _troubles[field] = $"{name}: '{typed}' is no Lab. Write three numbers, such as 46.2 23 13.5.";
        return null;
    }
}
