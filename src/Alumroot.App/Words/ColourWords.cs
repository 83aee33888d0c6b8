using Alumroot.Colour.Colorimetry;

namespace Alumroot.App.Words;

/// <summary>Words for differences of colour; common practice, no source.</summary>
public static class ColourWords
{
    // Parts of a CIEDE2000 difference below this are not worth a word.
    private const double WorthAWord = 0.5, HardlySeen = 1;

    /// <summary>How the second colour differs from the first, such as "darker, redder".</summary>
    /// <param name="first">The reference.</param>
    /// <param name="difference">From the reference to the other.</param>
    public static string Of(Lab first, ColourDifference difference)
    {
        List<string> words = [];
        if (Math.Abs(difference.LightnessPart) >= WorthAWord) words.Add(difference.LightnessPart > 0 ? "lighter" : "darker");
        if (Math.Abs(difference.ChromaPart) >= WorthAWord) words.Add(difference.ChromaPart > 0 ? "stronger" : "duller");
        if (Math.Abs(difference.HuePart) >= WorthAWord) words.Add(Turned(first.HueDegrees, new Lab(0, first.A + difference.DeltaA, first.B + difference.DeltaB).HueDegrees, difference.HuePart > 0));
        string how = words.Count > 0 ? string.Join(", ", words) : "alike";
        if (difference.DeltaE2000 >= HardlySeen) return how;
        return words.Count == 0 ? "hardly to be told apart" : $"hardly to be told apart ({how})";
    }

    /// <summary>The hue that the second colour came nearer to: of red, yellow, green and blue those that were passed on the way or come next, and of these the one nearest to it.</summary>
    private static string Turned(double from, double to, bool up)
    {
        (double Hue, string Word)[] axes = [(0, "redder"), (90, "yellower"), (180, "greener"), (270, "bluer")];
        double turn = Ahead(to);
        return axes.Where(a => Ahead(a.Hue) > 0 && Ahead(a.Hue) <= turn && Apart(to, a.Hue) < Apart(from, a.Hue))
            .Append(axes.MinBy(a => Ahead(a.Hue) > turn ? Ahead(a.Hue) : Ahead(a.Hue) + 360))
            .MinBy(a => Apart(to, a.Hue)).Word;

        double Ahead(double hue) => (up ? hue - from + 360 : from - hue + 360) % 360;
    }

    private static double Apart(double a, double b) => 180 - Math.Abs(180 - Math.Abs(a - b));
}
