namespace Alumroot.Catalogue;

/// <summary>How grave a caution is, from least to most.</summary>
public enum Severity
{
    /// <summary>Spoils work or is only worth knowing.</summary>
    Note,

    /// <summary>Ordinary hazard: harm is unlikely with the usual protection.</summary>
    Care,

    /// <summary>Can injure, poison, burn or explode.</summary>
    Danger,

    /// <summary>Not planned at all.</summary>
    Refuse,
}
