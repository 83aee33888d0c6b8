using Alumroot.Quantities;

namespace Alumroot.Chemistry.Planning;

/// <summary>What came of planning: a plan, or the reason why the aim cannot be reached.</summary>
public abstract record PlanOutcome
{
    private PlanOutcome() { }

    /// <summary>A plan.</summary>
    /// <param name="Plan">The plan.</param>
    public sealed record Planned(LakePlan Plan) : PlanOutcome;

    /// <summary>The aim lies below or above what this bath can reach.</summary>
    /// <param name="AimPh">The pH asked for.</param>
    /// <param name="ReachablePh">The nearest pH that can be reached, with its span.</param>
    /// <param name="IsBelow">Whether the aim lies below the start; otherwise above the end.</param>
    /// <param name="LowestPhWithMetalDown">The lowest pH at which nearly all the metal is down; null when the metal never comes down.</param>
    /// <param name="DissolvedThere">Share of the metal that stays in solution at the nearest pH.</param>
    public sealed record CannotReach(Ph AimPh, Estimate ReachablePh, bool IsBelow, Estimate? LowestPhWithMetalDown, Estimate DissolvedThere) : PlanOutcome;

    /// <summary>However much of this alkali goes in, part of the metal stays in solution.</summary>
    /// <param name="LeastDissolvedShare">The least share that stays, with its span.</param>
    /// <param name="Ph">The pH there.</param>
    public sealed record MetalStays(Estimate LeastDissolvedShare, Estimate Ph) : PlanOutcome;

    /// <summary>The equations could not be solved for this bath; nothing is claimed.</summary>
    public sealed record NotSolved : PlanOutcome;
}

/// <summary>The input that makes a span as wide as it is.</summary>
public enum SpanCause
{
    /// <summary>Whether hydroxide or basic salt comes down.</summary>
    KindOfSolid,

    /// <summary>Solubility of the fresh solid.</summary>
    SolubilityOfSolid,

    /// <summary>How much gas is still in the bath when the pH is read.</summary>
    GasHeld,

    /// <summary>The plant's own acid.</summary>
    PlantAcid,

    /// <summary>Strength of the alkali.</summary>
    AlkaliStrength,

    /// <summary>Strength of the salt.</summary>
    SaltStrength,

    /// <summary>Hardness of the water.</summary>
    Hardness,

    /// <summary>Free acid in the salt.</summary>
    FreeAcid,

    /// <summary>Temperature of the bath.</summary>
    Temperature,
}

/// <summary>One point of the addition; every estimate carries its 90 % span.</summary>
/// <param name="Alkali">Alkali added so far, grams or millilitres.</param>
/// <param name="SaltShare">Share of the salt that is in, 0 to 1.</param>
/// <param name="Ph">pH.</param>
/// <param name="PhQuarter">Lower quarter of pH: a quarter of the draws lie below.</param>
/// <param name="PhThreeQuarters">Upper quarter of pH.</param>
/// <param name="PhIfHydroxide">pH if hydroxide alone comes down.</param>
/// <param name="PhIfBasicSalt">pH if basic salt may come down too; null where the idea makes no difference.</param>
/// <param name="GasLitres">Gas that has left, litres at bath temperature and one atm.</param>
/// <param name="SolidGrams">Solid, dry and without bound water.</param>
/// <param name="DissolvedMetalMilligramsPerLitre">Metal still in solution.</param>
public sealed record PlanPoint(
    double Alkali, double SaltShare, Estimate Ph, double PhQuarter, double PhThreeQuarters, double PhIfHydroxide, double? PhIfBasicSalt,
    Estimate GasLitres, Estimate SolidGrams, Estimate DissolvedMetalMilligramsPerLitre);

/// <summary>The reading that decides which solid comes down.</summary>
/// <param name="AtAlkali">Alkali added when to read: half of the plan.</param>
/// <param name="PhIfHydroxide">pH to expect if it is hydroxide.</param>
/// <param name="PhIfBasicSalt">pH to expect if it is basic salt.</param>
public sealed record TellingReading(double AtAlkali, Estimate PhIfHydroxide, Estimate PhIfBasicSalt);

/// <summary>A solid at the end of the plan.</summary>
/// <param name="Phase">Name in the constants.</param>
/// <param name="PlainName">Name for a maker.</param>
/// <param name="Grams">Dry mass without bound water.</param>
public sealed record SolidAmount(string Phase, string PlainName, Estimate Grams);

/// <summary>One wash by decanting.</summary>
/// <param name="Number">0 is the first supernatant before any wash.</param>
/// <param name="WaterMillilitres">Water to pour on.</param>
/// <param name="MicrosiemensPerCm25">Conductivity to expect of a 25 C reading.</param>
/// <param name="MicrosiemensPerCm20">Conductivity at 20 C.</param>
/// <param name="SaltLeftGrams">Dissolved salts that stay with the cake after decanting.</param>
public sealed record WashStep(int Number, double WaterMillilitres, Estimate MicrosiemensPerCm25, Estimate MicrosiemensPerCm20, Estimate SaltLeftGrams);

/// <summary>One portion of what is added last.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Units">Grams or millilitres of this portion.</param>
/// <param name="TotalUnits">Sum with this portion.</param>
/// <param name="PhAfter">pH to expect when the froth is down.</param>
/// <param name="GasLitres">Gas of this portion.</param>
public sealed record Portion(int Number, double Units, double TotalUnits, Estimate PhAfter, double GasLitres);

