using System.CommandLine;
using System.Globalization;
using Alumroot.App.Colours;
using Alumroot.App.Output;
using Alumroot.App.Trials;
using Alumroot.App.Verbs.Ladder;
using Alumroot.Colour.Colorimetry;
using Alumroot.Quantities;
using Alumroot.Quantities.Reading;
using Alumroot.Quantities.Tables;
using Alumroot.Trials.Ladder;

namespace Alumroot.App.Verbs;

/// <summary><c>alumroot ladder FILE.csv</c>: one liquor at several pH to its forms, their pKa, and its colour at any pH.</summary>
public static class LadderVerb
{
    // A strip or meter is off by about a quarter of its step and a tenth for the whole row (one standard deviation; our judgement).
    private const double ShareOfStep = 0.25, LeastSdPh = 0.1;

    /// <summary>The verb with its options.</summary>
    public static Verb Build(Channels channels)
    {
        ArgumentNullException.ThrowIfNull(channels);
        var file = new Argument<string>("file") { HelpName = "FILE.csv", Description = "columns ph, L, a, b of each jar, or ph and a column of absorbance for each wavelength; series, such as fresh and aged, are fitted apart" };
        var ph = new Option<string[]>("--ph") { HelpName = "PH", Description = "a pH whose colour is wanted; may stand more than once" };
        var aim = new Option<string?>("--aim-lab") { HelpName = "\"L A B\"", Description = "a colour: at which pH the liquor comes nearest" };
        var step = new Option<string?>("--ph-step") { HelpName = "PH", Description = "the smallest step of the strip or meter; 0.5 when left out" };
        var forms = new Option<int?>("--forms") { HelpName = "N", Description = "how many forms; the jars decide when left out" };
        var json = new Option<bool>("--json") { Description = "one JSON document instead of text" };
        var csv = new Option<bool>("--csv") { Description = "a table with commas: the colours at each half pH" };
        var verb = new Verb(
            "ladder",
            "Finds a dye's forms from jars at several pH.",
            "alumroot ladder jars.csv",
            "alumroot ladder jars.csv --ph 6.5 --ph 8",
            "alumroot ladder jars.csv --aim-lab \"40 35 10\" --json");
        verb.Add(file);
        foreach (Option option in (Option[])[ph, aim, step, forms, json, csv]) verb.Add(option);
        verb.SetAction(parsed =>
        {
            var wanted = new List<double>();
            foreach (string typed in parsed.GetValue(ph) ?? [])
            {
                if (QuantityReader.ReadPh(typed, FieldRules.Ph) is not Parsed<Ph>.Understood read) return channels.End(ExitCode.InputWrong, $"'--ph {typed}' is no pH. Write a number from 0 to 14.");
                wanted.Add(read.Value.Value);
            }
            double stepPh = 0.5;
            if (parsed.GetValue(step) is { } s)
            {
                if (QuantityReader.ReadNumber(s, FieldRules.PhStep) is not Parsed<double>.Understood read) return channels.End(ExitCode.InputWrong, $"'--ph-step {s}' is no step of a strip or meter. Write it like 0.5.");
                stepPh = read.Value;
            }
            Lab? colour = null;
            if (parsed.GetValue(aim) is { } lab && (colour = LabReading.Of(lab)) is null) return channels.End(ExitCode.InputWrong, $"'--aim-lab {lab}' is no colour. Write its Lab as three numbers, such as \"40 35 10\".");
            if (parsed.GetValue(forms) is { } n && n is < 1 or > LadderAnalysis.MostForms) return channels.End(ExitCode.InputWrong, $"'--forms' is a number of forms from 1 to {LadderAnalysis.MostForms}.");
            string path = parsed.GetRequiredValue(file);
            if (TextFile.Read(path, channels) is not { } text) return ExitCode.InputWrong;
            Form form = parsed.GetValue(json) ? Form.Json : parsed.GetValue(csv) ? Form.Csv : Form.Text;
            try
            {
                LadderTable table = LadderTable.Read(Table.Parse(Path.GetFileName(path), text));
                return Run(table, new Asked(wanted, colour, Math.Sqrt(LeastSdPh * LeastSdPh + ShareOfStep * ShareOfStep * stepPh * stepPh), parsed.GetValue(forms)), form, channels);
            }
            catch (TableException e)
            {
                return channels.End(ExitCode.InputWrong, e.Message);
            }
        });
        return verb;
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
