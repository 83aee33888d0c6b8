using System.Security.Cryptography;

namespace Alumroot.App.Sharing;

/// <summary>A passphrase as it is kept: salted and stretched, so that the file does not give it away.</summary>
/// <param name="Iterations">How often it was stretched.</param>
/// <param name="Salt">Drawn anew for each passphrase.</param>
/// <param name="Hash">PBKDF2 with HMAC-SHA-256 [rfc8018] of the passphrase.</param>
public sealed record Passphrase(int Iterations, byte[] Salt, byte[] Hash)
{
    /// <summary>OWASP, Password Storage Cheat Sheet, for PBKDF2 with HMAC-SHA-256.</summary>
    public const int UsualIterations = 600_000;

    /// <summary>The fewest characters that a passphrase may have: three or four plain words.</summary>
    public const int LeastCharacters = 12;

    /// <summary>The most characters; more would only cost time.</summary>
    public const int MostCharacters = 200;

    private const int SaltBytes = 16, HashBytes = 32;

    /// <summary>Which of the texts can be passphrases.</summary>
    public static bool IsUsable(string? typed) => typed?.Trim().Length is >= LeastCharacters and <= MostCharacters;

    /// <summary>Makes what is kept of a passphrase; blanks around it do not count.</summary>
    public static Passphrase Of(string typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        if (!IsUsable(typed)) throw new ArgumentException("The passphrase is too short or too long.", nameof(typed));
        byte[] salt = RandomNumberGenerator.GetBytes(SaltBytes);
        return new Passphrase(UsualIterations, salt, Stretched(typed, salt, UsualIterations));
    }

    /// <summary>Whether this is the passphrase. Takes the same time wherever it differs.</summary>
    public bool Matches(string? typed) => typed is { Length: <= 2 * MostCharacters } && CryptographicOperations.FixedTimeEquals(Stretched(typed, Salt, Iterations), Hash);

    private static byte[] Stretched(string typed, byte[] salt, int iterations) =>
        Rfc2898DeriveBytes.Pbkdf2(typed.Trim(), salt, iterations, HashAlgorithmName.SHA256, HashBytes);
}
