namespace Alumroot.Catalogue.Finding;

/// <summary>Which part of the catalogue a hit is from.</summary>
public enum FoundKind
{
    /// <summary>A <see cref="Catalogue.Dyestuff"/>.</summary>
    Dyestuff,

    /// <summary>A <see cref="Catalogue.Reagent"/>.</summary>
    Reagent,

    /// <summary>A <see cref="Catalogue.Trouble"/>.</summary>
    Trouble,

    /// <summary>A <see cref="Catalogue.ProcessFact"/>.</summary>
    ProcessFact,

    /// <summary>A <see cref="Catalogue.Hazard"/>.</summary>
    Hazard,

    /// <summary>A <see cref="Catalogue.PlantHazard"/>.</summary>
    PlantHazard,

    /// <summary>An <see cref="Catalogue.Incompatibility"/>.</summary>
    Incompatibility,

    /// <summary>A <see cref="Catalogue.WasteAdvice"/>.</summary>
    Waste,

    /// <summary>A <see cref="Catalogue.Caution"/>.</summary>
    Caution,
}
