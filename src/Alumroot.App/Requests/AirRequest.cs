using Alumroot.App.Parts;
using Alumroot.App.Words;
using Alumroot.Catalogue;
using Alumroot.Chemistry.Air;
using Alumroot.Quantities;
using Alumroot.Quantities.Reading;

namespace Alumroot.App.Requests;

/// <summary>How a room is aired, with how often its air is replaced in an hour; from memory.</summary>
/// <param name="Key">The word in the address.</param>
/// <param name="Name">The words for people.</param>
/// <param name="ChangesPerHour">Air changes an hour.</param>
public sealed record Airing(string Key, string Name, Estimate ChangesPerHour)
{
    /// <summary>The ways of airing that are offered, stillest first.</summary>
    public static IReadOnlyList<Airing> All { get; } =
    [
        new("shut", "shut, winter", new(0.35, 0.2, 0.5)),
        new("ajar", "a window ajar", new(2, 1, 3)),
        new("draught", "a wide draught across", new(10, 5, 15)),
    ];
}

/// <summary>What the air of a room would hold of a solvent.</summary>
/// <param name="Solvent">The solvent.</param>
/// <param name="Spilt">All of it in the air of the shut room.</param>
/// <param name="StandingPpm">The mean of the room after the vessel has stood open; the span has the loss from the dish and the airing.</param>
/// <param name="NearPpm">The air near the vessel.</param>
/// <param name="SaturatedPpm">The most the air can hold at 20 °C.</param>
/// <param name="MillilitresToTenthOfExplosive">The liquid which, spilt in this room, reaches a tenth of the lower explosive limit.</param>
public sealed record AirAnswer(Vapour Solvent, RoomShare Spilt, Estimate StandingPpm, Estimate NearPpm, double SaturatedPpm, double MillilitresToTenthOfExplosive)
{
    /// <summary>The air near the vessel in percent of the lower explosive limit.</summary>
    public Estimate NearPercentOfExplosive => NearPpm.Times(100 / (10_000 * Solvent.LowerExplosivePercent!.Value));
}

/// <summary>A question about solvent in the air of a room: the fields of a page, read.</summary>
public sealed class AirRequest
{
    /// <summary>Names of the fields.</summary>
    public const string Solvent = "solvent", Amount = "amount", Room = "room", Opening = "opening", Hours = "hours", AiringField = "airing";

    private static readonly Temperature Air = Temperature.FromCelsius(20);

    private readonly Func<string, string?> _typed;
    private readonly List<FieldTrouble> _troubles = [];

    /// <summary>Reads the fields; what is not typed is taken as usual in a small studio.</summary>
    /// <param name="typed">The text of a field, or null.</param>
    public AirRequest(Func<string, string?> typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        _typed = typed;
        Vapour? solvent = Offered.FirstOrDefault(v => v.Key == (Typed(Solvent) ?? Offered[0].Key));
        if (solvent is null) _troubles.Add(new(Solvent, $"'{Typed(Solvent)}' is not reckoned with here. Choose one of the list."));
        Airing? airing = Airing.All.FirstOrDefault(a => a.Key == (Typed(AiringField) ?? Airing.All[0].Key));
        if (airing is null) _troubles.Add(new(AiringField, $"'{Typed(AiringField)}' is no way of airing known here. Choose one of the three."));
        Volume amount = Read(Amount, t => QuantityReader.ReadVolume(t, SolventVolume), Volume.FromMillilitres(200));
        double room = Read(Room, t => QuantityReader.ReadNumber(t, RoomCubicMetres), 20);
        double opening = Read(Opening, t => QuantityReader.ReadNumber(t, OpeningCentimetres), 10);
        double hours = Read(Hours, t => QuantityReader.ReadNumber(t, StandingHours), 2);
        if (_troubles.Count == 0) Answer = Reckon(solvent!, airing!, amount, room, opening, hours);
    }

