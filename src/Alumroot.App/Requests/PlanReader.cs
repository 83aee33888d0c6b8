using System.Globalization;
using Alumroot.Catalogue;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;
using Alumroot.Quantities.Reading;
using Alumroot.Quantities.Units;

namespace Alumroot.App.Requests;

/// <summary>Turns a request into the input of a plan: reads each field, fills what is missing with stated assumptions, refuses what is not made at home.</summary>
internal sealed class PlanReader
{
    private readonly FieldReader _fields;
    private readonly List<Assumption> _assumptions = [];
    private readonly KitchenMeasures _kitchen;
    private PlanRefusal? _refusal;
    private LakingFinding? _laking;

    private PlanReader(PlanRequest request)
    {
        _fields = new FieldReader(request);
        _kitchen = (request[PlanFields.Kitchen] ?? "").ToLowerInvariant() switch
        {
            "us" => KitchenMeasures.Us,
            "imperial" or "uk" => KitchenMeasures.Imperial,
            "metric" => KitchenMeasures.Metric,
            _ => KitchenMeasures.Ask,
        };
    }

    internal static PlanAnswer Read(PlanRequest request)
    {
        var reader = new PlanReader(request);
        Dyestuff? dyestuff = reader.ReadDyestuff();
        reader.CheckChoices();
        LakePlanInput? input = reader.ReadInput(dyestuff);
        return new PlanAnswer
        {
            Request = request,
            Fields = reader._fields.Readings,
            Troubles = reader._fields.Troubles,
            Assumptions = reader._assumptions,
            Refusal = reader._refusal,
            Dyestuff = dyestuff,
            Laking = reader._laking,
            Input = reader._fields.Troubles.Count == 0 && reader._refusal is null ? input : null,
            Cautions = [],
        };
    }

    /// <summary>Fields with a few possible answers take no other.</summary>
    private void CheckChoices()
    {
        foreach ((string field, string[] choices) in ((string, string[])[])
            [(PlanFields.Units, ["metric", "kitchen"]), (PlanFields.Kitchen, ["us", "imperial", "uk", "metric"]), (PlanFields.WashWater, ["tap", "pure", "distilled", "rain"])])
            if (_fields.Text(field) is { } typed && !choices.Contains(typed, StringComparer.OrdinalIgnoreCase))
                _fields.Trouble(field, $"{Words.FieldNames.Of(field)}: '{typed}' is none of {string.Join(", ", choices)}.");
        bool allDown = _fields.Text(PlanFields.AllDown) is { } all && all.ToLowerInvariant() is not ("no" or "false" or "off");
        if (allDown && _fields.Text(PlanFields.Aim) is null && (_fields.Text(PlanFields.ToPh) ?? _fields.Text(PlanFields.AlkaliAmount)) is not null)
            _fields.Trouble(PlanFields.AllDown, "Aim: all metal down and another aim are both asked for. Leave one of them out.");
    }

