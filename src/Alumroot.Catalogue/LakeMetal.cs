namespace Alumroot.Catalogue;

/// <summary>A metal that can carry a dye down as a lake.</summary>
public enum LakeMetal
{
    /// <summary>Aluminium(III): the usual bright lake.</summary>
    Aluminium,

    /// <summary>Iron(II) or iron(III): dark, saddened lakes.</summary>
    Iron,

    /// <summary>Copper(II): duller, often greener lakes.</summary>
    Copper,

    /// <summary>Tin(II): bright, often redder lakes.</summary>
    Tin,

    /// <summary>Calcium, alone or beside aluminium.</summary>
    Calcium,
}
