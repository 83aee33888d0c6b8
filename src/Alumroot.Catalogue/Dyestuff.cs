using Alumroot.Catalogue.Reading;
using Alumroot.Quantities;

namespace Alumroot.Catalogue;

/// <summary>A plant, insect, fungus or lichen that colours, with what is known of it as a source of lakes.</summary>
/// <remarks>Immutable. An empty text or a null number means that the catalogue does not know.</remarks>
public sealed class Dyestuff
{
    private Dyestuff(Fields row)
    {
        Key = row.Key();
        Name = row.Required("name");
        Aliases = row.List("aliases");
        Species = row.Text("species");
        Part = row.Text("part");
        ColourIndexName = row.Text("ci_natural");
        ColourIndexNumbers = row.List("ci_constitution");
        Colourants = row.Text("colourants");
        ChemicalClass = row.Text("chemical_class");
        ChelatingGroup = row.Text("chelating_group");
        LakingReason = row.Required("laking_reason");
        Laking =
        [
            new(LakeMetal.Aluminium, row.Enum<LakingStrength>("on_aluminium"), row.Text("hue_aluminium")),
            new(LakeMetal.Iron, row.Enum<LakingStrength>("on_iron"), row.Text("hue_iron")),
            new(LakeMetal.Copper, row.Enum<LakingStrength>("on_copper"), ""),
            new(LakeMetal.Tin, row.Enum<LakingStrength>("on_tin"), ""),
            new(LakeMetal.Calcium, row.Enum<LakingStrength>("on_calcium"), ""),
        ];
        ContentPercentOfDry = row.OptionalRange("content_low_percent_dry", "content_high_percent_dry");
        ContentOf = row.Text("content_of");
        ContentSourceKeys = row.List("content_source");
        ContentWhere = row.Text("content_where");
        PhBehaviour = row.Text("ph_behaviour");
        Extraction = row.Text("extraction");
        ExtractionCelsius = row.OptionalNumber("default_extraction_c");
        TemperatureLimitCelsius = row.OptionalNumber("default_temp_limit_c");
        WaterMillilitresPerGram = row.OptionalEstimate("water_ml_per_g", "water_low", "water_high");
        SaltGramsPerGramDry = row.OptionalEstimate("typical_salt_per_dry", "salt_low", "salt_high");
        Lightfastness = row.Text("lightfastness");
        LightfastnessSourceKeys = row.List("lightfastness_source");
        HazardNote = row.Text("hazard_note");
        AcidClass = row.Required("acid_class");
        Stance = row.Enum<Stance>("stance");
        RefusalReason = row.Text("refusal_reason");
        UseInstead = row.Text("use_instead");
        Citation = row.Citation();
    }

    /// <summary>The short name used in requests and addresses, such as <c>madder</c>.</summary>
    public string Key { get; }

    /// <summary>The trade's name.</summary>
    public string Name { get; }

    /// <summary>Other names in use.</summary>
    public IReadOnlyList<string> Aliases { get; }

    /// <summary>The botanical or zoological name, or names.</summary>
    public string Species { get; }

    /// <summary>The part used.</summary>
    public string Part { get; }

    /// <summary>The Colour Index generic name, such as "C.I. Natural Red 8"; empty when none is known.</summary>
    public string ColourIndexName { get; }

    /// <summary>Colour Index constitution numbers of the colourants.</summary>
    public IReadOnlyList<string> ColourIndexNumbers { get; }

    /// <summary>The main colouring matters.</summary>
    public string Colourants { get; }

    /// <summary>The chemical class of the main colouring matter.</summary>
    public string ChemicalClass { get; }

    /// <summary>The atoms that grip the metal.</summary>
    public string ChelatingGroup { get; }

    /// <summary>Verdicts for aluminium, iron, copper, tin and calcium, in this order.</summary>
    public IReadOnlyList<LakingVerdict> Laking { get; }

