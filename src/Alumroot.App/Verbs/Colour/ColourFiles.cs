using Alumroot.App.Output;
using Alumroot.App.Words;
using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Interchange;

namespace Alumroot.App.Verbs.Colour;

/// <summary>Files of colours from the disk.</summary>
internal static class ColourFiles
{
    /// <summary>Reads one file; what is wrong with it is said on the channel of messages.</summary>
    internal static ColourDocument? Read(string path, bool percent, Channels channels)
    {
        string name = Path.GetFileName(path);
        try
        {
            var file = new FileInfo(path);
            if (file.Exists && file.Length > ColourFile.MostBytes)
                return Said(ColourFileWords.Of(name, new ImportFault(FaultKind.TooLarge, 1) { Expected = $"{ColourFile.MostBytes >> 20}" }));
            switch (ColourFile.Read(File.ReadAllBytes(path), percent))
            {
                case Import.Done { Document: var document }:
                    if (document.PercentAssumed) channels.Messages.WriteLine($"{name}: the values are taken as percent, because most are above 1.6.");
                    return document;
                case Import.Refused { Fault: var fault }:
                    return Said(ColourFileWords.Of(name, fault));
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Said($"'{path}' could not be read. Check the name and whether you may read it.");
        }
        return null;

        ColourDocument? Said(string sentence)
        {
            channels.Messages.WriteLine(sentence);
            return null;
        }
    }

    /// <summary>A tabulated illuminant by its name, or the lamp that a file holds.</summary>
    internal static Illuminant? Light(string typed, Channels channels)
    {
        if (Illuminant.Find(typed) is { } tabulated) return tabulated;
        if (!File.Exists(typed))
        {
            channels.Messages.WriteLine($"'{typed}' is no illuminant that is known: {string.Join(", ", Illuminant.All.Select(i => i.Key))}. A file with the spectrum of a lamp (SPDX, SPECT) serves too.");
            return null;
        }
        if (Read(typed, false, channels) is not { } document) return null;
        ColourSample[] lamps = [.. document.Samples.Where(s => s.Spectrum is not null)];
        if (lamps is [{ Spectrum: { } power }] && power.Values.All(v => v >= 0) && double.IsFinite(White(power).Y)) return Illuminant.Measured(Path.GetFileName(typed), power);
        channels.Messages.WriteLine($"{Path.GetFileName(typed)} holds {lamps.Length} spectra that could be a lamp. It must hold one that shines where it is seen, with no power below nothing.");
        return null;
    }

    private static Xyz White(Spectrum power) => SpectralWeights.For(new ViewingCondition(Illuminant.Measured("lamp", power), Observer.TwoDegrees), power).White;
}
