using Alumroot.Quantities;

namespace Alumroot.Chemistry.Planning;

/// <summary>Which solution is poured into which.</summary>
public enum OrderOfAddition
{
    /// <summary>Salt into the liquor, alkali last.</summary>
    SaltFirst,

    /// <summary>Alkali into the liquor, salt last.</summary>
    AlkaliFirst,
}

/// <summary>What the plan is to reach. Closed: nobody adds another kind.</summary>
public abstract record PlanAim
{
    private PlanAim() { }

    /// <summary>A final pH.</summary>
    /// <param name="Ph">The pH as read when the froth has gone down.</param>
    public sealed record ToPh(Ph Ph) : PlanAim;

    /// <summary>A given amount of alkali.</summary>
    /// <param name="Units">Grams or millilitres, as the alkali is measured.</param>
    public sealed record AlkaliAmount(double Units) : PlanAim;

    /// <summary>The least alkali that brings all but half a percent of the metal down.</summary>
    public sealed record AllMetalDown : PlanAim;
}

/// <summary>A salt and how much of it.</summary>
/// <param name="Substance">The salt.</param>
/// <param name="Amount">Its mass.</param>
public readonly record struct SaltPortion(Substance Substance, Mass Amount);

/// <summary>All that a plan is made from, resolved to substances and quantities.</summary>
public sealed record LakePlanInput
{
    /// <summary>Dry dyestuff in the liquor; null for plain substrate.</summary>
    public Mass? DryDyestuff { get; init; }

    /// <summary>Water of the liquor.</summary>
    public required Volume Water { get; init; }

    /// <summary>Hardness of that water, counted as bicarbonates, three parts calcium to one magnesium.</summary>
    public Hardness Hardness { get; init; }

    /// <summary>Whether the hardness was assumed and not measured: its span is then plus or minus a half, else a tenth.</summary>
    public bool HardnessIsAssumed { get; init; } = true;

    /// <summary>Acid of the dyestuff that soda would have to neutralise, milliequivalents for a gram of dry dyestuff: 5, 50, 95 % points.</summary>
    public Estimate PlantAcidMilliequivalentsPerGram { get; init; }

    /// <summary>pK of the plant's acid, taken as one weak acid; 0.6 either way.</summary>
    public double PlantAcidPk { get; init; } = 4.3;

    /// <summary>Measured pH of the liquor before anything is added, if known.</summary>
    public Ph? LiquorPh { get; init; }

    /// <summary>One salt, or two.</summary>
    public required IReadOnlyList<SaltPortion> Salts { get; init; }

    /// <summary>The alkali.</summary>
    public required Substance Alkali { get; init; }

    /// <summary>Which goes into which.</summary>
    public OrderOfAddition Order { get; init; }

    /// <summary>Temperature of the bath while the lake is thrown down.</summary>
    public Temperature Temperature { get; init; } = Temperature.FromCelsius(20);

    /// <summary>The aim.</summary>
    public required PlanAim Aim { get; init; }

    /// <summary>A pH that a recipe or a reading states for the given amount of alkali, to be checked against the masses.</summary>
    public Ph? StatedPh { get; init; }

    /// <summary>Vessel, if one is named.</summary>
    public Volume? Vessel { get; init; }

    /// <summary>Smallest step of the scale.</summary>
    public Mass ScaleStep { get; init; } = Mass.FromGrams(0.1);

    /// <summary>Smallest step of the pH strips or meter, in pH.</summary>
    public double StripStepPh { get; init; } = 0.5;

    /// <summary>Conductivity of the supernatant at which washing may stop.</summary>
    public Conductivity WashTo { get; init; } = Conductivity.FromMicrosiemensPerCentimetre(500);

    /// <summary>Whether pure water is used for washing; otherwise water of the given hardness.</summary>
    public bool WashWithPureWater { get; init; }

    /// <summary>Grams of the first salt, as sold, that 100 g of water hold at the temperature; null when not known.</summary>
    public double? SaltSolubilityGramsPer100g { get; init; }

    /// <summary>Grams of the alkali, as sold, that 100 g of water hold at room temperature; null when not known or poured.</summary>
    public double? AlkaliSolubilityGramsPer100g { get; init; }

    /// <summary>Colourant in the dry dyestuff as a mass fraction; null when not known.</summary>
    public Estimate? ColourantFraction { get; init; }

    /// <summary>Seed of the draws behind the spans.</summary>
    public ulong Seed { get; init; } = 1;
}
