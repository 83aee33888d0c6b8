namespace Alumroot.App.Words;

/// <summary>How a piece of a line is marked.</summary>
public enum ProseMark
{
    /// <summary>Plain words.</summary>
    None,

    /// <summary>Heavier.</summary>
    Strong,

    /// <summary>Stressed.</summary>
    Stress,

    /// <summary>A name from the code or a formula.</summary>
    Code,
}
