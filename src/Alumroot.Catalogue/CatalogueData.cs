using Alumroot.Catalogue.Finding;
using Alumroot.Catalogue.Reading;
using Alumroot.Quantities.Tables;

namespace Alumroot.Catalogue;

/// <summary>The trade's facts: dyestuffs, reagents, hazards, cautions, rules of thumb and troubles.</summary>
/// <remarks>Immutable. Read once, at first use, from tables built into the program; a broken table throws <see cref="TableException"/> with its place.</remarks>
public sealed class CatalogueData
{
    private static readonly Lazy<CatalogueData> Read = new(() => new CatalogueData());

    private readonly Shelf<Dyestuff> _dyestuffs;
    private readonly Shelf<Reagent> _reagents;
    private readonly Shelf<PlantAcidPrior> _plantAcids;
    private readonly Shelf<Hazard> _hazards;
    private readonly Shelf<Caution> _cautions;
    private readonly Shelf<Incompatibility> _incompatibilities;
    private readonly Shelf<PlantHazard> _plantHazards;
    private readonly Shelf<WasteAdvice> _waste;
    private readonly Shelf<ProcessFact> _processFacts;
    private readonly Shelf<Trouble> _troubles;
    private readonly Shelf<Vapour> _vapours;
    private readonly Lazy<CatalogueSearch> _search;

    private CatalogueData()
    {
        _dyestuffs = Shelf<Dyestuff>.Read("dyestuffs.csv", Dyestuff.Read, d => d.Key);
        IReadOnlyDictionary<string, SolubilityCurve> curves = ReadSolubility();
        _reagents = Shelf<Reagent>.Read("reagents.csv", row => Reagent.Read(row, curves), r => r.Key);
        _plantAcids = Shelf<PlantAcidPrior>.Read("plant_acids.csv", PlantAcidPrior.Read, p => p.Key);
        _hazards = Shelf<Hazard>.Read("hazards.csv", Hazard.Read, h => h.Key);
        _cautions = Shelf<Caution>.Read("cautions.csv", Caution.Read, c => c.Key);
        _incompatibilities = Shelf<Incompatibility>.Read("incompatibilities.csv", Incompatibility.Read, i => i.Key);
        _plantHazards = Shelf<PlantHazard>.Read("plant_hazards.csv", PlantHazard.Read, p => p.Key);
        _waste = Shelf<WasteAdvice>.Read("waste.csv", WasteAdvice.Read, w => w.Key);
        _processFacts = Shelf<ProcessFact>.Read("process_facts.csv", ProcessFact.Read, f => f.Key);
        _troubles = Shelf<Trouble>.Read("trouble.csv", Trouble.Read, t => t.Key);
        _vapours = Shelf<Vapour>.Read("vapours.csv", Vapour.Read, v => v.Key);
        AmmoniaStrengths = [.. EmbeddedTables.Read("ammonia_strength.csv").Rows
            .Select(row => AmmoniaStrength.Read(new Fields(row))).OrderBy(a => a.Percent)];
        _search = new Lazy<CatalogueSearch>(() => new CatalogueSearch(this));
    }

    /// <summary>The catalogue built into the program.</summary>
    /// <exception cref="TableException">A built-in table is broken.</exception>
    public static CatalogueData Embedded => Read.Value;

    /// <summary>All dyestuffs.</summary>
    public IReadOnlyList<Dyestuff> Dyestuffs => _dyestuffs.Rows;

    /// <summary>All reagents, refused ones too.</summary>
    public IReadOnlyList<Reagent> Reagents => _reagents.Rows;

    /// <summary>What to expect of the acid in a liquor, by class of dyestuff.</summary>
    public IReadOnlyList<PlantAcidPrior> PlantAcids => _plantAcids.Rows;

    /// <summary>Hazard classes and limits.</summary>
    public IReadOnlyList<Hazard> Hazards => _hazards.Rows;

    /// <summary>Caution texts.</summary>
    public IReadOnlyList<Caution> Cautions => _cautions.Rows;

    /// <summary>Pairs that must not meet.</summary>
    public IReadOnlyList<Incompatibility> Incompatibilities => _incompatibilities.Rows;

    /// <summary>Hazards of plants, insects, fungi and lichens.</summary>
    public IReadOnlyList<PlantHazard> PlantHazards => _plantHazards.Rows;

    /// <summary>What to do with waste.</summary>
    public IReadOnlyList<WasteAdvice> Waste => _waste.Rows;

    /// <summary>Rules of thumb.</summary>
    public IReadOnlyList<ProcessFact> ProcessFacts => _processFacts.Rows;

    /// <summary>Troubles at the bench, one row per likely cause.</summary>
    public IReadOnlyList<Trouble> Troubles => _troubles.Rows;

    /// <summary>Vapours and gases of the work.</summary>
    public IReadOnlyList<Vapour> Vapours => _vapours.Rows;

    /// <summary>Ammonia solutions, weakest first.</summary>
    public IReadOnlyList<AmmoniaStrength> AmmoniaStrengths { get; }

    /// <summary>Tolerant finding over all of it.</summary>
    public CatalogueSearch Search => _search.Value;

    /// <summary>The dyestuff with this key, or null.</summary>
    public Dyestuff? FindDyestuff(string key) => _dyestuffs.Find(key);

