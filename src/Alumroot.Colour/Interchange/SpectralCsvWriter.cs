using System.Text;

namespace Alumroot.Colour.Interchange;

/// <summary>Writes samples as a plain table: a row for each, with a column for each wavelength headed R380 and so on, or L, a, b.</summary>
public static class SpectralCsvWriter
{
    /// <summary>The file as text (RFC 4180).</summary>
    /// <param name="samples">They share their wavelengths, and all or none of them have Lab.</param>
    /// <exception cref="ArgumentException">The samples do not have the same wavelengths.</exception>
    public static string Write(IReadOnlyList<ColourSample> samples)
    {
        ArgumentNullException.ThrowIfNull(samples);
        IReadOnlyList<double> nanometres = ColourWriters.Shared(samples);
        bool lab = samples.All(s => s.Lab is not null);
        var text = new StringBuilder("sample");
        if (lab) text.Append(",L,a,b");
        foreach (double n in nanometres) text.Append(",R").Append(ColourWriters.Text(n));
        text.Append('\n');
        foreach (ColourSample s in samples)
        {
            // Quotes always: a name may begin with a number sign or hold a comma.
            text.Append('"').Append(ColourWriters.OneLine(s.Id).Replace("\"", "\"\"", StringComparison.Ordinal)).Append('"');
            if (s.Lab is { } c && lab) text.Append(',').Append(ColourWriters.Text(c.L)).Append(',').Append(ColourWriters.Text(c.A)).Append(',').Append(ColourWriters.Text(c.B));
            foreach (double v in s.Spectrum?.Values ?? []) text.Append(',').Append(ColourWriters.Text(v));
            text.Append('\n');
        }
        return text.ToString();
    }
}