    /// <summary>Solvents that may be asked about.</summary>
    public static IReadOnlyList<Vapour> Offered { get; } =
        [.. CatalogueData.Embedded.Vapours.Where(v => v.Stance != Stance.Refused && v.DishHighKilogramsPerSquareMetreHour is not null)];

    /// <summary>The answer; null when a field could not be read.</summary>
    public AirAnswer? Answer { get; }

    /// <summary>What is wrong with the fields.</summary>
    public IReadOnlyList<FieldTrouble> Troubles => _troubles;

    /// <summary>A field as typed; null when it is empty.</summary>
    public string? Typed(string field) => _typed(field) is { } text && !string.IsNullOrWhiteSpace(text) ? text : null;

    /// <summary>What is wrong with a field, or null.</summary>
    public string? Trouble(string field) => _troubles.FirstOrDefault(t => t.FieldId == field)?.Sentence;

    private static FieldRule<Volume> SolventVolume { get; } = new(Volume.FromMillilitres(0.1), Volume.FromMillilitres(5), Volume.FromLitres(20), Volume.FromLitres(1000));

    private static FieldRule<double> RoomCubicMetres { get; } = new(0.5, 4, 500, 100_000);

    private static FieldRule<double> OpeningCentimetres { get; } = new(0.5, 2, 80, 300);

    private static FieldRule<double> StandingHours { get; } = new(0.01, 0.1, 72, 2000);

    private T Read<T>(string field, Func<string, Parsed<T>> read, T assumed) where T : struct
    {
        if (Typed(field) is not { } typed) return assumed;
        Parsed<T> parsed = read(typed);
        if (parsed is Parsed<T>.Understood understood) return understood.Value;
        _troubles.Add(new(field, parsed is Parsed<T>.TwoReadings two ? ReadingWords.Trouble(field, two) : ReadingWords.Trouble(field, (Parsed<T>.NotUnderstood)parsed)));
        return assumed;
    }

    private static AirAnswer Reckon(Vapour solvent, Airing airing, Volume amount, double roomCubicMetres, double openingCentimetres, double hours)
    {
        Volume room = Volume.FromLitres(1000 * roomCubicMetres);
        double grams = amount.Millilitres * solvent.DensityGramsPerMillilitre!.Value;
        RoomShare spilt = RoomAir.AllEvaporated(grams / solvent.MolarMassGramsPerMole, solvent.MolarMassGramsPerMole, room, Air);
        double squareMetres = Math.PI / 4 * openingCentimetres * openingCentimetres / 10_000;
        double low = solvent.DishLowKilogramsPerSquareMetreHour!.Value, high = solvent.DishHighKilogramsPerSquareMetreHour!.Value;
        double saturated = RoomAir.SaturatedPpm(solvent.VapourPressureKilopascals!.Value);
        var standing = new Estimate(
            Mean(Math.Sqrt(low * high), airing.ChangesPerHour.Value), Mean(low, airing.ChangesPerHour.High), Mean(high, airing.ChangesPerHour.Low));
        Estimate near = RoomAir.NearTheVessel;
        return new AirAnswer(
            solvent, spilt, standing,
            new(Math.Min(saturated, standing.Value * near.Value), Math.Min(saturated, standing.Low * near.Low), Math.Min(saturated, standing.High * near.High)),
            saturated, amount.Millilitres * 10 / spilt.PercentOfExplosive(solvent.LowerExplosivePercent!.Value));

        // No more can evaporate than stands in the vessel.
        double Mean(double kilogramsPerSquareMetreHour, double changes)
        {
            double gramsPerHour = 1000 * kilogramsPerSquareMetreHour * squareMetres;
            double lasting = Math.Min(hours, grams / gramsPerHour);
            return Math.Min(saturated, RoomAir.VentilatedPpm(gramsPerHour, solvent.MolarMassGramsPerMole, room, Air, changes, lasting));
        }
    }
}
