using System.Globalization;
using System.Text;

namespace Alumroot.Colour.Interchange;

/// <summary>What the writers share.</summary>
internal static class ColourWriters
{
    /// <summary>A number with all its digits and a point.</summary>
    internal static string Text(double x) => x.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>A text in one line: whatever is no letter, sign or blank becomes a blank.</summary>
    internal static string OneLine(string text)
    {
        var kept = new StringBuilder(text.Length);
        foreach (Rune rune in text.EnumerateRunes())
            kept.Append(Rune.IsControl(rune) || rune.Value is 0x2028 or 0x2029 or 0xFFFE or 0xFFFF ? " " : rune.ToString());
        return kept.ToString();
    }

    /// <summary>Asks that all spectra of a table share their wavelengths, and gives these; empty when none has a spectrum.</summary>
    internal static IReadOnlyList<double> Shared(IReadOnlyList<ColourSample> samples)
    {
        IReadOnlyList<double>? first = samples.FirstOrDefault(s => s.Spectrum is not null)?.Spectrum!.Nanometres;
        if (first is null) return [];
        return samples.All(s => s.Spectrum is not null && s.Spectrum.Nanometres.SequenceEqual(first)) ? first : throw new ArgumentException("The samples of a table have the same wavelengths.", nameof(samples));
    }
}
