using Alumroot.Colour.Reading;
using Alumroot.Quantities.Tables;

namespace Alumroot.Colour.Colorimetry;

/// <summary>A standard colorimetric observer (ISO/CIE 11664-1), tabulated every nanometre.</summary>
public sealed class Observer
{
    /// <summary>The first wavelength of the tables.</summary>
    public const int FirstNanometres = 360;

    private static readonly Lazy<(Observer Two, Observer Ten)> Tabulated = new(Load);

    private readonly Xyz[] _matching;

    private Observer(int degrees, Xyz[] matching) => (Degrees, _matching) = (degrees, matching);

    /// <summary>The 1931 observer, for patches the size of a thumbnail at arm's length.</summary>
    public static Observer TwoDegrees => Tabulated.Value.Two;

    /// <summary>The 1964 observer, for patches the size of a hand.</summary>
    public static Observer TenDegrees => Tabulated.Value.Ten;

    /// <summary>The field of view, 2 or 10 degrees.</summary>
    public int Degrees { get; }

    /// <summary>The observer of this field of view, or null.</summary>
    public static Observer? Find(int degrees) => degrees switch { 2 => TwoDegrees, 10 => TenDegrees, _ => null };

    /// <summary>The colour-matching functions at a whole wavelength from 360 to 830 nm.</summary>
    public Xyz MatchingAt(int nanometres) => _matching[nanometres - FirstNanometres];

    private static (Observer, Observer) Load()
    {
        Table table = EmbeddedTables.Read("observers.csv");
        return (new Observer(2, Column("2")), new Observer(10, Column("10")));

        Xyz[] Column(string degrees) => [.. table.Rows.Select(r => new Xyz(r.Number("x_" + degrees), r.Number("y_" + degrees), r.Number("z_" + degrees)))];
    }
}
