using Alumroot.Quantities.Tables;

namespace Alumroot.Chemistry.Constants;

/// <summary>Everything an equilibrium needs to know: components, species, phases, reagents and the activity model, as read from tables.</summary>
/// <remarks>Immutable. Balance in elements and charge is checked for each row when the set is made.</remarks>
public sealed class ConstantSet
{
    private readonly Dictionary<string, Component> _byElement;
    private readonly Dictionary<string, Phase> _phases;
    private readonly Dictionary<string, Reagent> _reagents;

    private ConstantSet(IReadOnlyList<Component> components, IReadOnlyList<Species> species, Dictionary<string, Phase> phases, DebyeHueckelTable debyeHueckel, Func<ConstantSet, Dictionary<string, Reagent>> reagents)
    {
        Components = components;
        Species = species;
        _phases = phases;
        DebyeHueckel = debyeHueckel;
        _byElement = components.ToDictionary(c => c.Element, StringComparer.Ordinal);
        _reagents = reagents(this);
    }

    /// <summary>The components without water; H+ is among them.</summary>
    public IReadOnlyList<Component> Components { get; }

    /// <summary>All dissolved species, the components' own ions included.</summary>
    public IReadOnlyList<Species> Species { get; }

    /// <summary>All solids and gases.</summary>
    public IReadOnlyCollection<Phase> Phases => _phases.Values;

    /// <summary>All reagents.</summary>
    public IReadOnlyCollection<Reagent> Reagents => _reagents.Values;

    /// <summary>Debye-Hueckel A and B.</summary>
    public DebyeHueckelTable DebyeHueckel { get; }

    /// <summary>The phase of this name, or null.</summary>
    public Phase? FindPhase(string name) => _phases.GetValueOrDefault(name);

    /// <summary>The reagent of this key, or null.</summary>
    public Reagent? FindReagent(string key) => _reagents.GetValueOrDefault(key);

    /// <summary>The same set with another constant for one phase, for what-if and uncertainty.</summary>
    /// <exception cref="ArgumentException">There is no such phase.</exception>
    public ConstantSet WithPhaseShift(string phase, double log10Shift)
    {
        if (!_phases.TryGetValue(phase, out Phase? p)) throw new ArgumentException($"there is no phase {phase}", nameof(phase));
        var phases = new Dictionary<string, Phase>(_phases, StringComparer.Ordinal) { [phase] = p with { LogK = p.LogK.Shifted(log10Shift) } };
        return new ConstantSet(Components, Species, phases, DebyeHueckel, _ => _reagents);
    }

    /// <summary>Reads a set from its four tables.</summary>
    /// <param name="species">Columns species, charge, formation_from_masters, log10_k_25c, delta_h_kj_per_mol, temperature_data, a1..a6; optionally activity_form, dh_a_angstrom, dh_b, diffusion_25c_1e-9_m2_per_s.</param>
    /// <param name="phases">Columns solid, formula, dissolution_to_masters, log10_k_25c, delta_h_kj_per_mol, temperature_data, a1..a6.</param>
    /// <param name="debyeHueckel">Columns temperature_c, A_log10, B_per_angstrom.</param>
    /// <param name="reagents">Columns reagent, formula_unit_added, molar_mass_g_per_mol.</param>
    /// <exception cref="TableException">A row cannot be read, does not balance or names an unknown component; the message says where.</exception>
    public static ConstantSet Read(Table species, Table phases, Table debyeHueckel, Table reagents)
    {
        ArgumentNullException.ThrowIfNull(species);
        ArgumentNullException.ThrowIfNull(phases);
        ArgumentNullException.ThrowIfNull(reagents);
        var components = new List<Component>();
        var list = new List<Species>();
        foreach (TableRow row in species.Rows)
        {
            string name = row["species"];
            if (row["formation_from_masters"] != "master" || name == Component.Water) continue;
            double? mass = species.Has("molar_mass_g_per_mol") ? row.OptionalNumber("molar_mass_g_per_mol") : null;
            Component component;
            try { component = new Component(name) { GramsPerMole = mass }; }
            catch (FormatException e) { throw row.Wrong("species", e.Message); }
            if (components.Exists(c => c.Name == name || c.Element == component.Element)) throw row.Wrong("species", $"{component.Element} has a master already");
            components.Add(component);
        }
        var byName = components.ToDictionary(c => c.Name, StringComparer.Ordinal);
        if (!byName.ContainsKey(Component.Proton)) throw new TableException(species.Name, 1, "species", "there is no master H+");
        foreach (TableRow row in species.Rows)
        {
            if (row["species"] == Component.Water) continue;
            if (list.Exists(s => s.Name == row["species"])) throw row.Wrong("species", $"{row["species"]} stands twice");
            list.Add(ConstantRows.Species(row, species, byName));
        }
        var phaseMap = new Dictionary<string, Phase>(StringComparer.Ordinal);
        foreach (TableRow row in phases.Rows)
        {
            Phase p = ConstantRows.Phase(row, phases, byName, list);
            if (!phaseMap.TryAdd(p.Name, p)) throw row.Wrong("solid", $"{p.Name} stands twice");
        }
        return new ConstantSet(components, list, phaseMap, new DebyeHueckelTable(debyeHueckel), set =>
        {
            var map = new Dictionary<string, Reagent>(StringComparer.Ordinal);
            foreach (TableRow row in reagents.Rows)
            {
                string key = row["reagent"];
                try
                {
                    if (!map.TryAdd(key, new Reagent(key, row["formula_unit_added"], row.Number("molar_mass_g_per_mol"), set.Deliver(row["formula_unit_added"]))))
                        throw row.Wrong("reagent", $"{key} stands twice");
                }
                catch (FormatException e) when (e is not TableException) { throw row.Wrong("formula_unit_added", e.Message); }
            }
            return map;
        });
    }

    /// <summary>What one mole of a substance brings, written in components: the elements are handed to their components, oxygen that is left over to water, hydrogen that is left over to H+.</summary>
    /// <exception cref="FormatException">An element has no component, or the charges do not cancel.</exception>
    public Reaction Deliver(string formula)
    {
        IReadOnlyDictionary<string, double> counts = ChemicalFormula.Count(formula);
        double h = counts.GetValueOrDefault("H"), o = counts.GetValueOrDefault("O"), charge = 0;
        var terms = new List<(string, double)>();
        foreach ((string element, double n) in counts)
        {
            if (element is "H" or "O") continue;
            if (!_byElement.TryGetValue(element, out Component? c)) throw new FormatException($"\"{formula}\": nothing is known of {element}");
            terms.Add((c.Name, n));
            h -= n * c.Elements.GetValueOrDefault("H");
            o -= n * c.Elements.GetValueOrDefault("O");
            charge += n * c.Charge;
        }
        double protons = h - 2 * o;
        if (Math.Abs(charge + protons) > 1e-9) throw new FormatException($"\"{formula}\": the charges of its ions do not cancel");
        terms.Add((Component.Water, o));
        terms.Add((Component.Proton, protons));
        return Reaction.Of(terms);
    }
}
