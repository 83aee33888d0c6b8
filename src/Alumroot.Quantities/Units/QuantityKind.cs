namespace Alumroot.Quantities.Units;

/// <summary>What is measured: decides which units make sense.</summary>
public enum QuantityKind
{
    /// <summary>A plain number without a unit.</summary>
    Number,

    /// <summary>A mass; its own unit is the gram.</summary>
    Mass,

    /// <summary>A volume; its own unit is the millilitre.</summary>
    Volume,

    /// <summary>A temperature; its own unit is the degree Celsius.</summary>
    Temperature,

    /// <summary>A pH.</summary>
    Acidity,

    /// <summary>Hardness of water; its own unit is the millimole of calcium and magnesium per litre.</summary>
    Hardness,

    /// <summary>Conductivity of water; its own unit is the microsiemens per centimetre.</summary>
    Conductivity,

    /// <summary>A part of a whole, from 0 to 1.</summary>
    Fraction,

    /// <summary>Strength of a lye; its own unit is the mole per litre.</summary>
    Concentration,
}
