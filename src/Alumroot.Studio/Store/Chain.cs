using System.Security.Cryptography;
using System.Text;

namespace Alumroot.Studio.Store;

/// <summary>Ties each entry of a file to all before it, so that one that was taken out or changed is missed.</summary>
internal static class Chain
{
    /// <summary>What the first entry is tied to.</summary>
    public const string Start = "alumroot";

    /// <summary>SHA-256 of the link before and the entry's checksum, in lower-case hexadecimal.</summary>
    public static string Next(string before, string checksum) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"{before}\n{checksum}")));
}
