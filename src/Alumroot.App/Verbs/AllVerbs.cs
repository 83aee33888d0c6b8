using Alumroot.App.Output;

namespace Alumroot.App.Verbs;

/// <summary>The verbs there are. A new verb is a file beside this one and a line here.</summary>
public static class AllVerbs
{
    /// <summary>The verb taken when none is typed.</summary>
    public const string Default = ServeVerb.Name;

    /// <summary>All verbs, in the order of the help.</summary>
    /// <param name="channels">Where they write.</param>
    public static IReadOnlyList<Verb> Build(Channels channels) =>
    [
        ServeVerb.Build(channels),
        PlanVerb.Build(channels),
        SolveVerb.Build(channels),
        ColourVerb.Build(channels),
        FilmVerb.Build(channels),
        MeasureVerb.Build(channels),
        MatchVerb.Build(channels),
        PaintVerb.Build(channels),
        FadeVerb.Build(channels),
        TrialVerb.Build(channels),
        LadderVerb.Build(channels),
        LookupVerb.Build(channels),
        RecordVerb.Build(channels),
        ListVerb.Build(channels),
        ShowVerb.Build(channels),
        ExportVerb.Build(channels),
        ImportVerb.Build(channels),
        BackupVerb.Build(channels),
        CheckVerb.Build(channels),
    ];
}
