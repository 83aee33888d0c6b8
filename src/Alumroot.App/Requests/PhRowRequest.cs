using Alumroot.App.Parts;
using Alumroot.App.Words;
using Alumroot.Catalogue;
using Alumroot.Chemistry.PhRow;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;
using Alumroot.Quantities.Reading;

namespace Alumroot.App.Requests;

/// <summary>A row of jars that is to be made from one liquor: the fields of the page, the sheet and the command line, read.</summary>
public sealed class PhRowRequest
{
    /// <summary>Names of the fields; those of the plan mean the same here.</summary>
    public const string Jar = "jar", Acid = "acid", From = "from", To = "to";

    /// <summary>Strength of solutions that are weighed, in grams in 100 mL: a drop of it in a jar is seen, and a jar takes some millilitres; our choice.</summary>
    public const double GramsPer100Millilitres = 5;

    private const int LeastPh = 2, MostPh = 12, MostJars = 12;
    private const double UsualDryGrams = 10, UsualWaterMillilitres = 500, UsualJarMillilitres = 50, UsualGermanDegrees = 14;
    private const double StepPh = 1;

    private static readonly FieldRule<double> PhEnd = new(LeastPh, LeastPh, MostPh, MostPh);
    private static readonly FieldRule<Volume> JarVolume = new(Volume.FromMillilitres(5), Volume.FromMillilitres(10), Volume.FromMillilitres(250), Volume.FromLitres(2));

    private readonly Func<string, string?> _typed;
    private readonly List<FieldTrouble> _troubles = [];
    private readonly List<string> _assumed = [];

    /// <summary>Reads the fields; what is not typed is taken as usual, and said.</summary>
    /// <param name="typed">The text of a field, or null.</param>
    public PhRowRequest(Func<string, string?> typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        _typed = typed;
        Dyestuff = ReadDyestuff();
        AcidOf = RowAcids.Find(Typed(Acid) ?? RowAcids.All[0].Key);
        if (AcidOf is null) _troubles.Add(new(Acid, $"Acid: '{Typed(Acid)}' is not known here. Choose one of {string.Join(", ", RowAcids.All.Select(a => a.Key))}."));
        AlkaliOf = Alkalis.FirstOrDefault(a => a.Key == (Typed(PlanFields.Alkali) ?? Alkalis[0].Key));
        if (AlkaliOf is null) _troubles.Add(new(PlanFields.Alkali, $"Alkali: '{Typed(PlanFields.Alkali)}' is not used for a row here. Choose one of {string.Join(", ", Alkalis.Select(a => a.Key))}."));
        Mass dry = Read(PlanFields.Dry, t => QuantityReader.ReadMass(t, FieldRules.DyestuffMass), Mass.FromGrams(UsualDryGrams), Dyestuff is null ? null : "10 g of dry dyestuff");
        Volume water = Read(PlanFields.Water, t => QuantityReader.ReadVolume(t, FieldRules.Water), Volume.FromMillilitres(UsualWaterMillilitres), Dyestuff is null ? null : "500 mL of water to it");
        Volume jar = Read(Jar, t => QuantityReader.ReadVolume(t, JarVolume), Volume.FromMillilitres(UsualJarMillilitres), "50 mL of liquor in each jar");
        bool known = Typed(PlanFields.Hardness) is not null;
        Hardness hardness = Read(PlanFields.Hardness, t => QuantityReader.ReadHardness(t, FieldRules.WaterHardness), Hardness.FromGermanDegrees(UsualGermanDegrees), "water of 14 °dH, half as much or half as much again");
        Ph? liquor = Typed(PlanFields.LiquorPh) is null ? null : Read(PlanFields.LiquorPh, t => QuantityReader.ReadPh(t, FieldRules.Ph), default, null);
        Temperature temperature = Read(PlanFields.Temperature, t => QuantityReader.ReadTemperature(t, FieldRules.BathTemperature), Temperature.FromCelsius(20), "20 °C");
        double from = Read(From, t => QuantityReader.ReadNumber(t, PhEnd), 3, null), to = Read(To, t => QuantityReader.ReadNumber(t, PhEnd), 11, null);
        if (_troubles.Count == 0 && (to - from < StepPh || to - from >= MostJars * StepPh)) _troubles.Add(new(To, "Last pH: it must be above the first, and a row has at most twelve jars a unit apart."));
        if (_troubles.Count > 0) return;
        PlantAcidPrior? prior = Dyestuff is null ? null : CatalogueData.Embedded.PlantAcidOf(Dyestuff);
        if (prior is not null) _assumed.Add(FormattableString.Invariant($"acid of the plant {prior.AcidMeqPerGramDry.Value:0.##} meq for a gram of dry {prior.Name} ({prior.AcidMeqPerGramDry.Low:0.##} to {prior.AcidMeqPerGramDry.High:0.##})"));
        Input = new PhRowInput
        {
            Liquor = jar,
            DryGramsPerLitre = Dyestuff is null ? 0 : dry.Grams / water.Litres,
            Hardness = hardness,
            HardnessIsAssumed = !known,
            PlantAcidMilliequivalentsPerGram = prior?.AcidMeqPerGramDry ?? default,
            PlantAcidPk = prior?.MiddlePka ?? PhRowInput.UsualPk,
            LiquorPh = liquor,
            Temperature = temperature,
            Acid = new RowSolution(AcidOf!, GramsPer100Millilitres),
            Alkali = new RowSolution(AlkaliOf!, GramsPer100Millilitres),
            Aims = [.. Enumerable.Range(0, (int)Math.Floor((to - from) / StepPh + 1e-9) + 1).Select(i => Ph.FromValue(from + i * StepPh))],
        };
        Plan = PhRowPlanner.Plan(Input);
    }

