namespace Alumroot.Catalogue;

/// <summary>Whether the program plans with a substance.</summary>
public enum Stance
{
    /// <summary>Planned with ordinary cautions.</summary>
    Ok,

    /// <summary>Planned, and its cautions are always shown.</summary>
    Care,

    /// <summary>Planned, but corrosive, sensitising or poisonous to water life: protection is asked for at each step.</summary>
    StrongCare,

    /// <summary>Never planned: the reason and what to use instead are given, and no amounts.</summary>
    Refused,
}
