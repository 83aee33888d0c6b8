using Alumroot.Studio.Journal;

namespace Alumroot.App.Words;

/// <summary>How far a lake has come, in words.</summary>
public static class StageWords
{
    /// <summary>"on the cloth".</summary>
    public static string Of(BatchStage? stage) => stage is { } known ? SubjectLine.Word(known).Replace('-', ' ') : "not known";

    /// <summary>All stages that a list can be narrowed to, in the order of the work.</summary>
    public static IReadOnlyList<BatchStage> All { get; } = Enum.GetValues<BatchStage>();
}
