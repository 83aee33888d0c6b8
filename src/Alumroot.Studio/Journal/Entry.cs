using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Alumroot.Studio.Journal;

/// <summary>One observation. Immutable: a correction is another entry that names this one.</summary>
public sealed record Entry
{
    /// <summary>An entry.</summary>
    /// <param name="id">Its own number.</param>
    /// <param name="subject">What it is about.</param>
    /// <param name="kind">Which document the content is.</param>
    /// <param name="payload">The content.</param>
    /// <param name="at">When, with the zone; kept to the millisecond and the minute of the zone.</param>
    /// <param name="corrects">The entry that this one takes the place of, or null.</param>
    /// <exception cref="ArgumentException">The kind is not well formed, or the entry corrects itself.</exception>
    public Entry(EntryId id, SubjectKey subject, DocumentKind kind, Payload payload, DateTimeOffset at, EntryId? corrects = null)
    {
        ArgumentNullException.ThrowIfNull(payload);
        if (!kind.IsWellFormed) throw new ArgumentException($"'{kind}' is not the name and version of a document.", nameof(kind));
        if (corrects == id) throw new ArgumentException("An entry cannot correct itself.", nameof(corrects));
        (Id, Subject, Kind, Payload, Corrects) = (id, subject, kind, payload, corrects);
        At = DateTimeOffset.FromUnixTimeMilliseconds(at.ToUnixTimeMilliseconds()).ToOffset(at.Offset);
        string canonical = string.Join('\n', Id, Subject, Kind, At.ToString("yyyy-MM-dd'T'HH:mm:ss.fffzzz", CultureInfo.InvariantCulture), Corrects?.Text ?? "", Payload.Text);
        Checksum = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(canonical)));
    }

    /// <summary>Its own number.</summary>
    public EntryId Id { get; }

    /// <summary>What it is about.</summary>
    public SubjectKey Subject { get; }

    /// <summary>Which document the content is.</summary>
    public DocumentKind Kind { get; }

    /// <summary>The content.</summary>
    public Payload Payload { get; }

    /// <summary>When, with the zone of who wrote it.</summary>
    public DateTimeOffset At { get; }

    /// <summary>The entry that this one takes the place of, or null.</summary>
    public EntryId? Corrects { get; }

    /// <summary>SHA-256 over all of the above, in lower-case hexadecimal.</summary>
    public string Checksum { get; }

    /// <summary>Whether another entry says the same, whenever it was sent: what a second press of the same button makes.</summary>
    public bool SaysTheSameAs(Entry other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return (Id, Subject, Kind, Corrects) == (other.Id, other.Subject, other.Kind, other.Corrects) && Payload == other.Payload;
    }
}
