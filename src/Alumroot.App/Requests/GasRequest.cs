using Alumroot.App.Parts;
using Alumroot.App.Permanence;
using Alumroot.Catalogue;
using Alumroot.Chemistry.Air;
using Alumroot.Quantities;
using Alumroot.Quantities.Reading;

namespace Alumroot.App.Requests;

/// <summary>Where gas comes from at the bench.</summary>
/// <param name="Key">The word in the address.</param>
/// <param name="Name">The words for people.</param>
/// <param name="GasKey">The gas by its key in the catalogue.</param>
/// <param name="Assumed">What is taken when no amount is typed: grams, or millilitres of a solution.</param>
public sealed record GasSource(string Key, string Name, string GasKey, double Assumed)
{
    /// <summary>The sources that are offered.</summary>
    public static IReadOnlyList<GasSource> All { get; } =
    [
        new("alum", "potash alum thrown down with a carbonate, grams of alum", "carbon-dioxide", 100),
        new("soda", "soda ash into an excess of acid, grams of soda", "carbon-dioxide", 50),
        new("bicarbonate", "baking soda into acid, or baked, grams of it", "carbon-dioxide", 50),
        new("ammonia", "household ammonia standing open, millilitres of it", "ammonia", 200),
    ];
}

/// <summary>What a room's air holds of a gas.</summary>
/// <param name="Gas">The gas with its limits.</param>
/// <param name="AllAtOnce">All that can come, at once, the room shut: the upper bound.</param>
/// <param name="Aired">The mean after an hour in which it came evenly, by how often the air is replaced; the span is that of the airing.</param>
public sealed record GasAnswer(Vapour Gas, RoomShare AllAtOnce, Estimate Aired);

/// <summary>A question about carbon dioxide or ammonia in the air of a room: the fields of a page, read.</summary>
public sealed class GasRequest
{
    /// <summary>Names of the fields.</summary>
    public const string Source = "gas", Amount = "gas-amount", Strength = "strength", Room = "gas-room", AiringField = "gas-airing";

    private const double UsualPercent = 9.5, UsualRoomCubicMetres = 20, MostRoomCubicMetres = 100_000;

    private static readonly Temperature Air = Temperature.FromCelsius(20);
    private static readonly FieldRule<double> AmountRule = new(0.1, 1, 20_000, 1_000_000), StrengthRule = new(0.1, 1, 30, 35), RoomRule = new(0.5, 4, 500, MostRoomCubicMetres);

    private readonly Func<string, string?> _typed;
    private readonly List<FieldTrouble> _troubles = [];

    /// <summary>Reads the fields; what is not typed is taken as usual in a small studio.</summary>
    /// <param name="typed">The text of a field, or null.</param>
    public GasRequest(Func<string, string?> typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        _typed = typed;
        if (Typed(Source) is not { } key) return;
        GasSource? source = GasSource.All.FirstOrDefault(s => s.Key == key);
        if (source is null) _troubles.Add(new(Source, $"'{key}' is no source of gas known here. Choose one of the list."));
        Airing? airing = Airing.All.FirstOrDefault(a => a.Key == (Typed(AiringField) ?? Airing.All[0].Key));
        if (airing is null) _troubles.Add(new(AiringField, $"'{Typed(AiringField)}' is no way of airing known here. Choose one of the three."));
        double amount = Number(Amount, "How much", AmountRule, source?.Assumed ?? 1, " g", " mL", "g", "mL"), percent = Number(Strength, "Strength", StrengthRule, UsualPercent, " %", "%"), room = Number(Room, "Room", RoomRule, UsualRoomCubicMetres, " m3", "m3");
        RoomCubicMetres = room;
        if (_troubles.Count > 0) return;
        double moles = source!.Key switch
        {
            "alum" => GasSources.FromAlumAndCarbonateMol(amount),
            "soda" => GasSources.FromSodaMol(amount),
            "bicarbonate" => GasSources.FromBicarbonateMol(amount),
            _ => amount / 1000 * (CatalogueData.Embedded.AmmoniaAt(percent)?.AmmoniaMolesPerLitre ?? double.NaN),
        };
        if (double.IsNaN(moles))
        {
            _troubles.Add(new(Strength, $"Strength: ammonia of {percent} % is not in the table. Household ammonia has 5 to 10 %."));
            return;
        }
        Vapour gas = CatalogueData.Embedded.FindVapour(source.GasKey)!;
        Volume space = Volume.FromLitres(1000 * room);
        double Mean(double changes) => RoomAir.VentilatedPpm(moles * gas.MolarMassGramsPerMole, gas.MolarMassGramsPerMole, space, Air, changes, 1);
        Answer = new GasAnswer(gas, RoomAir.AllEvaporated(moles, gas.MolarMassGramsPerMole, space, Air), new Estimate(Mean(airing!.ChangesPerHour.Value), Mean(airing.ChangesPerHour.High), Mean(airing.ChangesPerHour.Low)));
    }

    /// <summary>The answer; null when nothing was asked or a field could not be read.</summary>
    public GasAnswer? Answer { get; }

    /// <summary>The room.</summary>
    public double RoomCubicMetres { get; }

    /// <summary>What is wrong with the fields.</summary>
    public IReadOnlyList<FieldTrouble> Troubles => _troubles;

    /// <summary>A field as typed; null when it is empty.</summary>
    public string? Typed(string field) => _typed(field) is { } text && !string.IsNullOrWhiteSpace(text) ? text : null;

    /// <summary>What is wrong with a field, or null.</summary>
    public string? Trouble(string field) => _troubles.FirstOrDefault(t => t.FieldId == field)?.Sentence;

    private double Number(string field, string label, FieldRule<double> rule, double assumed, params ReadOnlySpan<string> units)
    {
        (double? value, string? trouble) = NumberField.Read(Typed(field), label, rule, units);
        if (trouble is not null) _troubles.Add(new(field, trouble));
        return value ?? assumed;
    }
}
