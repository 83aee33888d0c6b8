using System.Globalization;
using Alumroot.App.Words;
using Alumroot.Colour.Colorimetry;
using Alumroot.Studio.Documents;

namespace Alumroot.App.Colours;

/// <summary>What a swatch lies on and how thick it was laid: what was typed, and what is wrong with it.</summary>
public sealed class SwatchLie
{
    /// <summary>Names of the fields.</summary>
    public const string GroundField = "ground", BareField = "bare", WetField = "wet";

    private const double MostMicrometres = 5000;

    private readonly Dictionary<string, string> _troubles = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _typed = new(StringComparer.Ordinal);
    private SwatchGround? _ground;
    private Lab? _bare;
    private double? _wetMicrometres;

    /// <summary>What is wrong, by field.</summary>
    public IReadOnlyDictionary<string, string> Troubles => _troubles;

    /// <summary>What stands in the fields.</summary>
    public IEnumerable<(string Field, string? Text)> Typed => _typed.Select(t => (t.Key, (string?)t.Value));

    /// <summary>What stands in a field; null for nothing.</summary>
    public string? TextOf(string field) => _typed.GetValueOrDefault(field);

    /// <summary>Reads the fields.</summary>
    /// <param name="typed">Text by field name; null or blank for nothing.</param>
    public static SwatchLie Read(Func<string, string?> typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        var lie = new SwatchLie();
        foreach (string field in (string[])[GroundField, BareField, WetField])
            if (typed(field) is { } text && !string.IsNullOrWhiteSpace(text)) lie._typed[field] = text.Trim();
        lie.ReadGround();
        lie.ReadBare();
        lie.ReadWet();
        return lie;
    }

    /// <summary>The swatch with what it lies on.</summary>
    public SwatchRead On(SwatchRead swatch)
    {
        ArgumentNullException.ThrowIfNull(swatch);
        return swatch with { Ground = _ground, GroundColour = _bare is { } b ? new LabText(Math.Round(b.L, 2), Math.Round(b.A, 2), Math.Round(b.B, 2)) : null, WetMicrometres = _wetMicrometres };
    }

    private void ReadGround()
    {
        if (TextOf(GroundField) is not { } text) return;
        if (text.All(char.IsLetter) && Enum.TryParse(text, ignoreCase: true, out SwatchGround ground) && Enum.IsDefined(ground)) _ground = ground;
        else _troubles[GroundField] = $"It lies on: '{text}' is not in the list. Choose white card, black card or paper.";
    }

    private void ReadBare()
    {
        if (TextOf(BareField) is not { } text) return;
        _bare = LabReading.Of(text);
        if (_bare is null) _troubles[BareField] = MatchWords.NoLab("The bare ground", text);
        else if (TextOf(GroundField) is null) _troubles[GroundField] = "It lies on: the bare ground has a colour, but not which ground it is. Choose it.";
    }

    private void ReadWet()
    {
        if (TextOf(WetField) is not { } text) return;
        bool millimetres = text.EndsWith("mm", StringComparison.OrdinalIgnoreCase);
        string digits = text.Replace("micrometres", "", StringComparison.OrdinalIgnoreCase).Replace("\u00b5m", "", StringComparison.OrdinalIgnoreCase).Replace("\u03bcm", "", StringComparison.OrdinalIgnoreCase).Replace("um", "", StringComparison.OrdinalIgnoreCase);
        if (millimetres) digits = text[..^2];
        if (double.TryParse(digits.Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double x) && x * (millimetres ? 1000 : 1) is > 0 and <= MostMicrometres and var wet) _wetMicrometres = Math.Round(wet, 3);
        else _troubles[WetField] = $"Wet thickness: '{text}' does not do. Write it like 100 \u00b5m or 0.1 mm, up to 5 mm, or leave it empty.";
    }
}
