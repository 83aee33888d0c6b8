using Alumroot.Chemistry.Constants;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Planning;

/// <summary>What a substance is for.</summary>
public enum SubstanceRole
{
    /// <summary>Brings the metal.</summary>
    Salt,

    /// <summary>Throws the metal down.</summary>
    Alkali,

    /// <summary>Brings a liquor down to a pH.</summary>
    Acid,
}

/// <summary>How a substance is measured out.</summary>
public enum SubstanceUnit
{
    /// <summary>Weighed, in grams.</summary>
    Gram,

    /// <summary>Poured, in millilitres.</summary>
    Millilitre,
}

/// <summary>A substance as it comes out of its packet or jar: what one gram (or millilitre) brings, and how far its strength may be from what the label says.</summary>
public sealed record Substance
{
    internal Substance(string key, SubstanceRole role, SubstanceUnit unit, string plainName, string formula, Reagent perUnit, Estimate strength) =>
        (Key, Role, Unit, PlainName, Formula, PerUnit, Strength) = (key, role, unit, plainName, formula, perUnit, strength);

    /// <summary>Name on the command line, such as potash-alum.</summary>
    public string Key { get; }

    /// <summary>What it is for.</summary>
    public SubstanceRole Role { get; }

    /// <summary>Grams or millilitres.</summary>
    public SubstanceUnit Unit { get; }

    /// <summary>Name a maker reads on the packet.</summary>
    public string PlainName { get; init; }

    /// <summary>Formula with hydrate water, for reading.</summary>
    public string Formula { get; init; }

    /// <summary>What one gram or millilitre delivers; its "mole" is the gram or millilitre.</summary>
    public Reagent PerUnit { get; init; }

    /// <summary>Grams in one unit: 1 for what is weighed, the density for what is poured.</summary>
    public double GramsPerUnit { get; init; } = 1;

    /// <summary>Mass of the named substance in a gram as it is usually sold; a stated purity replaces it.</summary>
    public double UsualPurityRatio { get; init; } = 1;

    /// <summary>True strength over nominal strength: 1 with its 90 % span.</summary>
    public Estimate Strength { get; init; }

    /// <summary>Moles of base one unit gives when all carbonate turns to carbon dioxide; negative for an acid.</summary>
    public double BaseMolPerUnit => 2 * PerUnit.Delivers["CO3-2"] - PerUnit.Delivers[Component.Proton];

    /// <summary>Moles of carbon dioxide one unit can set free.</summary>
    public double CarbonDioxideMolPerUnit => PerUnit.Delivers["CO3-2"];

    /// <summary>Moles of a component in one unit.</summary>
    public double MolPerUnit(string component) => PerUnit.Delivers[component];
}