    private LakePlanInput? ReadInput(Dyestuff? dyestuff)
    {
        (Substance? salt, Reagent? saltReagent) = ReadSubstance(PlanFields.Salt, SubstanceRole.Salt, required: true);
        (Substance? second, _) = ReadSubstance(PlanFields.SecondSalt, SubstanceRole.Salt, required: false);
        (Substance? alkali, Reagent? alkaliReagent) = ReadSubstance(PlanFields.Alkali, SubstanceRole.Alkali, required: true);
        if (dyestuff is not null && saltReagent is not null && MetalOf(saltReagent.Key) is { } metal) _laking = dyestuff.WillTake(metal);
        Mass? dry = ReadDry(dyestuff);
        Mass? saltAmount = ReadSaltAmount(salt, dyestuff, dry);
        Mass? secondAmount = _fields.Optional(PlanFields.SecondSaltAmount, t => QuantityReader.ReadMass(t, FieldRules.ReagentMass));
        if (second is not null && secondAmount is null && !_fields.HasTrouble(PlanFields.SecondSaltAmount)) _fields.Trouble(PlanFields.SecondSaltAmount, "Amount of the second salt: say how much, such as 5 g.");
        Volume? water = ReadWater(dyestuff, dry, saltAmount);
        Temperature? temperature = ReadTemperature(dyestuff);
        Hardness? hardness = _fields.Optional(PlanFields.Hardness, t => QuantityReader.ReadHardness(t, FieldRules.WaterHardness));
        bool hardnessAssumed = hardness is null;
        if (hardnessAssumed && !_fields.HasTrouble(PlanFields.Hardness))
        {
            hardness = Hardness.FromGermanDegrees(14);
            Assume(PlanFields.Hardness, "14 °dH, half as much or half as much again", "14 dH", "a middling tap water; common practice, no source");
        }
        OrderOfAddition order = ReadOrder();
        PlanAim? aim = alkali is null ? null : ReadAim(alkali);
        Ph? liquorPh = _fields.Optional(PlanFields.LiquorPh, t => QuantityReader.ReadPh(t, FieldRules.Ph));
        Volume? vessel = _fields.Optional(PlanFields.Vessel, t => QuantityReader.ReadVolume(t, FieldRules.Vessel with { Kitchen = _kitchen }));
        Mass scale = _fields.Optional(PlanFields.Scale, t => QuantityReader.ReadMass(t, FieldRules.ScaleStep)) ?? AssumeValue(PlanFields.Scale, Mass.FromGrams(0.1), "a scale that shows 0.1 g", "0.1 g");
        double strips = _fields.Optional(PlanFields.Strips, t => QuantityReader.ReadNumber(t, FieldRules.PhStep)) ?? AssumeValue(PlanFields.Strips, 0.5, "strips in steps of 0.5 pH", "0.5");
        bool pure = (_fields.Text(PlanFields.WashWater) ?? "tap").ToLowerInvariant() is "pure" or "distilled" or "rain";
        Conductivity? washTo = ReadWashTo(hardness, pure);
        if (salt is null || alkali is null || saltAmount is null || water is null || temperature is null || aim is null || washTo is null) return null;

        Estimate acid = dyestuff is null || dry is null ? default : CatalogueData.Embedded.PlantAcidOf(dyestuff).AcidMeqPerGramDry;
        if (dyestuff is not null && dry is not null)
        {
            PlantAcidPrior prior = CatalogueData.Embedded.PlantAcidOf(dyestuff);
            Assume("plant-acid", FormattableString.Invariant($"acid of the plant {acid.Value:0.##} meq for a gram of dry {prior.Name} ({acid.Low:0.##} to {acid.High:0.##})"), "", $"{string.Join(", ", prior.Citation.SourceKeys.Select(SourceName))}; {prior.Citation.Where}");
        }
        List<SaltPortion> salts = [new SaltPortion(salt, saltAmount.Value)];
        if (second is not null && secondAmount is { } extra) salts.Add(new SaltPortion(second, extra));
        Estimate? colourant = dyestuff?.ContentPercentOfDry is { } c ? c.Times(0.01) : null;
        return new LakePlanInput
        {
            DryDyestuff = dry,
            Water = water.Value,
            Hardness = hardness ?? default,
            HardnessIsAssumed = hardnessAssumed,
            PlantAcidMilliequivalentsPerGram = acid,
            PlantAcidPk = dyestuff is null ? 4.3 : CatalogueData.Embedded.PlantAcidOf(dyestuff).MiddlePka,
            LiquorPh = liquorPh,
            Salts = salts,
            Alkali = alkali,
            Order = order,
            Temperature = temperature.Value,
            Aim = aim,
            StatedPh = aim is PlanAim.AlkaliAmount ? _fields.Optional(PlanFields.ToPh, t => QuantityReader.ReadPh(t, FieldRules.Ph)) : null,
            Vessel = vessel,
            ScaleStep = scale,
            StripStepPh = strips,
            WashTo = washTo.Value,
            WashWithPureWater = pure,
            SaltSolubilityGramsPer100g = Finite(saltReagent?.SolubilityGramsPer100GramsWater(temperature.Value.Celsius)),
            // What hardly dissolves is stirred in as a milk: it is not asked to dissolve.
            AlkaliSolubilityGramsPer100g = alkali.Unit == SubstanceUnit.Millilitre || Words.AlkaliHandling.IsMilk(alkaliReagent) ? null : Finite(alkaliReagent?.SolubilityGramsPer100GramsWater(20)),
            ColourantFraction = colourant,
        };
    }

