using Alumroot.App.Bench;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Store;

namespace Alumroot.App.Recording;

/// <summary>A form that was sent: its fields, its own entry number, and when it came.</summary>
public sealed class Posted
{
    private readonly IFormCollection _form;

    /// <summary>Takes a form.</summary>
    /// <param name="form">The fields.</param>
    /// <param name="clock">Whose time is noted.</param>
    public Posted(IFormCollection form, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(clock);
        _form = form;
        At = clock.GetLocalNow();
        Id = EntryId.TryRead(Text(BenchForm.Entry)) ?? EntryId.New(At);
    }

    /// <summary>When it came.</summary>
    public DateTimeOffset At { get; }

    /// <summary>The entry number that the form carries; a new one when it carries none.</summary>
    public EntryId Id { get; }

    /// <summary>The latest entry that the maker had seen; null when the form does not say.</summary>
    public EntryId? Seen => EntryId.TryRead(Text(BenchForm.After));

    /// <summary>The files sent along.</summary>
    public IFormFileCollection Files => _form.Files;

    /// <summary>A field as typed; null when it is blank.</summary>
    public string? Text(string field) => _form[field].ToString() is { } text && !string.IsNullOrWhiteSpace(text) ? text.Trim() : null;

    /// <summary>Adds an entry about something that is there already.</summary>
    /// <param name="studio">Where to.</param>
    /// <param name="subject">What it is about.</param>
    /// <param name="document">What it says.</param>
    /// <param name="corrects">The entry it takes the place of.</param>
    public AppendResult Keep(StudioStore studio, SubjectKey subject, StudioDocument document, EntryId? corrects = null)
    {
        ArgumentNullException.ThrowIfNull(studio);
        return studio.Append(document.ToEntry(Id, subject, At, corrects), Seen);
    }
}
