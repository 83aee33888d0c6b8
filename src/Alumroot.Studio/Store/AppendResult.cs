using Alumroot.Studio.Journal;

namespace Alumroot.Studio.Store;

/// <summary>What came of an entry that was handed in.</summary>
public abstract record AppendResult
{
    private AppendResult()
    {
    }

    /// <summary>It is on disk.</summary>
    /// <param name="Entry">The entry.</param>
    public sealed record Kept(Entry Entry) : AppendResult;

    /// <summary>An entry with this number and content was there already: one entry it remains.</summary>
    /// <param name="Entry">The one that was there.</param>
    public sealed record AlreadyThere(Entry Entry) : AppendResult;

    /// <summary>The number belongs to an entry that says something else. That one stays; nothing was added.</summary>
    /// <param name="Existing">The one that was there.</param>
    public sealed record NumberTaken(Entry Existing) : AppendResult;

    /// <summary>The entry to be corrected is not in this record, or is about another subject.</summary>
    /// <param name="Corrects">The number that was given.</param>
    public sealed record NothingToCorrect(EntryId Corrects) : AppendResult;

    /// <summary>Something was kept about the subject that the maker had not seen, from another device perhaps; nothing was added.</summary>
    /// <param name="Latest">What was kept last.</param>
    public sealed record MovedOn(Entry Latest) : AppendResult;

    /// <summary>A photograph that the entry names is not in the folder.</summary>
    /// <param name="Hash">Its hash.</param>
    public sealed record PhotoMissing(string Hash) : AppendResult;
}
