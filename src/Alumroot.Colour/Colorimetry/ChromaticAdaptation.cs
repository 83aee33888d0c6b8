namespace Alumroot.Colour.Colorimetry;

/// <summary>What a colour seen against one white looks like against another: each cone signal is scaled by the ratio of the whites (von Kries), full adaptation.</summary>
public sealed class ChromaticAdaptation
{
    private readonly Matrix3 _toCones, _fromCones;

    private ChromaticAdaptation(Matrix3 toCones) => (_toCones, _fromCones) = (toCones, toCones.Inverse());

    /// <summary>The linear Bradford transform (Lam 1985; the matrix of ICC.1, read in an open library).</summary>
    public static ChromaticAdaptation Bradford { get; } = new(new Matrix3(
        new Xyz(0.8951, 0.2664, -0.1614), new Xyz(-0.7502, 1.7135, 0.0367), new Xyz(0.0389, -0.0685, 1.0296)));

    /// <summary>The transform of CIECAM16 (Li and others 2017; the matrix read in open code).</summary>
    public static ChromaticAdaptation Cat16 { get; } = new(new Matrix3(
        new Xyz(0.401288, 0.650173, -0.051461), new Xyz(-0.250268, 1.204414, 0.045854), new Xyz(-0.002079, 0.048952, 0.953127)));

    /// <summary>The cone-like signals of a colour.</summary>
    public Xyz Cones(Xyz colour) => _toCones.Times(colour);

    /// <summary>The colour of cone-like signals.</summary>
    public Xyz FromCones(Xyz cones) => _fromCones.Times(cones);

    /// <summary>The colour that looks alike against the other white.</summary>
    /// <param name="colour">As seen against <paramref name="from"/>.</param>
    /// <param name="from">The white it is seen against.</param>
    /// <param name="to">The white it is wanted against; its brightness counts too.</param>
    public Xyz Adapt(Xyz colour, Xyz from, Xyz to)
    {
        Xyz cones = _toCones.Times(colour), before = _toCones.Times(from), after = _toCones.Times(to);
        return _fromCones.Times(new Xyz(cones.X * after.X / before.X, cones.Y * after.Y / before.Y, cones.Z * after.Z / before.Z));
    }
}
