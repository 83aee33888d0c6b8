namespace Alumroot.Colour.Photograph;

/// <summary>Which kinds of correction are tried, from the stiffest to the most supple.</summary>
public enum CorrectionKind
{
    /// <summary>Nothing in the picture is known; colours stay as the camera wrote them.</summary>
    None,

    /// <summary>A gain for each channel from a plain card.</summary>
    Card,

    /// <summary>A gain for each channel, and the file's own colours.</summary>
    WhiteBalance,

    /// <summary>Nine numbers: a matrix from the camera's light to tristimulus values.</summary>
    Matrix,

    /// <summary>The matrix and roots of products of two channels (Finlayson, Mackiewicz and Hurlbert 2015), held towards the matrix.</summary>
    RootPolynomial,

    /// <summary>The root polynomial, and a smooth rest that is learned from near colours of the target (kriging).</summary>
    SmoothRest,
}

/// <summary>How supple a correction is: standard deviations that its parts may have before the target is seen.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="MatrixScale">Of the entries of the matrix about those of the white balance, as shares of white.</param>
/// <param name="RootScale">Of the factors of roots, as shares of white.</param>
/// <param name="RestScale">Of the smooth rest, in units of the unexplained scatter of a patch.</param>
/// <param name="RestReach">How far the smooth rest reaches, in units of CIELAB.</param>
internal readonly record struct CorrectionShape(CorrectionKind Kind, double MatrixScale, double RootScale, double RestScale, double RestReach)
{
    /// <summary>The matrix alone.</summary>
    internal static CorrectionShape Stiff { get; } = new(CorrectionKind.Matrix, 5, 0, 0, 1);

    internal static IReadOnlyList<CorrectionShape> Tried { get; } =
    [
        new(CorrectionKind.WhiteBalance, 0.0005, 0, 0, 1),
        Stiff,
        new(CorrectionKind.RootPolynomial, 5, 0.06, 0, 1),
        new(CorrectionKind.RootPolynomial, 5, 0.2, 0, 1),
        new(CorrectionKind.SmoothRest, 5, 0.06, 1, 20),
        new(CorrectionKind.SmoothRest, 5, 0.2, 1, 20),
        new(CorrectionKind.SmoothRest, 5, 0.2, 1, 36),
    ];
}

/// <summary>A colour of the target as the camera saw it and as it is.</summary>
/// <param name="Seen">Light over the light that the surround gave back at that place.</param>
/// <param name="Truth">Its colour, D50 and 2 degrees.</param>
/// <param name="Noise">Standard deviation of what the camera saw, in units of CIEDE2000.</param>
internal readonly record struct TrainingPatch(SeenColour Seen, Colorimetry.Lab Truth, double Noise);
