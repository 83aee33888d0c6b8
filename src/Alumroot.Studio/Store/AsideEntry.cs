using Alumroot.Studio.Journal;

namespace Alumroot.Studio.Store;

/// <summary>An entry that came by an import under a number that belongs to another entry here.</summary>
/// <param name="Other">The one that came; it does not count.</param>
/// <param name="Here">The one that stands here.</param>
/// <param name="At">When it came.</param>
public sealed record AsideEntry(Entry Other, Entry Here, DateTimeOffset At);
