using Alumroot.App.Parts;
using Alumroot.App.Requests;
using Alumroot.App.Words;
using Alumroot.Catalogue;
using Alumroot.Chemistry.Planning;

namespace Alumroot.App.Pages.Lakes;

/// <summary>What the parts of the plan page need to know: the answer, its numbers in words, and how far the form has come.</summary>
public sealed class PlanView
{
    private static readonly string[] LaterFields =
        [.. PlanFields.All.Except([PlanFields.Salt, PlanFields.Alkali, PlanFields.AlkaliStrength, PlanFields.BakedBefore, PlanFields.BakedAfter, PlanFields.Dyestuff, PlanFields.Dry, PlanFields.Fresh])];

    private PlanView(PlanAnswer answer, bool sent) => (Answer, Sent, Numbers) = (answer, sent, PlanNumbers.For(answer));

    /// <summary>The answer.</summary>
    public PlanAnswer Answer { get; }

    /// <summary>Whether the form has been sent, filled or not.</summary>
    public bool Sent { get; }

    /// <summary>The numbers in the units asked for.</summary>
    public PlanNumbers Numbers { get; }

    /// <summary>The plan, when its amounts may be shown.</summary>
    public LakePlan? Plan => Answer.AmountsWithheld ? null : Answer.Plan;

    /// <summary>Whether anything came of it: a plan, a refusal, an aim out of reach.</summary>
    public bool HasAnswer => Answer.Refusal is not null || Answer.Outcome is not null;

    /// <summary>Whether more than the three questions is shown.</summary>
    public bool WholeForm => Answer.Refusal is null
        && (Answer.Input is not null || LaterFields.Any(f => Answer.Request[f] is not null) || (Answer.Request[PlanFields.Salt] is not null && Answer.Request[PlanFields.Alkali] is not null && Answer.Request[PlanFields.Dry] is not null));

    /// <summary>Fields that have not been filled and must be, each with what to say.</summary>
    public IReadOnlyList<FieldTrouble> Open
    {
        get
        {
            IEnumerable<FieldTrouble> open = Answer.Troubles.Where(t => IsOpen(t) && !FollowsFromAnother(t)).Select(FirstQuestion);
            bool nothingToDye = Answer.Request[PlanFields.Dyestuff] is null && Answer.Request[PlanFields.SaltAmount] is null && Answer.Refusal is null;
            return [.. (nothingToDye ? open.Append(WhichPlant) : open).DistinctBy(t => t.FieldId)];
        }
    }

    /// <summary>Fields whose text needs another look.</summary>
    public IReadOnlyList<FieldTrouble> Wrong => [.. Answer.Troubles.Where(t => !IsOpen(t)).Select(t => t with { Sentence = Trouble(t.FieldId) ?? t.Sentence })];

    /// <summary>Looks at a request.</summary>
    /// <param name="request">What was asked.</param>
    /// <param name="sent">Whether the address had any field at all, filled or not.</param>
    public static PlanView Of(PlanRequest request, bool sent) => new(PlanMaker.Answer(request), sent);

    /// <summary>What was typed in a field, exactly.</summary>
    public string? Typed(string field) => Answer.Request[field];

    /// <summary>What is wrong with a field that was filled.</summary>
    public string? Trouble(string field)
    {
        FieldReading reading = Answer.Fields.GetValueOrDefault(field, None);
        if (reading.Trouble is null || IsOpen(new FieldTrouble(field, reading.Trouble))) return null;
        bool packet = field is PlanFields.Salt or PlanFields.Alkali && reading.Offers.Count > 1 && reading.Offers.All(o => CatalogueData.Embedded.FindReagent(o) is not null);
        return packet ? $"{FieldNames.Of(field)}: '{Typed(field)}' can mean {reading.Offers.Count} things, and each takes another amount. The list below tells them apart." : reading.Trouble;
    }

    /// <summary>How a field was read, when that is worth saying.</summary>
    public string? Understood(string field) => Answer.Fields.GetValueOrDefault(field, None).Understood;

    /// <summary>Texts with one meaning that may be taken in place of what was typed.</summary>
    public IReadOnlyList<string> Offers(string field) => Answer.Fields.GetValueOrDefault(field, None).Offers;

    /// <summary>What was assumed for a field; null when nothing was.</summary>
    public Assumption? Assumed(string field) => Answer.Assumptions.FirstOrDefault(a => a.Field == field);

    /// <summary>Whether any of these fields needs another look or is still to be filled: their fold then stands open.</summary>
    public bool AnyTrouble(params string[] fields) => Wrong.Concat(Open).Any(t => fields.Contains(t.FieldId));

    /// <summary>The address of this page with one field changed.</summary>
    public string AddressWith(string field, string? typed) => Answer.Request.With(field, typed).Address;

    private static FieldTrouble WhichPlant { get; } =
        new(PlanFields.Dyestuff, "Dyestuff: which plant, and how much of it? For the white ground alone, fill in the amount of salt instead.");

    private static FieldReading None { get; } = new("", null, null, []);

    private bool IsOpen(FieldTrouble trouble) =>
        (Answer.Request[trouble.FieldId] is null && Offers(trouble.FieldId).Count == 0) || (trouble.FieldId == PlanFields.Alkali && AlkaliDetail is not null);

    // An alkali that is named but not yet measured: which field it waits for.
    private string? AlkaliDetail => Packets.ChoiceOf(Answer.Request, PlanFields.Alkali, Packets.Alkalis) switch
    {
        Packets.HomeBaked when Answer.Request[PlanFields.BakedBefore] is null => PlanFields.BakedBefore,
        Packets.HomeBaked when Answer.Request[PlanFields.BakedAfter] is null => PlanFields.BakedAfter,
        "wood-ash-lye" when Answer.Request[PlanFields.AlkaliStrength] is null => PlanFields.AlkaliStrength,
        _ => null,
    };

    // The amount of salt follows from the dyestuff: while that is in doubt it is not asked for.
    private bool FollowsFromAnother(FieldTrouble trouble) =>
        trouble.FieldId == PlanFields.SaltAmount && Answer.Troubles.Any(t => t.FieldId is PlanFields.Dry or PlanFields.Fresh or PlanFields.Dyestuff);

    // Without a plant the amount of salt is what is missing; the question asked first is the plant.
    private FieldTrouble FirstQuestion(FieldTrouble trouble) =>
        trouble.FieldId == PlanFields.SaltAmount && Answer.Request[PlanFields.Dyestuff] is null
            ? WhichPlant
            : trouble.FieldId == PlanFields.Alkali && AlkaliDetail is { } detail
            ? new FieldTrouble(detail, detail == PlanFields.AlkaliStrength
                ? "Alkali: how strong is the lye? Titrate 10 mL with vinegar."
                : "Alkali: weigh the powder before and after baking, and give both weights.")
            : trouble;
}