    /// <summary>The reagent with this key, or null.</summary>
    public Reagent? FindReagent(string key) => _reagents.Find(key);

    /// <summary>The prior with this class, or null.</summary>
    public PlantAcidPrior? FindPlantAcid(string acidClass) => _plantAcids.Find(acidClass);

    /// <summary>The hazard row with this key, or null.</summary>
    public Hazard? FindHazard(string key) => _hazards.Find(key);

    /// <summary>The caution with this key, or null.</summary>
    public Caution? FindCaution(string key) => _cautions.Find(key);

    /// <summary>The incompatibility with this key, or null.</summary>
    public Incompatibility? FindIncompatibility(string key) => _incompatibilities.Find(key);

    /// <summary>The plant hazard with this key, or null. A dyestuff's hazard has the dyestuff's key.</summary>
    public PlantHazard? FindPlantHazard(string key) => _plantHazards.Find(key);

    /// <summary>The waste advice with this key, or null.</summary>
    public WasteAdvice? FindWasteAdvice(string key) => _waste.Find(key);

    /// <summary>The rule of thumb with this key, or null.</summary>
    public ProcessFact? FindProcessFact(string key) => _processFacts.Find(key);

    /// <summary>The vapour or gas with this key, or null.</summary>
    public Vapour? FindVapour(string key) => _vapours.Find(key);

    /// <summary>The trouble row with this key, or null.</summary>
    public Trouble? FindTrouble(string key) => _troubles.Find(key);

    /// <summary>The acid prior of a dyestuff.</summary>
    /// <exception cref="KeyNotFoundException">The dyestuff is of another catalogue and its class is not in this one.</exception>
    public PlantAcidPrior PlantAcidOf(Dyestuff dyestuff)
    {
        ArgumentNullException.ThrowIfNull(dyestuff);
        return FindPlantAcid(dyestuff.AcidClass) ?? throw new KeyNotFoundException(dyestuff.AcidClass);
    }

    /// <summary>Hazard rows of a reagent, in order of strength; only those that hold at a strength when one is given.</summary>
    /// <param name="reagentKey">The reagent.</param>
    /// <param name="strengthPercent">Percent by mass, or null for all rows.</param>
    public IReadOnlyList<Hazard> HazardsOf(string reagentKey, double? strengthPercent = null) =>
        [.. Hazards.Where(h => h.ReagentKeys.Contains(reagentKey)
            && (strengthPercent is not { } strength || h.HoldsAt(strength)))];

    /// <summary>Density and strength of an ammonia solution by a straight line between the rows of the table.</summary>
    /// <param name="percent">Ammonia in percent by mass.</param>
    /// <returns>Null outside the table.</returns>
    public AmmoniaStrength? AmmoniaAt(double percent)
    {
        for (int i = 0; i < AmmoniaStrengths.Count; i++)
        {
            AmmoniaStrength upper = AmmoniaStrengths[i];
            if (upper.Percent == percent) return upper;
            if (i == 0 || upper.Percent < percent) continue;
            AmmoniaStrength lower = AmmoniaStrengths[i - 1];
            if (!(percent > lower.Percent)) return null;
            double share = (percent - lower.Percent) / (upper.Percent - lower.Percent);
            return new AmmoniaStrength(
                percent,
                lower.DensityGramsPerMillilitre + share * (upper.DensityGramsPerMillilitre - lower.DensityGramsPerMillilitre),
                lower.AmmoniaMolesPerLitre + share * (upper.AmmoniaMolesPerLitre - lower.AmmoniaMolesPerLitre),
                lower.Citation);
        }
        return null;
    }

    /// <summary>Dyestuffs whose key, name or alias is this text, whatever its case, accents, hyphens and blanks.</summary>
    public IReadOnlyList<Dyestuff> DyestuffsNamed(string name) =>
        Named(Dyestuffs, name, d => [d.Key, d.Name, .. d.Aliases]);

    /// <summary>Reagents whose key, systematic key, name or alias is this text, whatever its case, accents, hyphens and blanks.</summary>
    /// <remarks>A key or name alone decides; an alias such as "alum" may name several, and then all are given, so that the maker can be asked.</remarks>
    public IReadOnlyList<Reagent> ReagentsNamed(string name) =>
        Named(Reagents, name, r => [r.Key, r.Name, r.ChemistryKey, .. r.Aliases]);

    private static T[] Named<T>(IReadOnlyList<T> rows, string name, Func<T, string[]> namesOf)
    {
        string wanted = FoldedText.Letters(name);
        if (wanted.Length == 0) return [];
        T[] sure = [.. rows.Where(row => namesOf(row).Take(2).Any(n => FoldedText.Letters(n) == wanted))];
        return sure.Length > 0 ? sure : [.. rows.Where(row => namesOf(row).Any(n => FoldedText.Letters(n) == wanted))];
    }

    private static Dictionary<string, SolubilityCurve> ReadSolubility() =>
        EmbeddedTables.Read("solubility.csv").Rows
            .GroupBy(row => row["substance"], row => SolubilityCurve.ReadPoint(new Fields(row)))
            .ToDictionary(g => g.Key, g => new SolubilityCurve(g.Key, g), StringComparer.Ordinal);
}
