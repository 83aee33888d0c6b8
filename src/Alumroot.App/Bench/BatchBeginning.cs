using Alumroot.App.Requests;
using Alumroot.App.Verbs;
using Alumroot.App.Words;
using Alumroot.Catalogue;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Bench;

/// <summary>The first entry of a batch, from the answer to its plan. One way for the page and the command line.</summary>
public static class BatchBeginning
{
    /// <summary>Why no batch can begin with this answer, in one sentence; null when it can.</summary>
    public static string? WhyNot(PlanAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        if (answer.Troubles.Count > 0) return string.Join(Environment.NewLine, answer.Troubles.Select(t => t.Sentence));
        if (answer.Refusal is { } refusal) return NotPlannedWords.Refused(refusal);
        if (answer.Plan is null) return NotPlannedWords.NotPlanned(answer);
        return answer.AmountsWithheld
            ? string.Join(Environment.NewLine, answer.Cautions.Where(c => c.Level == Parts.CautionWord.ChangeThisFirst).Select(NotPlannedWords.Spoken))
            : null;
    }

    /// <summary>The entry's document.</summary>
    /// <param name="answer">An answer with a plan whose amounts may be shown.</param>
    public static BatchPlanned Of(PlanAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return new BatchPlanned(PlanSentence.Text(answer), answer.Request.Address, (long)answer.Input!.Seed, CommandLine.Version)
        {
            Dyestuff = answer.Dyestuff is { } dyestuff ? CatalogueWords.AsHeading(dyestuff.Name) : null,
            Salt = answer.Input.Salts[0].Substance.PlainName,
            Lots = [.. Lots(answer.Request)],
            FromBatch = Repeated(answer.Request),
            Origin = Repeated(answer.Request) is null ? BatchOrigin.Own : BatchOrigin.Repeat,
        };
    }

    private static string? Repeated(PlanRequest request) => SubjectKey.TryRead(request[PlanFields.RepeatOf]) is { Class: SubjectClass.Batch } batch ? batch.ToString() : null;

    private static IEnumerable<LotChoice> Lots(PlanRequest request)
    {
        foreach ((string field, LotClass role) in ((string, LotClass)[])[(PlanFields.DyestuffLot, LotClass.Dyestuff), (PlanFields.SaltLot, LotClass.Salt), (PlanFields.AlkaliLot, LotClass.Alkali)])
            if (SubjectKey.TryRead(request[field]) is { Class: SubjectClass.Lot } lot) yield return new LotChoice(role, lot.ToString());
    }
}
