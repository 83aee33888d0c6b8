namespace Alumroot.Chemistry.Constants;

/// <summary>A dissolved species and how it forms from the components.</summary>
/// <param name="Name">Name with charge, such as AlSO4+.</param>
/// <param name="Charge">Charge in elementary charges.</param>
/// <param name="Formation">Components that make one of it.</param>
/// <param name="LogK">log10 of the formation constant against temperature (25 C and zero ionic strength are the reference).</param>
/// <param name="Activity">Activity coefficient form.</param>
/// <param name="DiffusionSquareMetrePerSecond">Diffusion coefficient at 25 C; null when none is known and the species is taken as not conducting.</param>
/// <param name="Source">Key of the source.</param>
public sealed record Species(string Name, int Charge, Reaction Formation, TemperatureLaw LogK, ActivityModel Activity, double? DiffusionSquareMetrePerSecond, string Source);

/// <summary>A solid or a gas and how it dissolves into the components.</summary>
/// <param name="Name">Name of the phase.</param>
/// <param name="Formula">Formula of one unit.</param>
/// <param name="IsGas">Whether it is a gas, measured by its pressure in atm.</param>
/// <param name="Dissolution">Components that one unit dissolves into.</param>
/// <param name="LogK">log10 of the dissolution constant against temperature: at saturation the ion activity product equals it (for a gas at one atm).</param>
/// <param name="Source">Key of the source.</param>
public sealed record Phase(string Name, string Formula, bool IsGas, Reaction Dissolution, TemperatureLaw LogK, string Source)
{
    /// <summary>Standard uncertainty of log10 K, when one is stated.</summary>
    public double? Log10Uncertainty { get; init; }

    /// <summary>Molar mass of one formula unit in g/mol; null when the table does not say.</summary>
    public double? GramsPerMole { get; init; }

    /// <summary>Name a maker would use; the phase's own name when the table does not say.</summary>
    public string PlainName { get; init; } = Name;

    /// <summary>Whether the source gives no temperature data, so that the constant is weaker away from 25 C.</summary>
    public bool LacksTemperatureData => !LogK.IsKnown;

    /// <summary>For a gas written by Henry's law: the dissolved species it is in balance with.</summary>
    internal Species? Aqueous { get; init; }

    /// <summary>log10 of the ion activity product at saturation (for a gas: at one atm).</summary>
    public double Log10ProductAtSaturation(double kelvin) => LogK.Log10K(kelvin) - (Aqueous?.LogK.Log10K(kelvin) ?? 0);

    /// <summary>Change of <see cref="Log10ProductAtSaturation"/> per kelvin.</summary>
    public double Log10ProductPerKelvin(double kelvin) => LogK.Log10KPerKelvin(kelvin) - (Aqueous?.LogK.Log10KPerKelvin(kelvin) ?? 0);
}

/// <summary>A substance that can be weighed out.</summary>
/// <param name="Key">Name in the tables, such as potassium-alum-dodecahydrate.</param>
/// <param name="Formula">Formula of one unit with its hydrate water.</param>
/// <param name="GramsPerMole">Molar mass.</param>
/// <param name="Delivers">Components (with H+ and H2O) that one mole brings.</param>
public sealed record Reagent(string Key, string Formula, double GramsPerMole, Reaction Delivers);
