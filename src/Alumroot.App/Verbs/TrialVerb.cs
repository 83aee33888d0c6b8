using System.CommandLine;
using Alumroot.App.Output;
using Alumroot.App.Trials;
using Alumroot.App.Verbs.Trial;
using Alumroot.App.Words;
using Alumroot.Quantities.Tables;
using Alumroot.Studio;
using Alumroot.Studio.Journal;
using Alumroot.Trials.Analysis;
using Alumroot.Trials.Design;
using Alumroot.Trials.Learning;

namespace Alumroot.App.Verbs;

/// <summary><c>alumroot trial design|analyse|next FILE</c>: designs a trial, tells its effects, proposes the next jar.</summary>
public static class TrialVerb
{
    /// <summary>The verb with its options.</summary>
    public static Verb Build(Channels channels)
    {
        ArgumentNullException.ThrowIfNull(channels);
        var what = new Argument<string>("what") { HelpName = "WHAT", Description = "design: a run list from factors in JSON; analyse: effects from a table of results; next: the jar most worth making" };
        var file = new Argument<string>("file") { HelpName = "FILE", Description = "for design a JSON file; otherwise a table with a column for each factor and each thing measured, such as L, a, b, yield_g; or the number of a kept trial, such as T-05" };
        var response = new Option<string[]>("--response") { HelpName = "COLUMN", Description = "a further column that was measured; may stand more than once" };
        var single = new Option<bool>("--single") { Description = "for analyse: single factors only, no products of two" };
        var aim = new Option<string[]>("--aim") { HelpName = "AIM", Description = "for next: \"lab=52 38 21\", most=chroma, least=de; may stand more than once, the first decides" };
        var not = new Option<string[]>("--not") { HelpName = "PAIR", Description = "for next: settings that must not come together, such as \"salt=iron-sulfate, alkali=potash\"" };
        Option<string?> folder = StudioVerb.FolderOption();
        var json = new Option<bool>("--json") { Description = "one JSON document instead of text" };
        var csv = new Option<bool>("--csv") { Description = "a table with commas" };
        var verb = new Verb(
            "trial",
            "Designs a trial, tells its effects, the next jar.",
            "alumroot trial design trial.json --csv",
            "alumroot trial analyse results.csv",
            "alumroot trial next results.csv --aim \"lab=52 38 21\"");
        verb.Add(what);
        verb.Add(file);
        foreach (Option option in (Option[])[response, single, aim, not, folder, json, csv]) verb.Add(option);
        verb.SetAction(parsed =>
        {
            string word = parsed.GetRequiredValue(what), path = parsed.GetRequiredValue(file);
            if (word is not ("design" or "analyse" or "next")) return channels.End(ExitCode.InputWrong, $"'trial {word}' is not known. It is 'trial design', 'trial analyse' or 'trial next'.");
            Form form = parsed.GetValue(json) ? Form.Json : parsed.GetValue(csv) ? Form.Csv : Form.Text;
            if (SubjectKey.TryRead(path) is { Class: SubjectClass.Trial } key && word != "design") return StudioVerb.Run(parsed.GetValue(folder), StudioAccess.Read, channels, studio => OfRecord(studio, key, channels, Told));
            if (word == "design") return TextFile.Read(path, channels) is { } text ? Design(text, form, channels) : ExitCode.InputWrong;
            return TextFile.WithTable(path, channels, table => Told(TrialTable.Read(table, parsed.GetValue(response) ?? []), null));

            int Told(TrialTable table, Func<string, double>? readingSd) =>
                word == "analyse" ? Analyse(table, !parsed.GetValue(single), form, channels) : Next(table, parsed.GetValue(aim) ?? [], parsed.GetValue(not) ?? [], readingSd, form, channels);
        });
        return verb;
    }

    private static int Design(string text, Form form, Channels channels)
    {
        (TrialFile? file, string? trouble) = TrialFile.Read(text);
        if (file is null) return channels.End(ExitCode.InputWrong, trouble!);
        if (Designer.Design(file.Request) is not DesignOutcome.Made { Design: var design }) return channels.End(ExitCode.CannotBeMet, TrialWords.Of((DesignOutcome.Refused)Designer.Design(file.Request)));
        JarPlan[]? plans = file.Plan is null ? null : [.. design.Jars.Select(j => JarPlan.Of(file.Plan, file.Request.Factors, j))];
        DesignOutput.Write(design, plans, form, channels.Data);
        if (form != Form.Text) foreach (string remark in TrialWords.Of(design)) channels.Messages.WriteLine(remark);
        if (plans?.All(p => p.WhyNot is not null) == true) return channels.End(ExitCode.CannotBeMet, $"No jar can be planned: {plans[0].WhyNot}");
        return ExitCode.Done;
    }

    private static int OfRecord(StudioStore studio, SubjectKey key, Channels channels, Func<TrialTable, Func<string, double>?, int> told)
    {
        if (studio.Trial(key) is not { } trial) return channels.End(ExitCode.CannotBeMet, $"There is no {key} in this studio. 'alumroot list' shows what there is.");
        return KeptTrial.Table(trial) is { } table ? told(table, KeptTrial.ReadingSd(trial)) : channels.End(ExitCode.CannotBeMet, $"Nothing was read of {key} yet, so there is nothing to tell. Its page in 'alumroot serve' takes the readings.");
    }

    private static int Analyse(TrialTable table, bool products, Form form, Channels channels)
    {
        ResponseFound[] found = [.. table.Responses.Where(r => r.Values.Count(double.IsFinite) >= 2).Select(r => EffectAnalysis.Of(table.Data, r, products))];
        if (found.Length == 0) return channels.End(ExitCode.CannotBeMet, "Nothing was measured in two jars or more, so there is no effect to tell. Fill in the results.");
        AnalyseOutput.Write(found, form, channels.Data);
        if (found.All(f => f.From == ScatterFrom.Nowhere)) channels.Messages.WriteLine("There are too few jars to know the scatter, so nothing is sure. Make one jar twice.");
        return ExitCode.Done;
    }

    private static int Next(TrialTable table, string[] typed, string[] not, Func<string, double>? readingSd, Form form, Channels channels)
    {
        if (typed.Length == 0) return channels.End(ExitCode.InputWrong, "'trial next' needs an aim. Write --aim \"lab=52 38 21\", --aim most=chroma or --aim least=de.");
        var aims = new List<TrialAim>();
        foreach (string one in typed)
        {
            (TrialAim? aim, string? trouble) = TrialAim.Read(one, table);
            if (aim is null) return channels.End(ExitCode.InputWrong, trouble!);
            aims.Add(aim);
        }
        (Func<IReadOnlyList<RecipeSetting>, bool>? allowed, string? wrong) = ForbiddenSettings.Read(not, table.Data);
        if (wrong is not null) return channels.End(ExitCode.InputWrong, wrong);
        (IReadOnlyList<Response> responses, IReadOnlyList<Func<double[], double>> losses) = TrialAim.Together(aims, table);
        if (NextTrial.Propose(table.Data, responses, losses, readingSd is null ? null : [.. responses.Select(r => readingSd(r.Name))], allowed) is not { } found)
            return channels.End(ExitCode.CannotBeMet, $"{NextTrial.LeastRows} jars with everything that the aim needs are the least, and something must have been changed between them. 'alumroot trial design' makes a first row.");
        NextOutput.Write(found, aims, form, channels.Data);
        return ExitCode.Done;
    }
}