/// <summary>A rule of the trade beside the plan.</summary>
/// <param name="Key">Which rule.</param>
/// <param name="Alkali">What it says, grams or millilitres.</param>
/// <param name="PhThere">pH the plan expects at that amount.</param>
public sealed record RuleOfThumb(string Key, double Alkali, Estimate PhThere);

/// <summary>A salt with its dissolving water.</summary>
/// <param name="Substance">The salt.</param>
/// <param name="Grams">Its mass.</param>
/// <param name="WaterMillilitres">Water to dissolve it in.</param>
public sealed record SaltAmount(Substance Substance, double Grams, double WaterMillilitres);

/// <summary>Something about a plan that a maker should know: a key and its values; the words are the app's.</summary>
/// <param name="Key">Which finding.</param>
/// <param name="Level">How grave.</param>
/// <param name="Values">Values for its sentence.</param>
public sealed record Finding(string Key, FindingLevel Level, IReadOnlyDictionary<string, double> Values);

/// <summary>How grave a finding is.</summary>
public enum FindingLevel
{
    /// <summary>Good to know: a limit of the model, a hint.</summary>
    Note,

    /// <summary>An ordinary hazard or a likely mistake.</summary>
    Mind,

    /// <summary>The statements contradict each other.</summary>
    DoesNotAddUp,

    /// <summary>Must change before the amounts are of use.</summary>
    ChangeFirst,
}

/// <summary>A plan for throwing down one lake. Spans hold nine times in ten.</summary>
public sealed record LakePlan
{
    /// <summary>What it was made from.</summary>
    public required LakePlanInput Input { get; init; }

    /// <summary>Conductivity of the washing water itself, µS/cm at 25 °C; not a number when it could not be solved.</summary>
    public double WashWaterMicrosiemensPerCentimetre { get; init; } = double.NaN;

    /// <summary>The salts with their dissolving water.</summary>
    public required IReadOnlyList<SaltAmount> Salts { get; init; }

    /// <summary>Alkali, grams or millilitres.</summary>
    public required Estimate Alkali { get; init; }

    /// <summary>Water to dissolve the alkali in; 0 when it is poured.</summary>
    public required double AlkaliWaterMillilitres { get; init; }

    /// <summary>The input that makes the span of the alkali as wide as it is.</summary>
    public required SpanCause AlkaliSpanCause { get; init; }

    /// <summary>Alkali that would just bring all metal down as plain hydroxide and neutralise the plant's acid.</summary>
    public required double StoichiometricAlkali { get; init; }

    /// <summary>Moles of base for each mole of lake metal at the planned amount.</summary>
    public required double BasePerMetal { get; init; }

    /// <summary>The addition, from nothing to beyond the planned amount.</summary>
    public required IReadOnlyList<PlanPoint> Curve { get; init; }

    /// <summary>Five single draws of the path, pH at the points of the curve.</summary>
    public required IReadOnlyList<IReadOnlyList<double>> SamplePaths { get; init; }

    /// <summary>pH at the planned amount when the froth is down.</summary>
    public required Estimate EndPh { get; init; }

    /// <summary>pH if the bath holds its gas (one atm).</summary>
    public required Estimate EndPhGasHeld { get; init; }

    /// <summary>pH when the gas has gone to the air.</summary>
    public required Estimate EndPhGasGone { get; init; }

    /// <summary>Ionic strength at the end, mol/kg.</summary>
    public required Estimate EndIonicStrengthMolal { get; init; }

    /// <summary>Gas that leaves during the addition, litres at bath temperature.</summary>
    public required Estimate GasLitres { get; init; }

    /// <summary>All the gas that can ever leave, litres at bath temperature.</summary>
    public required double AllGasLitres { get; init; }

    /// <summary>Liquid in the vessel at the end, litres.</summary>
    public required double LiquidLitres { get; init; }

    /// <summary>Least vessel, with room for froth, litres.</summary>
    public required double LeastVesselLitres { get; init; }

    /// <summary>Alkali that moves the pH by a tenth near the aim.</summary>
    public required Estimate AlkaliPerTenthPh { get; init; }

    /// <summary>The reading that decides which solid comes down; null where it makes no difference.</summary>
    public required TellingReading? Telling { get; init; }

    /// <summary>Solids at the end.</summary>
    public required IReadOnlyList<SolidAmount> Solids { get; init; }

    /// <summary>Metal left in solution at the end, mg/L; with a pH for an aim, when that pH is reached.</summary>
    public required Estimate DissolvedMetalMilligramsPerLitre { get; init; }

    /// <summary>Share of the metal left in solution at the end; with a pH for an aim, when that pH is reached.</summary>
    public required Estimate DissolvedMetalShare { get; init; }

    /// <summary>Share of the metal left in solution when the planned amount is poured in whatever the strip says.</summary>
    public required Estimate DissolvedMetalShareBlind { get; init; }

    /// <summary>Air-dry pigment, grams; with a pH for an aim, when that pH is reached.</summary>
    public required Estimate YieldGrams { get; init; }

    /// <summary>Moles of lake metal for each gram of colourant; null when the colourant is not known.</summary>
    public required Estimate? MetalMillimolesPerGramColourant { get; init; }

    /// <summary>Washes, from the first supernatant to the aim.</summary>
    public required IReadOnlyList<WashStep> Washes { get; init; }

    /// <summary>Portions of what is added last.</summary>
    public required IReadOnlyList<Portion> Portions { get; init; }

    /// <summary>Rules of the trade beside the plan.</summary>
    public required IReadOnlyList<RuleOfThumb> Rules { get; init; }

    /// <summary>What a maker should know.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>pH at the start, before any alkali (or before any salt, alkali first).</summary>
    public required Estimate StartPh { get; init; }
}
