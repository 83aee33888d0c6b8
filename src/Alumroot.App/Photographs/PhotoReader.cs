using Alumroot.App.Words;
using Alumroot.Colour.Photograph;
using Alumroot.Studio.Photos;

namespace Alumroot.App.Photographs;

/// <summary>Pictures from files, as the engine reads them.</summary>
internal static class PhotoReader
{
    /// <summary>The picture, or the sentence that says why there is none.</summary>
    internal static (Raster? Picture, string? Mistake) Read(string path)
    {
        string name = Path.GetFileName(path);
        try
        {
            if (PhotoPixels.TryRead(path, out PhotoPixels? pixels) is { } refusal) return (null, StudioWords.Of(refusal, name));
            return (Of(pixels!), null);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return (null, $"'{path}' could not be read. Check the name and whether you may read it.");
        }
    }

    /// <summary>The pixels of a photograph as the engine takes them.</summary>
    internal static Raster Of(PhotoPixels pixels)
    {
        IReadOnlyList<double> m = pixels.ToXyzD50;
        return new Raster(pixels.WidthPixels, pixels.HeightPixels, pixels.Rgb, new PixelColours(pixels.LinearOfByte, m[0], m[1], m[2], m[3], m[4], m[5], m[6], m[7], m[8]));
    }
}
