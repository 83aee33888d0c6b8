using Alumroot.Colour.Interchange;

namespace Alumroot.App.Words;

/// <summary>Why a file of colours was not read, as sentences.</summary>
public static class ColourFileWords
{
    /// <summary>The sentences for a fault.</summary>
    /// <param name="file">The name of the file.</param>
    /// <param name="fault">What is wrong with it.</param>
    public static string Of(string file, ImportFault fault)
    {
        ArgumentNullException.ThrowIfNull(fault);
        string sample = fault.Sample is { Length: > 0 } named ? $", sample {named}" : "", field = fault.Field is { Length: > 0 } at ? $", {at}" : "";
        return $"{file} line {fault.Line}{sample}{field}: {Said(fault)}.";
    }

    private static string Said(ImportFault f) => f.Kind switch
    {
        FaultKind.Empty => "the file is empty. A file with spectra, Lab or XYZ was expected",
        FaultKind.Binary => "there are bytes that are no text. Save it as CGATS, CxF3, JCAMP-DX or CSV in the program that made it",
        FaultKind.TooLarge => $"there is more here than is read{(f.Expected is null ? "" : $" (at most {f.Expected} MiB)")}. Split the file",
        FaultKind.NoSamples => "the file holds no samples. It needs at least one spectrum, Lab or XYZ",
        FaultKind.FieldCount => $"NUMBER_OF_FIELDS says {f.Expected}, and {f.Found} names are given. One of the two is wrong, so the columns cannot be trusted",
        FaultKind.SetCount => $"NUMBER_OF_SETS says {f.Expected}, and {f.Found} rows are given. Rows may be missing; export the file again",
        FaultKind.RowLength => $"the row has {f.Found} values and needs {f.Expected}. Add what is missing or take out what is too much",
        FaultKind.NotANumber => $"\"{f.Found}\" is not a number. Write it like 0.054",
        FaultKind.DecimalComma => $"\"{f.Found}\" has a decimal comma. This format writes numbers with a point",
        FaultKind.NoEnd => $"{f.Expected} is missing, so the file was cut short. Copy or export it again",
        FaultKind.Duplicate => "this occurs twice. Keep the one that is meant",
        FaultKind.SameId => "this name occurs twice in one table. Give each sample its own",
        FaultKind.Impossible when f.Field is "Lab" or "XYZ" => $"{f.Found} cannot be the colour of a surface. Look for exchanged columns or another scale",
        FaultKind.Impossible => $"{f.Found} cannot be. Reflectances run from 0 to 1, or from 0 to 100 with --percent",
        FaultKind.NoFormat => $"there are data without names for the columns{(f.Found is null ? "" : $" (found {f.Found})")}. CGATS needs BEGIN_DATA_FORMAT; a plain table needs heads such as 380, R380 or L, a, b",
        FaultKind.OpenQuote => "a quote is opened and not closed. Close it in the same line",
        FaultKind.BrokenXml => "the XML is broken here, an element may not be closed. Copy or export the file again",
        FaultKind.DocumentType => "the XML declares a document type, and such files are not read. Remove the DOCTYPE if the file is yours",
        FaultKind.WrongNamespace => $"the root {f.Found} is not of CxF3. Its namespace is {f.Expected}",
        FaultKind.NoStart => $"{f.Expected} is stated neither on the spectrum nor as WavelengthRange of its specification. Without it the wavelengths are not known",
        FaultKind.UnknownSpecification => $"the spectrum refers to the ColorSpecification {f.Found}, which is not in the file. Export it with its specifications",
        FaultKind.MissingLabel => $"the label ##{f.Expected}= is missing. JCAMP-DX needs it to place the values",
        FaultKind.UnknownUnit => $"\"{f.Found}\" is not known here. Known are {f.Expected}",
        FaultKind.PointCount => $"NPOINTS says {f.Expected}, and {f.Found} points are there. Points may be missing; export the file again",
        FaultKind.CheckValue => $"the check ordinate is {f.Found} where {f.Expected} is due. A value before it was damaged",
        FaultKind.Abscissa => $"the abscissa is {f.Found} where {f.Expected} is due. A line may be missing or damaged",
        FaultKind.WavelengthOrder => $"{f.Found} nm follows {f.Expected} nm. Wavelengths must rise",
        FaultKind.Gap => $"nothing is known from {f.Found} nm. Gaps up to {f.Expected} nm are bridged",
        FaultKind.NarrowRange => $"the wavelengths run over {f.Found} nm. A colour needs {f.Expected} nm at least",
        FaultKind.Table => $"{f.Found}",
        _ => throw new ArgumentException($"There are no words for {f.Kind}.", nameof(f)),
    };
}
