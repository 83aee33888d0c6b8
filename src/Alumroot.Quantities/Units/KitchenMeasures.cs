namespace Alumroot.Quantities.Units;

/// <summary>Whose cup, pint, quart and fluid ounce are meant where the word alone does not say.</summary>
public enum KitchenMeasures
{
    /// <summary>Not known: each word has several readings, and the maker is asked.</summary>
    Ask,

    /// <summary>Those of the United States.</summary>
    Us,

    /// <summary>The imperial ones of Britain.</summary>
    Imperial,

    /// <summary>Cups of 250 mL and spoons of 5 and 15 mL; there is no metric pint.</summary>
    Metric,
}
