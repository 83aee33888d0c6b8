using Alumroot.Quantities.Tables;

namespace Alumroot.Chemistry.Constants;

/// <summary>Turns rows of the constant tables into species and phases, and checks that each balances.</summary>
internal static class ConstantRows
{
    internal static Species Species(TableRow row, Table table, Dictionary<string, Component> components)
    {
        string name = row["species"];
        double z = row.Number("charge");
        if (Math.Abs(z) > 20 || z != Math.Floor(z)) throw row.Wrong("charge", "a charge is a small whole number");
        int charge = (int)z;
        bool master = row["formation_from_masters"] == "master";
        Reaction formation = master ? Reaction.Of([(name, 1)]) : ParseReaction(row, "formation_from_masters");
        RequireBalance(row, "formation_from_masters", formation, components, charge);
        ActivityModel activity = table.Has("activity_form") ? Activity(row) : charge == 0 ? ActivityModel.Neutral(0.1) : ActivityModel.Davies;
        double? diffusion = table.Has("diffusion_25c_1e-9_m2_per_s") ? row.OptionalNumber("diffusion_25c_1e-9_m2_per_s") * 1e-9 : null;
        TemperatureLaw law = master ? TemperatureLaw.VantHoff(0, 0) : Law(row);
        return new Species(name, charge, formation, law, activity, diffusion, Source(row, table));
    }

    internal static Phase Phase(TableRow row, Table table, Dictionary<string, Component> components, List<Species> species)
    {
        string name = row["solid"];
        string text = row["dissolution_to_masters"];
        bool gas = name.EndsWith("(g)", StringComparison.Ordinal);
        Reaction dissolution;
        TemperatureLaw law = Law(row);
        if (gas && text.Contains('=', StringComparison.Ordinal))
        {
            // Henry's law "CO2(g) = CO2(aq)": the aqueous species' own formation leads on to the components.
            string aqueous = text[(text.IndexOf('=', StringComparison.Ordinal) + 1)..].Trim().Replace("(aq)", "", StringComparison.Ordinal);
            Species s = species.Find(x => x.Name == aqueous) ?? throw row.Wrong("dissolution_to_masters", $"there is no species {aqueous}");
            return new Phase(name, row["formula"], true, s.Formation, law, Source(row, table)) { Aqueous = s, PlainName = PlainName(row, table, name) };
        }
        dissolution = ParseReaction(row, "dissolution_to_masters");
        RequireBalance(row, "dissolution_to_masters", dissolution, components, 0);
        return new Phase(name, row["formula"], gas, dissolution, law, Source(row, table))
        {
            GramsPerMole = table.Has("molar_mass_g_per_mol") ? row.OptionalNumber("molar_mass_g_per_mol") : null,
            PlainName = PlainName(row, table, name),
            Log10Uncertainty = table.Has("log10_k_plus_minus") ? row.OptionalNumber("log10_k_plus_minus") : null,
        };
    }

    private static string PlainName(TableRow row, Table table, string name) => table.Has("plain_name") ? row["plain_name"] : name;

    private static string Source(TableRow row, Table table) => table.Has("source") ? row["source"] : table.Has("taken_from") ? row["taken_from"] : "";

    private static Reaction ParseReaction(TableRow row, string column)
    {
        try { return Reaction.Parse(row[column]); }
        catch (FormatException e) { throw row.Wrong(column, e.Message); }
    }

    private static ActivityModel Activity(TableRow row) => row["activity_form"] switch
    {
        "extended" => ActivityModel.Extended(row.Number("dh_a_angstrom"), row.OptionalNumber("dh_b") ?? 0),
        "davies" => ActivityModel.Davies,
        "neutral" => ActivityModel.Neutral(row.OptionalNumber("dh_b") ?? 0.1),
        var other => throw row.Wrong("activity_form", $"\"{other}\" is none of extended, davies, neutral"),
    };

    private static TemperatureLaw Law(TableRow row)
    {
        string kind = row["temperature_data"];
        if (kind == "analytic")
        {
            Span<double> a = stackalloc double[6];
            for (int i = 0; i < 6; i++) a[i] = row.OptionalNumber($"a{i + 1}") ?? 0;
            return TemperatureLaw.Analytic(a);
        }
        double logK = row.Number("log10_k_25c");
        return kind == "delta_h" ? TemperatureLaw.VantHoff(logK, row.Number("delta_h_kj_per_mol")) : TemperatureLaw.Constant(logK);
    }

    private static void RequireBalance(TableRow row, string column, Reaction reaction, Dictionary<string, Component> components, int charge)
    {
        double sum = 0;
        foreach ((string name, double n) in reaction.Terms)
        {
            if (name == Component.Water) continue;
            if (!components.TryGetValue(name, out Component? c)) throw row.Wrong(column, $"there is no component {name}");
            sum += n * c.Charge;
        }
        if (Math.Abs(sum - charge) > 1e-9) throw row.Wrong(column, $"the charges of the components add to {sum:0.###}, not to {charge}");
    }
}
