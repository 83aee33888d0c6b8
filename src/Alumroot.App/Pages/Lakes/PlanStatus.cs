using Alumroot.App.Requests;
using Alumroot.App.Words;
using Alumroot.Chemistry.Planning;

namespace Alumroot.App.Pages.Lakes;

/// <summary>The one sentence that is spoken after a change.</summary>
public static class PlanStatus
{
    /// <summary>What has come of the fields as they stand.</summary>
    public static string Of(PlanView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        PlanAnswer answer = view.Answer;
        if (answer.Refusal is { } refusal) return $"Will not plan with {refusal.What}.";
        if (view.Wrong is [var one]) return one.Sentence;
        if (view.Wrong.Count > 1) return $"{view.Wrong.Count} fields need another look.";
        if (view.Open.Count > 0) return view.Open.Count == 1 ? $"Still to say: {view.Open[0].Sentence}" : $"{view.Open.Count} questions are still open.";
        return answer.Outcome switch
        {
            PlanOutcome.CannotReach cannot => $"Cannot reach pH {view.Numbers.Ph90(Quantities.Estimate.Exact(cannot.AimPh.Value)).Value}.",
            PlanOutcome.MetalStays => "Not all the metal comes down with this alkali.",
            PlanOutcome.NotSolved => "This bath could not be reckoned.",
            PlanOutcome.Planned when answer.AmountsWithheld => "Change this first; the amounts are held back.",
            PlanOutcome.Planned planned => Planned(view, planned.Plan),
            _ => "",
        };
    }

    private static string Planned(PlanView view, LakePlan plan)
    {
        string cautions = view.Answer.Cautions.Count switch { 0 => "no cautions", 1 => "one caution", var n => $"{n} cautions" };
        string end = plan.EndPh.Value < plan.StartPh.Value ? "falls" : "rises";
        return $"Alkali now {view.Numbers.Alkali(plan.Alkali, plan.Input.Alkali).Plain}, pH path {end} to {view.Numbers.Ph90(plan.EndPh).Value}; {cautions}.";
    }
}
