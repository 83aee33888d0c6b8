namespace Alumroot.App.Requests;

/// <summary>The fields of a plan. The same names stand in the address, the form, the JSON file and after <c>--</c> on the command line.</summary>
public static class PlanFields
{
    /// <summary>Which dyestuff, by a name or key of the handbook; empty or "none" for plain substrate.</summary>
    public const string Dyestuff = "dyestuff";

    /// <summary>Mass of dry dyestuff.</summary>
    public const string Dry = "dry";

    /// <summary>Mass of fresh dyestuff, in place of dry.</summary>
    public const string Fresh = "fresh";

    /// <summary>Water of the liquor.</summary>
    public const string Water = "water";

    /// <summary>Hardness of that water.</summary>
    public const string Hardness = "hardness";

    /// <summary>Measured pH of the liquor.</summary>
    public const string LiquorPh = "liquor-ph";

    /// <summary>Which salt.</summary>
    public const string Salt = "salt";

    /// <summary>Mass of the salt.</summary>
    public const string SaltAmount = "salt-amount";

    /// <summary>A second salt.</summary>
    public const string SecondSalt = "second-salt";

    /// <summary>Mass of the second salt.</summary>
    public const string SecondSaltAmount = "second-salt-amount";

    /// <summary>Which alkali.</summary>
    public const string Alkali = "alkali";

    /// <summary>Amount of alkali, when it is given.</summary>
    public const string AlkaliAmount = "alkali-amount";

    /// <summary>Strength of ammonia (percent) or lye (mol/L).</summary>
    public const string AlkaliStrength = "alkali-strength";

    /// <summary>Home-baked soda: mass before baking.</summary>
    public const string BakedBefore = "baked-before";

    /// <summary>Home-baked soda: mass after baking.</summary>
    public const string BakedAfter = "baked-after";

    /// <summary>salt-first or alkali-first.</summary>
    public const string Order = "order";

    /// <summary>Temperature of the bath.</summary>
    public const string Temperature = "temp";

    /// <summary>ph, amount or down: which of the aims counts; when left out it follows from the fields that are filled.</summary>
    public const string Aim = "aim";

    /// <summary>The final pH.</summary>
    public const string ToPh = "to-ph";

    /// <summary>Whether all metal is to come down.</summary>
    public const string AllDown = "all-down";

    /// <summary>Vessel.</summary>
    public const string Vessel = "vessel";

    /// <summary>Smallest step of the scale.</summary>
    public const string Scale = "scale";

    /// <summary>Smallest step of the pH strips.</summary>
    public const string Strips = "strips";

    /// <summary>Conductivity to wash to.</summary>
    public const string WashTo = "wash-to";

    /// <summary>tap or pure.</summary>
    public const string WashWater = "wash-water";

    /// <summary>Whose cups and pints: us, imperial or metric.</summary>
    public const string Kitchen = "kitchen";

    /// <summary>metric or kitchen: how amounts are shown.</summary>
    public const string Units = "units";

    /// <summary>The lot of the dyestuff on the shelf, such as lot-7.</summary>
    public const string DyestuffLot = "dyestuff-lot";

    /// <summary>The lot of the salt.</summary>
    public const string SaltLot = "salt-lot";

    /// <summary>The lot of the alkali.</summary>
    public const string AlkaliLot = "alkali-lot";

    /// <summary>The batch that this one repeats, such as 26-014.</summary>
    public const string RepeatOf = "repeat-of";

    /// <summary>Fields that say where things come from; the plan is the same without them.</summary>
    public static IReadOnlyList<string> Origins { get; } = [DyestuffLot, SaltLot, AlkaliLot, RepeatOf];

    /// <summary>All names, in the order of the form.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        Salt, SaltAmount, SecondSalt, SecondSaltAmount, Alkali, AlkaliStrength, BakedBefore, BakedAfter, Dyestuff, Dry, Fresh, Water, Hardness, LiquorPh, Order, Temperature,
        Aim, ToPh, AlkaliAmount, AllDown, Vessel, Scale, Strips, WashTo, WashWater, Kitchen, Units, DyestuffLot, SaltLot, AlkaliLot, RepeatOf,
    ];
}
