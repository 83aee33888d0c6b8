using Alumroot.Paint.Recipes;
using Alumroot.Quantities.Tables;

namespace Alumroot.Paint.Suiting;

/// <summary>How a medium bears a kind of colour, with the reasons.</summary>
/// <param name="Medium">The medium.</param>
/// <param name="Colour">The kind of colour.</param>
/// <param name="Reasons">The reasons, gravest first.</param>
public sealed record Suitability(Medium Medium, ColourantClass Colour, IReadOnlyList<SuitReason> Reasons)
{
    /// <summary>The heat at which wax is worked (common practice, no source).</summary>
    public const double WaxWorkedCelsius = 95;

    // A film whose least pH is so far above what the colour keeps turns all of it; estimates, no source.
    private const double LostAbovePh = 0.75;

    // Weak acid in a gum film moves few colours by less than this.
    private const double AcidSlackPh = 1.0;

    private const double NearHeatCelsius = 5;

    private static readonly Lazy<IReadOnlyList<TableRow>> Effects = new(() => PaintTables.Read("medium_effects.csv"));

    /// <summary>The gravest of the reasons.</summary>
    public SuitRating Rating => Reasons.Count == 0 ? SuitRating.Works : Reasons.Max(r => r.Rating);

    /// <summary>All mediums for a kind of colour, those that suit best first.</summary>
    public static IReadOnlyList<Suitability> Of(ColourantClass colour) => [.. Medium.All.Select(m => Of(m, colour)).OrderBy(s => s.Rating)];

    /// <summary>Works out how a medium bears a kind of colour: pH of the film against what the colour keeps, the heat of wax, and the table of effects.</summary>
    public static Suitability Of(Medium medium, ColourantClass colour)
    {
        ArgumentNullException.ThrowIfNull(medium);
        ArgumentNullException.ThrowIfNull(colour);
        var reasons = new List<SuitReason>();
        if (medium is { FilmPhLow: { } low, FilmPhHigh: { } high })
        {
            if (low > colour.PhHigh + LostAbovePh) Say("ph-above", SuitRating.Avoid);
            else if (high > colour.PhHigh) Say("ph-may-pass", SuitRating.Caution);
            if (low < colour.PhLow - AcidSlackPh) Say("ph-below", SuitRating.Caution);
        }
        if (medium.Key == "encaustic" && colour.HeatCelsius is { } heat)
        {
            if (WaxWorkedCelsius > heat) Say("heat", SuitRating.Avoid);
            else if (heat - WaxWorkedCelsius <= NearHeatCelsius) Say("near-heat", SuitRating.Caution);
        }
        foreach (TableRow row in Effects.Value)
            if (Holds(row["mediums"], medium.Key) && Holds(row["classes"], colour.Key))
                reasons.Add(new SuitReason(row["effect"], row["rating"] switch { "avoid" => SuitRating.Avoid, "caution" => SuitRating.Caution, _ => SuitRating.Works }, PaintTables.Parts(row["source"]), row["confidence"]));
        return new Suitability(medium, colour, [.. reasons.OrderByDescending(r => r.Rating)]);

        void Say(string key, SuitRating rating) => reasons.Add(new SuitReason(key, rating, colour.Sources, colour.Confidence));
    }

    private static bool Holds(string cell, string key) => cell == "*" || PaintTables.Parts(cell).Contains(key);
}
