using System.Globalization;
using Alumroot.App.Requests;
using Alumroot.Paint.Arithmetic;

namespace Alumroot.App.Verbs.Paint;

/// <summary>The arithmetic of paint, one case a line.</summary>
internal static class PaintCases
{
    // Free sorbic acid in potassium sorbate by mass (112.13 / 150.22 g/mol).
    private const double SorbicShare = 112.13 / 150.22;

    private static readonly Dictionary<string, Func<CaseRow, IEnumerable<(string, object)>>> Kinds = new(StringComparer.Ordinal)
    {
        ["cpvc_from_oa"] = c => [("cpvc", new DryPigment(1, c.Amount("oa_g_per_100g"), c.Positive("density_g_per_ml")).CriticalFraction(Oil(c)))],
        ["binder_for_lambda"] = Binder,
        ["pvc_and_lambda"] = Film,
        ["pigment_mixture"] = Mixture,
        ["watercolour_pans"] = Pans,
        ["pastel_sticks"] = Sticks,
        ["gum_series"] = c => PastelDough.Strengths(c.Positive("water_parts"), c.Amount("water_added_per_part"), Steps(c)).Select((s, i) => (string.Create(CultureInfo.InvariantCulture, $"strength_{i + 1}"), (object)s)),
        ["egg_tempera"] = Egg,
        ["coverage"] = Coverage,
        ["drier"] = Drier,
        ["sorbate"] = Sorbate,
        ["density_by_displacement"] = Displaced,
        ["oil_absorption_measured"] = Absorbed,
        ["encaustic"] = Wax,
        ["tubes"] = Tubes,
        ["wet_cake"] = Cake,
        ["alkyd_medium"] = Alkyd,
    };

    /// <summary>The results of a case.</summary>
    internal static IEnumerable<(string Name, object Value)> Of(CaseRow c) => Kinds.TryGetValue(c.Kind, out Func<CaseRow, IEnumerable<(string, object)>>? answer) ? answer(c) : throw c.UnknownKind(Kinds.Keys);

    private static double Oil(CaseRow c) => c.OptionalText("oil_density_g_per_ml") is null ? Densities.LinseedOilGramsPerMillilitre : c.Positive("oil_density_g_per_ml");

    private static double Fraction(CaseRow c, string name) => c.Number(name) is var x and > 0 and <= 1 ? x : throw c.Wrong($"\"{name}\" is a share, above 0 and at most 1");

    private static double Share(CaseRow c, string name) => c.Number(name) is var x and >= 0 and <= 1 ? x : throw c.Wrong($"\"{name}\" is a share, 0 to 1");

    private static int Steps(CaseRow c) => c.Number("steps") is var x and >= 1 and <= 1000 && x == Math.Floor(x) ? (int)x : throw c.Wrong("\"steps\" is a whole number from 1 to 1000");

    private static DryPigment Pigment(CaseRow c) => new(c.Positive("pigment_g"), c.Amount("oa_g_per_100g"), c.Positive("density_g_per_ml"));

    private static IEnumerable<(string, object)> Binder(CaseRow c)
    {
        DryPigment p = Pigment(c);
        double cpvc = p.CriticalFraction(Oil(c)), pvc = c.Positive("lambda") * cpvc;
        if (pvc >= 1) throw c.Wrong("\"lambda\" leaves no room for binder");
        PigmentVolume v = PigmentVolume.For(p, c.Number("lambda"), Oil(c));
        double binder = v.BinderMillilitres * c.Positive("binder_density_g_per_ml"), paint = v.PigmentMillilitres + v.BinderMillilitres;
        return [("cpvc", cpvc), ("pvc", pvc), ("binder_g", binder), ("binder_ml", v.BinderMillilitres), ("paint_ml", paint), ("paint_density_g_per_ml", (p.Grams + binder) / paint), ("pigment_mass_pct", 100 * p.Grams / (p.Grams + binder)), ("oil_per_100g_pigment", 100 * binder / p.Grams)];
    }

    private static IEnumerable<(string, object)> Film(CaseRow c)
    {
        DryPigment p = Pigment(c);
        double pvc = new PigmentVolume(p.Millilitres, c.Amount("binder_solids_g") / c.Positive("binder_solids_density_g_per_ml")).Fraction, cpvc = p.CriticalFraction(Oil(c));
        return [("pvc", pvc), ("cpvc", cpvc), ("lambda", pvc / cpvc)];
    }

