using System.Globalization;

namespace Alumroot.App.Print.Labels;

/// <summary>The colours of a hazard sign.</summary>
public enum SignInk
{
    /// <summary>The frame, as the regulation asks.</summary>
    Red,

    /// <summary>The ground, and what is left open in a symbol.</summary>
    White,

    /// <summary>The symbol.</summary>
    Black,
}

/// <summary>One filled outline of a sign, in a square of 100 by 100 from the upper left.</summary>
/// <param name="Ink">Its colour.</param>
/// <param name="Path">Straight lines and curves: M, L, C and Z with absolute numbers, as in SVG.</param>
public sealed record SignPart(SignInk Ink, string Path);

/// <summary>A stroke of an outline.</summary>
/// <param name="Letter">M, L, C or Z.</param>
/// <param name="Points">Its points in the square of 100.</param>
public sealed record SignStroke(char Letter, IReadOnlyList<(double X, double Y)> Points);

/// <summary>The pictograms of the Globally Harmonised System (UN, Annex 1, a public rule) as drawings of our own: a red square set on a point, white within, a black symbol.</summary>
/// <param name="Code">Its code, such as <c>GHS07</c>.</param>
/// <param name="Name">The symbol in words.</param>
/// <param name="Parts">Its outlines, from the back to the front.</param>
public sealed record HazardSign(string Code, string Name, IReadOnlyList<SignPart> Parts)
{
    /// <summary>Width and height of the square that the outlines stand in.</summary>
    public const double Side = 100;

    private static readonly SignPart[] Frame = [new(SignInk.Red, "M 50 0 L 100 50 L 50 100 L 0 50 Z"), new(SignInk.White, "M 50 9 L 91 50 L 50 91 L 9 50 Z")];

    private static readonly HazardSign[] Known =
    [
        new("GHS02", "flame",
        [
            .. Frame,
            new(SignInk.Black, "M 51 18 C 53 28 63 34 63 46 C 63 53 60 58 55 62 C 58 55 57 50 53 46 C 53 51 51 53 49 55 C 47 58 47 60 48 62 L 45 62 C 39 59 36 54 37 47 C 38 41 42 39 43 33 C 46 35 47 38 47 41 C 51 36 52 28 51 18 Z"),
            new(SignInk.Black, "M 34 66 L 66 66 L 66 70 L 34 70 Z"),
        ]),
        new("GHS05", "corrosion",
        [
            .. Frame,
            new(SignInk.Black, "M 50 33 L 28 43 L 24.5 35.5 L 46.5 25.5 Z"),
            new(SignInk.White, "M 47 32.5 L 28.5 41 L 26.5 36.5 L 45 28 Z"),
            new(SignInk.Black, "M 38 36.5 L 28.8 40.8 L 27.6 38.2 L 41 37 Z"),
            new(SignInk.Black, "M 53.5 25.5 L 75.5 35.5 L 72 43 L 50 33 Z"),
            new(SignInk.White, "M 55 28 L 73.5 36.5 L 71.5 41 L 53 32.5 Z"),
            new(SignInk.Black, "M 59 37 L 72.4 38.2 L 71.2 40.8 L 62 36.5 Z"),
            new(SignInk.Black, "M 26 45 C 28 48 28 51 26 51 C 24 51 24 48 26 45 Z"),
            new(SignInk.Black, "M 30 47 C 32 50 32 53 30 53 C 28 53 28 50 30 47 Z"),
            new(SignInk.Black, "M 70 47 C 72 50 72 53 70 53 C 68 53 68 50 70 47 Z"),
            new(SignInk.Black, "M 74 45 C 76 48 76 51 74 51 C 72 51 72 48 74 45 Z"),
            new(SignInk.Black, "M 20 57 L 24 57 L 26 60 L 29 59 L 31 61 L 34 57 L 45 57 L 45 64 L 26 64 Z"),
            new(SignInk.Black, "M 53 64 C 56 58 60 56 66 57 L 68 60 L 71 59 L 73 61 L 75 57 L 79 57 C 80 59 78 61 75 62 L 67 64 C 64 66 60 66 57 70 Z"),
        ]),
        new("GHS07", "exclamation mark",
        [
            .. Frame,
            new(SignInk.Black, "M 44 25 C 44 18 56 18 56 25 L 53.2 58 C 53 62 47 62 46.8 58 Z"),
            new(SignInk.Black, "M 55.5 71 C 55.5 74 53 76.5 50 76.5 C 47 76.5 44.5 74 44.5 71 C 44.5 68 47 65.5 50 65.5 C 53 65.5 55.5 68 55.5 71 Z"),
        ]),
        new("GHS08", "health hazard",
        [
            .. Frame,
            new(SignInk.Black, "M 58 29 C 58 33.4 54.4 37 50 37 C 45.6 37 42 33.4 42 29 C 42 24.6 45.6 21 50 21 C 54.4 21 58 24.6 58 29 Z"),
            new(SignInk.Black, "M 34 72 L 34 51 C 34 42 41 39.5 50 39.5 C 59 39.5 66 42 66 51 L 66 72 Z"),
            new(SignInk.White, "M 50 44 L 52.1 53.4 L 60.5 50 L 54.2 57 L 61 62.5 L 52.1 60.6 L 50 71 L 47.9 60.6 L 39 62.5 L 45.8 57 L 39.5 50 L 47.9 53.4 Z"),
        ]),
    ];

    /// <summary>The sign of a code; null when it is not drawn.</summary>
    public static HazardSign? Of(string code) => Known.FirstOrDefault(s => s.Code == code);

    /// <summary>The strokes of an outline.</summary>
    public static IReadOnlyList<SignStroke> Strokes(SignPart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        var strokes = new List<SignStroke>();
        string[] words = part.Path.Split(' ');
        for (int i = 0; i < words.Length;)
        {
            char letter = words[i++][0];
            int points = letter switch { 'M' or 'L' => 1, 'C' => 3, _ => 0 };
            strokes.Add(new SignStroke(letter, [.. Enumerable.Range(0, points).Select(p => (Number(words[i + 2 * p]), Number(words[i + 2 * p + 1])))]));
            i += 2 * points;
        }
        return strokes;
    }

    private static double Number(string word) => double.Parse(word, CultureInfo.InvariantCulture);
}
