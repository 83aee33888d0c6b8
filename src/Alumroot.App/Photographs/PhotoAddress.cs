namespace Alumroot.App.Photographs;

/// <summary>Where a photograph is measured, with what was chosen and shown on the way.</summary>
/// <param name="Hash">The photograph.</param>
/// <param name="Target">The target to look for.</param>
/// <param name="Card">Number of the area that is a plain card.</param>
/// <param name="Marks">What a person showed in it.</param>
internal sealed record PhotoAddress(string Hash, string? Target, string? Card, PhotoMarks Marks)
{
    /// <summary>The page that tells the colours.</summary>
    public override string ToString() => $"/colours/photo/{Hash}{Query()}";

    /// <summary>The page on which corners are shown.</summary>
    internal string Corners(params (string Name, string? Value)[] more) => $"/colours/photo/{Hash}/corners{Query(more)}";

    /// <summary>The page on which its areas are read as drops of a spot test.</summary>
    internal string Spot => $"/trials/spot{Query(("photo", Hash))}";

    /// <summary>What a form carries along.</summary>
    internal IEnumerable<(string Name, string Value)> Fields(params (string Name, string? Value)[] more) =>
        new[] { ("target", Target), ("card", Card), ("corners", Marks.CornersText), ("areas", Marks.AreasText) }.Concat(more).Where(f => !string.IsNullOrEmpty(f.Item2)).Select(f => (f.Item1, f.Item2!));

    private string Query(params (string Name, string? Value)[] more)
    {
        string query = string.Join('&', Fields(more).Select(f => $"{f.Name}={Uri.EscapeDataString(f.Value)}"));
        return query.Length == 0 ? "" : $"?{query}";
    }
}
