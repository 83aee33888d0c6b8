namespace Alumroot.App.Words;

/// <summary>A number ready for the page: figure, unit and span apart.</summary>
/// <param name="Value">The figure: "19.7".</param>
/// <param name="Unit">Its unit; null for none.</param>
/// <param name="Span">The span without brackets: "18.4 to 21.6"; null where the value is exact.</param>
public sealed record Shown(string Value, string? Unit, string? Span)
{
    /// <summary>All in one line: "19.7 g (18.4 to 21.6)".</summary>
    public string Line => $"{Value}{(Unit is null ? "" : "\u00A0" + Unit)}{(Span is null ? "" : $" ({Span})")}";

    /// <summary>Figure and unit: "19.7 g".</summary>
    public string Plain => Unit is null ? Value : $"{Value}\u00A0{Unit}";

    /// <summary>Takes a text of the shape "19.7 g (18.4 to 21.6)" apart.</summary>
    public static Shown From(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        int bracket = text.IndexOf('(', StringComparison.Ordinal);
        string head = (bracket < 0 ? text : text[..bracket]).Trim();
        string? span = bracket < 0 ? null : text[(bracket + 1)..].TrimEnd(')', ' ');
        int from = head.StartsWith("< ", StringComparison.Ordinal) ? 2 : 0;
        int blank = head.IndexOf(' ', from);
        return blank < 0 ? new Shown(head, null, span) : new Shown(head[..blank], head[(blank + 1)..], span);
    }
}
