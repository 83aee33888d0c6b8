namespace Alumroot.Studio;

/// <summary>What can go wrong with the folder of a studio.</summary>
public enum TroubleKind
{
    /// <summary>There is no studio in the folder.</summary>
    Missing,

    /// <summary>The folder or a file in it cannot be written.</summary>
    Unwritable,

    /// <summary>The disk or the room allowed is full.</summary>
    Full,

    /// <summary>Another program holds the studio open for writing.</summary>
    Locked,

    /// <summary>A newer version of this program wrote it.</summary>
    Newer,

    /// <summary>The file of the record is damaged.</summary>
    Damaged,
}

/// <summary>Why the record could not be read or written.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Detail">What the machine says, for who wants to look closer.</param>
public sealed record StudioFailure(TroubleKind Kind, string Detail);

/// <summary>The world outside failed: disk, rights, lock. What was acknowledged before is on disk; what was being written is not in the record.</summary>
public sealed class StudioException : Exception
{
    /// <summary>A failure.</summary>
    public StudioException(StudioFailure failure, Exception? cause = null)
        : base(failure?.Detail, cause) => Failure = failure ?? throw new ArgumentNullException(nameof(failure));

    /// <summary>What failed.</summary>
    public StudioFailure Failure { get; }
}
