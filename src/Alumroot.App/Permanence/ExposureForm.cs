using System.Globalization;
using System.Text.RegularExpressions;
using Alumroot.App.Bench;
using Alumroot.Permanence.Dose;
using Alumroot.Quantities.Reading;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Permanence;

/// <summary>An exposure that is to begin: what was typed, and what is wrong with it.</summary>
public sealed partial class ExposureForm
{
    /// <summary>Names of the fields; a reference's box ends with its number.</summary>
    public const string Title = "title", Where = "where", Samples = "samples", Reference = "bw", Way = "light", Latitude = "latitude", Facing = "facing", Hours = "hours", Lux = "lux", NoUv = "no-uv", Next = "next", Note = "note";

    /// <summary>The most lines of samples.</summary>
    public const int MostSamples = 24;

    private const int LongestTitle = 60, LongestNote = 500, MostStrips = 12, MostReferences = 8;
    private const double MostDays = 3650;

    private static readonly FieldRule<double> HourRule = new(0.1, 1, 24, 24), LuxRule = new(0.01, 20, 200_000, 500_000);

    private readonly Dictionary<string, string> _troubles = new(StringComparer.Ordinal);

    /// <summary>What is wrong, by field.</summary>
    public IReadOnlyDictionary<string, string> Troubles => _troubles;

    /// <summary>The exposure; null when something is wrong.</summary>
    public ExposureBegun? Document { get; private set; }

    /// <summary>Reads the form, or the address that asks again.</summary>
    /// <param name="typed">Text by field name; null for a blank one.</param>
    /// <param name="store">Where lakes and paints are looked up.</param>
    /// <param name="now">When the exposure begins.</param>
    public static ExposureForm Read(Func<string, string?> typed, StudioStore store, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(store);
        var form = new ExposureForm();
        form.ReadFields(typed, store, now);
        return form;
    }

    private void ReadFields(Func<string, string?> typed, StudioStore store, DateTimeOffset now)
    {
        string? title = typed(Title);
        if (title is null) _troubles[Title] = "Name: nothing is typed. Write a few words to know it by, such as spring window.";
        List<ExposedSample> samples = ReadSamples(typed(Samples) ?? "", store);
        for (int n = 1; n <= MostReferences; n++)
            if (typed($"{Reference}{n}") is not null) samples.Add(new ExposedSample($"BW{n}", 1));
        ExposureLight? light = ReadLight(typed);
        if (light is { Way: LightWay.References } && !samples.Any(s => LightTold.Reference(s.Name) is not null))
            _troubles[Way] = "Light: only the references would tell it, and none is ticked. Tick two or more, or say another way.";
        DateTimeOffset? next = null;
        if (typed(Next) is { } wait)
        {
            if (WaitText.Read(wait) is { } span && span.TotalDays <= MostDays) next = now + span;
            else _troubles[Next] = $"First look after: '{wait}' is no time. Write it like 3 days.";
        }
        if (_troubles.Count > 0) return;
        Document = new ExposureBegun(Cut(title!, LongestTitle), light!, samples)
        {
            Where = typed(Where) is { } where ? Cut(where, LongestTitle) : null,
            ReadyAt = next,
            Note = typed(Note) is { } note ? Cut(note, LongestNote) : null,
        };
    }

    private List<ExposedSample> ReadSamples(string typed, StudioStore store)
    {
        var samples = new List<ExposedSample>();
        foreach (string line in typed.Split(['\n', ';'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            Match match = LineShape().Match(line);
            string name = match.Groups[1].Value.Trim();
            int strips = match.Groups[2].Success ? int.Parse(match.Groups[2].Value, CultureInfo.InvariantCulture) : 1;
            SubjectKey? key = SubjectKey.TryRead(name);
            string? trouble = name.Length is 0 or > LongestTitle ? $"Samples: '{Cut(line, 40)}' needs a name of at most {LongestTitle} letters."
                : LightTold.Reference(name) is not null ? $"Samples: {name} is a blue wool reference. Tick it below instead."
                : strips is < 1 or > MostStrips ? $"Samples: {strips} strips of {name} are not possible; 1 to {MostStrips} are."
                : samples.Any(s => string.Equals(s.Name, name, StringComparison.OrdinalIgnoreCase)) ? $"Samples: {name} stands there twice. Write {name} x 2 for two strips of it."
                : key is { Class: SubjectClass.Batch or SubjectClass.Paint } k && store.EntriesOf(k).Count == 0 ? $"Samples: there is no {name} here. Look its number up, or give it another name."
                : null;
            if (trouble is not null)
            {
                _troubles[Samples] = trouble;
                return samples;
            }
            samples.Add(new ExposedSample(name, strips) { Of = key is { Class: SubjectClass.Batch or SubjectClass.Paint } ? name : null });
        }
        if (samples.Count == 0) _troubles[Samples] = "Samples: none is named. Write a line for each: the number of a lake or paint, or a name of your own.";
        if (samples.Count > MostSamples) _troubles[Samples] = $"Samples: {samples.Count} are too many for one exposure; {MostSamples} are the most. Begin a second one.";
        return samples;
    }

    private ExposureLight? ReadLight(Func<string, string?> typed)
    {
        if (!Enum.TryParse(typed(Way), ignoreCase: true, out LightWay way) || !Enum.IsDefined(way))
        {
            _troubles[Way] = "Light: choose one of the four ways.";
            return null;
        }
        double? hours = Number(typed(Hours), Hours, "Hours of light in a day", HourRule, " hours", " h", "h"), lux = null, latitude = null;
        string? facing = null;
        if (way == LightWay.Lamp)
        {
            lux = Number(typed(Lux), Lux, "Level of the lamp", LuxRule, " lux", " lx", "lx");
            if (lux is null && !_troubles.ContainsKey(Lux)) _troubles[Lux] = "Level of the lamp: nothing is typed. Hold a meter at the strips and write what it shows, such as 12000 lx.";
        }
        if (way == LightWay.Window)
        {
            var rule = new FieldRule<double>(-90, -66, 66, 90);
            (latitude, string? trouble) = NumberField.Read(typed(Latitude), "Latitude", rule, "°", " degrees");
            if (trouble is not null) _troubles[Latitude] = trouble;
            else if (latitude is null) _troubles[Latitude] = "Latitude: nothing is typed. Write the degrees of your place, such as 52; south with a minus.";
            else if (WindowLight.YearMegaluxHours(latitude.Value, WindowFacing.Equator) is null)
                _troubles[Latitude] = string.Create(CultureInfo.InvariantCulture, $"Latitude: windows are known from {WindowLight.Latitudes.LeastDegrees:0} to {WindowLight.Latitudes.MostDegrees:0} degrees, north or south. Use a meter or the references instead.");
            facing = typed(Facing);
            if (LightTold.Facing(facing) is null) _troubles[Facing] = "The window looks: choose one of the three.";
        }
        return new ExposureLight(way) { HoursADay = hours, Lux = lux, LatitudeDegrees = latitude, Facing = facing, WithoutUltraviolet = typed(NoUv) is not null };
    }

    private double? Number(string? typed, string field, string label, FieldRule<double> rule, params ReadOnlySpan<string> units)
    {
        (double? value, string? trouble) = NumberField.Read(typed, label, rule, units);
        if (trouble is not null) _troubles[field] = trouble;
        return value;
    }

    private static string Cut(string text, int longest) => text[..Math.Min(text.Length, longest)];

    [GeneratedRegex(@"\A(.*?)(?:\s+[x×]\s*([0-9]{1,3}))?\z", RegexOptions.IgnoreCase)]
    private static partial Regex LineShape();
}
