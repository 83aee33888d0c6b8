namespace Alumroot.Studio.Journal;

/// <summary>Whether an entry counts today.</summary>
public enum Standing
{
    /// <summary>It counts.</summary>
    Stands,

    /// <summary>A correction took its place. It is kept.</summary>
    Superseded,

    /// <summary>It was undone. It is kept.</summary>
    Withdrawn,
}

/// <summary>An entry and whether it counts.</summary>
/// <param name="Entry">The entry.</param>
/// <param name="Standing">Whether it counts.</param>
/// <param name="By">The entry that took its place or undid it, or null.</param>
public sealed record StandingEntry(Entry Entry, Standing Standing, EntryId? By);
