using Alumroot.Chemistry.Constants;
using Alumroot.Chemistry.Equilibrium;
using Alumroot.Chemistry.Titration;

namespace Alumroot.Chemistry.Planning;

/// <summary>The bath of one plan as components: what is in it and what a unit of the titrant brings, for any draw.</summary>
internal sealed class BathModel
{
    internal const string PlantAcidSpecies = "HPlantacid";

    // Less of a thing than this is none of it: the equations cannot be solved for its logarithm, and no water is so pure.
    private const double TraceMol = 1e-12;
    private readonly LakePlanInput _input;
    private readonly AqueousSystem[] _systems;   // by idea; they share the order of components
    private readonly double _saltWaterKg, _alkaliWaterKgPerUnit;

    internal BathModel(LakePlanInput input, double saltWaterMillilitres, double alkaliWaterMillilitresPerUnit)
    {
        _input = input;
        _saltWaterKg = saltWaterMillilitres / 1000;
        _alkaliWaterKgPerUnit = alkaliWaterMillilitresPerUnit / 1000;
        var present = new HashSet<string>(StringComparer.Ordinal);
        foreach (SaltPortion s in input.Salts) Include(s.Substance.PerUnit);
        Include(input.Alkali.PerUnit);
        if (HasHardness) present.UnionWith(["Ca+2", "Mg+2", "CO3-2"]);
        if (AcidMoles(input.PlantAcidMilliequivalentsPerGram.Value) > TraceMol)
        {
            present.Add("Plantacid-");
            if (input.LiquorPh is not null) present.Add("K+");
        }
        _systems = new AqueousSystem[2];
        foreach (SolidIdea idea in Enum.GetValues<SolidIdea>())
        {
            IEnumerable<AllowedPhase> phases = FreshSolids.For(idea).Append(new AllowedPhase(TitrationCase.CarbonDioxide, PhaseRule.Vents));
            _systems[(int)idea] = new AqueousSystem(EmbeddedConstants.Set, input.Temperature.Celsius, present, phases);
        }
        System = _systems[0];
        string[] metals = FreshSolids.LakeMetals.Where(m => SaltMoles(m) > 0).ToArray();
        if (metals.Length == 0) metals = FreshSolids.SoftMetals.Where(m => SaltMoles(m) > 0).ToArray();
        Metals = metals;
        MetalIndexes = metals.Select(System.IndexOfComponent).ToArray();
        IdeaMatters = _systems[1].Phases.Any(p => FreshSolids.IsBasic(p.Name) && metals.Any(m => p.Dissolution[m] != 0));

        void Include(Reagent r)
        {
            foreach ((string c, double n) in r.Delivers.Terms)
                if (c != Component.Water && n != 0) present.Add(c);
        }
    }

    internal AqueousSystem System { get; }

    /// <summary>Metals whose coming down makes the lake.</summary>
    internal IReadOnlyList<string> Metals { get; }

    internal int[] MetalIndexes { get; }

    /// <summary>Whether any basic salt can form at all.</summary>
    internal bool IdeaMatters { get; }

    internal double MetalMoles => Metals.Sum(SaltMoles);

    /// <summary>Base that brings the metals down as hydroxide, less what the salts bring themselves, in mol.</summary>
    internal double BaseForMetal
    {
        get
        {
            double demand = Metals.Sum(m => SaltMoles(m) * FreshSolids.BaseDemand(m));
            return demand - _input.Salts.Sum(s => s.Amount.Grams * s.Substance.BaseMolPerUnit);
        }
    }

    /// <summary>Base that the middle plant acid takes, in mol.</summary>
    internal double BaseForAcid => AcidMoles(_input.PlantAcidMilliequivalentsPerGram.Value);

    internal double GramsPerMoleOfMetal => Metals.Count == 0 ? 0 : Metals.Sum(m => SaltMoles(m) * GramsPerMole(m)) / MetalMoles;

    /// <summary>Liquid in the vessel; a dissolved gram of alkali is taken as 0.4 mL (density of salts near 2.5 g/mL).</summary>
    internal double LitresAt(double alkaliUnits) =>
        _input.Water.Litres + _saltWaterKg + alkaliUnits * (_alkaliWaterKgPerUnit + (_input.Alkali.Unit == SubstanceUnit.Millilitre ? 0.001 : 0.0004));

    /// <summary>The system of a draw.</summary>
    internal AqueousSystem SystemFor(PlanDraw d, double? log10GasAtm = null)
    {
        double celsius = CelsiusOf(d);
        return _systems[(int)d.Idea].Moved(celsius, name => Log10Shift(d, celsius, name), log10GasAtm ?? d.Log10GasAtm);
    }

    /// <summary>The bath's temperature in a draw.</summary>
    internal double CelsiusOf(PlanDraw d) => Math.Clamp(_input.Temperature.Celsius + d.CelsiusOff, 0, 100);

    /// <summary>What a draw adds to log10 K of a phase or species at a temperature.</summary>
    internal static double Log10Shift(PlanDraw d, double celsius, string name) =>
        name == PlantAcidSpecies ? d.AcidPkShift : FreshSolids.IsPlainMetal(name) ? d.PlainShift : FreshSolids.IsBasic(name) ? d.BasicShift + BasicByHeat(name, celsius, d.BasicEnthalpyShare) : 0;

