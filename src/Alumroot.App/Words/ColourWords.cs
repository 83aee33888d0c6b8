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
        if (Math.Abs(difference.HuePart) >= WorthAWord) words.Add(Turned(first.HueDegrees, difference.HuePart > 0));
        string how = words.Count > 0 ? string.Join(", ", words) : "alike";
        if (difference.DeltaE2000 >= HardlySeen) return how;
        return words.Count == 0 ? "hardly to be told apart" : $"hardly to be told apart ({how})";
    }

    /// <summary>The next of red, yellow, green, blue in the sense of turning.</summary>
    private static string Turned(double hueDegrees, bool up)
    {
        string[] next = ["yellower", "greener", "bluer", "redder"], before = ["redder", "yellower", "greener", "bluer"];
        int quarter = (int)(hueDegrees / 90) % 4;
        return up ? next[quarter] : before[quarter];
    }
}
