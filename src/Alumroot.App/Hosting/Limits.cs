using Alumroot.Studio.Photos;

namespace Alumroot.App.Hosting;

/// <summary>How much one request may bring.</summary>
public static class Limits
{
    /// <summary>Bytes of one request: a few of the largest photographs, or an exported studio.</summary>
    public const long MostRequestBytes = 4 * PhotoFolder.MostBytes;
}