    private Dyestuff? ReadDyestuff()
    {
        string? typed = _fields.Text(PlanFields.Dyestuff);
        if (typed is null || typed.ToLowerInvariant() is "none" or "substrate") return null;
        IReadOnlyList<Dyestuff> named = CatalogueData.Embedded.DyestuffsNamed(typed);
        if (named.Count == 1)
        {
            if (named[0].Stance == Stance.Refused) _refusal = new PlanRefusal(named[0].Name, named[0].RefusalReason, named[0].UseInstead, null);
            return named[0];
        }
        if (named.Count > 1)
        {
            _fields.Trouble(PlanFields.Dyestuff, $"Dyestuff: '{typed}' can mean {string.Join(" or ", named.Select(d => $"{d.Name} ({d.Key})"))}. Which is it?", [.. named.Select(d => d.Key)]);
            return null;
        }
        string[] near = [.. NearestName.To(typed, CatalogueData.Embedded.Dyestuffs.SelectMany(d => (string[])[d.Key, d.Name, .. d.Aliases]))];
        _fields.Trouble(PlanFields.Dyestuff, $"Dyestuff: '{typed}' is not in the handbook. {(near.Length > 0 ? $"Did you mean {string.Join(" or ", near)}? " : "")}Leave it empty to plan the substrate alone.", near);
        return null;
    }

    private (Substance?, Reagent?) ReadSubstance(string field, SubstanceRole role, bool required)
    {
        if (_fields.Text(field) is not { } typed)
        {
            if (required) _fields.Trouble(field, role == SubstanceRole.Salt ? "Salt: which salt does the packet say? The same amount of another alum takes another amount of soda." : "Alkali: which alkali does the packet say? Soda crystals hold little more than a third of the soda of soda ash.");
            return (null, null);
        }
        SubstanceReader.Answer answer = SubstanceReader.Read(Words.FieldNames.Of(field), typed, role, _fields);
        if (answer.Refused is { } refused) _refusal = new PlanRefusal(refused.Name, refused.RefusalReason, refused.UseInstead, refused.Key);
        if (answer.Trouble is { } trouble) _fields.Trouble(field, trouble, [.. answer.Offers]);
        return (answer.Substance, answer.Known);
    }

    private Mass? ReadDry(Dyestuff? dyestuff)
    {
        Mass? dry = _fields.Optional(PlanFields.Dry, t => QuantityReader.ReadMass(t, FieldRules.DyestuffMass with { Kitchen = _kitchen }));
        Mass? fresh = _fields.Optional(PlanFields.Fresh, t => QuantityReader.ReadMass(t, FieldRules.DyestuffMass with { Kitchen = _kitchen }));
        if (dry is null && fresh is { } f)
        {
            ProcessFact? share = CatalogueData.Embedded.FindProcessFact("fresh-to-dry");
            Assume(PlanFields.Dry, "four parts fresh make one part dry (3 to 10)", "", share is null ? "common practice" : string.Join(", ", share.Citation.SourceKeys));
            dry = f / 4;
        }
        if (dry is null && dyestuff is not null && _fields.Text(PlanFields.Dry) is null && _fields.Text(PlanFields.Fresh) is null)
            _fields.Trouble(PlanFields.Dry, $"Dry dyestuff: how much {dyestuff.Name}? Write it like 100 g.");
        return dry;
    }

