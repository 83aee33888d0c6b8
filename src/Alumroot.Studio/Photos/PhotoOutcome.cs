namespace Alumroot.Studio.Photos;

/// <summary>What came of a photograph that was handed in.</summary>
public abstract record PhotoOutcome
{
    private PhotoOutcome()
    {
    }

    /// <summary>It is on disk, to the byte as it came.</summary>
    /// <param name="Hash">SHA-256 in lower-case hexadecimal, by which entries name it.</param>
    public sealed record Kept(string Hash) : PhotoOutcome;

    /// <summary>It was not taken; nothing of it is on disk.</summary>
    /// <param name="Why">Why not.</param>
    public sealed record Refused(PhotoRefusal Why) : PhotoOutcome;
}

/// <summary>Why a photograph is not taken.</summary>
public enum PhotoRefusal
{
    /// <summary>Its first bytes are not those of a JPEG, PNG or WebP picture, whatever its name says.</summary>
    NotAPicture,

    /// <summary>More than <see cref="PhotoFolder.MostBytes"/>.</summary>
    TooManyBytes,

    /// <summary>Its head names more than <see cref="PhotoFolder.MostPixels"/>; the pixels were not asked for.</summary>
    TooManyPixels,

    /// <summary>It begins like a picture, but cannot be read to its end.</summary>
    Broken,

    /// <summary>It holds several pictures that follow one another.</summary>
    Moving,
}

/// <summary>The kinds of picture that are kept.</summary>
public enum PhotoKind
{
    /// <summary>ITU T.81.</summary>
    Jpeg,

    /// <summary>ISO/IEC 15948.</summary>
    Png,

    /// <summary>RFC 9649.</summary>
    WebP,
}
