namespace Alumroot.App.Parts;

/// <summary>The word a caution starts with: how far the plan may go on.</summary>
public enum CautionWord
{
    /// <summary>An ordinary hazard at a step.</summary>
    Mind,

    /// <summary>Two statements quarrel.</summary>
    DoesNotAddUp,

    /// <summary>The aim is out of reach.</summary>
    CannotReach,

    /// <summary>Unsafe as asked: amounts are withheld until something changes.</summary>
    ChangeThisFirst,

    /// <summary>Not made at home: no amounts at all.</summary>
    WillNotPlan,
}
