using System.CommandLine;
using Alumroot.App.Output;
using Alumroot.App.Verbs.Colour;
using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Interchange;
using Alumroot.Studio.Exchange;

namespace Alumroot.App.Verbs;

/// <summary><c>alumroot colour FILE...</c>: spectra or Lab from files to XYZ, Lab, names and differences.</summary>
public static class ColourVerb
{
    // The reader takes values above 1.6 for percent unasked; samples that all stay below it are hardly percent.
    private const double LeastSensibleY = 1.6;

    /// <summary>The verb with its options.</summary>
    public static Verb Build(Channels channels)
    {
        ArgumentNullException.ThrowIfNull(channels);
        var files = new Argument<string[]>("files") { HelpName = "FILE", Arity = ArgumentArity.OneOrMore, Description = "spectra, Lab or XYZ: CGATS.17, CxF3, JCAMP-DX, or CSV with wavelengths or samples across" };
        var illuminant = new Option<string>("--illuminant") { HelpName = "LIGHT", DefaultValueFactory = _ => "D50", Description = "D50, D65, A, F2, F11, LED-B3 and others, or a file with a lamp's spectrum; D50 when left out" };
        var observer = new Option<int>("--observer") { HelpName = "DEGREES", DefaultValueFactory = _ => 2, Description = "2 or 10 degrees; 2 when left out" };
        var percent = new Option<bool>("--percent") { Description = "reflectances are 0 to 100" };
        var difference = new Option<string[]?>("--difference") { HelpName = "A B", Arity = new ArgumentArity(2, 2), AllowMultipleArgumentsPerToken = true, Description = "two samples by name: how B differs from A" };
        var json = new Option<bool>("--json") { Description = "one JSON document instead of a table" };
        var csv = new Option<bool>("--csv") { Description = "a table with commas, which is also what comes without it" };
        var verb = new Verb(
            "colour",
            "Turns spectra or Lab into Lab, names and differences.",
            "alumroot colour chips.cgats.txt",
            "alumroot colour lakes.csv --illuminant D65 --observer 10 --json",
            "alumroot colour before.cxf after.cxf --difference before.cxf:S1 after.cxf:S1");
        verb.Add(files);
        verb.Add(illuminant);
        verb.Add(observer);
        verb.Add(percent);
        verb.Add(difference);
        verb.Add(json);
        verb.Add(csv);
        files.Validators.Add(result =>
        {
            if (result.Tokens.FirstOrDefault(t => t.Value.StartsWith("--", StringComparison.Ordinal)) is { } stray)
                result.AddError($"'colour' has no option '{stray.Value}'. 'alumroot colour --help' lists what it knows.");
        });
        verb.SetAction(parsed => Run(parsed.GetRequiredValue(files), parsed.GetRequiredValue(illuminant), parsed.GetValue(observer), parsed.GetValue(percent), parsed.GetValue(difference), parsed.GetValue(json), channels));
        return verb;
    }

    private static int Run(string[] files, string illuminant, int observer, bool percent, string[]? difference, bool json, Channels channels)
    {
        if (Observer.Find(observer) is not { } eye) return channels.End(ExitCode.InputWrong, $"There is no observer of {observer} degrees. The standard ones are 2 and 10.");
        if (ColourFiles.Light(illuminant, channels) is not { } light) return ExitCode.InputWrong;
        var seen = new ViewingCondition(light, eye);
        var cards = new List<ColourCard>();
        bool read = true, lamps = false;
        foreach (string file in files)
        {
            if (ColourFiles.Read(file, percent, channels) is not { } document)
            {
                read = false;
                continue;
            }
            foreach (ColourSample sample in document.Samples)
                if (ColourCard.Of(sample, Path.GetFileName(file), seen) is { } card) cards.Add(card);
                else lamps = true;
        }
        if (!read) return ExitCode.InputWrong;
        if (percent && cards.Count > 0 && cards.TrueForAll(c => c.From == "spectrum" && c.Y < LeastSensibleY)) channels.Messages.WriteLine("With --percent every sample is nearly black. Leave it out where reflectances run from 0 to 1.");
        if (lamps) channels.Messages.WriteLine("A lamp or a sample without spectrum, Lab or XYZ has no colour of its own and is left out. A lamp serves as --illuminant FILE.");
        if (cards.Count == 0) return channels.End(ExitCode.CannotBeMet, "No sample with a colour was found, so there is nothing to tell.");
        if (cards.Exists(c => c.From.EndsWith("stated", StringComparison.Ordinal))) channels.Messages.WriteLine($"Stated Lab and XYZ are taken as seen in {light.Key} by the observer of {observer} degrees; --illuminant and --observer say otherwise.");
        return difference is [var a, var b] ? Difference(a, b, cards, json, seen, channels) : Write(cards, json, seen, channels);
    }

    private static int Write(List<ColourCard> cards, bool json, ViewingCondition seen, Channels channels)
    {
        if (json) channels.Data.WriteLine(Json.Text(new { Illuminant = seen.Light.Key, ObserverDegrees = seen.Eye.Degrees, Samples = cards.Select(c => new { c.Sample, c.X, c.Y, c.Z, c.L, c.A, c.B, c.C, c.H, c.SrgbHex, c.InGamut, c.Name, c.NameDe00, c.From, c.File }) }));
        else
        {
            channels.Data.Write(Csv.Line([.. ColourCard.Heads]));
            foreach (ColourCard card in cards) channels.Data.Write(Csv.Line(card.Cells));
        }
        return ExitCode.Done;
    }

    private static int Difference(string a, string b, List<ColourCard> cards, bool json, ViewingCondition seen, Channels channels)
    {
        if (Find(a, cards, channels) is not { } first || Find(b, cards, channels) is not { } second) return ExitCode.CannotBeMet;
        DifferenceCard card = DifferenceCard.Between(first, second);
        if (json) channels.Data.WriteLine(Json.Text(new { Illuminant = seen.Light.Key, ObserverDegrees = seen.Eye.Degrees, Difference = card }));
        else
        {
            channels.Data.Write(Csv.Line([.. DifferenceCard.Heads]));
            channels.Data.Write(Csv.Line(card.Cells));
        }
        return ExitCode.Done;
    }

    private static ColourCard? Find(string typed, List<ColourCard> cards, Channels channels)
    {
        ColourCard[] found = [.. cards.Where(c => c.Sample == typed || $"{c.File}:{c.Sample}" == typed)];
        if (found.Length == 1) return found[0];
        channels.Messages.WriteLine(found.Length == 0
            ? $"There is no sample '{typed}'{(Nearest.To(typed, cards.Select(c => c.Sample)) is { } near ? $"; the nearest is '{near}'" : "")}. There are {string.Join(", ", cards.Take(12).Select(c => c.Sample))}{(cards.Count > 12 ? " and more" : "")}."
            : $"'{typed}' stands {found.Length} times. Write it with its file, such as {found[0].File}:{typed}.");
        return null;
    }
}
