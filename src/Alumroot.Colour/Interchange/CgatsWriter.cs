using System.Globalization;
using System.Text;
using Alumroot.Colour.Colorimetry;

namespace Alumroot.Colour.Interchange;

/// <summary>Writes CGATS.17 (ISO 28178): every table with its own format, reflectances on the scale of 0 to 1.</summary>
public static class CgatsWriter
{
    /// <summary>The file as text.</summary>
    /// <param name="document">Samples; those of one table share their wavelengths, and have Lab and XYZ either all or not at all.</param>
    /// <exception cref="ArgumentException">The samples of a table do not have the same fields.</exception>
    public static string Write(ColourDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        var text = new StringBuilder("CGATS.17\n\n");
        if (document.Samples.Any(s => s.Spectrum is not null)) text.Append("SPECTRAL_NORM \"1\"\n");
        SpectrumKind[] kinds = [.. document.Samples.Where(s => s.Spectrum is not null).Select(s => s.Kind).Distinct()];
        if (kinds is [SpectrumKind.Emission]) text.Append("MEAS_TYPE \"EMISSION\"\n");
        if (kinds is [SpectrumKind.Transmittance]) text.Append("MEAS_TYPE \"TRANSMISSIVE\"\n");
        foreach (ColourTable table in document.Tables) Write(table.Samples, text);
        return text.ToString();
    }

    private static void Write(IReadOnlyList<ColourSample> samples, StringBuilder text)
    {
        IReadOnlyList<double> nanometres = ColourWriters.Shared(samples);
        bool lab = All(samples, s => s.Lab is not null), xyz = All(samples, s => s.Xyz is not null), named = samples.Any(s => s.Name is not null);
        string[] fields =
        [
            "SAMPLE_ID", .. named ? (string[])["SAMPLE_NAME"] : [], .. lab ? (string[])["LAB_L", "LAB_A", "LAB_B"] : [], .. xyz ? (string[])["XYZ_X", "XYZ_Y", "XYZ_Z"] : [],
            .. nanometres.Select(n => "SPECTRAL_NM" + ColourWriters.Text(n)),
        ];
        text.Append(CultureInfo.InvariantCulture, $"NUMBER_OF_FIELDS {fields.Length}\nBEGIN_DATA_FORMAT\n").AppendJoin('\t', fields);
        text.Append(CultureInfo.InvariantCulture, $"\nEND_DATA_FORMAT\nNUMBER_OF_SETS {samples.Count}\nBEGIN_DATA\n");
        foreach (ColourSample s in samples)
        {
            IEnumerable<double> numbers = [.. lab ? Of(s.Lab!.Value) : [], .. xyz ? Of(s.Xyz!.Value) : [], .. s.Spectrum?.Values ?? []];
            text.AppendJoin('\t', [Quoted(s.Id), .. named ? (string[])[Quoted(s.Name ?? "")] : [], .. numbers.Select(ColourWriters.Text)]).Append('\n');
        }
        text.Append("END_DATA\n\n");
    }

    private static bool All(IReadOnlyList<ColourSample> samples, Func<ColourSample, bool> has)
    {
        int there = samples.Count(has);
        return there == samples.Count || (there == 0 ? false : throw new ArgumentException("The samples of a table have the same fields.", nameof(samples)));
    }

    private static double[] Of(Lab lab) => [lab.L, lab.A, lab.B];

    private static double[] Of(Xyz xyz) => [xyz.X, xyz.Y, xyz.Z];

    private static string Quoted(string text) => $"\"{ColourWriters.OneLine(text).Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
