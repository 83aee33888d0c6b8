using System.Text.RegularExpressions;

namespace Alumroot.Studio.Journal;

/// <summary>The number an entry bears for ever. Whoever makes the entry gives it, so that a resend of the same form is the same entry.</summary>
/// <remarks>Immutable. A GUID, a ULID or any other 8 to 64 letters, digits and dashes; case does not matter.</remarks>
public readonly partial record struct EntryId
{
    private EntryId(string text) => Text = text;

    /// <summary>The number as text, in lower case.</summary>
    public string Text => field ?? "";

    /// <summary>A new number that sorts by its time.</summary>
    /// <param name="at">When the entry is made.</param>
    public static EntryId New(DateTimeOffset at) => new(Guid.CreateVersion7(at).ToString());

    /// <summary>Reads a number; null when the text cannot be one.</summary>
    public static EntryId? TryRead(string? text) => text is not null && Shape().IsMatch(text) ? new EntryId(text.ToLowerInvariant()) : null;

    /// <summary>The number as text.</summary>
    public override string ToString() => Text;

    [GeneratedRegex(@"\A[A-Za-z0-9][A-Za-z0-9-]{7,63}\z")]
    private static partial Regex Shape();
}
