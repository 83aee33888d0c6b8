using System.CommandLine;
using System.Globalization;
using Alumroot.App.Colours;
using Alumroot.App.Output;
using Alumroot.App.Requests;
using Alumroot.App.Trials;
using Alumroot.App.Verbs.Ladder;
using Alumroot.App.Words;
using Alumroot.Colour.Colorimetry;
using Alumroot.Quantities;
using Alumroot.Quantities.Reading;
using Alumroot.Quantities.Tables;
using Alumroot.Trials.Ladder;

namespace Alumroot.App.Verbs;

/// <summary><c>alumroot ladder FILE.csv</c>: a row of jars before it is made, and one liquor at several pH to its forms, their pKa, and its colour at any pH.</summary>
public static class LadderVerb
{
    /// <summary>The verb with its options.</summary>
    public static Verb Build(Channels channels)
    {
        ArgumentNullException.ThrowIfNull(channels);
        var file = new Argument<string?>("file") { HelpName = "FILE.csv", Arity = ArgumentArity.ZeroOrOne, Description = "columns ph, L, a, b of each jar, or ph and a column of absorbance for each wavelength; series, such as fresh and aged, are fitted apart" };
        var ph = new Option<string[]>("--ph") { HelpName = "PH", Description = "a pH whose colour is wanted; may stand more than once" };
        var aim = new Option<string?>("--aim-lab") { HelpName = "\"L A B\"", Description = "a colour: at which pH the liquor comes nearest" };
        var step = new Option<string?>("--ph-step") { HelpName = "PH", Description = "the smallest step of the strip or meter; 0.5 when left out" };
        var forms = new Option<int?>("--forms") { HelpName = "N", Description = "how many forms; the jars decide when left out" };
        var plan = new Option<bool>("--plan") { Description = "reckon the row before it is made: acid or alkali for each jar" };
        Option<string?>[] fields = [.. PhRowRequest.All.Select(name => new Option<string?>($"--{name}") { HelpName = "WORDS", Description = $"with --plan: {PhRowHelp.Of(name)}" })];
        var json = new Option<bool>("--json") { Description = "one JSON document instead of text" };
        var csv = new Option<bool>("--csv") { Description = "a table with commas: the colours at each half pH" };
        var verb = new Verb(
            "ladder",
            "Plans jars at several pH, finds a dye's forms.",
            "alumroot ladder --plan --dyestuff weld --dry 10g --water 500mL",
            "alumroot ladder jars.csv --ph 6.5 --ph 8",
            "alumroot ladder jars.csv --aim-lab \"40 35 10\" --json");
        verb.Add(file);
        foreach (Option option in (Option[])[ph, aim, step, forms, plan, .. fields, json, csv]) verb.Add(option);
        verb.SetAction(parsed =>
        {
            Form form = parsed.GetValue(json) ? Form.Json : parsed.GetValue(csv) ? Form.Csv : Form.Text;
            if (parsed.GetValue(plan)) return Planned(new PhRowRequest(name => parsed.GetValue(fields[PhRowRequest.All.ToList().IndexOf(name)])), form, channels);
            var wanted = new List<double>();
            foreach (string typed in parsed.GetValue(ph) ?? [])
            {
                if (QuantityReader.ReadPh(typed, FieldRules.Ph) is not Parsed<Ph>.Understood read) return channels.End(ExitCode.InputWrong, $"'--ph {typed}' is no pH. Write a number from 0 to 14.");
                wanted.Add(read.Value.Value);
            }
            (double? sdPh, string? wrong) = LadderStrip.SdPh(parsed.GetValue(step));
            if (sdPh is null) return channels.End(ExitCode.InputWrong, $"--ph-step: {wrong}");
            Lab? colour = null;
            if (parsed.GetValue(aim) is { } lab && (colour = LabReading.Of(lab)) is null) return channels.End(ExitCode.InputWrong, $"'--aim-lab {lab}' is no colour. Write its Lab as three numbers, such as \"40 35 10\".");
            if (parsed.GetValue(forms) is { } n && n is < 1 or > LadderAnalysis.MostForms) return channels.End(ExitCode.InputWrong, $"'--forms' is a number of forms from 1 to {LadderAnalysis.MostForms}.");
            if (parsed.GetValue(file) is not { } path) return channels.End(ExitCode.InputWrong, "Name the file with the jars, or write --plan to reckon a row before it is made.");
            return TextFile.WithTable(path, channels, table => Run(LadderTable.Read(table), new Asked(wanted, colour, sdPh.Value, parsed.GetValue(forms)), form, channels));
        });
        return verb;
    }

    private static int Planned(PhRowRequest asked, Form form, Channels channels)
    {
        if (asked.Troubles.Count > 0) return channels.End(ExitCode.InputWrong, string.Join(Environment.NewLine, asked.Troubles.Select(t => t.Sentence)));
        if (asked.Plan is not { } row) return channels.End(ExitCode.CannotBeMet, PhRowWords.NoEnd);
        PhRowOutput.Write(asked, row, form, channels);
        return ExitCode.Done;
    }

    private sealed record Asked(IReadOnlyList<double> Ph, Lab? Aim, double ReadingSdPh, int? Forms);

    private static int Run(LadderTable table, Asked asked, Form form, Channels channels)
    {
        var answers = new List<LadderAnswer>();
        foreach (LadderRow row in table.Rows)
        {
            if (LadderAnalysis.Fit(row.Ph, row.Signals, asked.ReadingSdPh, asked.Forms) is not { } found)
            {
                channels.Messages.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{(row.Name.Length > 0 ? $"Series '{row.Name}'" : "The file")} has {row.Ph.Distinct().Count()} different pH; {LadderAnalysis.LeastJars} are the least{(asked.Forms is { } f ? $", and {f} forms need {f + 1} at least" : "")}."));
                continue;
            }
            var reading = new LadderReading(table, found);
            double[] shown = asked.Ph.Count > 0 ? [.. asked.Ph] : [.. Enumerable.Range((int)Math.Ceiling(2 * found.Range.Least), (int)(2 * found.Range.Most) - (int)Math.Ceiling(2 * found.Range.Least) + 1).Select(i => i / 2.0)];
            answers.Add(new LadderAnswer(row, found, [.. shown.Select(reading.At)], asked.Aim is { } aim ? reading.Toward(aim) : null));
        }
        if (answers.Count == 0) return ExitCode.CannotBeMet;
        LadderOutput.Write(answers, table, form, channels.Data);
        return ExitCode.Done;
    }
}
