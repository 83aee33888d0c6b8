using System.Globalization;
using Alumroot.App.Parts;
using Alumroot.App.Requests;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities.Writing;

namespace Alumroot.App.Words;

/// <summary>Why there is no plan, or why its amounts are held back, in sentences.</summary>
public static class NotPlannedWords
{
    /// <summary>A substance that is not planned here.</summary>
    public static string Refused(PlanRefusal refusal) => $"Will not plan with {Small(refusal.What)}. {Ended(refusal.Reason)} {(refusal.Instead.Length > 0 ? $"Instead: {Ended(refusal.Instead)}" : "")}".TrimEnd();

    /// <summary>Why an answer without troubles and refusal has no plan.</summary>
    public static string NotPlanned(PlanAnswer answer) => answer.Outcome switch
    {
        PlanOutcome.CannotReach no => CannotReach(no),
        PlanOutcome.MetalStays stays => MetalStaysWords.Of(stays),
        _ => "The equations of this bath could not be solved, so nothing is claimed. Change one of the amounts a little, or leave the second salt out.",
    };

    /// <summary>A caution with its word in front.</summary>
    public static string Spoken(PlanCaution caution) => caution.Level switch
    {
        CautionWord.ChangeThisFirst => $"Change this first: {caution.Text}",
        CautionWord.DoesNotAddUp => $"Does not add up: {caution.Text}",
        _ => $"Mind: {caution.Text}",
    };

    private static string CannotReach(PlanOutcome.CannotReach no)
    {
        string aim = no.AimPh.Value.ToString("0.##", CultureInfo.InvariantCulture), reach = QuantityText.OfPh(no.ReachablePh);
        string down = no.LowestPhWithMetalDown is { } low ? $" The lowest aim with nearly all the metal down is about {low.Value.ToString("0.0", CultureInfo.InvariantCulture)}." : "";
        return no.IsBelow
            ? $"Cannot reach pH {aim}: the bath starts at {reach} and alkali only raises it; about {100 * no.DissolvedThere.Value:0} % of the metal is dissolved there.{down}"
            : $"Cannot reach pH {aim}: with far more of this alkali than is sensible the bath ends at {reach}.{down}";
    }

    private static string Small(string s) => char.ToLowerInvariant(s[0]) + s[1..];

    private static string Ended(string s) => s.EndsWith('.') ? s : s + ".";
}
