namespace Alumroot.Paint.Suiting;

/// <summary>How a medium bears a kind of colour, mildest first.</summary>
public enum SuitRating
{
    /// <summary>No conflict is known.</summary>
    Works,

    /// <summary>It goes, with something to do or to expect.</summary>
    Caution,

    /// <summary>The colour is lost or does not hold.</summary>
    Avoid,
}
