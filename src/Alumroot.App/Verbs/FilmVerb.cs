using System.CommandLine;
using Alumroot.App.Output;
using Alumroot.App.Requests;
using Alumroot.App.Verbs.Film;
using Alumroot.App.Words;
using Alumroot.Colour.Film;
using Alumroot.Quantities.Tables;

namespace Alumroot.App.Verbs;

/// <summary><c>alumroot film FILE.csv</c>: drawdowns over black and white to K and S, hiding, and the same paint in another film.</summary>
public static class FilmVerb
{
    // A bench instrument put down twice on one spot agrees to about this; our judgement, no source.
    private const double UsualReading = 0.002;

    private static readonly string[] Needed = ["sample", "wavelength_nm", "r_over_black", "r_black", "r_over_white", "r_white"];

    /// <summary>The verb with its options.</summary>
    public static Verb Build(Channels channels)
    {
        ArgumentNullException.ThrowIfNull(channels);
        var file = new Argument<string?>("file") { HelpName = "FILE.csv", Arity = ArgumentArity.ZeroOrOne, Description = "columns sample, wavelength_nm, r_over_black, r_black, r_over_white, r_white, thickness (may be left out), reflectances 0 to 1" };
        Option<double?> thickness = NumberOption.Of("--thickness", "X", "predict a film of this thickness, in the unit of the file, over --over");
        Option<double?> over = NumberOption.Of("--over", "R", "reflectance of the ground to predict over, 0 to 1");
        Option<double?> k1 = NumberOption.Of("--k1", "SHARE", "share of light that the surface throws back outside: 0.04 for gloss; 0 when left out");
        Option<double?> k2 = NumberOption.Of("--k2", "SHARE", "share that the surface throws back inside: 0.4 to 0.6 for a binder; 0 when left out");
        var excluded = new Option<bool>("--gloss-excluded") { Description = "the instrument does not see what the surface throws back" };
        Option<double?> reading = NumberOption.Of("--reading", "R", "nine readings in ten lie so near the truth; 0.002 when left out");
        var cases = new Option<string?>("--cases") { HelpName = "FILE.csv", Description = "instead of a file of drawdowns: the arithmetic of films, one case a line (columns id, kind, inputs)" };
        var json = new Option<bool>("--json") { Description = "one JSON document instead of a table" };
        var csv = new Option<bool>("--csv") { Description = "a table with commas, which is also what comes without it" };
        var verb = new Verb(
            "film",
            "Finds K, S and hiding of paint films from drawdowns.",
            "alumroot film drawdowns.csv",
            "alumroot film drawdowns.csv --k1 0.04 --k2 0.6 --thickness 0.05 --over 0.8",
            "alumroot film --cases films.csv");
        verb.Add(file);
        foreach (Option option in (Option[])[thickness, over, k1, k2, excluded, reading, cases, json, csv]) verb.Add(option);
        verb.SetAction(parsed =>
        {
            string? table = parsed.GetValue(file), list = parsed.GetValue(cases);
            if ((table is null) == (list is null)) return channels.End(ExitCode.InputWrong, "'film' takes either a file of drawdowns or --cases with a file of cases.");
            if (list is not null) return CaseFile.Answer(list, FilmCases.Of, channels);
            var request = new FilmRequest(new Surface(parsed.GetValue(k1) ?? 0, parsed.GetValue(k2) ?? 0, !parsed.GetValue(excluded)), parsed.GetValue(reading) ?? UsualReading, parsed.GetValue(thickness), parsed.GetValue(over));
            return Mistake(request) is { } mistake ? channels.End(ExitCode.InputWrong, mistake) : TextFile.WithTable(table!, channels, read => Run(read, request, parsed.GetValue(json), channels));
        });
        return verb;
    }

    private static string? Mistake(FilmRequest request) => request switch
    {
        { Surface: { OutsideShare: not (>= 0 and < 1) } or { InsideShare: not (>= 0 and < 1) } } => "'--k1' and '--k2' are shares of light, from 0 to below 1.",
        { Reading: not (>= 0 and < 0.5) } => "'--reading' is how far a reading may be off as a reflectance, such as 0.002.",
        { Thickness: null, Over: not null } or { Thickness: not null, Over: null } => "'--thickness' and '--over' go together: how thick, and over which ground.",
        { Thickness: not (null or > 0) } => "'--thickness' must be more than nothing.",
        { Over: not (null or (>= 0 and <= 1)) } => "'--over' is a reflectance, from 0 to 1.",
        _ => null,
    };

    private static int Run(Table table, FilmRequest request, bool json, Channels channels)
    {
        foreach (string column in Needed)
            if (!table.Has(column)) return channels.End(ExitCode.InputWrong, $"{table.Name}: the column {column} is missing. A file of drawdowns has the columns {string.Join(", ", Needed)}.");
        IReadOnlyList<FilmSample> samples = FilmSample.Read(table, request);
        if (samples.Count == 0) return channels.End(ExitCode.CannotBeMet, $"{table.Name} has no rows, so there is no film to tell of.");
        if (json) FilmOutput.WriteJson(samples, request, channels.Data);
        else FilmOutput.WriteCsv(samples, request, channels.Data);
        return Said(samples, channels);
    }

    /// <summary>Names what is not known, a line for each sample and reason; a file in which nothing is known cannot be met.</summary>
    private static int Said(IReadOnlyList<FilmSample> samples, Channels channels)
    {
        foreach (FilmSample sample in samples)
        {
            if (!sample.ThicknessKnown) channels.Messages.WriteLine($"{sample.Name}: no thickness is given, so K and S are for the whole film.");
            foreach (IGrouping<string, DrawdownBand> reason in sample.Series.Bands.GroupBy(b => FilmWords.Of(b.Measured.Found)).Where(g => g.Key.Length > 0))
                channels.Messages.WriteLine($"{sample.Name} at {Wavelengths([.. reason.Select(b => b.Nanometres)])} nm: {reason.Key}.");
        }
        return samples.Any(s => s.Series.Bands.Any(b => b.Measured.Found is not FilmFound.Nothing)) ? ExitCode.Done : ExitCode.CannotBeMet;
    }

    private static string Wavelengths(IReadOnlyList<double> at) => at.Count <= 3 ? string.Join(", ", at) : $"{at[0]} to {at[^1]} ({at.Count} wavelengths)";
}
