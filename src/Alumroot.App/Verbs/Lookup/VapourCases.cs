using Alumroot.App.Requests;
using Alumroot.Catalogue;
using Alumroot.Chemistry.Air;
using Alumroot.Quantities;

namespace Alumroot.App.Verbs.Lookup;

/// <summary>The arithmetic of vapours and gases, by cases from a file.</summary>
public static class VapourCases
{
    private static readonly Dictionary<string, Func<CaseRow, IEnumerable<(string, double)>>> Kinds = new(StringComparer.Ordinal)
    {
        ["solvent_all_evaporated"] = AllEvaporated,
        ["solvent_ventilated"] = Ventilated,
        ["co2_potash_alum_full_neutralised"] = CarbonDioxideInRoom,
        ["co2_bicarbonate"] = row => CarbonDioxide(GasSources.FromBicarbonateMol(row.Amount("bicarbonate_g")), row),
        ["co2_sodium_carbonate"] = row => CarbonDioxide(GasSources.FromSodaMol(row.Amount("carbonate_g")), row),
        ["ammonia_all_released"] = Ammonia,
        ["ammonia_free_fraction"] = row => [("fraction", GasSources.FreeAmmoniaShare(row.Number("ph"), row.Number("pka")))],
        ["hydrogen_from_aluminium"] = row => [("h2_l", GasSources.FromAluminiumMol(row.Amount("al_g")) * RoomAir.MolarVolumeLitres(Air(row)))],
    };

    /// <summary>The results of one case.</summary>
    /// <exception cref="Quantities.Tables.TableException">The kind is not known, or an input is missing or impossible.</exception>
    public static IEnumerable<(string Name, object Value)> Of(CaseRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return Kinds.TryGetValue(row.Kind, out Func<CaseRow, IEnumerable<(string, double)>>? results)
            ? results(row).Select(r => (r.Item1, (object)r.Item2))
            : throw row.UnknownKind(Kinds.Keys);
    }

    private static IEnumerable<(string, double)> AllEvaporated(CaseRow row)
    {
        Vapour solvent = Solvent(row);
        double moles = row.Amount("ml") * Density(solvent, row) / solvent.MolarMassGramsPerMole;
        RoomShare share = RoomAir.AllEvaporated(moles, solvent.MolarMassGramsPerMole, Room(row), Air(row));
        yield return ("vapour_l", share.VapourLitres);
        yield return ("ppm", share.Ppm);
        yield return ("mg_per_m3", share.MilligramsPerCubicMetre);
        if (solvent.LowerExplosivePercent is { } limit) yield return ("pct_lel", share.PercentOfExplosive(limit));
        if (solvent.EightHourPpm is { } ppm) yield return ("times_oel", share.Ppm / ppm);
    }

    private static IEnumerable<(string, double)> Ventilated(CaseRow row)
    {
        Vapour solvent = Solvent(row);
        double changes = row.Amount("air_changes_per_h");
        yield return ("ppm", Ppm(row.Amount("hours")));
        if (changes > 0) yield return ("steady_ppm", Ppm(double.PositiveInfinity));

        double Ppm(double hours) => RoomAir.VentilatedPpm(row.Amount("evaporation_g_per_h"), solvent.MolarMassGramsPerMole, Room(row), Air(row), changes, hours);
    }

    private static IEnumerable<(string, double)> CarbonDioxide(double moles, CaseRow row) =>
        [("co2_mol", moles), ("co2_l", moles * RoomAir.MolarVolumeLitres(Air(row)))];

    private static IEnumerable<(string, double)> CarbonDioxideInRoom(CaseRow row)
    {
        double moles = GasSources.FromAlumAndCarbonateMol(row.Amount("alum_g"));
        double added = RoomAir.AllEvaporated(moles, Gas("carbon-dioxide").MolarMassGramsPerMole, Room(row), Air(row)).Ppm;
        return [.. CarbonDioxide(moles, row), ("added_ppm", added), ("total_ppm", added + row.Amount("background_ppm"))];
    }

    private static IEnumerable<(string, double)> Ammonia(CaseRow row)
    {
        Vapour gas = Gas("ammonia");
        double moles = GasSources.FromAmmoniaMol(row.Amount("ml"), row.Positive("density_g_per_ml"), row.Amount("mass_pct"));
        RoomShare share = RoomAir.AllEvaporated(moles, gas.MolarMassGramsPerMole, Room(row), Air(row));
        return [("nh3_g", moles * gas.MolarMassGramsPerMole), ("nh3_l", share.VapourLitres), ("ppm", share.Ppm), ("times_idlh", share.Ppm / gas.ImmediateDangerPpm!.Value)];
    }

    private static Vapour Gas(string key) => CatalogueData.Embedded.FindVapour(key)!;

    private static Vapour Solvent(CaseRow row) =>
        CatalogueData.Embedded.FindVapour(row.Text("solvent")) ?? throw row.Wrong($"nothing is known of the solvent \"{row.Text("solvent")}\"; known are {string.Join(", ", CatalogueData.Embedded.Vapours.Where(v => v.DensityGramsPerMillilitre is not null).Select(v => v.Key))}");

    private static double Density(Vapour solvent, CaseRow row) => solvent.DensityGramsPerMillilitre ?? throw row.Wrong($"\"{solvent.Key}\" is a gas and has no liquid volume");

    private static Volume Room(CaseRow row) => Volume.FromLitres(1000 * row.Positive("room_m3"));

    private static Temperature Air(CaseRow row) =>
        row.Number("temp_c") is var celsius and > -50 and < 100 ? Temperature.FromCelsius(celsius) : throw row.Wrong("\"temp_c\" is no temperature of a room; -50 to 100 are taken");
}
