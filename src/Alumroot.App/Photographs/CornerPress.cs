using System.Globalization;
using Alumroot.Colour.Photograph;

namespace Alumroot.App.Photographs;

/// <summary>A press on a picture that is shown so wide as a form says, which a browser sends as two whole numbers without any script.</summary>
internal static class CornerPress
{
    /// <summary>Width of the picture on a phone, in the pixels of the page.</summary>
    internal const int Narrow = 280;

    /// <summary>Width of the picture on a laptop.</summary>
    internal const int Wide = 840;

    /// <summary>Where the press lies in the photograph; a press by key sends the first place and means the middle.</summary>
    /// <param name="across">What the browser sent: to the right.</param>
    /// <param name="down">Downwards.</param>
    /// <param name="wide">Whether the picture was shown wide.</param>
    /// <param name="widthPixels">Width of the photograph.</param>
    /// <param name="heightPixels">Its height.</param>
    /// <returns>Null when nothing was pressed.</returns>
    internal static PixelPoint? Of(string? across, string? down, bool wide, int widthPixels, int heightPixels)
    {
        if (!int.TryParse(across, CultureInfo.InvariantCulture, out int x) || !int.TryParse(down, CultureInfo.InvariantCulture, out int y)) return null;
        if (x == 0 && y == 0) return new PixelPoint((widthPixels - 1) / 2.0, (heightPixels - 1) / 2.0);
        double scale = widthPixels / (double)(wide ? Wide : Narrow);
        return Inside(new PixelPoint((x + 0.5) * scale - 0.5, (y + 0.5) * scale - 0.5), widthPixels, heightPixels);
    }

    /// <summary>The nearest place in the picture.</summary>
    internal static PixelPoint Inside(PixelPoint p, int widthPixels, int heightPixels) => new(Math.Clamp(p.X, 0, widthPixels - 1), Math.Clamp(p.Y, 0, heightPixels - 1));

    /// <summary>Height of the picture as it is shown.</summary>
    internal static int Height(bool wide, int widthPixels, int heightPixels) => (int)Math.Round((wide ? Wide : Narrow) * (double)heightPixels / widthPixels);
}
