namespace Alumroot.Trials.Spot;

/// <summary>How firmly a metal holds the colour of a liquor.</summary>
public enum SpotStrength
{
    /// <summary>Not at all: it washes out.</summary>
    None,

    /// <summary>Some, and it bleeds.</summary>
    Weak,

    /// <summary>A usable lake, with colour left in the liquor.</summary>
    Moderate,

    /// <summary>Firmly: the liquor clears.</summary>
    Strong,
}

/// <summary>What a drop shows some minutes after the soda.</summary>
public enum SpotSight
{
    /// <summary>Nothing falls.</summary>
    Nothing,

    /// <summary>A pale solid falls, and the drop keeps its colour.</summary>
    Pale,

    /// <summary>A coloured solid falls, and most of the colour stays in the drop.</summary>
    MostLeft,

    /// <summary>A coloured solid falls, and some colour stays.</summary>
    SomeLeft,

    /// <summary>A coloured solid falls, and the drop clears.</summary>
    NoneLeft,
}
