using System.Text;

namespace Alumroot.App.Requests;

/// <summary>A plan as it was asked for: names and what was typed, nothing read yet. Immutable; equal to its address.</summary>
public sealed class PlanRequest
{
    /// <summary>The address of the plan page.</summary>
    public const string Path = "/lakes/plan";

    private const int LongestField = 200;
    private readonly Dictionary<string, string> _fields;

    private PlanRequest(Dictionary<string, string> fields) => _fields = fields;

    /// <summary>Nothing asked yet.</summary>
    public static PlanRequest Empty { get; } = new([]);

    /// <summary>What was typed in a field; null when nothing was.</summary>
    public string? this[string field] => _fields.GetValueOrDefault(field);

    /// <summary>Whether nothing at all was typed.</summary>
    public bool IsEmpty => _fields.Count == 0;

    /// <summary>Takes the known fields from any source of names and texts; blanks count as not typed.</summary>
    public static PlanRequest From(Func<string, string?> typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        var fields = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (string name in PlanFields.All)
            if (typed(name) is { } text && !string.IsNullOrWhiteSpace(text)) fields[name] = Cut(text.Trim());
        return new PlanRequest(fields);
    }

    // Not through the middle of a character, and without a blank at the end, so that the address means the same again.
    private static string Cut(string text)
    {
        if (text.Length <= LongestField) return text;
        int end = char.IsHighSurrogate(text[LongestField - 1]) ? LongestField - 1 : LongestField;
        return text[..end].TrimEnd();
    }

    /// <summary>Takes the fields of an address, as <see cref="Address"/> gives it; null when it is not the address of a plan.</summary>
    public static PlanRequest? FromAddress(string address)
    {
        ArgumentNullException.ThrowIfNull(address);
        int at = address.IndexOf('?', StringComparison.Ordinal);
        if (at < 0 || !address[..at].EndsWith(Path, StringComparison.Ordinal)) return null;
        var fields = Microsoft.AspNetCore.WebUtilities.QueryHelpers.ParseQuery(address[at..]);
        return From(name => fields.TryGetValue(name, out var value) ? value.ToString() : null);
    }

    /// <summary>The same request with one field changed; null takes it away.</summary>
    public PlanRequest With(string field, string? typed)
    {
        var fields = new Dictionary<string, string>(_fields, StringComparer.Ordinal);
        if (string.IsNullOrWhiteSpace(typed)) fields.Remove(field);
        else fields[field] = Cut(typed.Trim());
        return new PlanRequest(fields);
    }

    /// <summary>The address that means this request.</summary>
    public string Address
    {
        get
        {
            var text = new StringBuilder(Path);
            char sign = '?';
            foreach (string name in PlanFields.All)
            {
                if (this[name] is not { } typed) continue;
                text.Append(sign).Append(name).Append('=').Append(Uri.EscapeDataString(typed));
                sign = '&';
            }
            return text.ToString();
        }
    }
}
