using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.PhRow;

/// <summary>A solution that is given by the millilitre.</summary>
/// <param name="Substance">What is in it.</param>
/// <param name="GramsPer100Millilitres">How much of it, where it is weighed; what is poured goes in as it is.</param>
public sealed record RowSolution(Substance Substance, double GramsPer100Millilitres)
{
    /// <summary>Units of the substance in a millilitre.</summary>
    public double UnitsPerMillilitre => Substance.Unit == SubstanceUnit.Gram ? GramsPer100Millilitres / 100 : 1;
}

/// <summary>One liquor that is to stand at several pH.</summary>
public sealed record PhRowInput
{
    /// <summary>The pK of a plant's acid of which nothing is known, as in the constants.</summary>
    public const double UsualPk = 4.3;

    /// <summary>Liquor in each jar.</summary>
    public required Volume Liquor { get; init; }

    /// <summary>Dry dyestuff that went into a litre of it.</summary>
    public double DryGramsPerLitre { get; init; }

    /// <summary>Hardness of its water.</summary>
    public Hardness Hardness { get; init; }

    /// <summary>Whether the hardness was assumed and not measured.</summary>
    public bool HardnessIsAssumed { get; init; } = true;

    /// <summary>Acid of the dyestuff, milliequivalents for a gram of dry dyestuff: 5, 50, 95 % points.</summary>
    public Estimate PlantAcidMilliequivalentsPerGram { get; init; }

    /// <summary>pK of the plant's acid, taken as one weak acid.</summary>
    public double PlantAcidPk { get; init; } = UsualPk;

    /// <summary>Measured pH of the liquor, if known.</summary>
    public Ph? LiquorPh { get; init; }

    /// <summary>Temperature of the jars.</summary>
    public Temperature Temperature { get; init; } = Temperature.FromCelsius(20);

    /// <summary>What brings a jar down.</summary>
    public required RowSolution Acid { get; init; }

    /// <summary>What brings it up.</summary>
    public required RowSolution Alkali { get; init; }

    /// <summary>The pH of each jar.</summary>
    public required IReadOnlyList<Ph> Aims { get; init; }

    /// <summary>Seed of the draws behind the spans.</summary>
    public ulong Seed { get; init; } = 1;
}

/// <summary>What goes into a jar.</summary>
public enum RowDose
{
    /// <summary>The liquor stands at this pH as it is.</summary>
    Nothing,

    /// <summary>Acid.</summary>
    Acid,

    /// <summary>Alkali.</summary>
    Alkali,

    /// <summary>As much solution as liquor does not bring it there.</summary>
    OutOfReach,
}

/// <summary>A jar of the row.</summary>
/// <param name="AimPh">The pH it is to stand at.</param>
/// <param name="Dose">What goes into it.</param>
/// <param name="DoseMillilitres">How much of the solution.</param>
/// <param name="PhWithIt">The pH to expect with the middle dose, before it is mended by the strip.</param>
/// <param name="TopUpMillilitres">Water of the same kind, so that all jars are thinned alike.</param>
public sealed record PhRowJar(Ph AimPh, RowDose Dose, Estimate DoseMillilitres, Estimate PhWithIt, double TopUpMillilitres);

/// <summary>The row.</summary>
/// <param name="LiquorPh">The pH of the liquor, thinned as it stands in the jars.</param>
/// <param name="FilledMillilitres">What each jar is filled up to.</param>
/// <param name="Jars">The jars in the order of the aims.</param>
public sealed record PhRowPlan(Estimate LiquorPh, double FilledMillilitres, IReadOnlyList<PhRowJar> Jars);