    /// <summary>Why it takes, or does not.</summary>
    public string LakingReason { get; }

    /// <summary>The reported range of content in percent of the dry plant, taken as a 90 % interval with its middle; null when not known.</summary>
    public Estimate? ContentPercentOfDry { get; }

    /// <summary>What <see cref="ContentPercentOfDry"/> counts; it may be tannin and not colour.</summary>
    public string ContentOf { get; }

    /// <summary>Sources of the content.</summary>
    public IReadOnlyList<string> ContentSourceKeys { get; }

    /// <summary>The place in the source of the content, or "from memory".</summary>
    public string ContentWhere { get; }

    /// <summary>How the colour moves with pH.</summary>
    public string PhBehaviour { get; }

    /// <summary>Advice for drawing the colour out; empty when there is none.</summary>
    public string Extraction { get; }

    /// <summary>Usual temperature of the extraction, where a source gives one.</summary>
    public double? ExtractionCelsius { get; }

    /// <summary>Temperature above which the colour suffers, where a source gives one.</summary>
    public double? TemperatureLimitCelsius { get; }

    /// <summary>Usual water in millilitres per gram of dry dyestuff; null when no source gives it.</summary>
    public Estimate? WaterMillilitresPerGram { get; }

    /// <summary>Usual potash alum in grams per gram of dry dyestuff; null when no source gives it.</summary>
    public Estimate? SaltGramsPerGramDry { get; }

    /// <summary>What is said of its permanence; a hint until a test is made. Empty when not known.</summary>
    public string Lightfastness { get; }

    /// <summary>Sources of the permanence.</summary>
    public IReadOnlyList<string> LightfastnessSourceKeys { get; }

    /// <summary>A hazard in a few words; the full advice is in <see cref="PlantHazard"/>.</summary>
    public string HazardNote { get; }

    /// <summary>The key of its <see cref="PlantAcidPrior"/>.</summary>
    public string AcidClass { get; }

    /// <summary>Whether the program plans with it.</summary>
    public Stance Stance { get; }

    /// <summary>Why it is refused; empty when it is not.</summary>
    public string RefusalReason { get; }

    /// <summary>What does the work instead; empty when it is not refused.</summary>
    public string UseInstead { get; }

    /// <summary>Where the row comes from.</summary>
    public Citation Citation { get; }

    /// <summary>The verdict for one metal.</summary>
    public LakingVerdict On(LakeMetal metal) => Laking[(int)metal];

    /// <summary>Will this dye take on this metal at all?</summary>
    /// <remarks>The better metal is the firmest one, aluminium before iron before copper, tin and calcium when they are equal. Verdicts on copper, tin and calcium are drawn from the chelating group and not from trials, so they are trusted one step less than the row.</remarks>
    public LakingFinding WillTake(LakeMetal metal)
    {
        LakingStrength strength = On(metal).Strength;
        LakingAnswer answer = Stance == Stance.Refused ? LakingAnswer.NotMadeHere : strength switch
        {
            LakingStrength.Strong => LakingAnswer.TakesWell,
            LakingStrength.Moderate => LakingAnswer.TakesPartly,
            LakingStrength.Weak => LakingAnswer.HardlyTakes,
            LakingStrength.None => LakingAnswer.DoesNotTake,
            _ => LakingAnswer.NotKnown,
        };
        LakingVerdict best = Laking.MaxBy(v => v.Strength)!;
        LakeMetal? better = answer != LakingAnswer.NotMadeHere && best.Strength > strength ? best.Metal : null;
        bool tried = metal is LakeMetal.Aluminium or LakeMetal.Iron;
        Confidence confidence = tried || Citation.Confidence == Confidence.Low ? Citation.Confidence : Citation.Confidence - 1;
        return new LakingFinding(answer, Key, metal, strength, better, LakingReason, confidence);
    }

    internal static Dyestuff Read(Fields row) => new(row);
}
