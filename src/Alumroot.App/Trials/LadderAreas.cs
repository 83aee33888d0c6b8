using System.Globalization;
using System.Text;
using Alumroot.Colour.Colorimetry;

namespace Alumroot.App.Trials;

/// <summary>A row of glasses in one photograph: the pH typed for each area, and the area's colour, as the table that the page of the ladder reads.</summary>
public static class LadderAreas
{
    private const int MostAreas = 40;

    /// <summary>The field for the pH of an area, from 1.</summary>
    public static string PhField(int area) => string.Create(CultureInfo.InvariantCulture, $"ph-{area}");

    /// <summary>The field that holds the colour of an area, from 1.</summary>
    public static string ColourField(int area) => string.Create(CultureInfo.InvariantCulture, $"lab-{area}");

    /// <summary>A colour as its field holds it.</summary>
    public static string ColourText(Lab lab) => string.Create(CultureInfo.InvariantCulture, $"{lab.L:0.0#},{lab.A:0.0#},{lab.B:0.0#}");

    /// <summary>The table; null when no area has a pH.</summary>
    /// <param name="typed">Text by field name.</param>
    public static string? Table(Func<string, string?> typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        var text = new StringBuilder();
        for (int area = 1; area <= MostAreas; area++)
        {
            // A comma would part the columns.
            if (typed(PhField(area))?.Trim().Replace(',', '.') is not { Length: > 0 } ph || typed(ColourField(area)) is not { Length: > 0 } colour) continue;
            text.Append(text.Length == 0 ? "ph,L,a,b\n" : "").Append(ph).Append(',').Append(colour).Append('\n');
        }
        return text.Length == 0 ? null : text.ToString();
    }
}