    /// <summary>All names, in the order of the form.</summary>
    public static IReadOnlyList<string> All { get; } = [PlanFields.Dyestuff, PlanFields.Dry, PlanFields.Water, Jar, PlanFields.LiquorPh, PlanFields.Hardness, PlanFields.Temperature, Acid, PlanFields.Alkali, From, To];

    /// <summary>Alkalis that dissolve well and do not burn at once.</summary>
    public static IReadOnlyList<Substance> Alkalis { get; } = [.. new[] { "soda-ash", "soda-crystals", "potash" }.Select(SubstanceShelf.Find).OfType<Substance>()];

    /// <summary>The dyestuff; null when none is named.</summary>
    public Dyestuff? Dyestuff { get; }

    /// <summary>The acid; null when it is not known.</summary>
    public Substance? AcidOf { get; }

    /// <summary>The alkali; null when it is not known.</summary>
    public Substance? AlkaliOf { get; }

    /// <summary>What the row was reckoned from; null when a field could not be read.</summary>
    public PhRowInput? Input { get; }

    /// <summary>The row; null when a field could not be read, or the equations came to no end.</summary>
    public PhRowPlan? Plan { get; }

    /// <summary>What is wrong with the fields.</summary>
    public IReadOnlyList<FieldTrouble> Troubles => _troubles;

    /// <summary>What was taken where nothing was typed.</summary>
    public IReadOnlyList<string> Assumed => _assumed;

    /// <summary>The same as part of an address, without a question mark.</summary>
    public string Address => string.Join('&', All.Where(f => Typed(f) is not null).Select(f => $"{f}={Uri.EscapeDataString(Typed(f)!)}"));

    /// <summary>A field as typed; null when it is empty.</summary>
    public string? Typed(string field) => _typed(field) is { } text && !string.IsNullOrWhiteSpace(text) ? text.Trim() : null;

    /// <summary>What is wrong with a field, or null.</summary>
    public string? Trouble(string field) => _troubles.FirstOrDefault(t => t.FieldId == field)?.Sentence;

    private Dyestuff? ReadDyestuff()
    {
        if (Typed(PlanFields.Dyestuff) is not { } typed) return null;
        IReadOnlyList<Dyestuff> named = CatalogueData.Embedded.DyestuffsNamed(typed);
        if (named is [var one] && one.Stance != Stance.Refused) return one;
        _troubles.Add(new(PlanFields.Dyestuff, named is [var refused] ? $"Dyestuff: {refused.Name} is not planned with: {refused.RefusalReason}"
            : named.Count > 1 ? $"Dyestuff: '{typed}' can mean {string.Join(" or ", named.Select(d => $"{d.Name} ({d.Key})"))}. Which is it?"
            : $"Dyestuff: '{typed}' is not in the handbook. Write its key, such as weld, or leave it empty for plain water."));
        return null;
    }

    private T Read<T>(string field, Func<string, Parsed<T>> read, T usual, string? said) where T : struct
    {
        if (Typed(field) is not { } typed)
        {
            if (said is not null) _assumed.Add(said);
            return usual;
        }
        Parsed<T> parsed = read(typed);
        if (parsed is Parsed<T>.Understood understood) return understood.Value;
        _troubles.Add(new(field, parsed is Parsed<T>.TwoReadings two ? ReadingWords.Trouble(field, two) : ReadingWords.Trouble(field, (Parsed<T>.NotUnderstood)parsed)));
        return usual;
    }
}
