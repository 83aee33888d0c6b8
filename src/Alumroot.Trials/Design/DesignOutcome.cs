namespace Alumroot.Trials.Design;

/// <summary>Why a trial cannot be designed as asked.</summary>
public enum DesignRefusal
{
    /// <summary>No factor, or more than are handled.</summary>
    FactorCount,

    /// <summary>A factor with a single level, or more levels than are handled.</summary>
    LevelCount,

    /// <summary>More jars than anyone makes.</summary>
    TooManyJars,

    /// <summary>A fraction needs factors of two levels.</summary>
    NeedsTwoLevels,

    /// <summary>So few jars cannot hold so many factors.</summary>
    TooFewJars,

    /// <summary>A Latin square needs three factors with the same number of levels.</summary>
    NeedsSquare,

    /// <summary>The forbidden pairs leave too little.</summary>
    ForbiddenLeavesTooLittle,

    /// <summary>Only a design of the kind "best" or "full" can leave pairs out.</summary>
    ForbiddenNotHere,

    /// <summary>The blocks do not divide the jars evenly in a way that keeps the effects apart.</summary>
    BlocksDoNotFit,
}

/// <summary>A design, or why there is none.</summary>
public abstract record DesignOutcome
{
    private DesignOutcome()
    {
    }

    /// <summary>The trial.</summary>
    /// <param name="Design">Its jars.</param>
    public sealed record Made(TrialDesign Design) : DesignOutcome;

    /// <summary>Why not.</summary>
    /// <param name="Why">The reason.</param>
    /// <param name="Needed">The number that would do, where there is one: jars, levels or factors.</param>
    public sealed record Refused(DesignRefusal Why, int? Needed = null) : DesignOutcome;
}
