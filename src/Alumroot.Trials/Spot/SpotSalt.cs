namespace Alumroot.Trials.Spot;

/// <summary>A salt of the row of drops.</summary>
/// <param name="Salt">Its key in the handbook.</param>
/// <param name="Metal">The metal as a component of the equilibrium, such as <c>Al+3</c>.</param>
/// <param name="GramsPer100Millilitres">Strength of its solution.</param>
/// <param name="DropCount">Drops to the five drops of liquor.</param>
public sealed record SpotSalt(string Salt, string Metal, double GramsPer100Millilitres, int DropCount)
{
    /// <summary>Twenty drops of water make a millilitre; common practice, no source.</summary>
    public const double MillilitresPerDrop = 0.05;

    /// <summary>Drops of liquor on each place.</summary>
    public const int LiquorDropCount = 5;

    /// <summary>Strength of the soda.</summary>
    public const double SodaGramsPer100Millilitres = 1;

    private static readonly Lazy<IReadOnlyList<SpotSalt>> Table = new(() => [.. TrialTables.Read("spot_salts.csv").Select(r => new SpotSalt(r["salt"], r["metal"], r.Number("grams_per_100ml"), (int)r.Number("drops")))]);

    /// <summary>All of the row, in order.</summary>
    public static IReadOnlyList<SpotSalt> All => Table.Value;

    /// <summary>Drops of soda that turn the metal into hydroxide or carbonate, and no more.</summary>
    /// <param name="metalMolPerGram">Metal in a gram of the salt.</param>
    /// <param name="charge">Its charge.</param>
    /// <param name="sodaBaseMolPerGram">Base in a gram of soda.</param>
    public double SodaDrops(double metalMolPerGram, int charge, double sodaBaseMolPerGram) =>
        charge * DropCount * GramsPer100Millilitres * metalMolPerGram / (SodaGramsPer100Millilitres * sodaBaseMolPerGram);
}
