using Alumroot.Studio.Journal;

namespace Alumroot.Studio.Exchange;

/// <summary>What came of an import.</summary>
public abstract record ImportOutcome
{
    private ImportOutcome()
    {
    }

    /// <summary>It was merged.</summary>
    /// <param name="AddedCount">Entries that were new here.</param>
    /// <param name="AlreadyThereCount">Entries that were here, the same to the letter.</param>
    /// <param name="Conflicts">Numbers under which another entry stands here. The one here stays; the other is kept aside.</param>
    /// <param name="PhotosAdded">Photographs that were new here.</param>
    /// <param name="PhotosMissing">Hashes that entries name and neither the file nor the folder has.</param>
    public sealed record Merged(int AddedCount, int AlreadyThereCount, IReadOnlyList<EntryId> Conflicts, int PhotosAdded, IReadOnlyList<string> PhotosMissing) : ImportOutcome;

    /// <summary>It was not taken, and nothing was changed in the record.</summary>
    /// <param name="Why">Why not.</param>
    /// <param name="Where">The file or line within that is to blame; may be empty.</param>
    public sealed record Refused(ImportRefusal Why, string Where) : ImportOutcome;
}

/// <summary>Why a file cannot be imported.</summary>
public enum ImportRefusal
{
    /// <summary>There is no such file, or it may not be read.</summary>
    CannotRead,

    /// <summary>It is no zip, or a damaged one.</summary>
    NotAZip,

    /// <summary>It is a zip, but not an exported studio.</summary>
    NotAStudio,

    /// <summary>A newer version of this program wrote it.</summary>
    Newer,

    /// <summary>It holds a file of a name that no export has.</summary>
    StrangeName,

    /// <summary>It holds more files, or larger ones, than a studio can, or unpacks to many times its size.</summary>
    TooLarge,

    /// <summary>A line or photograph is not what it was when it was exported.</summary>
    Damaged,
}
