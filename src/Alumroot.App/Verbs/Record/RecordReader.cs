using System.CommandLine;
using Alumroot.App.Bench;
using Alumroot.App.Requests;
using Alumroot.App.Studio;
using Alumroot.App.Words;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Verbs.Record;

/// <summary>Reads the words of <c>record</c>. Writes nothing.</summary>
internal sealed class RecordReader(RecordOptions options, ParseResult parsed)
{
    private readonly string[] _words = parsed.GetRequiredValue(options.Words);

    public RecordDraft Read() => _words switch
    {
        ["new"] => FromFile(),
        ["plan", var address] => FromAddress(address),
        ["lot", var kind, var title, var amount] => Lot(kind, title, amount),
        ["trial", var address, var title] => TrialDrafts.Begin(address, title, null),
        ["trial", var address, var title, var results] => TrialDrafts.Begin(address, title, results),
        ["new" or "plan" or "lot" or "trial", ..] => RecordDraft.Wrong("A beginning is written 'record new --from FILE', 'record plan ADDRESS', 'record lot KIND NAME AMOUNT' or 'record trial ADDRESS NAME [RESULTS]'. Words with blanks stand in quotes."),
        [var key, ..] when SubjectKey.TryRead(key) is { } subject => About(subject),
        [var other, ..] => RecordDraft.Wrong($"'{other}' is not the number of a batch or lot. Write it like 26-014, lot-7 or T-05, or begin with new, plan, lot or trial."),
        [] => RecordDraft.Wrong("Nothing is typed. Write it like 'record 26-014 added \"3.0 g\"'."),
    };

    private RecordDraft About(SubjectKey subject)
    {
        EntryId? corrects = null;
        if (parsed.GetValue(options.Corrects) is { } named && (corrects = EntryId.TryRead(named)) is null) return NoNumber("--corrects", named);
        RecordDraft draft = _words[1..] switch
        {
            ["jar", var jar, .. var read] when subject.Class == SubjectClass.Trial => TrialDrafts.Jar(subject, jar, read),
            ["ended"] when subject.Class == SubjectClass.Trial => new RecordDraft(subject, new TrialEnded()),
            ["note"] => new RecordDraft(subject, new Noted()),
            ["given-up", .. var reason] when reason.Length > 0 => new RecordDraft(subject, new BatchGivenUp(string.Join(' ', reason))),
            ["undo", var entry] => EntryId.TryRead(entry) is { } undone ? new RecordDraft(subject, new Withdrawn(), undone) : NoNumber("undo", entry),
            ["added", var amount] => Step(subject, StepKind.Alkali, amount),
            [var step] when StepOf(step) is { } kind => Step(subject, kind, null),
            [var step, var amount] when StepOf(step) is { } kind => Step(subject, kind, amount),
            _ => RecordDraft.Wrong($"'{string.Join(' ', _words)}' is not understood. After {subject} stands added AMOUNT, a step with or without an amount, note, given-up REASON or undo ENTRY; after a trial jar NUMBER with what was read, or ended."),
        };
        if (draft is { Document: BatchStep or BatchGivenUp } && subject.Class != SubjectClass.Batch) return RecordDraft.Wrong($"{subject} is {(subject.Class == SubjectClass.Lot ? "a lot" : "no batch")}, and steps belong to batches. Write the number of a batch, like 26-014.");
        if (draft is { Document: Noted } && parsed.GetValue(options.Note) is null && parsed.GetValue(options.Photo) is null or []) return RecordDraft.Wrong("A note needs its words. Add --note TEXT or --photo FILE.");
        return corrects is null || draft.Document is null or Withdrawn ? draft : draft with { Corrects = corrects };
    }

    private RecordDraft Step(SubjectKey subject, StepKind step, string? amount)
    {
        TypedAmount?[] typed =
        [
            amount is null ? null : TypedAmount.Amount(amount),
            parsed.GetValue(options.Strip) is { } strip ? TypedAmount.PhOf(strip, "strip") : null,
            parsed.GetValue(options.Meter) is { } meter ? TypedAmount.PhOf(meter, "meter") : null,
            parsed.GetValue(options.Conductivity) is { } conductivity ? TypedAmount.ConductivityOf(conductivity) : null,
            parsed.GetValue(options.Temperature) is { } temperature ? TypedAmount.TemperatureOf(temperature) : null,
        ];
        if (typed.FirstOrDefault(t => t?.Trouble is not null) is { } wrong) return RecordDraft.Wrong(wrong.Trouble!);
        Measured[] values = [.. typed.Select(t => t?.Value).OfType<Measured>()];
        string? trouble = new InstrumentSteps(parsed.GetValue(options.Scale), parsed.GetValue(options.PhStep)).Note(values);
        if (trouble is not null) return RecordDraft.Wrong(trouble);
        var uses = new LotUses(typed[0]?.Value);
        foreach (string use in parsed.GetValue(options.Use) ?? []) trouble ??= uses.Add(use);
        return trouble is not null ? RecordDraft.Wrong(trouble)
            : new RecordDraft(subject, new BatchStep(step) { Values = values, Uses = uses.All }) { Remarks = [.. typed.Select(t => t?.Remark).OfType<string>()] };
    }

    private RecordDraft Lot(string kind, string title, string amount)
    {
        if (!Enum.TryParse(kind, ignoreCase: true, out LotClass substance) || !Enum.IsDefined(substance) || !kind.All(char.IsLetter))
            return RecordDraft.Wrong($"'{kind}' is not a kind of lot. It is one of {string.Join(", ", Enum.GetValues<LotClass>().Select(SubjectLine.Word))}.");
        TypedAmount typed = TypedAmount.Amount(amount);
        return typed.Value is null or { SiValue: 0 }
            ? RecordDraft.Wrong(typed.Trouble ?? $"'{amount}': a lot of nothing cannot come. Write how much came, such as 500 g.")
            : new RecordDraft(null, new LotBought(substance, title, typed.Value) { Cost = parsed.GetValue(options.Cost), Source = parsed.GetValue(options.Source) }) { Remarks = typed.Remark is { } r ? [r] : [] };
    }

    private RecordDraft FromFile()
    {
        if (parsed.GetValue(options.From) is not { } path) return RecordDraft.Wrong("'record new' needs the plan. Add --from FILE with the plan's fields as JSON, or write 'record plan ADDRESS'.");
        using var said = new StringWriter();
        return FieldFile.TryRead(path, new Output.Channels(TextWriter.Null, said), out Dictionary<string, string> fields)
            ? Begin(PlanRequest.From(fields.GetValueOrDefault))
            : RecordDraft.Wrong(said.ToString().TrimEnd());
    }

    private static RecordDraft FromAddress(string address) => PlanRequest.FromAddress(address) is { } request
        ? Begin(request)
        : RecordDraft.Wrong($"'{address}' is not the address of a plan. Copy it from the plan's page; it holds {PlanRequest.Path}?");

    private static RecordDraft Begin(PlanRequest request)
    {
        PlanAnswer answer = PlanMaker.Answer(request);
        return BatchBeginning.WhyNot(answer) is { } why ? RecordDraft.Wrong(why) : new RecordDraft(null, BatchBeginning.Of(answer));
    }

    private static StepKind? StepOf(string word) => Enum.GetValues<StepKind>().Cast<StepKind?>().FirstOrDefault(k => SubjectLine.Word(k!.Value) == word);

    private static RecordDraft NoNumber(string where, string typed) => RecordDraft.Wrong($"'{where} {typed}' is not the number of an entry. 'alumroot show' lists the entries of a batch with their numbers.");
}
