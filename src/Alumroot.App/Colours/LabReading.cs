using System.Globalization;
using Alumroot.Colour.Colorimetry;

namespace Alumroot.App.Colours;

/// <summary>Reads Lab as people type it.</summary>
public static class LabReading
{
    /// <summary>A bench instrument on one swatch is seldom farther off than this; our judgement, no source.</summary>
    public const double InstrumentUnits = 1;

    private const double MostAb = 160;

    /// <summary>"46.2 23 13.5", "L 46,2 a 23 b 13,5" or "46.2; 23; 13.5"; null when it is none.</summary>
    public static Lab? Of(string typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        // A comma between digits is a decimal sign when blanks or semicolons part the numbers; otherwise it parts them.
        bool parted = typed.Any(c => c is ';' or ' ' or '\t');
        string text = new([.. typed.Select(c => c is ';' or '\t' or '*' or '=' or ':' || (char.IsAsciiLetter(c)) ? ' ' : c == ',' ? (parted ? '.' : ' ') : c)]);
        string[] words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        double[] numbers = [.. words.Select(w => double.TryParse(w.TrimEnd('.'), NumberStyles.Float, CultureInfo.InvariantCulture, out double x) ? x : double.NaN)];
        return numbers is [>= 0 and <= 100, >= -MostAb and <= MostAb, >= -MostAb and <= MostAb] ? new Lab(numbers[0], numbers[1], numbers[2]) : null;
    }
}