    /// <summary>Shift of log10 K of a basic salt without temperature data, from the share of the hydroxide's enthalpy that the draw gives it.</summary>
    private static double BasicByHeat(string name, double celsius, double share)
    {
        Phase phase = EmbeddedConstants.Set.FindPhase(name)!;
        if (!phase.LacksTemperatureData) return 0;
        double hydroxides = -phase.Dissolution[Component.Proton];
        double joule = 1000 * share * hydroxides * PlanDraw.KilojoulePerHydroxideGroup;
        return -joule / (TemperatureLaw.GasConstantJoulePerMolKelvin * Math.Log(10)) * (1 / (celsius + 273.15) - 1 / 298.15);
    }

    /// <summary>Moles of each component before the titrant: liquor, hardness, plant acid and the salts.</summary>
    internal double[] LiquorWithSalts(PlanDraw d)
    {
        double[] t = Liquor(d);
        AddSalts(t, 1);
        AddFreeAcid(t, d);
        return t;
    }

    /// <summary>Free acid that all the salts bring.</summary>
    internal void AddFreeAcid(double[] t, PlanDraw d)
    {
        double free = d.FreeAcidShare * Metals.Where(m => m is "Al+3" or "FeIII+3" or "FeII+2").Sum(m => SaltMoles(m) * FreshSolids.BaseDemand(m));
        if (free > 0 && System.IndexOfComponent("SO4-2") is var so4 and >= 0) AddAcid(t, free, so4, 2);
        else if (free > 0 && System.IndexOfComponent("Cl-") is var cl and >= 0) AddAcid(t, free, cl, 1);
    }

    /// <summary>Moles of each component in the liquor with so much alkali and no salt.</summary>
    internal double[] LiquorWithAlkali(PlanDraw d, double alkaliUnits)
    {
        double[] t = Liquor(d);
        double[] perUnit = AlkaliPerUnit();
        for (int j = 0; j < t.Length; j++) t[j] += alkaliUnits * perUnit[j];
        return t;
    }

    /// <summary>What one unit of alkali with its dissolving water brings.</summary>
    internal double[] AlkaliPerUnit()
    {
        var t = new double[System.Nc + 1];
        System.Add(_input.Alkali.PerUnit, 1, t);
        t[System.Nc] += _alkaliWaterKgPerUnit * AqueousSystem.WaterMolesPerKg;
        return t;
    }

    /// <summary>What all the salts with their dissolving water bring.</summary>
    internal double[] AllSalts()
    {
        var t = new double[System.Nc + 1];
        AddSalts(t, 1);
        return t;
    }

    internal double SaltMoles(string component) => _input.Salts.Sum(s => s.Amount.Grams * s.Substance.MolPerUnit(component));

    /// <summary>Moles of each component in a litre of water of the given hardness.</summary>
    internal void AddHardWater(double[] t, double litres, double millimolesPerLitre)
    {
        double h = millimolesPerLitre / 1000 * litres;
        if (h <= 0 || !HasHardness || System.IndexOfComponent("Ca+2") < 0) return;
        t[System.IndexOfComponent("Ca+2")] += 0.75 * h;
        t[System.IndexOfComponent("Mg+2")] += 0.25 * h;
        t[System.IndexOfComponent("CO3-2")] += 2 * h;
        t[System.ProtonIndex] += 2 * h;
    }

    /// <summary>Moles of each component in the liquor: water, hardness and plant acid.</summary>
    internal double[] Liquor(PlanDraw d)
    {
        var t = new double[System.Nc + 1];
        double litres = _input.Water.Litres * d.WaterFactor;
        t[System.Nc] = litres * AqueousSystem.WaterMolesPerKg;
        AddHardWater(t, litres, _input.Hardness.MillimolesPerLitre * d.HardnessFactor);
        int acid = System.IndexOfComponent("Plantacid-");
        double moles = AcidMoles(d.AcidMilliequivalentsPerGram);
        if (acid < 0 || moles <= 0) return t;
        // A liquor whose pH is known holds the same free acid and, beside it, the salt that gives this pH.
        double salt = _input.LiquorPh is { } ph ? moles * Math.Pow(10, ph.Value - (PlanDraw.StandardAcidPk + d.AcidPkShift)) : 0;
        salt = Math.Min(salt, 20 * moles);
        t[acid] += moles + salt;
        t[System.ProtonIndex] += moles;
        if (salt > 0) t[System.IndexOfComponent("K+")] += salt;
        return t;
    }

    private bool HasHardness => _input.Hardness.MillimolesPerLitre / 1000 * _input.Water.Litres > TraceMol;

    private double AcidMoles(double milliequivalentsPerGram) => (_input.DryDyestuff?.Grams ?? 0) * milliequivalentsPerGram / 1000;

    private void AddSalts(double[] t, double share)
    {
        foreach (SaltPortion s in _input.Salts) System.Add(s.Substance.PerUnit, share * s.Amount.Grams, t);
        t[System.Nc] += share * _saltWaterKg * AqueousSystem.WaterMolesPerKg;
    }

    private void AddAcid(double[] t, double moles, int anion, int charge)
    {
        t[System.ProtonIndex] += moles;
        t[anion] += moles / charge;
    }

    private static double GramsPerMole(string component) => EmbeddedConstants.Set.Components.First(c => c.Name == component).GramsPerMole ?? 0;
}
