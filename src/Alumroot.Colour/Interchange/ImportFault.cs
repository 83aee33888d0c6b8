namespace Alumroot.Colour.Interchange;

/// <summary>Why a file was not read.</summary>
public enum FaultKind
{
    /// <summary>There is nothing in it.</summary>
    Empty,

    /// <summary>It is no text.</summary>
    Binary,

    /// <summary>It is larger than what is read.</summary>
    TooLarge,

    /// <summary>It has no samples.</summary>
    NoSamples,

    /// <summary>The stated number of fields is not the number of names.</summary>
    FieldCount,

    /// <summary>The stated number of rows is not what is there.</summary>
    SetCount,

    /// <summary>A row does not have a value for each field.</summary>
    RowLength,

    /// <summary>A number was expected.</summary>
    NotANumber,

    /// <summary>A number is written with a comma where the format has points.</summary>
    DecimalComma,

    /// <summary>What must end the data is missing: the file was cut short.</summary>
    NoEnd,

    /// <summary>A field, a label or a wavelength occurs twice.</summary>
    Duplicate,

    /// <summary>Two samples of a table have the same id.</summary>
    SameId,

    /// <summary>A value cannot be true of what it stands for.</summary>
    Impossible,

    /// <summary>Data stand without the names of their fields.</summary>
    NoFormat,

    /// <summary>A quote is opened and not closed.</summary>
    OpenQuote,

    /// <summary>The XML is broken.</summary>
    BrokenXml,

    /// <summary>The XML declares a document type, which is never read.</summary>
    DocumentType,

    /// <summary>The XML's root is not of a known format.</summary>
    WrongNamespace,

    /// <summary>The first wavelength or the step is not stated.</summary>
    NoStart,

    /// <summary>A specification is referred to and is not there.</summary>
    UnknownSpecification,

    /// <summary>A label that the format needs is missing.</summary>
    MissingLabel,

    /// <summary>A unit or form of data that is not known.</summary>
    UnknownUnit,

    /// <summary>The stated number of points is not what is there.</summary>
    PointCount,

    /// <summary>A check value does not agree.</summary>
    CheckValue,

    /// <summary>An abscissa is not the one that is due.</summary>
    Abscissa,

    /// <summary>The wavelengths do not rise.</summary>
    WavelengthOrder,

    /// <summary>There is a gap too wide to be bridged.</summary>
    Gap,

    /// <summary>The wavelengths do not cover 400 to 700 nm.</summary>
    NarrowRange,

    /// <summary>The plain table is not one.</summary>
    Table,
}

/// <summary>What is wrong with a file, and where.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Line">The line, from 1.</param>
public sealed record ImportFault(FaultKind Kind, int Line)
{
    /// <summary>The sample to blame, where one is.</summary>
    public string? Sample { get; init; }

    /// <summary>The field, label or place to blame, where one is.</summary>
    public string? Field { get; init; }

    /// <summary>What stands there.</summary>
    public string? Found { get; init; }

    /// <summary>What was expected.</summary>
    public string? Expected { get; init; }
}

/// <summary>What came of reading a file. Closed: nobody adds another kind.</summary>
public abstract record Import
{
    private Import() { }

    /// <summary>It was read.</summary>
    /// <param name="Document">What it holds.</param>
    public sealed record Done(ColourDocument Document) : Import;

    /// <summary>It was not read, and nothing of it is used.</summary>
    /// <param name="Fault">Why.</param>
    public sealed record Refused(ImportFault Fault) : Import;
}

/// <summary>Ends the reading of a file; never leaves this room.</summary>
internal sealed class FaultException(ImportFault fault) : Exception
{
    internal ImportFault Fault { get; } = fault;
}