    private static IEnumerable<(string, object)> Mixture(CaseRow c)
    {
        var parts = new List<DryPigment>();
        foreach (string part in c.Text("pigments").Split('|', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            double[] v = [.. part.Split('/').Select(t => double.TryParse(t, NumberStyles.Float, CultureInfo.InvariantCulture, out double x) ? x : double.NaN)];
            if (v is not [> 0, >= 0, > 0]) throw c.Wrong($"\"{part}\" is not grams/oil absorption/density, such as 15/60/2.1");
            parts.Add(new DryPigment(v[0], v[1], v[2]));
        }
        if (parts.Count == 0) throw c.Wrong("\"pigments\" names none");
        DryPigment mixed = DryPigment.Mixed(parts);
        return [("oa_g_per_100g", mixed.OilGramsPer100), ("density_g_per_ml", mixed.GramsPerMillilitre), ("cpvc", mixed.CriticalFraction(Oil(c)))];
    }

    private static IEnumerable<(string, object)> Pans(CaseRow c)
    {
        var paste = new WatercolourPaste(new DryPigment(c.Positive("pigment_g"), 0, c.Positive("density_g_per_ml")), c.Amount("gum_g"), Optional(c, "glycerine_g"), Optional(c, "honey_g"), c.Amount("water_g"), c.OptionalText("water_kept_fraction") is null ? 0 : Share(c, "water_kept_fraction"));
        double pan = c.Positive("pan_ml"), per = paste.WetMillilitresPerPan(pan);
        return
        [
            ("wet_g", paste.WetGrams), ("wet_ml", paste.WetMillilitres), ("wet_density_g_per_ml", paste.WetGrams / paste.WetMillilitres), ("dry_ml", paste.DryMillilitres), ("dry_g", paste.DryGrams),
            ("shrinkage_pct", 100 * paste.ShrinkageFraction), ("single_pours", paste.WetMillilitres / pan), ("pours_to_95_pct", paste.PoursToFill), ("wet_ml_per_finished_pan", per),
            ("finished_pans", paste.WetMillilitres / per), ("humectant_pct_of_dry_binder", 100 * paste.HumectantFraction),
        ];
    }

    private static IEnumerable<(string, object)> Sticks(CaseRow c)
    {
        var dough = new PastelDough(c.Positive("powder_g"), c.Positive("density_g_per_ml"), c.Amount("solution_g"), Share(c, "gum_mass_fraction"), Fraction(c, "solid_volume_fraction"));
        return
        [
            ("dry_gum_g", dough.GumGrams), ("dry_gum_pct_of_stick", 100 * dough.GumGrams / dough.DryGrams), ("wet_g", dough.PowderGrams + dough.SolutionGrams), ("dry_g", dough.DryGrams), ("water_lost_g", dough.WaterGrams),
            ("sticks", dough.Sticks(c.Positive("stick_diameter_mm"), c.Positive("stick_length_mm"))), ("linear_shrinkage_pct", 100 * dough.LinearShrinkageFraction),
        ];
    }

    private static IEnumerable<(string, object)> Egg(CaseRow c)
    {
        var egg = new EggPaint(c.Positive("paste_ml"), Fraction(c, "paste_pigment_mass_fraction"), c.Positive("density_g_per_ml"), c.Positive("yolk_to_paste_volume"), Fraction(c, "yolk_solids_fraction"), c.Positive("dry_binder_density_g_per_ml"));
        return
        [
            ("paste_density_g_per_ml", egg.PasteGramsPerMillilitre), ("pigment_g", egg.PigmentGrams), ("yolk_ml", egg.YolkMillilitres), ("yolk_g", egg.YolkGrams), ("yolks", egg.YolkGrams / Densities.YolkGrams),
            ("dry_binder_g", egg.DryBinderGrams), ("pvc_dry", egg.Dry.Fraction),
        ];
    }

    // Millilitres over micrometres are square metres.
    private static IEnumerable<(string, object)> Coverage(CaseRow c) =>
        [("area_m2", c.Positive("paint_ml") / c.Positive("wet_film_um")), ("dry_film_um", c.Positive("wet_film_um") * Fraction(c, "volume_solids_fraction")), ("pigment_g_per_m2", c.Amount("pigment_g_per_ml") * c.Positive("wet_film_um"))];

    private static IEnumerable<(string, object)> Drier(CaseRow c)
    {
        double grams = c.Positive("oil_g") * c.Amount("metal_pct_on_oil") / c.Positive("drier_metal_pct");
        return [("drier_g", grams), ("drops", grams / c.Positive("drop_g"))];
    }

    private static IEnumerable<(string, object)> Sorbate(CaseRow c)
    {
        double free = 1 / (1 + Math.Pow(10, c.Number("ph") - c.Number("pka")));
        return [("salt_g", c.Positive("water_g") * c.Amount("salt_pct") / 100), ("undissociated_fraction", free), ("free_acid_mg_per_kg_water", c.Amount("salt_pct") * 1e4 * SorbicShare * free)];
    }

    private static IEnumerable<(string, object)> Displaced(CaseRow c)
    {
        double millilitres = (c.Positive("pigment_g") + c.Positive("flask_full_of_liquid_g") - c.Positive("flask_pigment_and_liquid_g")) / c.Positive("liquid_density_g_per_ml");
        if (millilitres <= 0) throw c.Wrong("the pigment takes up no room; look at the two weights of the flask");
        return [("pigment_ml", millilitres), ("density_g_per_ml", c.Number("pigment_g") / millilitres)];
    }

    private static IEnumerable<(string, object)> Absorbed(CaseRow c)
    {
        double oil = c.Positive("oil_ml") * Oil(c);
        return [("oil_g", oil), ("oa_g_per_100g", 100 * oil / c.Positive("pigment_g")), ("oa_ml_per_100g", 100 * c.Number("oil_ml") / c.Number("pigment_g"))];
    }

    private static IEnumerable<(string, object)> Wax(CaseRow c)
    {
        double pigment = c.Positive("pigment_g"), share = c.Positive("pigment_mass_pct"), parts = c.Positive("wax_to_damar");
        if (share >= 100) throw c.Wrong("\"pigment_mass_pct\" must leave room for the wax");
        double medium = pigment * (100 - share) / share, damar = medium / (1 + parts), wax = medium - damar;
        var v = new PigmentVolume(pigment / c.Positive("density_g_per_ml"), wax / Densities.BeeswaxGramsPerMillilitre + damar / Densities.DamarGramsPerMillilitre);
        return [("medium_g", medium), ("beeswax_g", wax), ("damar_g", damar), ("pvc", v.Fraction), ("paint_ml", v.PigmentMillilitres + v.BinderMillilitres)];
    }

    private static IEnumerable<(string, object)> Tubes(CaseRow c)
    {
        double usable = c.Positive("paint_ml") * (1 - c.Amount("loss_pct") / 100), fill = c.Positive("fill_ml");
        // A tube that is full but for rounding is full.
        double full = Math.Floor(usable / fill + 1e-9);
        return [("usable_ml", usable), ("full_tubes", full), ("left_ml", usable - full * fill)];
    }

    private static IEnumerable<(string, object)> Cake(CaseRow c)
    {
        double cake = c.Positive("cake_g"), water = cake * Share(c, "moisture_fraction"), dry = cake - water, paste = dry / Fraction(c, "target_pigment_fraction");
        return [("dry_pigment_g", dry), ("water_g", water), ("paste_g", paste), ("water_to_add_g", paste - cake)];
    }

    private static IEnumerable<(string, object)> Alkyd(CaseRow c)
    {
        DryPigment p = Pigment(c);
        double pvc = c.Positive("lambda") * p.CriticalFraction(Oil(c));
        if (pvc >= 1) throw c.Wrong("\"lambda\" leaves no room for binder");
        double solids = PigmentVolume.For(p, c.Number("lambda"), Oil(c)).BinderMillilitres * Densities.AlkydSolidsGramsPerMillilitre, medium = solids / Fraction(c, "solids_mass_fraction");
        return [("pvc", pvc), ("alkyd_solids_g", solids), ("medium_g", medium), ("solvent_g", medium - solids)];
    }

    private static double Optional(CaseRow c, string name) => c.OptionalText(name) is null ? 0 : c.Amount(name);
}