    private Mass? ReadSaltAmount(Substance? salt, Dyestuff? dyestuff, Mass? dry)
    {
        Mass? amount = _fields.Optional(PlanFields.SaltAmount, t => QuantityReader.ReadMass(t, FieldRules.ReagentMass with { Kitchen = _kitchen }));
        if (amount is not null || _fields.HasTrouble(PlanFields.SaltAmount) || salt is null) return amount;
        if (dry is not { } d)
        {
            _fields.Trouble(PlanFields.SaltAmount, "Amount of salt: say how much, such as 50 g.");
            return null;
        }
        double perGram = dyestuff?.SaltGramsPerGramDry?.Value ?? 0.5;
        // The rule speaks of potash alum; another salt is taken in the amount that brings as much metal.
        double metal = FreshMetal(salt), alum = FreshMetal(SubstanceShelf.Find("potash-alum")!);
        Mass assumed = d * perGram * (metal > 0 ? alum / metal : 1);
        Assume(PlanFields.SaltAmount, string.Create(CultureInfo.InvariantCulture, $"{assumed.Grams:0.#} g, as much metal as {perGram:0.##} g of potash alum for a gram of dry dyestuff brings"), string.Create(CultureInfo.InvariantCulture, $"{assumed.Grams:0.#} g"), "rule of the trade (0.1 to 1)");
        return Mass.FromGrams(Math.Round(assumed.Grams, 1));
    }

    private static double FreshMetal(Substance s) => new[] { "Al+3", "FeIII+3", "FeII+2", "Cu+2", "Zn+2", "SnII+2", "Mg+2", "Ca+2" }.Sum(s.MolPerUnit);

    private Volume? ReadWater(Dyestuff? dyestuff, Mass? dry, Mass? salt)
    {
        Volume? water = _fields.Optional(PlanFields.Water, t => QuantityReader.ReadVolume(t, FieldRules.Water with { Kitchen = _kitchen }));
        if (water is not null || _fields.HasTrouble(PlanFields.Water)) return water;
        double millilitres = dry is { } d ? d.Grams * (dyestuff?.WaterMillilitresPerGram?.Value ?? 20) : salt is { } s ? s.Grams * 50 : 0;
        if (millilitres <= 0) return null;
        Assume(PlanFields.Water, string.Create(CultureInfo.InvariantCulture, $"{millilitres / 1000:0.##} L"), string.Create(CultureInfo.InvariantCulture, $"{millilitres / 1000:0.##} L"), dry is null ? "20 g of salt for a litre; rule of the trade" : "rule of the trade for this dyestuff, else 20 mL for a gram");
        return Volume.FromMillilitres(millilitres);
    }

    private Temperature? ReadTemperature(Dyestuff? dyestuff)
    {
        Temperature? t = _fields.Optional(PlanFields.Temperature, x => QuantityReader.ReadTemperature(x, FieldRules.BathTemperature));
        if (t is not null || _fields.HasTrouble(PlanFields.Temperature)) return t;
        double celsius = Math.Min(dyestuff?.ExtractionCelsius ?? 20, 60);
        return AssumeValue(PlanFields.Temperature, Temperature.FromCelsius(celsius), string.Create(CultureInfo.InvariantCulture, $"{celsius:0} °C in the bath while the lake is thrown down"), string.Create(CultureInfo.InvariantCulture, $"{celsius:0} C"));
    }

    private OrderOfAddition ReadOrder()
    {
        switch ((_fields.Text(PlanFields.Order) ?? "").ToLowerInvariant())
        {
            case "alkali-first":
                return OrderOfAddition.AlkaliFirst;
            case "salt-first":
                return OrderOfAddition.SaltFirst;
            case "":
                return AssumeValue(PlanFields.Order, OrderOfAddition.SaltFirst, "salt into the liquor, alkali last", "salt-first");
            default:
                _fields.Trouble(PlanFields.Order, $"Order: '{_fields.Text(PlanFields.Order)}' is neither salt-first nor alkali-first.");
                return OrderOfAddition.SaltFirst;
        }
    }

