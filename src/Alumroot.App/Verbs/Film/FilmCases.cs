using System.Globalization;
using Alumroot.App.Requests;
using Alumroot.App.Words;
using Alumroot.Colour.Film;

namespace Alumroot.App.Verbs.Film;

/// <summary>The arithmetic of films, by cases from a file.</summary>
public static class FilmCases
{
    private const string ThicknessKind = "thickness_for_contrast_";

    private static readonly Dictionary<string, Func<CaseRow, IEnumerable<(string, double)>>> Kinds = new(StringComparer.Ordinal)
    {
        ["ks_from_rinf"] = row => [("KS", FilmOptics.AbsorptionRatio(Share(row, "Rinf", above: 0)))],
        ["rinf_from_ks"] = row => [("Rinf", FilmOptics.OpaqueReflectance(row.Amount("KS")))],
        ["film_over_backing"] = Over,
        ["film_limit"] = row => [("R", FilmOptics.Over(Film(row), Share(row, "Rg")))],
        ["film_no_absorption"] = row => [("R", FilmOptics.Over(Film(row), Share(row, "Rg")))],
        ["film_no_scattering"] = row => [("R", FilmOptics.Over(Film(row), Share(row, "Rg")))],
        ["drawdown_inversion"] = Inversion,
        ["mix_two_constant"] = TwoConstant,
        ["mix_single_constant"] = SingleConstant,
        ["saunderson_sci"] = Saunderson,
        ["film_with_saunderson"] = WithSurface,
    };

    /// <summary>The results of one case.</summary>
    /// <exception cref="Quantities.Tables.TableException">The kind is not known, or an input is missing or impossible.</exception>
    public static IEnumerable<(string Name, object Value)> Of(CaseRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        Func<CaseRow, IEnumerable<(string, double)>> results = Kinds.TryGetValue(row.Kind, out Func<CaseRow, IEnumerable<(string, double)>>? known) ? known
            : row.Kind.StartsWith(ThicknessKind, StringComparison.Ordinal) ? Thickness
            : throw row.UnknownKind([.. Kinds.Keys, ThicknessKind + "0.98"]);
        return results(row).Select(r => (r.Item1, (object)r.Item2));
    }

    private static IEnumerable<(string, double)> Over(CaseRow row)
    {
        Layer film = Film(row);
        return [("R", FilmOptics.Over(film, Share(row, "Rg"))), ("R0", FilmOptics.OverBlack(film)), ("T", FilmOptics.Transmittance(film)), ("Rinf", FilmOptics.Opaque(film))];
    }

    private static IEnumerable<(string, double)> Inversion(CaseRow row)
    {
        var read = new Drawdown(row.Number("Rblack"), row.Number("Rg_black"), row.Number("Rwhite"), row.Number("Rg_white"));
        var measured = new FilmMeasurement(read, Surface.None, 0);
        switch (measured.Found)
        {
            case FilmFound.Known { Film: var film }:
                return [("KX", film.AbsorbedUnits), ("SX", film.ScatteredUnits), ("Rinf", FilmOptics.Opaque(film)), ("contrast_ratio", measured.ContrastRatio.Value)];
            case FilmFound.Clear { AbsorbedUnits: var absorbed }:
                return [("KX", absorbed.Value), ("SX", 0), ("Rinf", 0), ("contrast_ratio", measured.ContrastRatio.Value)];
            default:
                throw row.Wrong(FilmWords.Of(measured.Found));
        }
    }

    private static IEnumerable<(string, double)> Thickness(CaseRow row)
    {
        if (!double.TryParse(row.Kind.AsSpan(ThicknessKind.Length), NumberStyles.Float, CultureInfo.InvariantCulture, out double ratio) || !(ratio is > 0 and < 1)) throw row.UnknownKind([ThicknessKind + "0.98"]);
        double? thickness = FilmOptics.ThicknessFor(new Layer(row.Amount("K"), row.Amount("S")), Share(row, "Rg_black"), Share(row, "Rg_white"), ratio);
        return [("X", thickness ?? throw row.Wrong("no thickness reaches this contrast ratio; the film needs some scattering and the white ground must be lighter than the black one"))];
    }

    private static IEnumerable<(string, double)> TwoConstant(CaseRow row)
    {
        int n = Count(row, "c");
        double[] shares = Numbered(row, "c", n), k = Numbered(row, "K", n), s = Numbered(row, "S", n);
        Layer mixed = Mixture.TwoConstant(shares, [.. k.Zip(s, (a, b) => new Layer(a, b))]);
        return [("Kmix", mixed.AbsorbedUnits), ("Smix", mixed.ScatteredUnits), ("Rinf", FilmOptics.Opaque(mixed))];
    }

    private static IEnumerable<(string, double)> SingleConstant(CaseRow row)
    {
        int n = Count(row, "c");
        double ratio = Mixture.SingleConstant(row.Amount("KS_white"), Numbered(row, "c", n), Numbered(row, "unit_ks", n));
        return [("KS", ratio), ("Rinf", FilmOptics.OpaqueReflectance(ratio))];
    }

    private static IEnumerable<(string, double)> Saunderson(CaseRow row)
    {
        double inside = Share(row, "R_internal");
        Surface surface = SurfaceOf(row);
        return [("R_measured_SCI", surface.Measured(inside)), ("R_measured_SCE", (surface with { GlossIncluded = false }).Measured(inside))];
    }

    private static IEnumerable<(string, double)> WithSurface(CaseRow row)
    {
        Layer film = Film(row);
        Surface surface = SurfaceOf(row);
        return [("Rblack_measured", surface.Measured(FilmOptics.Over(film, Share(row, "Rg_black_internal")))), ("Rwhite_measured", surface.Measured(FilmOptics.Over(film, Share(row, "Rg_white_internal"))))];
    }

    private static Layer Film(CaseRow row) => new Layer(row.Amount("K"), row.Amount("S")).Times(row.Amount("X"));

    private static Surface SurfaceOf(CaseRow row) => new(Share(row, "k1", below: 1), Share(row, "k2", below: 1));

    private static double Share(CaseRow row, string name, double above = double.NegativeInfinity, double below = double.PositiveInfinity) =>
        row.Number(name) is var x && x is >= 0 and <= 1 && x > above && x < below ? x : throw row.Wrong($"\"{name}\" is no share of the light; it runs from 0 to 1");

    private static int Count(CaseRow row, string name)
    {
        int n = 0;
        while (row.OptionalText($"{name}{n + 1}") is not null) n++;
        return n > 0 ? n : throw row.Wrong($"\"{name}1\" is missing");
    }

    private static double[] Numbered(CaseRow row, string name, int n) => [.. Enumerable.Range(1, n).Select(i => row.Amount($"{name}{i}"))];
}
