using Alumroot.Catalogue.Reading;
using Alumroot.Quantities;

namespace Alumroot.Catalogue;

/// <summary>A salt, alkali, acid or helper as it is sold, with what the trade knows of it.</summary>
/// <remarks>Immutable. A refused reagent carries no amounts: no mass, no purity, no solubility. Molar masses are for display and for solubility; equilibrium constants live elsewhere.</remarks>
public sealed class Reagent
{
    private Reagent(Fields row, SolubilityCurve? solubility)
    {
        Key = row.Key();
        Name = row.Required("name");
        Aliases = row.List("aliases");
        Formula = row.Text("formula");
        ChemistryKey = row.Text("chemistry_key");
        Role = row.Enum<ReagentRole>("role");
        MolarMassGramsPerMole = row.OptionalNumber("molar_mass_g_per_mol");
        AnhydrousGramsPerMole = row.OptionalNumber("anhydrous_g_per_mol");
        HydrateWaters = row.OptionalEstimate("hydrate_waters", "hydrate_low", "hydrate_high");
        Delivers = row.Deliveries("delivers");
        BaseNeededMolesPerMole = row.OptionalNumber("base_needed_mol_per_mol");
        BaseGivenMolesPerMole = row.OptionalNumber("base_given_mol_per_mol");
        AcidGivenMolesPerMole = row.OptionalNumber("acid_given_mol_per_mol");
        PurityPercent = row.OptionalEstimate("purity_percent", "purity_low", "purity_high");
        PurityWhere = row.Text("purity_where");
        SolubilityKind = row.Enum<SolubilityKind>("solubility_kind");
        Solubility = solubility;
        WhichOne = row.Text("which_one");
        Note = row.Text("note");
        Stance = row.Enum<Stance>("stance");
        RefusalReason = row.Text("refusal_reason");
        UseInstead = row.Text("use_instead");
        CautionKeys = row.List("caution_keys");
        Citation = row.Citation();
    }

    /// <summary>The short name used in requests and addresses, such as <c>potash-alum</c>.</summary>
    public string Key { get; }

    /// <summary>The trade's name.</summary>
    public string Name { get; }

    /// <summary>Other names a packet or a recipe may use. One alias may belong to several reagents ("alum", "soda"): that is the point of asking which one.</summary>
    public IReadOnlyList<string> Aliases { get; }

    /// <summary>The formula as sold, water of crystals after a point; empty for mixtures.</summary>
    public string Formula { get; }

    /// <summary>The systematic name of the substance, such as <c>potassium-alum-dodecahydrate</c>; empty for mixtures.</summary>
    public string ChemistryKey { get; }

    /// <summary>What it does in lake making.</summary>
    public ReagentRole Role { get; }

    /// <summary>Mass of a mole as sold, g/mol, from conventional atomic weights; null for mixtures and refused reagents.</summary>
    public double? MolarMassGramsPerMole { get; }

    /// <summary>Mass of a mole without its water of crystals, g/mol; null where <see cref="MolarMassGramsPerMole"/> is null.</summary>
    public double? AnhydrousGramsPerMole { get; }

    /// <summary>Moles of water of crystals in the formula, with the span met in packets under this name; null where it has no meaning.</summary>
    public Estimate? HydrateWaters { get; }

    /// <summary>What a mole brings into the bath.</summary>
    public IReadOnlyList<Delivery> Delivers { get; }

    /// <summary>Moles of base that bring all the metal of a mole down as plain hydroxide; null when it brings no such metal.</summary>
    public double? BaseNeededMolesPerMole { get; }

    /// <summary>Moles of base a mole gives when its carbonate is used up and its gas leaves; null when it is no alkali.</summary>
    public double? BaseGivenMolesPerMole { get; }

    /// <summary>Moles of acid a mole gives; null when it is no acid.</summary>
    public double? AcidGivenMolesPerMole { get; }

    /// <summary>Usual purity in percent by mass with its span; null when not known.</summary>
    public Estimate? PurityPercent { get; }

    /// <summary>Where the purity comes from.</summary>
    public string PurityWhere { get; }

    /// <summary>What is known of its solubility.</summary>
    public SolubilityKind SolubilityKind { get; }

    /// <summary>The solubility table, on the water-free substance; null unless <see cref="SolubilityKind"/> is <see cref="SolubilityKind.Table"/>.</summary>
    public SolubilityCurve? Solubility { get; }

    /// <summary>The question that settles which substance a packet holds, and the answer that this row stands for; empty where no doubt is usual.</summary>
    public string WhichOne { get; }

    /// <summary>What else a maker should know.</summary>
    public string Note { get; }

    /// <summary>Whether the program plans with it.</summary>
    public Stance Stance { get; }

    /// <summary>Why it is refused; empty when it is not.</summary>
    public string RefusalReason { get; }

    /// <summary>What does the work instead; empty when it is not refused.</summary>
    public string UseInstead { get; }

    /// <summary>Keys of the cautions that belong to it.</summary>
    public IReadOnlyList<string> CautionKeys { get; }

    /// <summary>Where the row comes from.</summary>
    public Citation Citation { get; }

    /// <summary>Grams of the substance as sold, water of crystals included, that dissolve in 100 g of added water.</summary>
    /// <param name="temperatureCelsius">The temperature of the bath.</param>
    /// <remarks>The table is on the water-free substance. With the water-free mass share f and the table's s, the mass m of crystals that saturates 100 g of water satisfies m f / (100 + m (1 - f)) = s / 100, because the water of the crystals dissolves too: m = 100 s / (100 f - s (1 - f)).</remarks>
    /// <returns>Null when not known or outside the table; positive infinity when it mixes in any proportion or melts in its own water.</returns>
    public double? SolubilityGramsPer100GramsWater(double temperatureCelsius)
    {
        if (SolubilityKind == SolubilityKind.Miscible) return double.PositiveInfinity;
        if (MolarMassGramsPerMole is not { } whole || AnhydrousGramsPerMole is not { } dry) return null;
        if (Solubility?.AnhydrousGramsPer100GramsWater(temperatureCelsius) is not { } table) return null;
        double share = dry / whole;
        double room = 100 * share - table * (1 - share);
        return room > 0 ? 100 * table / room : double.PositiveInfinity;
    }

    internal static Reagent Read(Fields row, IReadOnlyDictionary<string, SolubilityCurve> curves)
    {
        string curveKey = row.Text("solubility_curve");
        if (curveKey.Length == 0) return new Reagent(row, null);
        return curves.TryGetValue(curveKey, out SolubilityCurve? curve)
            ? new Reagent(row, curve)
            : throw row.Wrong("solubility_curve", $"there is no curve named {curveKey} in solubility.csv");
    }
}
