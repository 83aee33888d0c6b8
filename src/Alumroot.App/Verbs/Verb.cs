using System.CommandLine;
using System.Diagnostics.CodeAnalysis;

namespace Alumroot.App.Verbs;

/// <summary>One verb of the command line: a command that also shows three examples.</summary>
[SuppressMessage("Design", "CA1010", Justification = "The base class lists its children for collection initialisers only.")]
public sealed class Verb : Command
{
    /// <summary>A verb without options yet.</summary>
    /// <param name="name">The word typed after <c>alumroot</c>.</param>
    /// <param name="summary">One sentence: what it does.</param>
    /// <param name="examples">Whole command lines, each of them true as written.</param>
    public Verb(string name, string summary, params IReadOnlyList<string> examples)
        : base(name, summary) => Examples = examples;

    /// <summary>Whole command lines shown by the help.</summary>
    public IReadOnlyList<string> Examples { get; }
}
