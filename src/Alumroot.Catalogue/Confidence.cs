namespace Alumroot.Catalogue;

/// <summary>How far a row of the catalogue may be trusted.</summary>
public enum Confidence
{
    /// <summary>A guess from relatives, or one weak source.</summary>
    Low,

    /// <summary>One fair source, or a well-known fact carried from memory.</summary>
    Medium,

    /// <summary>A document was read, or the value is computed from exact figures, or the books of the field agree on it.</summary>
    High,
}
