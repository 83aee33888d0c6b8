using System.CommandLine;
using System.Globalization;
using Alumroot.App.Output;
using Alumroot.App.Verbs.Colour;
using Alumroot.App.Verbs.Match;
using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Film;
using Alumroot.Colour.Matching;
using Alumroot.Quantities.Tables;

namespace Alumroot.App.Verbs;

/// <summary><c>alumroot match FILE.csv --aim L A B</c>: which mixture of a few pigments comes nearest to a colour.</summary>
public static class MatchVerb
{
    private const int MostSets = 200_000;

    /// <summary>The verb with its options.</summary>
    public static Verb Build(Channels channels)
    {
        ArgumentNullException.ThrowIfNull(channels);
        var file = new Argument<string>("pigments") { HelpName = "FILE.csv", Description = "K and S of each pigment, columns sample, wavelength_nm, k, s and their spans, as 'alumroot film' writes them" };
        var aim = new Option<string[]>("--aim") { HelpName = "L A B", Arity = new ArgumentArity(1, 3), AllowMultipleArgumentsPerToken = true, Required = true, Description = "the colour that is wanted: its Lab, or the screen colour #rrggbb" };
        var illuminant = new Option<string>("--illuminant") { HelpName = "LIGHT", DefaultValueFactory = _ => "D50", Description = "the light of the aim; D50 when left out" };
        var observer = new Option<int>("--observer") { HelpName = "DEGREES", DefaultValueFactory = _ => 2, Description = "2 or 10 degrees; 2 when left out" };
        var most = new Option<int>("--most") { HelpName = "N", DefaultValueFactory = _ => 3, Description = "at most so many pigments, 1 to 5; 3 when left out" };
        var answers = new Option<int>("--answers") { HelpName = "N", DefaultValueFactory = _ => 3, Description = "so many mixtures, best first; 3 when left out" };
        Option<double?> k1 = NumberOption.Of("--k1", "SHARE", "share of light that the surface throws back outside: 0.04 for gloss; 0 when left out");
        Option<double?> k2 = NumberOption.Of("--k2", "SHARE", "share that the surface throws back inside: 0.4 to 0.6 for a binder; 0 when left out");
        var json = new Option<bool>("--json") { Description = "one JSON document instead of text" };
        var csv = new Option<bool>("--csv") { Description = "a table with commas" };
        var verb = new Verb(
            "match",
            "Finds the mixture of pigments nearest to a colour.",
            "alumroot match pigments.csv --aim 52 38 21",
            "alumroot match pigments.csv --aim #b5533c --most 2",
            "alumroot match pigments.csv --aim 52 38 21 --k1 0.04 --k2 0.6 --json");
        verb.Add(file);
        foreach (Option option in (Option[])[aim, illuminant, observer, most, answers, k1, k2, json, csv]) verb.Add(option);
        verb.SetAction(parsed =>
        {
            if (Observer.Find(parsed.GetValue(observer)) is not { } eye) return channels.End(ExitCode.InputWrong, $"There is no observer of {parsed.GetValue(observer)} degrees. The standard ones are 2 and 10.");
            if (ColourFiles.Light(parsed.GetRequiredValue(illuminant), channels) is not { } light) return ExitCode.InputWrong;
            var seen = new ViewingCondition(light, eye);
            (int n, int wanted) = (parsed.GetValue(most), parsed.GetValue(answers));
            if (n is < 1 or > MixtureSearch.MostPigments) return channels.End(ExitCode.InputWrong, $"'--most' is a number of pigments from 1 to {MixtureSearch.MostPigments}.");
            if (wanted is < 1 or > 50) return channels.End(ExitCode.InputWrong, "'--answers' is a number of mixtures from 1 to 50.");
            var surface = new Surface(parsed.GetValue(k1) ?? 0, parsed.GetValue(k2) ?? 0);
            if (surface is { OutsideShare: not (>= 0 and < 1) } or { InsideShare: not (>= 0 and < 1) }) return channels.End(ExitCode.InputWrong, "'--k1' and '--k2' are shares of light, from 0 to below 1.");
            Xyz white = SpectralWeights.For(seen, Spectrum.Regular(380, 5, Enumerable.Repeat(1.0, 81))).White;
            if (Aim(parsed.GetRequiredValue(aim), white) is not { } wantedLab) return channels.End(ExitCode.InputWrong, $"'--aim {string.Join(' ', parsed.GetRequiredValue(aim))}' is no colour. Write its Lab as three numbers, such as --aim 52 38 21, or a screen colour such as #b5533c.");
            return TextFile.WithTable(parsed.GetRequiredValue(file), channels, table => Run(PigmentTable.Read(table), new Asked(wantedLab, seen, white, n, wanted, surface), parsed.GetValue(json), parsed.GetValue(csv), channels));
        });
        return verb;
    }

    private sealed record Asked(Lab Aim, ViewingCondition Seen, Xyz White, int Most, int Answers, Surface Surface);

    private static int Run(PigmentTable table, Asked asked, bool json, bool csv, Channels channels)
    {
        double sets = Sets(table.Pigments.Count, asked.Most);
        if (sets > MostSets) return channels.End(ExitCode.InputWrong, string.Create(CultureInfo.InvariantCulture, $"{table.Pigments.Count} pigments have {sets:0} mixtures of at most {asked.Most}. Name fewer pigments, or take a smaller --most."));
        IReadOnlyList<MixtureFound> found = MixtureSearch.Find(new MixtureAsk
        {
            Nanometres = table.Nanometres,
            Pigments = table.Pigments,
            Aims = [new ColourAim(asked.Seen, asked.Aim)],
            MostPigments = asked.Most,
            Answers = asked.Answers,
            Surface = asked.Surface,
        });
        if (found.Count == 0) return channels.End(ExitCode.CannotBeMet, "No mixture of these pigments could be reckoned.");
        if (json) MatchOutput.WriteJson(asked.Aim, found, asked.White, channels.Data);
        else if (csv) MatchOutput.WriteCsv(found, asked.White, channels.Data);
        else MatchOutput.WriteText(asked.Aim, found, asked.White, table.SpansTold, channels.Data);
        if (found[0].WorstDeltaE2000 > 5) channels.Messages.WriteLine(string.Create(CultureInfo.InvariantCulture, $"No mixture of these pigments comes near: the best is {found[0].WorstDeltaE2000:0.0} off. A stronger or purer pigment is missing."));
        return ExitCode.Done;
    }

    private static Lab? Aim(string[] typed, Xyz white)
    {
        if (typed is [['#', .. { Length: 6 } hex]] && int.TryParse(hex, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out int rgb))
            return Lab.From(ChromaticAdaptation.Bradford.Adapt(new Srgb((byte)(rgb >> 16), (byte)(rgb >> 8), (byte)rgb, true).ToXyz(), Srgb.White, white), white);
        double[] v = [.. typed.Select(t => double.TryParse(t, NumberStyles.Float, CultureInfo.InvariantCulture, out double x) ? x : double.NaN)];
        return v is [>= 0 and <= 100, >= -160 and <= 160, >= -160 and <= 160] ? new Lab(v[0], v[1], v[2]) : null;
    }

    private static double Sets(int pigments, int most)
    {
        double all = 0, sets = 1;
        for (int size = 1; size <= Math.Min(most, pigments); size++)
        {
            sets *= (pigments - size + 1.0) / size;
            all += sets;
        }
        return all;
    }
}
