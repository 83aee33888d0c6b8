using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Verbs.Record;

/// <summary>What was asked to be recorded: an entry without its time, or the sentence that says why not.</summary>
/// <param name="Subject">What it is about; null for a new batch or lot.</param>
/// <param name="Document">What it says.</param>
/// <param name="Corrects">The entry it takes the place of.</param>
/// <param name="Trouble">Why nothing is recorded, or null.</param>
internal sealed record RecordDraft(SubjectKey? Subject, StudioDocument? Document, EntryId? Corrects = null, string? Trouble = null)
{
    /// <summary>How typed values were read, where that is worth saying.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];

    /// <summary>Reads the rest when the record is open, where that is needed; null when all is read.</summary>
    public Func<StudioStore, RecordDraft>? Later { get; init; }

    public static RecordDraft Wrong(string trouble) => new(null, null, Trouble: trouble);
}
