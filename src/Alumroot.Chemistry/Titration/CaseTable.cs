using System.Globalization;
using Alumroot.Chemistry.Constants;
using Alumroot.Quantities.Tables;

namespace Alumroot.Chemistry.Titration;

/// <summary>Reads titration cases and their steps from tables.</summary>
public static class CaseTable
{
    /// <summary>Reads cases: columns case, temperature_c, gas, start_water_kg, start_reagents_mol, titrant, solids_allowed.</summary>
    /// <exception cref="TableException">A field cannot be read or names something unknown; the message says where.</exception>
    public static IReadOnlyList<TitrationCase> Read(Table cases, ConstantSet constants)
    {
        ArgumentNullException.ThrowIfNull(cases);
        ArgumentNullException.ThrowIfNull(constants);
        var list = new List<TitrationCase>();
        foreach (TableRow row in cases.Rows)
        {
            GasRule gas = row["gas"] switch
            {
                "closed" or "" => GasRule.Closed,
                "air" => GasRule.Air,
                "vented" => GasRule.Vented,
                var other => throw row.Wrong("gas", $"\"{other}\" is none of closed, air, vented"),
            };
            double celsius = row.Number("temperature_c");
            if (celsius is < 0 or > 100) throw row.Wrong("temperature_c", $"{celsius.ToString(CultureInfo.InvariantCulture)} is outside 0 to 100, the range of liquid water at one atmosphere");
            double water = row.Number("start_water_kg");
            if (!(water > 0)) throw row.Wrong("start_water_kg", "the water must be more than nothing");
            var start = new List<(Reagent, double)>();
            foreach (string part in row["start_reagents_mol"].Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                int eq = part.LastIndexOf('=');
                if (eq < 1 || !double.TryParse(part.AsSpan(eq + 1), NumberStyles.Float, CultureInfo.InvariantCulture, out double moles) || !double.IsFinite(moles))
                    throw row.Wrong("start_reagents_mol", $"\"{part}\" is not of the form reagent=0.1");
                if (moles < 0) throw row.Wrong("start_reagents_mol", $"\"{part}\" is a negative amount");
                start.Add((Find(part[..eq], "start_reagents_mol"), moles));
            }
            Reagent? titrant = row["titrant"].Length == 0 ? null : Find(row["titrant"], "titrant");
            string[] solids = row["solids_allowed"].Split(' ', StringSplitOptions.RemoveEmptyEntries);
            foreach (string solid in solids)
                if (constants.FindPhase(solid) is null) throw row.Wrong("solids_allowed", $"nothing is known of the solid \"{solid}\"");
            list.Add(new TitrationCase(row["case"], celsius, water, start, titrant, TitrationCase.Allow(solids, gas)));

            Reagent Find(string key, string column) => constants.FindReagent(key) ?? throw row.Wrong(column, $"nothing is known of the reagent \"{key}\"");
        }
        return list;
    }

    /// <summary>Reads steps: columns case, step, titrant_mol_total, in the order they are taken.</summary>
    /// <exception cref="TableException">A field cannot be read.</exception>
    public static ILookup<string, (string Step, double TitrantMol)> ReadSteps(Table steps)
    {
        ArgumentNullException.ThrowIfNull(steps);
        return steps.Rows.ToLookup(r => r["case"], r => (r["step"], NotNegative(r)), StringComparer.Ordinal);

        static double NotNegative(TableRow r)
        {
            double x = r.Number("titrant_mol_total");
            return x >= 0 ? x : throw r.Wrong("titrant_mol_total", "a negative amount cannot be added");
        }
    }
}