    private PlanAim? ReadAim(Substance alkali)
    {
        string aim = (_fields.Text(PlanFields.Aim) ?? "").ToLowerInvariant();
        if (aim is not ("" or "ph" or "amount" or "down"))
        {
            _fields.Trouble(PlanFields.Aim, $"Aim: '{aim}' is none of ph, amount, down.");
            return null;
        }
        if (aim is "amount" || (aim is "" && _fields.Text(PlanFields.AlkaliAmount) is not null)) return ReadAlkaliAmount(alkali);
        if (aim is "down" || (aim is "" && _fields.Text(PlanFields.AllDown) is { } all && all.ToLowerInvariant() is not ("no" or "false" or "off"))) return new PlanAim.AllMetalDown();
        Ph? ph = _fields.Optional(PlanFields.ToPh, t => QuantityReader.ReadPh(t, FieldRules.Ph));
        if (ph is null && _fields.HasTrouble(PlanFields.ToPh)) return null;
        return new PlanAim.ToPh(ph ?? AssumeValue(PlanFields.ToPh, Ph.FromValue(6.5), "to pH 6.5, where aluminium is least soluble", "6.5"));
    }

    private PlanAim? ReadAlkaliAmount(Substance alkali)
    {
        if (_fields.Text(PlanFields.AlkaliAmount) is null)
        {
            _fields.Trouble(PlanFields.AlkaliAmount, "Amount of alkali: say how much, such as 17 g.");
            return null;
        }
        double? units = alkali.Unit == SubstanceUnit.Gram
            ? _fields.Optional(PlanFields.AlkaliAmount, t => QuantityReader.ReadMass(t, FieldRules.ReagentMass with { Kitchen = _kitchen }))?.Grams
            : _fields.Optional(PlanFields.AlkaliAmount, t => QuantityReader.ReadVolume(t, FieldRules.Water with { Kitchen = _kitchen }))?.Millilitres;
        return units is { } u ? new PlanAim.AlkaliAmount(u) : null;
    }

    private Conductivity? ReadWashTo(Hardness? hardness, bool pure)
    {
        Conductivity? to = _fields.Optional(PlanFields.WashTo, t => QuantityReader.ReadConductivity(t, FieldRules.Conductivity));
        if (to is not null || _fields.HasTrouble(PlanFields.WashTo)) return to;
        // A degree of hardness as bicarbonate conducts about 33 uS/cm (reckoned with the limiting conductivities of Data/species.csv); 200 above the water itself is what is left to wash out.
        double aim = pure ? 200 : 50 * Math.Round((200 + 33 * (hardness?.GermanDegrees ?? 0)) / 50);
        return AssumeValue(PlanFields.WashTo, Conductivity.FromMicrosiemensPerCentimetre(aim), string.Create(CultureInfo.InvariantCulture, $"washing to {aim:0} µS/cm, about 200 above the water itself"), string.Create(CultureInfo.InvariantCulture, $"{aim:0} uS"));
    }

    private static string SourceName(string key) => key == "common_practice" ? "common practice, no source" : key;

    private static double? Finite(double? x) => x is { } v && double.IsFinite(v) ? v : null;

    private T AssumeValue<T>(string field, T value, string text, string typed, string source = "set by this program; change it if yours differs")
    {
        if (!_fields.HasTrouble(field)) Assume(field, text, typed, source);
        return value;
    }

    private void Assume(string field, string text, string typed, string source) => _assumptions.Add(new Assumption(field, text, typed, source));

    private static LakeMetal? MetalOf(string saltKey) => saltKey switch
    {
        _ when saltKey.Contains("alum", StringComparison.Ordinal) => LakeMetal.Aluminium,
        _ when saltKey.StartsWith("iron", StringComparison.Ordinal) => LakeMetal.Iron,
        _ when saltKey.StartsWith("copper", StringComparison.Ordinal) => LakeMetal.Copper,
        _ when saltKey.StartsWith("tin", StringComparison.Ordinal) => LakeMetal.Tin,
        _ when saltKey.StartsWith("calcium", StringComparison.Ordinal) => LakeMetal.Calcium,
        _ => null,
    };
}
