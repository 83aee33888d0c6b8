namespace Alumroot.App.Parts;

/// <summary>Where a number comes from, said in one word beside it.</summary>
public enum SourceWord
{
    /// <summary>Computed by this program from inputs and constants.</summary>
    Reckoned,

    /// <summary>Read at the bench, or given by the maker.</summary>
    Measured,

    /// <summary>Taken because nobody said otherwise.</summary>
    Assumed,
}
