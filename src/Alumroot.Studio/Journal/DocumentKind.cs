using System.Text.RegularExpressions;

namespace Alumroot.Studio.Journal;

/// <summary>Which document an entry holds, and in which version of its fields. Immutable.</summary>
/// <param name="Name">Lower-case letters and dashes, such as <c>batch-step</c>.</param>
/// <param name="Version">From 1.</param>
public readonly partial record struct DocumentKind(string Name, int Version)
{
    /// <summary>Whether the name and version are well formed.</summary>
    public bool IsWellFormed => Name is not null && Version is >= 1 and <= 9999 && Shape().IsMatch(Name);

    /// <summary>Name and version: <c>batch-step/1</c>.</summary>
    public override string ToString() => $"{Name}/{Version}";

    [GeneratedRegex(@"\A[a-z][a-z-]{1,39}\z")]
    private static partial Regex Shape();
}
