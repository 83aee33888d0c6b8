using Alumroot.Studio.Journal;

namespace Alumroot.Studio.Store;

/// <summary>A row of <c>entry</c>.</summary>
internal sealed record EntryRow(
    long Sequence, string Id, string Subject, string Document, int DocumentVersion, string PayloadJson, long AtUnixMs, int AtZoneMinutes, string? CorrectsId, string Checksum, string Chain)
{
    public static EntryRow Of(Entry entry, long sequence, string chain) => new(
        sequence, entry.Id.Text, entry.Subject.ToString(), entry.Kind.Name, entry.Kind.Version, entry.Payload.Text,
        entry.At.ToUnixTimeMilliseconds(), (int)entry.At.Offset.TotalMinutes, entry.Corrects?.Text, entry.Checksum, chain);

    /// <summary>The entry, or null when a column cannot be read any more.</summary>
    public Entry? TryEntry()
    {
        var kind = new DocumentKind(Document, DocumentVersion);
        if (EntryId.TryRead(Id) is not { } id || SubjectKey.TryRead(Subject) is not { } subject || Payload.TryRead(PayloadJson) is not { } payload || !kind.IsWellFormed) return null;
        EntryId? corrects = EntryId.TryRead(CorrectsId);
        if (CorrectsId is not null && (corrects is null || corrects == id)) return null;
        return Moment.TryRead(AtUnixMs, AtZoneMinutes) is { } at ? new Entry(id, subject, kind, payload, at, corrects) : null;
    }

    /// <summary>The entry.</summary>
    /// <exception cref="StudioException">A column cannot be read any more.</exception>
    public Entry ToEntry() => TryEntry() ?? throw new StudioException(new StudioFailure(TroubleKind.Damaged, $"entry {Id} cannot be read"));
}

/// <summary>A row of <c>entry_photo</c>.</summary>
internal sealed record PhotoRow(long Sequence, string Hash);

/// <summary>A row of <c>entry_use</c>.</summary>
internal sealed record UseRow(long Sequence, string Lot);

/// <summary>A row of <c>kept_aside</c>.</summary>
internal sealed record AsideRow(string Id, string Checksum, string EntryJson, long AsideUnixMs);

/// <summary>A row of <c>subject</c>: the projection of one subject, kept for lists.</summary>
internal sealed record SubjectRow(string Subject, string Class, string Title, string Stage, long FirstUnixMs, int FirstZoneMinutes, long LastUnixMs, int LastZoneMinutes, int EntryCount)
{
    /// <summary>Counts up when a line is worked out otherwise than before.</summary>
    public const int PresentProjection = 3;

    public int Projection { get; init; } = PresentProjection;

    public string Dyestuff { get; init; } = "";

    public string Salt { get; init; } = "";

    public double? PigmentKg { get; init; }

    public long? DueUnixMs { get; init; }

    public int? DueZoneMinutes { get; init; }

    public string Tags { get; init; } = "";

    /// <summary>The number of its text in the search; null before it has one.</summary>
    public long? SearchRow { get; init; }

    public static SubjectRow Of(SubjectLine line) => new(
        line.Subject.ToString(), SubjectLine.Word(line.Subject.Class), line.Title, line.Stage, line.FirstAt.ToUnixTimeMilliseconds(), (int)line.FirstAt.Offset.TotalMinutes,
        line.LastAt.ToUnixTimeMilliseconds(), (int)line.LastAt.Offset.TotalMinutes, line.EntryCount)
    {
        Dyestuff = line.Dyestuff,
        Salt = line.Salt,
        PigmentKg = line.PigmentKg,
        DueUnixMs = line.DueAt?.ToUnixTimeMilliseconds(),
        DueZoneMinutes = (int?)line.DueAt?.Offset.TotalMinutes,
        Tags = line.Tags,
    };

    public SubjectLine? TryLine() => SubjectKey.TryRead(Subject) is { } key && Moment.TryRead(FirstUnixMs, FirstZoneMinutes) is { } first && Moment.TryRead(LastUnixMs, LastZoneMinutes) is { } last
        ? new SubjectLine(key, Title, Stage, first, last, EntryCount)
        {
            Dyestuff = Dyestuff,
            Salt = Salt,
            PigmentKg = PigmentKg,
            DueAt = DueUnixMs is { } due ? Moment.TryRead(due, DueZoneMinutes ?? 0) : null,
            Tags = Tags,
        }
        : null;
}

/// <summary>A time with its zone from two columns.</summary>
internal static class Moment
{
    private const int MostZoneMinutes = 14 * 60;

    public static DateTimeOffset? TryRead(long unixMs, int zoneMinutes)
    {
        if (Math.Abs(zoneMinutes) > MostZoneMinutes || Math.Abs(unixMs) > 100_000_000_000_000) return null;
        DateTimeOffset utc;
        try
        {
            utc = DateTimeOffset.FromUnixTimeMilliseconds(unixMs);
            return utc.ToOffset(TimeSpan.FromMinutes(zoneMinutes));
        }
        catch (ArgumentOutOfRangeException)
        {
            return null;
        }
    }
}
