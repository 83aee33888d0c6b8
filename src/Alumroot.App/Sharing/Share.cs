using System.Collections.Concurrent;
using System.Net;
using System.Security.Cryptography;
using Microsoft.AspNetCore.DataProtection;

namespace Alumroot.App.Sharing;

/// <summary>Whether others on the local network are let in, and who was. One for each run of the program.</summary>
public sealed class Share
{
    /// <summary>The cookie of a visitor who gave the passphrase.</summary>
    public const string Cookie = "alumroot-entered";

    /// <summary>How long the passphrase need not be given again.</summary>
    public static readonly TimeSpan Stay = TimeSpan.FromDays(30);

    private readonly Passphrase? _passphrase;
    private readonly ITimeLimitedDataProtector _seal;
    private readonly ConcurrentDictionary<string, byte> _visitors = new();
    private volatile bool _open;

    /// <summary>A share; closed from the beginning when there is no passphrase.</summary>
    /// <param name="passphrase">What visitors have to give, or null.</param>
    /// <param name="names">The names by which this machine is reached from the network.</param>
    /// <param name="protection">Signs the cookies with the studio's keys.</param>
    public Share(Passphrase? passphrase, IReadOnlyList<string> names, IDataProtectionProvider protection)
    {
        (_passphrase, _open) = (passphrase, passphrase is not null);
        Names = names;
        _seal = protection.CreateProtector("Alumroot.Sharing").ToTimeLimitedDataProtector();
    }

    /// <summary>Whether the program was started to be shared.</summary>
    public bool WasOpened => _passphrase is not null;

    /// <summary>Whether others are let in now.</summary>
    public bool IsOpen => _open;

    /// <summary>The names that a request may bear beside those of the loopback.</summary>
    public IReadOnlyList<string> Names { get; }

    /// <summary>How many visitors were let in since the program started.</summary>
    public int VisitorCount => _visitors.Count;

    /// <summary>Whether a request comes from this machine itself.</summary>
    public static bool IsOwn(HttpContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.Connection.RemoteIpAddress is { } from && IPAddress.IsLoopback(from.IsIPv4MappedToIPv6 ? from.MapToIPv4() : from);
    }

    /// <summary>Lets nobody in any more until the program is started anew.</summary>
    public void Close() => _open = false;

    /// <summary>A cookie for whoever gives the right passphrase; null for any other.</summary>
    public string? Enter(string? typed)
    {
        if (!_open || _passphrase is null || !_passphrase.Matches(typed)) return null;
        string visitor = Guid.NewGuid().ToString("N");
        _visitors.TryAdd(visitor, 0);
        return _seal.Protect($"{Mark} {visitor}", Stay);
    }

    /// <summary>Whether a cookie was given out for the passphrase that counts now.</summary>
    public bool HasEntered(string? cookie)
    {
        if (string.IsNullOrEmpty(cookie) || _passphrase is null) return false;
        try
        {
            if (_seal.Unprotect(cookie).Split(' ') is not [var mark, var visitor] || mark != Mark) return false;
            _visitors.TryAdd(visitor, 0);
            return true;
        }
        catch (CryptographicException)
        {
            return false;
        }
    }

    // Another passphrase has another salt, and the old cookies are worth nothing.
    private string Mark => Convert.ToHexStringLower(_passphrase!.Salt);
}
