namespace Alumroot.App.Charts;

/// <summary>The two drawings of each chart. The page shows the one that suits its width, so that text is never smaller than 16 px at 360 px.</summary>
/// <param name="Key">The word used in style classes and ids.</param>
/// <param name="Width">Width of the drawing, in its own units.</param>
/// <param name="Height">Height of the drawing.</param>
/// <param name="Text">Height of the letters.</param>
public sealed record ChartSize(string Key, double Width, double Height, double Text)
{
    /// <summary>For phones and narrow columns.</summary>
    public static ChartSize Narrow { get; } = new("narrow", 312, 330, 16);

    /// <summary>For columns of 600 px and more.</summary>
    public static ChartSize Wide { get; } = new("wide", 640, 400, 17);

    /// <summary>Both, narrow first.</summary>
    public static IReadOnlyList<ChartSize> Both { get; } = [Narrow, Wide];
}
